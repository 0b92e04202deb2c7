/**
 * Kirchhoff's current law at every net, linearised: the currents that leave each net at the present voltages, and how they
 * change with the voltages. Each junction has a point of its own law where it is linearised, mostly the voltage between its nets;
 * `junction-points.ts` says where else.
 */
import { factor, MATRIX, matrixMark, putMatrix, VECTOR } from "../numeric/sparse-lu.ts";
import { DESK, layOut } from "./desk.ts";
import { type Frame, stampPair } from "./frame.ts";
import { JUNCTION_LEAK_SIEMENS } from "./junction.ts";
import { follow, type Judgement, judge, startAt } from "./junction-points.ts";
import { diodeAmps, resistorAmps, stampDiodes, worstNet } from "./kirchhoff.ts";
import { type LiveJunctions, type LiveResistors, liveJunctions, liveResistors } from "./live.ts";
import type { Netlist, Values } from "./netlist.ts";

/** A source between two nets in Norton form: `amps` into the net `plus` and out of `minus`, `siemens` across. */
export interface NortonSource {
  readonly plus: number;
  readonly minus: number;
  readonly amps: number;
  readonly siemens: number;
}

/** Capacitors as backward Euler sees them in one step: C/h, and the current that remembers the last voltage. */
export interface Companions {
  readonly siemens: Float64Array;
  readonly amps: Float64Array;
}

export interface Problem {
  readonly netlist: Netlist;
  readonly frame: Frame;
  readonly values: Values;
  readonly source: NortonSource;
  readonly companions: Companions | null;
}

/** The solution that the desk was left at by the last solve; null: anything. */
let settled: {
  readonly problem: Problem;
  readonly volts: Float64Array;
  /** the mark of the matrix that holds its factors; null: none does */
  readonly factors: number | null;
} | null = null;

/** The largest conductance that a capacitor of a time step stands for. */
function mostOf(companions: Companions | null): number {
  let most = 0;
  for (const siemens of companions?.siemens ?? []) if (siemens > most) most = siemens;
  return most;
}

/** The equations of one problem, laid out on the desk (`desk.ts`): one at a time, the last made. */
export class Equations {
  readonly problem: Problem;
  readonly junctions: LiveJunctions;
  /** largest conductance of a linear branch: what rounding is measured against */
  readonly mostSiemens: number;
  /** conductance across every junction, and the share of the source that is on */
  gmin: number = JUNCTION_LEAK_SIEMENS;
  ramp = 1;
  readonly judgement: Judgement = { error: 0, missing: 0, farthest: 0 };
  readonly #resistors: LiveResistors;

  constructor(problem: Problem) {
    const { netlist, values, source, companions } = problem;
    this.problem = problem;
    this.#resistors = liveResistors(netlist, values);
    this.junctions = liveJunctions(netlist, values);
    this.mostSiemens = Math.max(this.#resistors.mostSiemens, source.siemens, mostOf(companions));
    layOut(netlist.nets, this.#resistors, this.junctions);
  }

  /** Linearises every junction at the voltage between its nets. `volts` must not change any more. */
  startAt(volts: Float64Array): void {
    const stands =
      settled !== null && settled.volts === volts && settled.problem.values === this.problem.values;
    settled = null;
    if (!stands) startAt(this.junctions, volts);
    DESK.netVolts.set(volts);
  }

  /** Fills the vector with what leaves each net at the voltages in hand, junctions along their tangents. */
  currents(): void {
    this.#linearAmps();
    diodeAmps(this.junctions.paired, this.junctions.diodes, this.gmin);
    if (this.junctions.transistorCount > 0) this.#transistorAmps();
  }

  /** The same by the laws themselves: infinite where a junction would pass what no wire does. `near` is a solution mostly there. */
  amps(volts: Float64Array, near: Float64Array): void {
    this.startAt(near);
    DESK.netVolts.set(volts);
    judge(this.junctions, 1, this.judgement);
    follow(this.junctions);
    this.currents();
  }

  /** Fills the matrix with the slopes of everything. */
  stamp(): void {
    const { frame, values, source, companions } = this.problem;
    const { gmin } = this;
    settled = null;
    putMatrix(frame.plan, this.#resistors.stamped);
    stampPair(MATRIX, frame.extra, 0, source.siemens);
    for (let i = 0; i < values.extra.length; i++)
      stampPair(MATRIX, frame.extra, 4 * (i + 1), values.extra[i].siemens);
    if (companions !== null)
      for (let i = 0; i < companions.siemens.length; i++)
        stampPair(MATRIX, frame.capacitors, 4 * i, companions.siemens[i]);
    const { paired, diodes, transistors, transistorCount } = this.junctions;
    stampDiodes(paired, diodes, gmin);
    const { slope } = DESK;
    for (let t = 0; t < transistorCount; t++)
      this.#stampTransistor(transistors[t], slope[diodes + 2 * t] + gmin, slope[diodes + 2 * t + 1] + gmin);
  }

  /** Remembers that the solution `volts` stands on the desk, for whoever goes on from there before the next solve. */
  settledAt(volts: Float64Array, factored: boolean): void {
    settled = { problem: this.problem, volts, factors: factored ? matrixMark() : null };
  }

  /** Puts the factors at a solution into the matrix; false where it is singular. */
  factorAt(volts: Float64Array): boolean {
    const known = settled !== null && settled.problem === this.problem && settled.volts === volts;
    if (known && settled?.factors === matrixMark()) return true;
    this.startAt(volts);
    this.stamp();
    if (!factor(this.problem.frame.plan)) return false;
    this.settledAt(volts, true);
    return true;
  }

  /**
   * What leaves each net through everything linear, branch by branch: the sum of a row times the voltages would lose, in the
   * rounding of a large conductance, the current of a net that floats.
   */
  #linearAmps(): void {
    const { netlist, values, source, companions } = this.problem;
    const ground = netlist.nets;
    resistorAmps(ground, this.#resistors.count);
    for (let i = 0; i < values.extra.length; i++) {
      const one = values.extra[i];
      branch(ground, one.from, one.to, one.siemens, 0);
    }
    branch(ground, source.plus, source.minus, source.siemens, this.ramp * source.amps);
    if (companions === null) return;
    const { from, to } = netlist.capacitors;
    for (let i = 0; i < from.length; i++)
      if (companions.siemens[i] !== 0)
        branch(ground, from[i], to[i], companions.siemens[i], companions.amps[i]);
  }

  /** Ebers-Moll, transport form: the collector takes the difference of two junction currents, the base the gains' share. */
  #transistorAmps(): void {
    const { base, collector, emitter, sign, forwardGain, reverseGain } = this.problem.netlist.bjts;
    const ground = this.problem.netlist.nets;
    const { diodes, transistors, transistorCount } = this.junctions;
    for (let t = 0; t < transistorCount; t++) {
      const i = transistors[t];
      const iE = this.#tangent(diodes + 2 * t);
      const iC = this.#tangent(diodes + 2 * t + 1);
      const collectorAmps = sign[i] * (iE - iC - iC / reverseGain);
      const baseAmps = sign[i] * (iE / forwardGain + iC / reverseGain);
      VECTOR[collector[i] < 0 ? ground : collector[i]] += collectorAmps;
      VECTOR[base[i] < 0 ? ground : base[i]] += baseAmps;
      VECTOR[emitter[i] < 0 ? ground : emitter[i]] -= collectorAmps + baseAmps;
    }
  }

  #tangent(j: number): number {
    const { netVolts, anode, cathode, at, amps, slope } = DESK;
    const here = netVolts[anode[j]] - netVolts[cathode[j]];
    return amps[j] + slope[j] * (here - at[j]) + this.gmin * here;
  }

  #stampTransistor(i: number, gE: number, gC: number): void {
    const { bjts: slots } = this.problem.frame;
    const { forwardGain, reverseGain } = this.problem.netlist.bjts;
    const at = 9 * i;
    const cC = gC * (1 + 1 / reverseGain);
    const bE = gE / forwardGain;
    const bC = gC / reverseGain;
    MATRIX[slots[at]] += bE + bC;
    MATRIX[slots[at + 1]] -= bC;
    MATRIX[slots[at + 2]] -= bE;
    MATRIX[slots[at + 3]] += gE - cC;
    MATRIX[slots[at + 4]] += cC;
    MATRIX[slots[at + 5]] -= gE;
    MATRIX[slots[at + 6]] -= gE - cC + bE + bC;
    MATRIX[slots[at + 7]] -= cC - bC;
    MATRIX[slots[at + 8]] += gE + bE;
  }

  /** The worst net and the current that Kirchhoff's law misses there, in amps, as `currents` left it. */
  worst(): { readonly net: number; readonly amps: number } {
    return worstNet(this.problem.netlist.nets);
  }
}

/** A conductance with a current put in against it. */
function branch(ground: number, from: number, to: number, siemens: number, less: number): void {
  const a = from < 0 ? ground : from;
  const b = to < 0 ? ground : to;
  const amps = siemens * (DESK.netVolts[a] - DESK.netVolts[b]) - less;
  VECTOR[a] += amps;
  VECTOR[b] -= amps;
}
