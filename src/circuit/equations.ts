/**
 * Kirchhoff's current law at every net, linearised: the currents that leave each net at the present voltages, and how they
 * change with the voltages. Reference voltage is 0; index -1 writes to a place that nobody reads.
 */
import { factor } from "../numeric/sparse-lu.ts";
import type { Frame, PairSlots } from "./frame.ts";
import { JUNCTION_LEAK_SIEMENS, junctionAmps, junctionSiemens, limitJunction } from "./junction.ts";
import { NET_LEAK_SIEMENS, type Netlist, type Values } from "./netlist.ts";

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

/** The arrays a solve writes over, kept with the frame because making them costs as much as a solve. */
export interface Workspace {
  readonly matrix: Float64Array;
  /** what does not change with the voltages: resistors, leaks, meter, capacitors of a step */
  readonly linear: Float64Array;
  /** indexes of the resistors that conduct with the values last seen, how many there are, and the largest conductance */
  readonly live: Int32Array;
  liveOf: Values | null;
  liveCount: number;
  mostSiemens: number;
  readonly leaving: Float64Array;
  /** one Newton step, in volts per net */
  readonly change: Float64Array;
  readonly junctionVolts: Float64Array;
  readonly bjtVolts: Float64Array;
  /** the problem and its solution that `matrix` stands evaluated at, and whether it has been factored since; null: something else */
  matrixOf: { readonly problem: Problem; readonly volts: Float64Array } | null;
  factored: boolean;
}

function newWorkspace({ netlist, frame }: Problem): Workspace {
  return {
    matrix: new Float64Array(frame.plan.entries + 1),
    linear: new Float64Array(frame.plan.entries + 1),
    live: new Int32Array(netlist.resistors.from.length),
    liveOf: null,
    liveCount: 0,
    mostSiemens: 0,
    leaving: new Float64Array(netlist.nets + 1),
    change: new Float64Array(netlist.nets + 1),
    junctionVolts: new Float64Array(netlist.junctions.from.length),
    bjtVolts: new Float64Array(2 * netlist.bjts.base.length),
    matrixOf: null,
    factored: false,
  };
}

const workspaces = new WeakMap<Frame, Workspace>();

/** The workspace of a frame: for one solve at a time. */
function workspaceOf(problem: Problem): Workspace {
  const known = workspaces.get(problem.frame);
  if (known !== undefined) return known;
  const made = newWorkspace(problem);
  workspaces.set(problem.frame, made);
  return made;
}

function findLive(workspace: Workspace, values: Values): void {
  const { siemens } = values;
  workspace.liveOf = values;
  workspace.liveCount = 0;
  workspace.mostSiemens = 0;
  for (let i = 0; i < siemens.length; i++) {
    if (siemens[i] === 0) continue;
    workspace.live[workspace.liveCount++] = i;
    if (siemens[i] > workspace.mostSiemens) workspace.mostSiemens = siemens[i];
  }
}

/** The largest conductance that a capacitor of a time step stands for. */
function mostOf(companions: Companions | null): number {
  let most = 0;
  for (const siemens of companions?.siemens ?? []) if (siemens > most) most = siemens;
  return most;
}

/** Voltages of nets (one more place, for the reference, kept at 0) and of junctions as last used. */
export class Equations {
  readonly problem: Problem;
  readonly matrix: Float64Array;
  readonly leaving: Float64Array;
  readonly change: Float64Array;
  readonly junctionVolts: Float64Array;
  readonly bjtVolts: Float64Array;
  /** was any junction voltage held back in the last `evaluate`? */
  limited = false;
  /** largest conductance stamped: what rounding is measured against */
  readonly mostSiemens: number;
  readonly #workspace: Workspace;
  readonly #linear: Float64Array;
  readonly #live: Int32Array;
  readonly #liveCount: number;
  #stamped = false;

  /** Writes over what the last equations of the same frame left: one at a time. */
  constructor(problem: Problem) {
    const workspace = workspaceOf(problem);
    this.problem = problem;
    this.#workspace = workspace;
    this.matrix = workspace.matrix;
    this.leaving = workspace.leaving;
    this.change = workspace.change;
    this.junctionVolts = workspace.junctionVolts;
    this.bjtVolts = workspace.bjtVolts;
    this.#linear = workspace.linear;
    this.#live = workspace.live;
    if (workspace.liveOf !== problem.values) findLive(workspace, problem.values);
    this.#liveCount = workspace.liveCount;
    this.mostSiemens = Math.max(workspace.mostSiemens, problem.source.siemens, mostOf(problem.companions));
  }

  /** The part of the matrix that every iteration starts from. */
  #stampLinear(): void {
    const { netlist, frame, values, source, companions } = this.problem;
    const linear = this.#linear;
    this.#stamped = true;
    linear.fill(0);
    for (let net = 0; net < netlist.nets; net++) linear[net] = NET_LEAK_SIEMENS;
    for (let k = 0; k < this.#liveCount; k++)
      stampPair(linear, frame.resistors, 4 * this.#live[k], values.siemens[this.#live[k]]);
    for (let i = 0; i < values.extra.length; i++)
      stampPair(linear, frame.extra, 4 * (i + 1), values.extra[i].siemens);
    stampPair(linear, frame.extra, 0, source.siemens);
    if (companions !== null)
      for (let i = 0; i < companions.siemens.length; i++)
        stampPair(linear, frame.capacitors, 4 * i, companions.siemens[i]);
  }

  /** Takes junction voltages straight from the nets, as a warm start does. */
  adopt(volts: Float64Array): void {
    const { junctions, bjts } = this.problem.netlist;
    const ground = this.problem.netlist.nets;
    const at = (net: number) => volts[net < 0 ? ground : net];
    for (let i = 0; i < junctions.from.length; i++)
      this.junctionVolts[i] = at(junctions.from[i]) - at(junctions.to[i]);
    for (let i = 0; i < bjts.base.length; i++) {
      this.bjtVolts[2 * i] = bjts.sign[i] * (at(bjts.base[i]) - at(bjts.emitter[i]));
      this.bjtVolts[2 * i + 1] = bjts.sign[i] * (at(bjts.base[i]) - at(bjts.collector[i]));
    }
  }

  /** Fills `leaving` and `matrix` at `volts`. `gmin` is the conductance across each junction, `ramp` scales the source. */
  evaluate(volts: Float64Array, gmin = JUNCTION_LEAK_SIEMENS, ramp = 1): void {
    const { netlist, companions } = this.problem;
    this.limited = false;
    this.#workspace.matrixOf = null;
    if (!this.#stamped) this.#stampLinear();
    this.matrix.set(this.#linear);
    this.#linearAmps(volts, ramp);
    this.#junctions(volts, gmin);
    if (netlist.bjts.base.length > 0) this.#bjts(volts, gmin);
    if (companions !== null) this.#companionAmps(volts, companions);
  }

  /** Remembers that `matrix` stands at the settled `volts`, for whoever linearises there before the frame's next solve. */
  settledAt(volts: Float64Array): void {
    this.#workspace.matrixOf = { problem: this.problem, volts };
    this.#workspace.factored = false;
  }

  /** The matrix at settled volts, factored; null where it is singular. Good until the next solve in this frame. */
  factoredAt(volts: Float64Array): Float64Array | null {
    const workspace = this.#workspace;
    const at = workspace.matrixOf;
    if (at === null || at.problem !== this.problem || at.volts !== volts) {
      this.adopt(volts);
      this.evaluate(volts);
      this.settledAt(volts);
    }
    if (workspace.factored) return this.matrix;
    if (!factor(this.problem.frame.plan, this.matrix)) {
      workspace.matrixOf = null;
      return null;
    }
    workspace.factored = true;
    return this.matrix;
  }

  /** Fills `leaving` alone at `volts`, no junction held back: infinite where one would pass what no wire does. */
  amps(volts: Float64Array): void {
    const { netlist, values, companions } = this.problem;
    this.#linearAmps(volts, 1);
    const { from, to, emissionVolts } = netlist.junctions;
    const { saturation } = values;
    for (let i = 0; i < from.length; i++) {
      if (saturation[i] === 0) continue;
      const here = this.#across(volts, from[i], to[i]);
      const amps = junctionAmps(saturation[i], emissionVolts[i], here) + JUNCTION_LEAK_SIEMENS * here;
      this.#leave(from[i], to[i], amps);
    }
    const { base, collector, emitter, sign, forwardGain, reverseGain } = netlist.bjts;
    for (let i = 0; i < base.length; i++) {
      if (values.bjtSaturation[i] === 0) continue;
      const amps = (end: number) => {
        const here = sign[i] * this.#across(volts, base[i], end);
        const law = junctionAmps(values.bjtSaturation[i], netlist.bjts.emissionVolts, here);
        return sign[i] * (law + JUNCTION_LEAK_SIEMENS * here);
      };
      const iE = amps(emitter[i]);
      const iC = amps(collector[i]);
      this.#leave(collector[i], emitter[i], iE - iC - iC / reverseGain);
      this.#leave(base[i], emitter[i], iE / forwardGain + iC / reverseGain);
    }
    if (companions !== null) this.#companionAmps(volts, companions);
  }

  /**
   * What leaves each net through everything linear, branch by branch: the sum of a row times the voltages would lose, in the
   * rounding of a large conductance, the current of a net that floats.
   */
  #linearAmps(volts: Float64Array, ramp: number): void {
    const { netlist, values, source } = this.problem;
    const { leaving } = this;
    const ground = netlist.nets;
    for (let net = 0; net < ground; net++) leaving[net] = NET_LEAK_SIEMENS * volts[net];
    leaving[ground] = 0;
    const live = this.#live;
    const { from, to } = netlist.resistors;
    const { siemens, extra } = values;
    for (let k = 0; k < this.#liveCount; k++) {
      const i = live[k];
      const a = from[i] < 0 ? ground : from[i];
      const b = to[i] < 0 ? ground : to[i];
      const amps = siemens[i] * (volts[a] - volts[b]);
      leaving[a] += amps;
      leaving[b] -= amps;
    }
    for (let i = 0; i < extra.length; i++) {
      const one = extra[i];
      this.#leave(one.from, one.to, one.siemens * this.#across(volts, one.from, one.to));
    }
    const meterAmps = source.siemens * this.#across(volts, source.plus, source.minus) - ramp * source.amps;
    this.#leave(source.plus, source.minus, meterAmps);
  }

  #across(volts: Float64Array, from: number, to: number): number {
    const ground = this.problem.netlist.nets;
    return volts[from < 0 ? ground : from] - volts[to < 0 ? ground : to];
  }

  #leave(from: number, to: number, amps: number): void {
    const ground = this.problem.netlist.nets;
    this.leaving[from < 0 ? ground : from] += amps;
    this.leaving[to < 0 ? ground : to] -= amps;
  }

  #companionAmps(volts: Float64Array, companions: Companions): void {
    const { from, to } = this.problem.netlist.capacitors;
    for (let i = 0; i < from.length; i++) {
      const siemens = companions.siemens[i];
      if (siemens === 0) continue;
      this.#leave(from[i], to[i], siemens * this.#across(volts, from[i], to[i]) - companions.amps[i]);
    }
  }

  #junctions(volts: Float64Array, gmin: number): void {
    const { netlist, frame, values } = this.problem;
    const { matrix, leaving, junctionVolts } = this;
    const { from, to, emissionVolts } = netlist.junctions;
    const { saturation: saturations, critical } = values;
    const slots = frame.junctions;
    const ground = netlist.nets;
    for (let i = 0; i < from.length; i++) {
      const saturation = saturations[i];
      if (saturation === 0) continue;
      const a = from[i] < 0 ? ground : from[i];
      const b = to[i] < 0 ? ground : to[i];
      const emission = emissionVolts[i];
      const wanted = volts[a] - volts[b];
      const held = limitJunction(wanted, junctionVolts[i], emission, critical[i]);
      if (Math.abs(held - wanted) > 1e-9) this.limited = true;
      junctionVolts[i] = held;
      let siemens: number;
      let amps: number;
      if (held >= -3 * emission) {
        // The law of `junction.ts` with its exponential taken once: here the time of a solve goes.
        const grown = saturation * Math.exp(held / emission);
        siemens = grown / emission + gmin;
        amps = grown - saturation + gmin * held;
      } else {
        siemens = junctionSiemens(saturation, emission, held) + gmin;
        amps = junctionAmps(saturation, emission, held) + gmin * held;
      }
      amps += siemens * (wanted - held);
      stampPair(matrix, slots, 4 * i, siemens);
      leaving[a] += amps;
      leaving[b] -= amps;
    }
  }

  /** Ebers-Moll, transport form: the collector takes the difference of two junction currents, the base the gains' share. */
  #bjts(volts: Float64Array, gmin: number): void {
    const { netlist, frame, values } = this.problem;
    const { base, collector, emitter, sign, forwardGain, reverseGain, emissionVolts } = netlist.bjts;
    const { matrix, leaving } = this;
    const ground = netlist.nets;
    for (let i = 0; i < base.length; i++) {
      const saturation = values.bjtSaturation[i];
      if (saturation === 0) continue;
      const wantedE = sign[i] * this.#across(volts, base[i], emitter[i]);
      const wantedC = sign[i] * this.#across(volts, base[i], collector[i]);
      const heldE = this.#hold(2 * i, wantedE, saturation);
      const heldC = this.#hold(2 * i + 1, wantedC, saturation);
      const gE = junctionSiemens(saturation, emissionVolts, heldE) + gmin;
      const gC = junctionSiemens(saturation, emissionVolts, heldC) + gmin;
      const iE = junctionAmps(saturation, emissionVolts, heldE) + gmin * heldE + gE * (wantedE - heldE);
      const iC = junctionAmps(saturation, emissionVolts, heldC) + gmin * heldC + gC * (wantedC - heldC);
      const collectorAmps = sign[i] * (iE - iC - iC / reverseGain);
      const baseAmps = sign[i] * (iE / forwardGain + iC / reverseGain);
      leaving[collector[i] < 0 ? ground : collector[i]] += collectorAmps;
      leaving[base[i] < 0 ? ground : base[i]] += baseAmps;
      leaving[emitter[i] < 0 ? ground : emitter[i]] -= collectorAmps + baseAmps;
      const at = 9 * i;
      const s = frame.bjts;
      const cC = gC * (1 + 1 / reverseGain);
      const bE = gE / forwardGain;
      const bC = gC / reverseGain;
      matrix[s[at]] += bE + bC;
      matrix[s[at + 1]] -= bC;
      matrix[s[at + 2]] -= bE;
      matrix[s[at + 3]] += gE - cC;
      matrix[s[at + 4]] += cC;
      matrix[s[at + 5]] -= gE;
      matrix[s[at + 6]] -= gE - cC + bE + bC;
      matrix[s[at + 7]] -= cC - bC;
      matrix[s[at + 8]] += gE + bE;
    }
  }

  #hold(at: number, wanted: number, saturation: number): number {
    const { emissionVolts } = this.problem.netlist.bjts;
    const critical = emissionVolts * Math.log(emissionVolts / (Math.SQRT2 * saturation));
    const held = limitJunction(wanted, this.bjtVolts[at], emissionVolts, critical);
    if (Math.abs(held - wanted) > 1e-9) this.limited = true;
    this.bjtVolts[at] = held;
    return held;
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

function stampPair(matrix: Float64Array, slots: PairSlots, at: number, siemens: number): void {
  matrix[slots[at]] += siemens;
  matrix[slots[at + 1]] += siemens;
  matrix[slots[at + 2]] -= siemens;
  matrix[slots[at + 3]] -= siemens;
}
