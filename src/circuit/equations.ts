/**
 * Kirchhoff's current law at every net, linearised: the currents that leave each net at the present voltages, and how they
 * change with the voltages. Each junction has a point of its own law where it is linearised, mostly the voltage between its nets;
 * `junction-points.ts` says where else.
 */
import { factor } from "../numeric/sparse-lu.ts";
import { type Frame, stampPair } from "./frame.ts";
import { JUNCTION_LEAK_SIEMENS } from "./junction.ts";
import { JunctionPoints } from "./junction-points.ts";
import {
  type LiveJunctions,
  type LiveResistors,
  liveJunctions,
  liveResistors,
  type Packed,
  roomForPacks,
} from "./live.ts";
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

/** The arrays a solve writes over, kept with the netlist because making them costs as much as a solve. */
interface Workspace {
  matrix: Float64Array;
  readonly leaving: Float64Array;
  readonly change: Float64Array;
  readonly points: JunctionPoints;
  readonly packed: Packed;
  /** what `matrix` and `points` were left at by the last solve; null: anything */
  settled: { readonly problem: Problem; readonly volts: Float64Array; factors: Factors } | null;
}

/** Whether the matrix holds the factors of the answer itself, of a point near it, or none. */
type Factors = "own" | "near" | "none";

const workspaces = new WeakMap<Netlist, Workspace>();

/** The workspace of a netlist: for one solve at a time. */
function workspaceOf({ netlist, frame }: Problem): Workspace {
  let workspace = workspaces.get(netlist);
  if (workspace === undefined) {
    workspace = {
      matrix: new Float64Array(frame.plan.entries + 1),
      leaving: new Float64Array(netlist.nets + 1),
      change: new Float64Array(netlist.nets + 1),
      points: new JunctionPoints(netlist.junctions.from.length + 2 * netlist.bjts.base.length),
      packed: roomForPacks(netlist),
      settled: null,
    };
    workspaces.set(netlist, workspace);
  }
  // Room to spare: each pair of probes has its own few entries more.
  if (workspace.matrix.length <= frame.plan.entries) {
    workspace.matrix = new Float64Array(Math.ceil(1.25 * frame.plan.entries) + 1);
    workspace.settled = null;
  }
  return workspace;
}

/** The largest conductance that a capacitor of a time step stands for. */
function mostOf(companions: Companions | null): number {
  let most = 0;
  for (const siemens of companions?.siemens ?? []) if (siemens > most) most = siemens;
  return most;
}

export class Equations {
  readonly problem: Problem;
  /** conductances between nets as the plan's slots have them; its factors after `factorIn` */
  readonly matrix: Float64Array;
  /** amps that leave each net */
  readonly leaving: Float64Array;
  /** one step, in volts per net */
  readonly change: Float64Array;
  readonly points: JunctionPoints;
  /** largest conductance of a linear branch: what rounding is measured against */
  readonly mostSiemens: number;
  /** conductance across every junction, and the share of the source that is on */
  gmin: number = JUNCTION_LEAK_SIEMENS;
  ramp = 1;
  readonly #workspace: Workspace;
  readonly #resistors: LiveResistors;
  readonly #junctions: LiveJunctions;

  /** Writes over what the last equations of the same netlist left: one at a time. */
  constructor(problem: Problem) {
    const { netlist, values } = problem;
    const workspace = workspaceOf(problem);
    this.problem = problem;
    this.#workspace = workspace;
    this.matrix = workspace.matrix;
    this.leaving = workspace.leaving;
    this.change = workspace.change;
    this.points = workspace.points;
    this.#resistors = liveResistors(workspace.packed, netlist, values);
    this.#junctions = liveJunctions(workspace.packed, netlist, values);
    this.mostSiemens = Math.max(
      this.#resistors.mostSiemens,
      problem.source.siemens,
      mostOf(problem.companions),
    );
  }

  /** Linearises every junction at the voltage between its nets. */
  startAt(volts: Float64Array): void {
    this.#workspace.settled = null;
    this.points.startAt(this.#junctions, volts);
  }

  /** Fills `leaving` at `volts`, junctions along their tangents. */
  currents(volts: Float64Array): void {
    this.#linearAmps(volts);
    this.#junctionAmps(volts);
    if (this.#junctions.transistorCount > 0) this.#transistorAmps(volts);
  }

  /** Fills `leaving` at `volts` by the laws themselves: infinite where a junction would pass what no wire does. */
  amps(volts: Float64Array, near: Float64Array): void {
    this.startAt(near);
    this.points.judge(this.#junctions, volts, 1);
    this.points.follow(this.#junctions);
    this.currents(volts);
  }

  /** Fills `matrix` with the tangents' slopes. */
  stamp(): void {
    const { frame, values, source, companions } = this.problem;
    const { matrix, gmin } = this;
    const { stamped } = this.#resistors;
    this.#workspace.settled = null;
    matrix.set(stamped);
    matrix.fill(0, stamped.length, frame.plan.entries + 1);
    stampPair(matrix, frame.extra, 0, source.siemens);
    for (let i = 0; i < values.extra.length; i++)
      stampPair(matrix, frame.extra, 4 * (i + 1), values.extra[i].siemens);
    if (companions !== null)
      for (let i = 0; i < companions.siemens.length; i++)
        stampPair(matrix, frame.capacitors, 4 * i, companions.siemens[i]);
    const { paired, diodes, slots, net, transistors, transistorCount } = this.#junctions;
    const { slope } = this.points;
    for (let j = 0; j < paired; j++) {
      const siemens = slope[j] + gmin;
      const at = 4 * j;
      matrix[slots[at]] += siemens;
      matrix[slots[at + 1]] += siemens;
      matrix[slots[at + 2]] -= siemens;
      matrix[slots[at + 3]] -= siemens;
    }
    for (let j = paired; j < diodes; j++) matrix[net[j]] += slope[j] + gmin;
    for (let t = 0; t < transistorCount; t++)
      this.#stampTransistor(transistors[t], slope[diodes + 2 * t] + gmin, slope[diodes + 2 * t + 1] + gmin);
  }

  /** Factors `matrix`; false where it is singular. */
  factorIn(): boolean {
    return factor(this.problem.frame.plan, this.matrix);
  }

  /** Remembers that the settled `volts` stand in the workspace, for whoever goes on from there before the netlist's next solve. */
  settledAt(volts: Float64Array, factors: Factors): void {
    this.#workspace.settled = { problem: this.problem, volts, factors };
  }

  /**
   * Starts at a solution of a circuit that differs at most in what drives it, where that stands in the workspace with its factors:
   * a point of a sweep from the one before. False where it does not.
   */
  resumeAt(volts: Float64Array): boolean {
    const { settled } = this.#workspace;
    if (settled === null || settled.volts !== volts || settled.factors === "none") return false;
    const { values, frame, source, companions } = settled.problem;
    const { problem } = this;
    const same =
      values === problem.values && frame === problem.frame && source.siemens === problem.source.siemens;
    if (!same || companions !== null || problem.companions !== null) return false;
    this.#workspace.settled = null;
    return true;
  }

  /** The factors at a solution; null where the matrix is singular. Good until the next solve of the netlist. */
  factoredAt(volts: Float64Array): Float64Array | null {
    const { settled } = this.#workspace;
    const known = settled?.problem === this.problem && settled.volts === volts;
    if (known && settled.factors === "own") return this.matrix;
    if (!known) this.startAt(volts);
    this.stamp();
    if (!this.factorIn()) return null;
    this.settledAt(volts, "own");
    return this.matrix;
  }

  /** The junctions that conduct, in the order of their points. */
  get junctions(): LiveJunctions {
    return this.#junctions;
  }

  /**
   * What leaves each net through everything linear, branch by branch: the sum of a row times the voltages would lose, in the
   * rounding of a large conductance, the current of a net that floats.
   */
  #linearAmps(volts: Float64Array): void {
    const { netlist, values, source, companions } = this.problem;
    const { leaving } = this;
    const ground = netlist.nets;
    const { count, from, to, siemens, toReference } = this.#resistors;
    for (let net = 0; net < ground; net++) leaving[net] = toReference[net] * volts[net];
    leaving[ground] = 0;
    for (let k = 0; k < count; k++) {
      const a = from[k];
      const b = to[k];
      const amps = siemens[k] * (volts[a] - volts[b]);
      leaving[a] += amps;
      leaving[b] -= amps;
    }
    for (let i = 0; i < values.extra.length; i++) {
      const one = values.extra[i];
      this.#branch(volts, one.from, one.to, one.siemens, 0);
    }
    this.#branch(volts, source.plus, source.minus, source.siemens, this.ramp * source.amps);
    if (companions === null) return;
    const { capacitors } = netlist;
    for (let i = 0; i < capacitors.from.length; i++)
      if (companions.siemens[i] !== 0)
        this.#branch(volts, capacitors.from[i], capacitors.to[i], companions.siemens[i], companions.amps[i]);
  }

  /** A conductance with a current put in against it. */
  #branch(volts: Float64Array, from: number, to: number, siemens: number, less: number): void {
    const ground = this.problem.netlist.nets;
    const a = from < 0 ? ground : from;
    const b = to < 0 ? ground : to;
    const amps = siemens * (volts[a] - volts[b]) - less;
    this.leaving[a] += amps;
    this.leaving[b] -= amps;
  }

  #junctionAmps(volts: Float64Array): void {
    const { leaving, gmin } = this;
    const { paired, diodes, from, to, net, sign } = this.#junctions;
    const { at, amps, slope } = this.points;
    for (let j = 0; j < paired; j++) {
      const a = from[j];
      const b = to[j];
      const here = volts[a] - volts[b];
      const through = amps[j] + slope[j] * (here - at[j]) + gmin * here;
      leaving[a] += through;
      leaving[b] -= through;
    }
    for (let j = paired; j < diodes; j++) {
      const here = sign[j] * volts[net[j]];
      leaving[net[j]] += sign[j] * (amps[j] + slope[j] * (here - at[j]) + gmin * here);
    }
  }

  /** Ebers-Moll, transport form: the collector takes the difference of two junction currents, the base the gains' share. */
  #transistorAmps(volts: Float64Array): void {
    const { leaving } = this;
    const { base, collector, emitter, sign, forwardGain, reverseGain } = this.problem.netlist.bjts;
    const ground = this.problem.netlist.nets;
    const { diodes, transistors, transistorCount } = this.#junctions;
    for (let t = 0; t < transistorCount; t++) {
      const i = transistors[t];
      const iE = this.#tangent(volts, diodes + 2 * t);
      const iC = this.#tangent(volts, diodes + 2 * t + 1);
      const collectorAmps = sign[i] * (iE - iC - iC / reverseGain);
      const baseAmps = sign[i] * (iE / forwardGain + iC / reverseGain);
      leaving[collector[i] < 0 ? ground : collector[i]] += collectorAmps;
      leaving[base[i] < 0 ? ground : base[i]] += baseAmps;
      leaving[emitter[i] < 0 ? ground : emitter[i]] -= collectorAmps + baseAmps;
    }
  }

  #tangent(volts: Float64Array, j: number): number {
    const { from, to } = this.#junctions;
    const { at, amps, slope } = this.points;
    const here = volts[from[j]] - volts[to[j]];
    return amps[j] + slope[j] * (here - at[j]) + this.gmin * here;
  }

  #stampTransistor(i: number, gE: number, gC: number): void {
    const { matrix } = this;
    const { bjts: slots } = this.problem.frame;
    const { forwardGain, reverseGain } = this.problem.netlist.bjts;
    const at = 9 * i;
    const cC = gC * (1 + 1 / reverseGain);
    const bE = gE / forwardGain;
    const bC = gC / reverseGain;
    matrix[slots[at]] += bE + bC;
    matrix[slots[at + 1]] -= bC;
    matrix[slots[at + 2]] -= bE;
    matrix[slots[at + 3]] += gE - cC;
    matrix[slots[at + 4]] += cC;
    matrix[slots[at + 5]] -= gE;
    matrix[slots[at + 6]] -= gE - cC + bE + bC;
    matrix[slots[at + 7]] -= cC - bC;
    matrix[slots[at + 8]] += gE + bE;
  }

  /** The worst net and the current that Kirchhoff's law misses there, in amps. */
  worst(): { readonly net: number; readonly amps: number } {
    let net = 0;
    let amps = 0;
    for (let i = 0; i < this.problem.netlist.nets; i++) {
      const size = Math.abs(this.leaving[i]);
      if (!(size <= amps)) {
        amps = size;
        net = i;
      }
    }
    return { net, amps };
  }
}
