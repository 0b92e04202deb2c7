/**
 * One moment after another of a power circuit, by backward Euler. Junctions are straight pieces, so that the matrix is inverted
 * once for each set of conducting ones; the load is taken in by one rank-one correction (Sherman and Morrison 1950).
 */
import { invertConductances } from "./inverse.ts";
import type { PowerCircuit, SourceBranch } from "./power-circuit.ts";

/** What keeps a net from hanging on nothing, and a blocking junction's leak, siemens. */
const LEAK_SIEMENS = 1e-8;
const BLOCKING_SIEMENS = 1e-9;
/** A junction that conducts goes on to this much below its drop: one without current would chatter on rounding. */
const STICKS_VOLTS = 1e-4;
/** A set of conducting junctions is found within this many tries, or the last one is taken. */
const MOST_TRIES = 40;

export class Stepper {
  readonly circuit: PowerCircuit;
  readonly seconds: number;
  /** potentials of the nets, volts */
  volts: Float64Array;
  /** ohms of each resistor as they are now */
  readonly ohms: Float64Array;
  /** 1 where a junction conducts, then 1 where a source is at its limit */
  readonly #on: Uint8Array;
  readonly #inverses = new Map<string, Float64Array>();
  /** the inverse for what conducts now; null after a change */
  #now: Float64Array | null = null;
  readonly #rhs: Float64Array;
  readonly #column: Float64Array;

  constructor(circuit: PowerCircuit, seconds: number) {
    this.circuit = circuit;
    this.seconds = seconds;
    this.volts = new Float64Array(circuit.nets);
    this.#rhs = new Float64Array(circuit.nets);
    this.#column = new Float64Array(circuit.nets);
    this.ohms = Float64Array.from(circuit.resistors, (one) => one.ohms);
    this.#on = new Uint8Array(circuit.diodes.length + circuit.sources.length);
  }

  /** Changes the ohms of a resistor; what was inverted before no longer holds. */
  setOhms(index: number, ohms: number): void {
    if (this.ohms[index] === ohms) return;
    this.ohms[index] = ohms;
    this.#inverses.clear();
    this.#now = null;
  }

  across(branch: { readonly from: number; readonly to: number }): number {
    return this.#at(branch.from) - this.#at(branch.to);
  }

  #at(net: number): number {
    return net < 0 ? 0 : this.volts[net];
  }

  conducts(diode: number): boolean {
    return this.#on[diode] === 1;
  }

  atLimit(source: number): boolean {
    return this.#on[this.circuit.diodes.length + source] === 1;
  }

  /** Volts of the source before its ohms. */
  static behind(source: SourceBranch, angle: number): number {
    return source.offsetVolts + source.peakVolts * Math.sin(angle + source.radians);
  }

  /** Amps that a source gives now. */
  given(index: number, angle: number): number {
    const source = this.circuit.sources[index];
    if (this.atLimit(index)) return source.limitAmps ?? 0;
    return (Stepper.behind(source, angle) - this.across(source)) / source.ohms;
  }

  /** Goes one step on; `before` are the capacitors' volts at its start, `angle` that of the mains at its end. */
  step(before: Float64Array, angle: number): void {
    for (let tries = 0; tries < MOST_TRIES; tries++) {
      this.#solve(before, angle);
      if (!this.#switchOver(angle)) return;
    }
  }

  #solve(before: Float64Array, angle: number): void {
    const size = this.circuit.nets;
    this.#now ??= this.#inverse();
    const inverse = this.#now;
    const rhs = this.#injected(before, angle);
    const volts = this.volts;
    const loadBefore = this.#loadVolts();
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let j = 0, at = i * size; j < size; j++) sum += inverse[at + j] * rhs[j];
      volts[i] = sum;
    }
    this.#takeLoad(inverse, loadBefore);
  }

  /** Amps into each net from what is known: capacitors, drops of conducting junctions, sources. */
  #injected(before: Float64Array, angle: number): Float64Array {
    const { capacitors, diodes, sources } = this.circuit;
    const rhs = this.#rhs.fill(0);
    const inject = (from: number, to: number, amps: number): void => {
      if (from >= 0) rhs[from] += amps;
      if (to >= 0) rhs[to] -= amps;
    };
    for (let i = 0; i < capacitors.length; i++) {
      const one = capacitors[i];
      inject(one.from, one.to, (one.farads / this.seconds) * before[i]);
    }
    for (let i = 0; i < diodes.length; i++) {
      if (this.#on[i] === 0) continue;
      const one = diodes[i];
      inject(one.from, one.to, one.dropVolts / one.ohms);
    }
    for (let i = 0; i < sources.length; i++) {
      const one = sources[i];
      inject(
        one.from,
        one.to,
        this.atLimit(i) ? (one.limitAmps ?? 0) : Stepper.behind(one, angle) / one.ohms,
      );
    }
    return rhs;
  }

  #loadVolts(): number {
    return this.circuit.load === null ? 0 : this.across(this.circuit.load);
  }

  /** The load as the siemens it has at the volts before, put in by a rank-one correction. */
  #takeLoad(inverse: Float64Array, loadVolts: number): void {
    const { load, nets: size } = this.circuit;
    if (load === null || load.watts <= 0) return;
    const siemens = load.watts / Math.max(loadVolts, load.leastVolts) ** 2;
    const column = this.#column;
    for (let i = 0; i < size; i++)
      column[i] =
        (load.from < 0 ? 0 : inverse[i * size + load.from]) - (load.to < 0 ? 0 : inverse[i * size + load.to]);
    const own = (load.from < 0 ? 0 : column[load.from]) - (load.to < 0 ? 0 : column[load.to]);
    const amps = (siemens * this.across(load)) / (1 + siemens * own);
    for (let i = 0; i < size; i++) this.volts[i] -= amps * column[i];
  }

  /** Turns over what contradicts its state; false where nothing does. */
  #switchOver(angle: number): boolean {
    const { diodes, sources } = this.circuit;
    let changed = false;
    for (let i = 0; i < diodes.length; i++)
      if (this.#set(i, this.across(diodes[i]) > diodes[i].dropVolts - (this.#on[i] === 1 ? STICKS_VOLTS : 0)))
        changed = true;
    for (let i = 0; i < sources.length; i++) {
      const one = sources[i];
      if (one.limitAmps === null) continue;
      const free = (Stepper.behind(one, angle) - this.across(one)) / one.ohms;
      if (this.#set(diodes.length + i, free > one.limitAmps)) changed = true;
    }
    return changed;
  }

  #set(at: number, on: boolean): boolean {
    if ((this.#on[at] === 1) === on) return false;
    this.#on[at] = on ? 1 : 0;
    this.#now = null;
    return true;
  }

  #inverse(): Float64Array {
    const key = this.#on.join("");
    const known = this.#inverses.get(key);
    if (known !== undefined) return known;
    const size = this.circuit.nets;
    const matrix = new Float64Array(size * size);
    const stamp = (from: number, to: number, siemens: number): void => {
      if (from >= 0) matrix[from * size + from] += siemens;
      if (to >= 0) matrix[to * size + to] += siemens;
      if (from < 0 || to < 0) return;
      matrix[from * size + to] -= siemens;
      matrix[to * size + from] -= siemens;
    };
    for (let net = 0; net < size; net++) matrix[net * size + net] += LEAK_SIEMENS;
    this.circuit.resistors.forEach((one, i) => {
      stamp(one.from, one.to, 1 / this.ohms[i]);
    });
    this.circuit.diodes.forEach((one, i) => {
      stamp(one.from, one.to, this.#on[i] === 1 ? 1 / one.ohms : BLOCKING_SIEMENS);
    });
    this.circuit.capacitors.forEach((one) => {
      stamp(one.from, one.to, one.farads / this.seconds);
    });
    this.circuit.sources.forEach((one, i) => {
      if (!this.atLimit(i)) stamp(one.from, one.to, 1 / one.ohms);
    });
    invertConductances(size, matrix);
    this.#inverses.set(key, matrix);
    return matrix;
  }
}
