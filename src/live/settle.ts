/** A power circuit run until one cycle is like the one before, and what that last cycle was. */
import { solveDense } from "../numeric/dense-lu.ts";
import type { PowerCircuit, SelfHeating } from "./power-circuit.ts";
import { Stepper } from "./stepper.ts";

/** What one cycle came to. */
export interface Totals {
  /** mean volts of each net against the circuit's reference */
  readonly meanVolts: Float64Array;
  /** mean watts turned to heat in each resistor and each junction */
  readonly resistorWatts: Float64Array;
  readonly diodeWatts: Float64Array;
  /** root mean square of what each resistor carries, amps */
  readonly resistorAmps: Float64Array;
  /** root mean square of what each source gives, and its mean, amps */
  readonly sourceAmps: Float64Array;
  readonly sourceMeanAmps: Float64Array;
  /** share of the cycle that each source spent at its limit */
  readonly limited: Float64Array;
  /** ohms at the end, those that heat themselves where that took them */
  readonly ohms: Float64Array;
  /** of each capacitor at the end, volts */
  readonly endVolts: Float64Array;
  readonly settled: boolean;
}

/** The same with its waveforms: volts at evenly spaced moments, each net against the circuit's reference. */
export interface Cycle extends Totals {
  readonly waves: readonly Float64Array[];
}

export interface Settling {
  /** seconds of one cycle: of the mains, or a stretch of direct current */
  readonly cycleSeconds: number;
  readonly steps: number;
  readonly mostCycles: number;
  /** volts of the capacitors at the start; absent: empty */
  readonly startVolts?: Float64Array;
  /** ohms of the resistors at the start; absent: cold */
  readonly startOhms?: Float64Array;
  /** leaves what is slow to warm as it is: the first moments after switch-on */
  readonly cold?: boolean;
}

/** Settled where no capacitor has more than this share of the largest, or these volts, still to go, and no ohms this share. */
const SETTLED = { share: 1e-4, volts: 2e-3, ohms: 2e-3 } as const;
/** What takes longer than so many cycles to come about is not waited for: some seconds of mains. */
const WAITED_CYCLES = 200;
/** Under a load that draws its watts whatever the volts, no farther at once than so many of the last cycle's change. */
const LONGEST_LEAP = 9;

/** A resistor that heats itself, the watts it took in the cycle that runs, and where the last one left it. */
interface Heater {
  readonly index: number;
  readonly heats: SelfHeating;
  watts: number;
  /** logarithm of its ohms before the last change, and how far its watts then asked for more; null at first */
  last: { readonly log: number; readonly gap: number } | null;
}

/** Steps a cycle while the settled state is only looked for: a cycle of these costs a fifth of one that is shown. */
const COARSE_STEPS = 64;

/** Runs `circuit` from empty (or given) capacitors until its cycles repeat: first in coarse steps, then in those asked for. */
export function settle(circuit: PowerCircuit, settling: Settling): Cycle {
  return roughly(circuit, settling).shown();
}

/** A settled state in coarse steps, and the same in those asked for, worked out when first asked for. */
export interface Rough {
  readonly cycle: Totals;
  shown(): Cycle;
}

/** The settled state in coarse steps: enough for what gives way and for mean volts within a few thousandths. */
export function roughly(circuit: PowerCircuit, settling: Settling): Rough {
  const steps = Math.min(COARSE_STEPS, settling.steps);
  const stepper = new Stepper(circuit, settling.cycleSeconds / steps);
  settling.startOhms?.forEach((ohms, i) => {
    if (circuit.resistors[i].heats !== undefined) stepper.setOhms(i, ohms);
  });
  const held =
    settling.startVolts === undefined
      ? new Float64Array(stepper.stores)
      : stepper.gather(settling.startVolts);
  const settled = approach(stepper, held, steps, settling);
  const start = Float64Array.from(held);
  const cycle = { ...shownCycle(stepper, held, steps, null), settled };
  let shown: Cycle | null = null;
  return {
    cycle,
    shown: () => {
      if (shown !== null) return shown;
      const fine = stepper.inSteps(settling.cycleSeconds / settling.steps);
      const finely = approach(fine, start, settling.steps, settling);
      const waves = Array.from({ length: circuit.nets }, () => new Float64Array(settling.steps));
      shown = { ...shownCycle(fine, start, settling.steps, waves), waves, settled: finely };
      return shown;
    },
  };
}

/**
 * Moves `held` and the ohms of what heats itself to where a cycle leaves them as they were, by Newton's method: each cycle also
 * tells how its end follows its start (shooting, Aprille and Trick 1972). False where the most cycles did not get there.
 */
function approach(
  stepper: Stepper,
  held: Float64Array,
  steps: number,
  { mostCycles, cold }: Settling,
): boolean {
  const { circuit } = stepper;
  const heaters: Heater[] = circuit.resistors.flatMap(({ heats }, index) =>
    heats === undefined || (cold === true && heats.slow) ? [] : [{ index, heats, watts: 0, last: null }],
  );
  const loaded = circuit.load !== null && circuit.load.watts > 0;
  const end = new Float64Array(held.length);
  for (let count = 1; count <= mostCycles; count++) {
    end.set(held);
    followedCycle(stepper, end, steps, heaters);
    const toGo = leap(held, end, stepper.slopes, loaded);
    let most = 0;
    for (const volts of end) most = Math.max(most, Math.abs(volts));
    const near = SETTLED.share * most + SETTLED.volts;
    let settled = toGo.every((volts) => Math.abs(volts) <= near);
    for (let i = 0; i < held.length; i++) held[i] += toGo[i];
    for (const heater of heaters) if (Math.abs(heatUp(stepper, heater)) > SETTLED.ohms) settled = false;
    if (settled) return true;
  }
  return false;
}

/** One cycle of which only the heaters' watts and the slopes are kept. */
function followedCycle(
  stepper: Stepper,
  held: Float64Array,
  steps: number,
  heaters: readonly Heater[],
): void {
  for (const heater of heaters) heater.watts = 0;
  stepper.startSlopes();
  for (let k = 0; k < steps; k++) {
    stepper.step(held, (2 * Math.PI * (k + 1)) / steps);
    stepper.carrySlopes();
    for (const heater of heaters)
      heater.watts += stepper.acrossHeater(heater.index) ** 2 / stepper.ohms[heater.index] / steps;
  }
}

/**
 * From the volts at a cycle's start to where it would repeat, straight on by its slopes. With a load of steady watts there may be
 * two such states, and slopes over 1 lead away from both: then, and where the leap is long, the change itself is followed.
 */
function leap(start: Float64Array, end: Float64Array, slopes: Float64Array, loaded: boolean): Float64Array {
  const count = start.length;
  const change = end.map((volts, i) => volts - start[i]);
  const matrix = slopes.map((slope, at) => (at % (count + 1) === 0 ? 1 + 1 / WAITED_CYCLES : 0) - slope);
  const straight = Float64Array.from(change);
  if (!solveDense(count, matrix, straight)) return change;
  if (!loaded) return straight;
  const size = (volts: Float64Array) => volts.reduce((sum, one) => Math.max(sum, Math.abs(one)), 0);
  const along = straight.reduce((sum, volts, i) => sum + volts * change[i], 0);
  if (along > 0 && size(straight) <= LONGEST_LEAP * size(change)) return straight;
  return change.map((volts) => LONGEST_LEAP * volts);
}

/** The least and the most that a heater's gap may fall for what its ohms have grown, both as logarithms, to be believed. */
const BELIEVED_FALL = { least: 0.15, most: 1.5 } as const;

/** Moves a self-heating resistor towards the ohms that its watts give it; by how much, as a logarithm. */
function heatUp(stepper: Stepper, heater: Heater): number {
  const { index, heats, watts, last } = heater;
  const log = Math.log(stepper.ohms[index]);
  const gap = Math.log(heats.ohmsAt(watts)) - log;
  const fall = last === null || log === last.log ? 0 : (last.gap - gap) / (log - last.log);
  const plain = 1 + heats.steepness;
  const believed = fall > BELIEVED_FALL.least && fall < BELIEVED_FALL.most * plain;
  const change = gap / (believed ? fall : plain);
  heater.last = { log, gap };
  stepper.setOhms(index, Math.exp(log + change));
  return change;
}

/** One cycle from the volts `held`, which are moved on to its end, with all that it shows but its waves: those go to `waves`. */
function shownCycle(
  stepper: Stepper,
  held: Float64Array,
  steps: number,
  waves: readonly Float64Array[] | null,
): Omit<Totals, "settled"> {
  const { resistors, diodes, sources, nets } = stepper.circuit;
  const count = resistors.length;
  const totals = {
    meanVolts: new Float64Array(nets),
    resistorWatts: new Float64Array(count),
    resistorAmps: new Float64Array(count),
    diodeWatts: new Float64Array(diodes.length),
    sourceAmps: new Float64Array(sources.length),
    sourceMeanAmps: new Float64Array(sources.length),
    limited: new Float64Array(sources.length),
  };
  const { meanVolts, resistorWatts, diodeWatts, sourceAmps, sourceMeanAmps, limited } = totals;
  for (let k = 0; k < steps; k++) {
    const angle = (2 * Math.PI * (k + 1)) / steps;
    stepper.step(held, angle);
    const { volts: now } = stepper;
    if (waves !== null) for (let net = 0; net < nets; net++) waves[net][k] = now[net];
    for (let net = 0; net < nets; net++) meanVolts[net] += now[net];
    for (let i = 0; i < count; i++) resistorWatts[i] += stepper.across(resistors[i]) ** 2;
    for (let i = 0; i < diodes.length; i++) {
      if (!stepper.conducts(i)) continue;
      const volts = stepper.across(diodes[i]);
      diodeWatts[i] += (volts * (volts - diodes[i].dropVolts)) / diodes[i].ohms;
    }
    for (let i = 0; i < sources.length; i++) {
      const amps = stepper.given(i, angle);
      sourceAmps[i] += amps * amps;
      sourceMeanAmps[i] += amps;
      if (stepper.atLimit(i)) limited[i]++;
    }
  }
  for (const sums of Object.values(totals)) for (let i = 0; i < sums.length; i++) sums[i] /= steps;
  for (let i = 0; i < count; i++) {
    resistorWatts[i] /= stepper.ohms[i];
    totals.resistorAmps[i] = Math.sqrt(resistorWatts[i] / stepper.ohms[i]);
  }
  for (let i = 0; i < sources.length; i++) sourceAmps[i] = Math.sqrt(sourceAmps[i]);
  return { ...totals, ohms: Float64Array.from(stepper.ohms), endVolts: stepper.scatter(held) };
}
