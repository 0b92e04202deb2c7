/**
 * Heat made in a junction. Watts, amperes, volts, hertz, joules. A part's drop is taken as a threshold and a resistance, as data sheets
 * of power rectifiers print it (40EPS bulletin I2104 rev C); typical figures make typical heat, not the worst.
 */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

/** The drop of a junction as a line: threshold volts and ohms. */
export interface DropLine {
  readonly volts: number;
  readonly ohms: number;
}

/** Energy of one turn-on with one turn-off, at the current and voltage where the data sheet gives it. */
export interface SwitchingEnergy {
  readonly joules: number;
  readonly atAmps: number;
  readonly atVolts: number;
}

const AMPS = (words: string, value: number) => ranged(words, value, 0, 1000, "A");
const LINE = (drop: DropLine) => [
  ranged("threshold", drop.volts, 0, 10, "V"),
  ranged("slope resistance", drop.ohms, 0, 10, "ohm"),
];

/** Conducting all the time: P = V I(mean) + R I(rms)^2. */
export function conductionWatts(drop: DropLine, meanAmps: number, rmsAmps: number): Parsed<number> {
  const inputs = [AMPS("mean current", meanAmps), AMPS("effective current", rmsAmps), ...LINE(drop)];
  if (rmsAmps < meanAmps)
    return { ok: false, problem: "effective current: it is never below the mean current" };
  return within(inputs, () => drop.volts * meanAmps + drop.ohms * rmsAmps ** 2);
}

/**
 * A single-phase bridge: two junctions in the path of the whole direct current. `shape` is effective over mean of that current; behind
 * a capacitor 1.6 to 2.5 (from memory), behind a choke near 1.
 */
export function bridgeWatts(drop: DropLine, directAmps: number, shape: number): Parsed<number> {
  if (!(shape >= 1 && shape <= 4)) return { ok: false, problem: `current shape: ${shape} is outside 1 to 4` };
  const one = conductionWatts(drop, directAmps, directAmps * shape);
  return one.ok ? { ok: true, value: 2 * one.value } : one;
}

/** Scaled in proportion to current and voltage, as application notes do within half to twice the printed point (from memory). */
function eachTime(energy: SwitchingEnergy, amps: number, volts: number): number {
  return energy.joules * (amps / energy.atAmps) * (volts / energy.atVolts);
}

/** A chopper at a steady current: a boost switch, or a brake. `duty` is the share of the time that it conducts. */
export function chopperWatts(at: {
  readonly drop: DropLine;
  readonly energy: SwitchingEnergy;
  readonly amps: number;
  readonly volts: number;
  readonly duty: number;
  readonly hertz: number;
}): Parsed<number> {
  const inputs = [
    AMPS("current", at.amps),
    ranged("voltage", at.volts, 0, 2000, "V"),
    ranged("duty", at.duty, 0, 1, ""),
    ranged("switching frequency", at.hertz, 0, 500_000, "Hz"),
    ...LINE(at.drop),
  ];
  return within(
    inputs,
    () =>
      at.duty * (at.drop.volts * at.amps + at.drop.ohms * at.amps ** 2) +
      at.hertz * eachTime(at.energy, at.amps, at.volts),
  );
}

/** One switch of a three-phase leg, and the diode across it. */
export interface LegLosses {
  readonly switchWatts: number;
  readonly diodeWatts: number;
}

/**
 * One switch and one diode of a leg that makes a sine by pulse width: closed form over a period, well known in application notes
 * (from memory; the test integrates it again). `depth` is the modulation depth, `powerFactor` that of the motor's current.
 */
export function legWatts(at: {
  readonly switchDrop: DropLine;
  readonly diodeDrop: DropLine;
  readonly energy: SwitchingEnergy;
  readonly recovery: SwitchingEnergy;
  readonly rmsAmps: number;
  readonly busVolts: number;
  readonly depth: number;
  readonly powerFactor: number;
  readonly hertz: number;
}): Parsed<LegLosses> {
  const inputs = [
    AMPS("phase current", at.rmsAmps),
    ranged("bus voltage", at.busVolts, 0, 1500, "V"),
    ranged("modulation depth", at.depth, 0, 1, ""),
    ranged("power factor", at.powerFactor, -1, 1, ""),
    ranged("switching frequency", at.hertz, 0, 100_000, "Hz"),
    ...LINE(at.switchDrop),
    ...LINE(at.diodeDrop),
  ];
  const peak = at.rmsAmps * Math.SQRT2;
  const share = at.depth * at.powerFactor;
  const conducting = (drop: DropLine, sign: 1 | -1) =>
    drop.volts * peak * (1 / (2 * Math.PI) + (sign * share) / 8) +
    drop.ohms * peak ** 2 * (1 / 8 + (sign * share) / (3 * Math.PI));
  const switching = (energy: SwitchingEnergy) => (at.hertz * eachTime(energy, peak, at.busVolts)) / Math.PI;
  return within(inputs, () => ({
    switchWatts: conducting(at.switchDrop, 1) + switching(at.energy),
    diodeWatts: conducting(at.diodeDrop, -1) + switching(at.recovery),
  }));
}
