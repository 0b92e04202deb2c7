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

/** Settled where a cycle moves no capacitor by more than this share of the largest, or these volts, and no ohms by this share. */
const SETTLED = { share: 1e-4, volts: 2e-3, ohms: 1e-3 } as const;
/** Changes from cycle to cycle in this ratio are carried to their limit (Aitken 1926), no farther than so many of the last. */
const CARRIED = { least: 0.05, most: 0.9 } as const;

/** Runs `circuit` from empty (or given) capacitors until its cycles repeat. */
export function settle(circuit: PowerCircuit, settling: Settling): Cycle {
  const { cycleSeconds, steps, mostCycles } = settling;
  const stepper = new Stepper(circuit, cycleSeconds / steps);
  const held = new Float64Array(circuit.capacitors.length);
  if (settling.startVolts !== undefined) held.set(settling.startVolts);
  settling.startOhms?.forEach((ohms, i) => {
    stepper.setOhms(i, ohms);
  });
  const heating = circuit.resistors.flatMap((one, i) =>
    one.heats === undefined || (settling.cold === true && one.heats.slow) ? [] : [{ index: i, heats: one.heats }],
  );
  let states: Float64Array[] = [];
  for (let count = 1; ; count++) {
    const cycle = runCycle(stepper, held, steps);
    for (const { index, heats } of heating) heatUp(stepper, index, heats, cycle.resistorWatts[index]);
    states.push(
      Float64Array.from([...held, ...heating.map(({ index }) => Math.log(stepper.ohms[index]))]),
    );
    const still = likeBefore(states, held.length);
    if (still || count >= mostCycles) return { ...cycle, settled: still };
    if (states.length < 4) continue;
    const limit = carriedOn(states);
    held.set(limit.subarray(0, held.length));
    heating.forEach(({ index }, i) => {
      stepper.setOhms(index, Math.exp(limit[held.length + i]));
    });
    states = [];
  }
}

/** Moves a self-heating resistor to the ohms that its watts give it. */
function heatUp(stepper: Stepper, index: number, heats: SelfHeating, watts: number): void {
  const now = stepper.ohms[index];
  const change = Math.log(heats.ohmsAt(watts) / now) / (1 + heats.steepness);
  stepper.setOhms(index, now * Math.exp(change));
}

/** Is the last state like the one before? The first `capacitors` numbers are volts, the rest logarithms of ohms. */
function likeBefore(states: readonly Float64Array[], capacitors: number): boolean {
  const now = states.at(-1);
  const before = states.at(-2);
  if (now === undefined || before === undefined) return false;
  const most = now.subarray(0, capacitors).reduce((sum, volts) => Math.max(sum, Math.abs(volts)), 0);
  return now.every(
    (value, i) =>
      Math.abs(value - before[i]) <= (i < capacitors ? SETTLED.share * most + SETTLED.volts : SETTLED.ohms),
  );
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

/** One cycle from the volts `held` by the capacitors, which are moved on to its end. */
function runCycle(stepper: Stepper, held: Float64Array, steps: number): Omit<Cycle, "settled"> {
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
