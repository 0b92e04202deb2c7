/** A power circuit run until one cycle is like the one before, and what that last cycle was. */
import type { PowerCircuit, SelfHeating } from "./power-circuit.ts";
import { Stepper } from "./stepper.ts";

/** What one cycle showed. Waveforms are volts at evenly spaced moments, each net against the circuit's reference. */
export interface Cycle {
  readonly waves: readonly Float64Array[];
  /** mean watts turned to heat in each resistor and each junction */
  readonly resistorWatts: Float64Array;
  readonly diodeWatts: Float64Array;
  /** root mean square of what each resistor carries, and its largest moment, amps */
  readonly resistorAmps: Float64Array;
  readonly peakAmps: Float64Array;
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
const SETTLED = { share: 5e-4, volts: 4e-3, ohms: 3e-3 } as const;
/** Changes from cycle to cycle in this ratio are carried to their limit (Aitken 1926), no farther than so many of the last. */
const CARRIED = { least: 0.05, most: 0.96, longest: 0.995 } as const;

/** A resistor that heats itself, and the watts it took in the cycle that runs. */
interface Heater {
  readonly index: number;
  readonly heats: SelfHeating;
  watts: number;
}

/** Steps a cycle while the settled state is only looked for: a cycle of these costs a third of one that is shown. */
const COARSE_STEPS = 64;

/** Runs `circuit` from empty (or given) capacitors until its cycles repeat: first in coarse steps, then in those asked for. */
export function settle(circuit: PowerCircuit, settling: Settling): Cycle {
  const coarse = approach(circuit, settling, Math.min(COARSE_STEPS, settling.steps), {
    volts: settling.startVolts,
    ohms: settling.startOhms,
  });
  const fine = approach(circuit, settling, settling.steps, {
    volts: coarse.held,
    ohms: coarse.stepper.ohms,
  });
  const cycle = shownCycle(fine.stepper, fine.held, settling.steps);
  return { ...cycle, settled: fine.settled };
}

interface Approach {
  readonly stepper: Stepper;
  readonly held: Float64Array;
  readonly settled: boolean;
}

function approach(
  circuit: PowerCircuit,
  { cycleSeconds, mostCycles, cold }: Settling,
  steps: number,
  start: { readonly volts: Float64Array | undefined; readonly ohms: Float64Array | undefined },
): Approach {
  const stepper = new Stepper(circuit, cycleSeconds / steps);
  const held = new Float64Array(circuit.capacitors.length);
  if (start.volts !== undefined) held.set(start.volts);
  start.ohms?.forEach((ohms, i) => {
    stepper.setOhms(i, ohms);
  });
  const heaters: Heater[] = circuit.resistors.flatMap(({ heats }, index) =>
    heats === undefined || (cold === true && heats.slow) ? [] : [{ index, heats, watts: 0 }],
  );
  let states: Float64Array[] = [];
  for (let count = 1; ; count++) {
    plainCycle(stepper, held, steps, heaters);
    for (const { index, heats, watts } of heaters) heatUp(stepper, index, heats, watts);
    states.push(Float64Array.from([...held, ...heaters.map(({ index }) => Math.log(stepper.ohms[index]))]));
    const settled = hasSettled(states, held.length);
    if (settled || count >= mostCycles) return { stepper, held, settled };
    if (states.length < 4) continue;
    const limit = carriedOn(states);
    held.set(limit.subarray(0, held.length));
    heaters.forEach(({ index }, i) => {
      stepper.setOhms(index, Math.exp(limit[held.length + i]));
    });
    states = [];
  }
}

/** One cycle of which only the heaters' watts are kept. */
function plainCycle(stepper: Stepper, held: Float64Array, steps: number, heaters: readonly Heater[]): void {
  const { capacitors, resistors } = stepper.circuit;
  for (const heater of heaters) heater.watts = 0;
  for (let k = 0; k < steps; k++) {
    stepper.step(held, (2 * Math.PI * (k + 1)) / steps);
    for (let i = 0; i < capacitors.length; i++) held[i] = stepper.across(capacitors[i]);
    for (const heater of heaters)
      heater.watts += stepper.across(resistors[heater.index]) ** 2 / stepper.ohms[heater.index] / steps;
  }
}

/** Moves a self-heating resistor to the ohms that its watts give it. */
function heatUp(stepper: Stepper, index: number, heats: SelfHeating, watts: number): void {
  const now = stepper.ohms[index];
  const change = Math.log(heats.ohmsAt(watts) / now) / (1 + heats.steepness);
  stepper.setOhms(index, now * Math.exp(change));
}

/** Has each number of the state come to where it goes? The first `capacitors` are volts, the rest logarithms of ohms. */
function hasSettled(states: readonly Float64Array[], capacitors: number): boolean {
  if (states.length < 3) return false;
  const [a, b, c] = states.slice(-3);
  const most = c.subarray(0, capacitors).reduce((sum, volts) => Math.max(sum, Math.abs(volts)), 0);
  return c.every((value, i) => {
    const second = Math.abs(value - b[i]);
    const ratio = Math.min(second / Math.max(Math.abs(b[i] - a[i]), 1e-12), CARRIED.longest);
    const toGo = second / (1 - ratio);
    return toGo <= (i < capacitors ? SETTLED.share * most + SETTLED.volts : SETTLED.ohms);
  });
}

/** Where the last three states of a run would carry it in the end, number by number. */
function carriedOn(states: readonly Float64Array[]): Float64Array {
  const [a, b, c] = states.slice(-3);
  return c.map((value, i) => {
    const first = b[i] - a[i];
    const second = value - b[i];
    const ratio = second / first;
    if (!(ratio > CARRIED.least)) return value;
    const carried = Math.min(ratio, CARRIED.most);
    return value + (second * carried) / (1 - carried);
  });
}

/** One cycle from the volts `held` by the capacitors, which are moved on to its end, with all that it shows. */
function shownCycle(stepper: Stepper, held: Float64Array, steps: number): Omit<Cycle, "settled"> {
  const { circuit } = stepper;
  const waves = Array.from({ length: circuit.nets }, () => new Float64Array(steps));
  const count = circuit.resistors.length;
  const resistorWatts = new Float64Array(count);
  const resistorAmps = new Float64Array(count);
  const peakAmps = new Float64Array(count);
  const diodeWatts = new Float64Array(circuit.diodes.length);
  const sourceAmps = new Float64Array(circuit.sources.length);
  const sourceMeanAmps = new Float64Array(circuit.sources.length);
  const limited = new Float64Array(circuit.sources.length);
  for (let k = 0; k < steps; k++) {
    const angle = (2 * Math.PI * (k + 1)) / steps;
    stepper.step(held, angle);
    for (let net = 0; net < circuit.nets; net++) waves[net][k] = stepper.volts[net];
    for (let i = 0; i < count; i++) {
      const amps = stepper.across(circuit.resistors[i]) / stepper.ohms[i];
      resistorWatts[i] += (amps * amps * stepper.ohms[i]) / steps;
      peakAmps[i] = Math.max(peakAmps[i], Math.abs(amps));
    }
    circuit.diodes.forEach((one, i) => {
      const volts = stepper.across(one);
      if (stepper.conducts(i)) diodeWatts[i] += (volts * (volts - one.dropVolts)) / one.ohms / steps;
    });
    circuit.sources.forEach((_, i) => {
      const amps = stepper.given(i, angle);
      sourceAmps[i] += (amps * amps) / steps;
      sourceMeanAmps[i] += amps / steps;
      if (stepper.atLimit(i)) limited[i] += 1 / steps;
    });
    circuit.capacitors.forEach((one, i) => {
      held[i] = stepper.across(one);
    });
  }
  for (let i = 0; i < count; i++) resistorAmps[i] = Math.sqrt(resistorWatts[i] / stepper.ohms[i]);
  const roots = sourceAmps.map(Math.sqrt);
  return {
    waves,
    resistorWatts,
    diodeWatts,
    resistorAmps,
    peakAmps,
    sourceAmps: roots,
    sourceMeanAmps,
    limited,
    ohms: Float64Array.from(stepper.ohms),
    endVolts: Float64Array.from(held),
  };
}
