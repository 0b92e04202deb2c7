/**
 * What the power path of a drive carries at a load: watts in are watts out, and a sine is made of the bus by pulse width. Losses of the
 * board itself are left out of the currents, a few per cent. Watts, volts, amperes.
 */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";
import { type LegLosses, legWatts } from "./losses.ts";

export interface BoardLoad {
  readonly watts: number;
  /** effective, of a line that is a sine */
  readonly lineVolts: number;
  /** held up to by a boost; null: the bridge charges it to the peak of the line */
  readonly boostedVolts: number | null;
  /** of the sine over the most that the bus can make */
  readonly depth: number;
  /** of the motor's current */
  readonly powerFactor: number;
}

export interface LoadCurrents {
  readonly busVolts: number;
  /** mean, out of the bridge */
  readonly directAmps: number;
  /** effective over mean of that current; null behind a capacitor, where it rests on the mains */
  readonly shape: number | null;
  /** effective, of one phase */
  readonly phaseAmps: number;
}

/** Of a sine that is rectified: effective over mean. */
const SINE_SHAPE = Math.PI / (2 * Math.SQRT2);

/**
 * Three phases: watts = 3 V I cos(phi), V = depth x bus / (2 sqrt 2). Bridge: watts over the bus behind a capacitor; in front of a boost the
 * current is a sine of watts over line volts, whose mean is 2 sqrt 2 / pi of its effective value. Closed forms, well known.
 */
export function currentsAtLoad(load: BoardLoad): Parsed<LoadCurrents> {
  const peak = load.lineVolts * Math.SQRT2;
  const busVolts = load.boostedVolts ?? peak;
  const inputs = [
    ranged("load", load.watts, 1, 20_000, "W"),
    ranged("line", load.lineVolts, 20, 500, "V"),
    ranged("bus", busVolts, Math.min(peak, 1000), 1000, "V"),
    ranged("modulation depth", load.depth, 0.05, 1, ""),
    ranged("power factor", load.powerFactor, 0.05, 1, ""),
  ];
  return within(inputs, () => {
    const boosted = load.boostedVolts !== null;
    const lineAmps = load.watts / load.lineVolts;
    return {
      busVolts,
      directAmps: boosted ? lineAmps / SINE_SHAPE : load.watts / busVolts,
      shape: boosted ? SINE_SHAPE : null,
      phaseAmps: (load.watts * 2 * Math.SQRT2) / (3 * load.depth * busVolts * load.powerFactor),
    };
  });
}

/** Six switches and their diodes in one case on one heatsink. */
export interface ModuleMounted {
  /** of one switch, and of one diode */
  readonly switchToCase: number;
  readonly diodeToCase: number;
  /** of the whole module */
  readonly caseToSink: number;
  readonly sinkToAir: number;
  readonly airDegC: number;
}

export interface ModuleHeat extends LegLosses {
  /** all twelve */
  readonly moduleWatts: number;
  readonly caseDegC: number;
  readonly switchDegC: number;
  readonly diodeDegC: number;
}

const KELVIN_PER_WATT = (words: string, value: number) => ranged(words, value, 0.001, 500, "K/W");

/** The case bears the sum of all twelve, each junction stands above it by its own watts: Ohm's law of heat. */
export function moduleHeat(legs: Parameters<typeof legWatts>[0], mounted: ModuleMounted): Parsed<ModuleHeat> {
  const one = legWatts(legs);
  if (!one.ok) return one;
  const { switchWatts, diodeWatts } = one.value;
  const inputs = [
    KELVIN_PER_WATT("switch to case", mounted.switchToCase),
    KELVIN_PER_WATT("diode to case", mounted.diodeToCase),
    KELVIN_PER_WATT("case to heatsink", mounted.caseToSink),
    KELVIN_PER_WATT("heatsink to air", mounted.sinkToAir),
    ranged("air", mounted.airDegC, -40, 100, "degC"),
  ];
  return within(inputs, () => {
    const moduleWatts = 6 * (switchWatts + diodeWatts);
    const caseDegC = mounted.airDegC + moduleWatts * (mounted.caseToSink + mounted.sinkToAir);
    return {
      switchWatts,
      diodeWatts,
      moduleWatts,
      caseDegC,
      switchDegC: caseDegC + switchWatts * mounted.switchToCase,
      diodeDegC: caseDegC + diodeWatts * mounted.diodeToCase,
    };
  });
}
