/**
 * The branches that conduct with given values, packed one behind the other for the loops of a solve: the reference is the net
 * behind the last, a transistor is two junctions beside its gains. Most faults leave most numbers alone, so the first values of a
 * netlist (those of the healthy board) are packed once and kept.
 */
import { bareFrame, type PairSlots, stampPair } from "./frame.ts";
import { criticalVolts } from "./junction.ts";
import { NET_LEAK_SIEMENS, type Netlist, type Values } from "./netlist.ts";

export interface LiveResistors {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly siemens: Float64Array;
  readonly mostSiemens: number;
  /** the matrix of these alone, leaks of the nets included */
  readonly stamped: Float64Array;
}

export interface LiveJunctions {
  /** diodes come first, then two for every transistor: base to emitter, base to collector (turned round for PNP) */
  readonly diodes: number;
  readonly count: number;
  /** where each stands in `Solved.junctionAmps` */
  readonly place: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly saturation: Float64Array;
  /** n kT/q */
  readonly emissionVolts: Float64Array;
  readonly critical: Float64Array;
  /** four slots for each diode */
  readonly slots: PairSlots;
  /** indexes of the transistors */
  readonly transistors: Int32Array;
}

interface Packed {
  resistors: { readonly of: Float64Array; readonly live: LiveResistors } | null;
  lastResistors: Packed["resistors"];
  junctions: { readonly of: Float64Array; readonly live: LiveJunctions } | null;
  lastJunctions: Packed["junctions"];
}

const packedOf = new WeakMap<Netlist, Packed>();

function packed(netlist: Netlist): Packed {
  const known = packedOf.get(netlist);
  if (known !== undefined) return known;
  const made = { resistors: null, lastResistors: null, junctions: null, lastJunctions: null };
  packedOf.set(netlist, made);
  return made;
}

/** The resistors of `values`; an array of values that was packed once must not change any more. */
export function liveResistors(netlist: Netlist, values: Values): LiveResistors {
  const kept = packed(netlist);
  const of = values.siemens;
  if (kept.resistors?.of === of) return kept.resistors.live;
  if (kept.lastResistors?.of === of) return kept.lastResistors.live;
  kept.lastResistors = { of, live: packResistors(netlist, of) };
  kept.resistors ??= kept.lastResistors;
  return kept.lastResistors.live;
}

/** The junctions of `values`, under the same condition. */
export function liveJunctions(netlist: Netlist, values: Values): LiveJunctions {
  const kept = packed(netlist);
  const of = values.saturation;
  if (kept.junctions?.of === of) return kept.junctions.live;
  if (kept.lastJunctions?.of === of) return kept.lastJunctions.live;
  kept.lastJunctions = { of, live: packJunctions(netlist, values) };
  kept.junctions ??= kept.lastJunctions;
  return kept.lastJunctions.live;
}

function packResistors(netlist: Netlist, values: Float64Array): LiveResistors {
  const { nets, resistors } = netlist;
  const frame = bareFrame(netlist);
  const from = new Int32Array(values.length);
  const to = new Int32Array(values.length);
  const siemens = new Float64Array(values.length);
  const stamped = new Float64Array(frame.plan.entries + 1);
  for (let net = 0; net < nets; net++) stamped[net] = NET_LEAK_SIEMENS;
  let count = 0;
  let mostSiemens = 0;
  for (let i = 0; i < values.length; i++) {
    if (values[i] === 0) continue;
    from[count] = resistors.from[i] < 0 ? nets : resistors.from[i];
    to[count] = resistors.to[i] < 0 ? nets : resistors.to[i];
    siemens[count++] = values[i];
    if (values[i] > mostSiemens) mostSiemens = values[i];
    stampPair(stamped, frame.resistors, 4 * i, values[i]);
  }
  return { count, from, to, siemens, mostSiemens, stamped };
}

function packJunctions(netlist: Netlist, { saturation, critical, bjtSaturation }: Values): LiveJunctions {
  const { nets, junctions, bjts } = netlist;
  const frame = bareFrame(netlist);
  const most = saturation.length + 2 * bjtSaturation.length;
  const live = {
    place: new Int32Array(most),
    from: new Int32Array(most),
    to: new Int32Array(most),
    saturation: new Float64Array(most),
    emissionVolts: new Float64Array(most),
    critical: new Float64Array(most),
    slots: new Int32Array(4 * saturation.length),
  };
  let count = 0;
  const add = (place: number, from: number, to: number, amps: number, bend: number, limit: number): void => {
    live.place[count] = place;
    live.from[count] = from < 0 ? nets : from;
    live.to[count] = to < 0 ? nets : to;
    live.saturation[count] = amps;
    live.emissionVolts[count] = bend;
    live.critical[count++] = limit;
  };
  for (let i = 0; i < saturation.length; i++) {
    if (saturation[i] === 0) continue;
    for (let corner = 0; corner < 4; corner++)
      live.slots[4 * count + corner] = frame.junctions[4 * i + corner];
    add(i, junctions.from[i], junctions.to[i], saturation[i], junctions.emissionVolts[i], critical[i]);
  }
  const diodes = count;
  const transistors: number[] = [];
  for (let i = 0; i < bjtSaturation.length; i++) {
    const amps = bjtSaturation[i];
    if (amps === 0) continue;
    transistors.push(i);
    const limit = criticalVolts(amps, bjts.emissionVolts);
    [bjts.emitter[i], bjts.collector[i]].forEach((end, which) => {
      const [from, to] = bjts.sign[i] > 0 ? [bjts.base[i], end] : [end, bjts.base[i]];
      add(saturation.length + 2 * i + which, from, to, amps, bjts.emissionVolts, limit);
    });
  }
  return { ...live, diodes, count, transistors: Int32Array.from(transistors) };
}
