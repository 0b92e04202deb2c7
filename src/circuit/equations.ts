/**
 * Kirchhoff's current law at every net, linearised: the currents that leave each net at the present voltages, and how they
 * change with the voltages. Reference voltage is 0; index -1 writes to a place that nobody reads.
 */
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
  readonly leaving: Float64Array;
  readonly junctionVolts: Float64Array;
  readonly bjtVolts: Float64Array;
}

function newWorkspace({ netlist, frame }: Problem): Workspace {
  return {
    matrix: new Float64Array(frame.plan.entries + 1),
    leaving: new Float64Array(netlist.nets + 1),
    junctionVolts: new Float64Array(netlist.junctions.from.length),
    bjtVolts: new Float64Array(2 * netlist.bjts.base.length),
  };
}

const workspaces = new WeakMap<Frame, Workspace>();

/** The workspace of a frame: for one solve at a time. */
export function workspaceOf(problem: Problem): Workspace {
  const known = workspaces.get(problem.frame);
  if (known !== undefined) return known;
  const made = newWorkspace(problem);
  workspaces.set(problem.frame, made);
  return made;
}

/** Voltages of nets (one more place, for the reference, kept at 0) and of junctions as last used. */
export class Equations {
  readonly problem: Problem;
  readonly matrix: Float64Array;
  readonly leaving: Float64Array;
  readonly junctionVolts: Float64Array;
  readonly bjtVolts: Float64Array;
  /** was any junction voltage held back in the last `evaluate`? */
  limited = false;
  /** largest conductance stamped: what rounding is measured against */
  readonly mostSiemens: number;

  /** `workspace` is written over; give none where the matrix is to outlive the next solve. */
  constructor(problem: Problem, workspace: Workspace = newWorkspace(problem)) {
    this.problem = problem;
    this.matrix = workspace.matrix;
    this.leaving = workspace.leaving;
    this.junctionVolts = workspace.junctionVolts;
    this.bjtVolts = workspace.bjtVolts;
    let most = problem.source.siemens;
    const { siemens } = problem.values;
    for (let i = 0; i < siemens.length; i++) if (siemens[i] > most) most = siemens[i];
    this.mostSiemens = most;
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
    const { netlist, frame, values, source, companions } = this.problem;
    const { matrix, leaving } = this;
    matrix.fill(0);
    leaving.fill(0);
    this.limited = false;
    for (let net = 0; net < netlist.nets; net++) {
      matrix[net] = NET_LEAK_SIEMENS;
      leaving[net] = NET_LEAK_SIEMENS * volts[net];
    }
    const { from, to } = netlist.resistors;
    for (let i = 0; i < from.length; i++) {
      const siemens = values.siemens[i];
      if (siemens !== 0)
        this.#stamp(
          from[i],
          to[i],
          frame.resistors,
          4 * i,
          siemens,
          siemens * this.#across(volts, from[i], to[i]),
        );
    }
    for (let i = 0; i < values.extra.length; i++) {
      const one = values.extra[i];
      this.#stamp(
        one.from,
        one.to,
        frame.extra,
        4 * (i + 1),
        one.siemens,
        one.siemens * this.#across(volts, one.from, one.to),
      );
    }
    const meterAmps = source.siemens * this.#across(volts, source.plus, source.minus) - ramp * source.amps;
    this.#stamp(source.plus, source.minus, frame.extra, 0, source.siemens, meterAmps);
    this.#junctions(volts, gmin);
    if (netlist.bjts.base.length > 0) this.#bjts(volts, gmin);
    if (companions !== null) this.#companions(volts, companions);
  }

  #across(volts: Float64Array, from: number, to: number): number {
    const ground = this.problem.netlist.nets;
    return volts[from < 0 ? ground : from] - volts[to < 0 ? ground : to];
  }

  #stamp(from: number, to: number, slots: PairSlots, at: number, siemens: number, amps: number): void {
    const { matrix, leaving } = this;
    const ground = this.problem.netlist.nets;
    matrix[slots[at]] += siemens;
    matrix[slots[at + 1]] += siemens;
    matrix[slots[at + 2]] -= siemens;
    matrix[slots[at + 3]] -= siemens;
    leaving[from < 0 ? ground : from] += amps;
    leaving[to < 0 ? ground : to] -= amps;
  }

  #companions(volts: Float64Array, companions: Companions): void {
    const { netlist, frame } = this.problem;
    const { from, to } = netlist.capacitors;
    for (let i = 0; i < from.length; i++) {
      const siemens = companions.siemens[i];
      if (siemens === 0) continue;
      const amps = siemens * this.#across(volts, from[i], to[i]) - companions.amps[i];
      this.#stamp(from[i], to[i], frame.capacitors, 4 * i, siemens, amps);
    }
  }

  #junctions(volts: Float64Array, gmin: number): void {
    const { netlist, frame, values } = this.problem;
    const { from, to, emissionVolts } = netlist.junctions;
    for (let i = 0; i < from.length; i++) {
      const saturation = values.saturation[i];
      if (saturation === 0) continue;
      const wanted = this.#across(volts, from[i], to[i]);
      const held = limitJunction(wanted, this.junctionVolts[i], emissionVolts[i], values.critical[i]);
      if (Math.abs(held - wanted) > 1e-9) this.limited = true;
      this.junctionVolts[i] = held;
      let siemens: number;
      let amps: number;
      if (held >= -3 * emissionVolts[i]) {
        // The law of `junction.ts` with its exponential taken once: here the time of a solve goes.
        const grown = saturation * Math.exp(held / emissionVolts[i]);
        siemens = grown / emissionVolts[i] + gmin;
        amps = grown - saturation + gmin * held;
      } else {
        siemens = junctionSiemens(saturation, emissionVolts[i], held) + gmin;
        amps = junctionAmps(saturation, emissionVolts[i], held) + gmin * held;
      }
      this.#stamp(from[i], to[i], frame.junctions, 4 * i, siemens, amps + siemens * (wanted - held));
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
