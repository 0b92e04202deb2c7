/**
 * The branches that conduct with given values, packed one behind the other for the loops of a solve: the reference is the net
 * behind the last, a transistor is two junctions beside its gains. Most faults leave most numbers alone, so the first values of a
 * netlist (those of the healthy board) are packed once and kept.
 */
import { bareFrame, type PairSlots, stampPair } from "./frame.ts";
import { criticalVolts } from "./junction.ts";
import { NET_LEAK_SIEMENS, type Netlist, type Values } from "./netlist.ts";

interface Pack {
  /** the array of values packed here */
  of: Float64Array | null;
}

export interface LiveResistors extends Pack {
  /** those between two nets */
  count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly siemens: Float64Array;
  /** what joins each net to the reference, its leak included */
  readonly toReference: Float64Array;
  mostSiemens: number;
  /** the matrix of these alone, leaks of the nets included */
  readonly stamped: Float64Array;
}

export interface LiveJunctions extends Pack {
  /** diodes between two nets come first, then those at the reference, then two junctions for every transistor */
  paired: number;
  diodes: number;
  count: number;
  /** where each stands in `Settled.junctionAmps` */
  readonly place: Int32Array;
  /** anode and cathode; a transistor's base and emitter or collector, turned round for PNP */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly saturation: Float64Array;
  /** n kT/q, and one over it */
  readonly emissionVolts: Float64Array;
  readonly perVolt: Float64Array;
  readonly critical: Float64Array;
  /** four slots for each diode between two nets */
  readonly slots: PairSlots;
  /** for each diode at the reference, from `paired` on: its net, and 1 where that is the anode, else -1 */
  readonly net: Int32Array;
  readonly sign: Float64Array;
  /** index of each transistor */
  readonly transistors: Int32Array;
  transistorCount: number;
}

/** What is packed of a netlist: the values seen first, and those seen last. */
interface Packed {
  readonly resistors: readonly [LiveResistors, LiveResistors];
  readonly junctions: readonly [LiveJunctions, LiveJunctions];
}

const packs = new WeakMap<Netlist, Packed>();

function packsOf(netlist: Netlist): Packed {
  const known = packs.get(netlist);
  if (known !== undefined) return known;
  const { entries } = bareFrame(netlist).plan;
  const made: Packed = {
    resistors: [roomForResistors(netlist, entries), roomForResistors(netlist, entries)],
    junctions: [roomForJunctions(netlist), roomForJunctions(netlist)],
  };
  packs.set(netlist, made);
  return made;
}

function roomForResistors({ resistors, nets }: Netlist, entries: number): LiveResistors {
  const most = resistors.from.length;
  return {
    of: null,
    count: 0,
    from: new Int32Array(most),
    to: new Int32Array(most),
    siemens: new Float64Array(most),
    toReference: new Float64Array(nets),
    mostSiemens: 0,
    stamped: new Float64Array(entries + 1),
  };
}

function roomForJunctions({ junctions, bjts }: Netlist): LiveJunctions {
  const diodes = junctions.from.length;
  const most = diodes + 2 * bjts.base.length;
  return {
    of: null,
    paired: 0,
    diodes: 0,
    count: 0,
    place: new Int32Array(most),
    from: new Int32Array(most),
    to: new Int32Array(most),
    saturation: new Float64Array(most),
    emissionVolts: new Float64Array(most),
    perVolt: new Float64Array(most),
    critical: new Float64Array(most),
    slots: new Int32Array(4 * diodes),
    net: new Int32Array(diodes),
    sign: new Float64Array(diodes),
    transistors: new Int32Array(bjts.base.length),
    transistorCount: 0,
  };
}

/** The pack that holds `values`, or the one to put them in. */
function packFor<T extends Pack>([first, last]: readonly [T, T], values: Float64Array): T {
  return first.of === values || first.of === null ? first : last;
}

/** The resistors of `values`, good until others are asked for. An array of values that was packed must not change any more. */
export function liveResistors(netlist: Netlist, { siemens }: Values): LiveResistors {
  const pack = packFor(packsOf(netlist).resistors, siemens);
  if (pack.of !== siemens) packResistors(netlist, siemens, pack);
  return pack;
}

/** The junctions of `values`, under the same conditions. */
export function liveJunctions(netlist: Netlist, values: Values): LiveJunctions {
  const pack = packFor(packsOf(netlist).junctions, values.saturation);
  if (pack.of !== values.saturation) packJunctions(netlist, values, pack);
  return pack;
}

function packResistors(netlist: Netlist, values: Float64Array, live: LiveResistors): void {
  const { nets } = netlist;
  const ends = netlist.resistors;
  const { from, to, siemens, toReference, stamped } = live;
  const slots = bareFrame(netlist).resistors;
  toReference.fill(NET_LEAK_SIEMENS);
  stamped.fill(0);
  let count = 0;
  let mostSiemens = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    if (value === 0) continue;
    if (value > mostSiemens) mostSiemens = value;
    const a = ends.from[i];
    const b = ends.to[i];
    if (a === b) continue;
    if (a < 0 || b < 0) {
      toReference[a < 0 ? b : a] += value;
      continue;
    }
    from[count] = a;
    to[count] = b;
    siemens[count++] = value;
    stampPair(stamped, slots, 4 * i, value);
  }
  for (let net = 0; net < nets; net++) stamped[net] += toReference[net];
  live.count = count;
  live.mostSiemens = mostSiemens;
  live.of = values;
}

function packJunctions(netlist: Netlist, values: Values, live: LiveJunctions): void {
  const { junctions, bjts } = netlist;
  const { saturation, bjtSaturation } = values;
  const slots = bareFrame(netlist).junctions;
  live.count = 0;
  for (let i = 0; i < saturation.length; i++) {
    if (saturation[i] === 0 || junctions.from[i] < 0 || junctions.to[i] < 0) continue;
    for (let corner = 0; corner < 4; corner++) live.slots[4 * live.count + corner] = slots[4 * i + corner];
    addDiode(netlist, values, live, i);
  }
  live.paired = live.count;
  for (let i = 0; i < saturation.length; i++) {
    const from = junctions.from[i];
    const to = junctions.to[i];
    if (saturation[i] === 0 || from < 0 === to < 0) continue;
    live.net[live.count] = from < 0 ? to : from;
    live.sign[live.count] = from < 0 ? -1 : 1;
    addDiode(netlist, values, live, i);
  }
  live.diodes = live.count;
  live.transistorCount = 0;
  for (let i = 0; i < bjtSaturation.length; i++) {
    const amps = bjtSaturation[i];
    if (amps === 0) continue;
    live.transistors[live.transistorCount++] = i;
    const limit = criticalVolts(amps, bjts.emissionVolts);
    for (const [which, end] of [bjts.emitter[i], bjts.collector[i]].entries()) {
      const [from, to] = bjts.sign[i] > 0 ? [bjts.base[i], end] : [end, bjts.base[i]];
      addLaw(netlist, live, saturation.length + 2 * i + which, from, to, amps, bjts.emissionVolts, limit);
    }
  }
  live.of = saturation;
}

function addDiode(netlist: Netlist, { saturation, critical }: Values, live: LiveJunctions, i: number): void {
  const { from, to, emissionVolts } = netlist.junctions;
  addLaw(netlist, live, i, from[i], to[i], saturation[i], emissionVolts[i], critical[i]);
}

function addLaw(
  { nets }: Netlist,
  live: LiveJunctions,
  place: number,
  from: number,
  to: number,
  saturation: number,
  emissionVolts: number,
  critical: number,
): void {
  const at = live.count++;
  live.place[at] = place;
  live.from[at] = from < 0 ? nets : from;
  live.to[at] = to < 0 ? nets : to;
  live.saturation[at] = saturation;
  live.emissionVolts[at] = emissionVolts;
  live.perVolt[at] = 1 / emissionVolts;
  live.critical[at] = critical;
}
