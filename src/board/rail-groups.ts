/**
 * A rail as whoever looks for its short sees it: every part that lies straight across it, on whichever side of its links and beads, and
 * those links and beads, at which it can be cut.
 */
import type { Board, Part } from "./board.ts";
import type { Fault } from "./fault.ts";
import { supplyPin } from "./kinds.ts";
import { SHUNT_OHMS, throughPairs } from "./net-groups.ts";
import { deriveRoles } from "./roles.ts";

/** A part across a rail: the place inside it whose short would be the rail's, and its two pins. */
export interface RailMember {
  readonly part: Part;
  /** null where the part has one only */
  readonly junction: string | null;
  readonly plus: string;
  readonly minus: string;
  /** the net of the rail that it is soldered to */
  readonly net: string;
}

/** What a rail's current goes through between two of its nets: link, fuse, bead, small inductor, 0-ohm resistor. */
export interface RailCut {
  readonly part: Part;
  readonly nets: readonly [string, string];
  readonly ohms: number;
}

export interface RailGroup {
  readonly name: string;
  /** where it is made */
  readonly net: string;
  readonly back: string;
  readonly volts: number;
  readonly members: readonly RailMember[];
  readonly cuts: readonly RailCut[];
}

/** Ohms of a link, a bead or a fuse that names none (from memory). */
const CUT_OHMS = 0.02;
/** A rail is shorted, not loaded, below this (common practice: a controller's own supply reads some hundred ohms). */
export const RAIL_SHORT_OHMS = 120;

const CUTS: ReadonlySet<Part["kind"]> = new Set(["link", "fuse", "inductor", "resistor"]);
const TWO_PINS: ReadonlySet<Part["kind"]> = new Set([
  "capacitor",
  "zener",
  "diode",
  "varistor",
  "resistor",
  "led",
]);

function cutOf(part: Part): RailCut | null {
  if (!CUTS.has(part.kind)) return null;
  const ohms = part.value.ohms ?? (part.kind === "resistor" ? Number.POSITIVE_INFINITY : CUT_OHMS);
  const [nets] = throughPairs(part);
  return ohms > SHUNT_OHMS || nets === undefined ? null : { part, nets, ohms };
}

/** Pins of the one place of the part that a rail can find shorted, plus first; null where it has none. */
function supplyPlace(
  part: Part,
): { readonly junction: string | null; readonly pins: readonly [string, string] } | null {
  switch (part.kind) {
    case "controller":
    case "ic":
      return { junction: "supply", pins: [supplyPin(part.kind), "gnd"] };
    case "module":
      return { junction: "drive", pins: ["vcc", "com"] };
    case "regulator":
      return { junction: "outgnd", pins: ["out", "gnd"] };
    case "switcher":
      return { junction: "vcc", pins: ["vcc", "s"] };
    default: {
      const [one, other] = [...part.pins.keys()];
      if (!TWO_PINS.has(part.kind) || one === undefined || other === undefined) return null;
      return { junction: null, pins: [one, other] };
    }
  }
}

function memberOf(part: Part, nets: ReadonlySet<string>, back: string): RailMember | null {
  const place = supplyPlace(part);
  if (place === null) return null;
  const [one, other] = place.pins;
  const [first, second] = [part.pins.get(one), part.pins.get(other)];
  if (first === undefined || second === undefined) return null;
  const { junction } = place;
  if (nets.has(first) && second === back) return { part, junction, plus: one, minus: other, net: first };
  if (nets.has(second) && first === back) return { part, junction, plus: other, minus: one, net: second };
  return null;
}

/** Nets reached from the rail's own through what can be cut, never through another rail's net or its 0 V. */
function reached(
  cuts: readonly RailCut[],
  net: string,
  bars: ReadonlySet<string>,
): { readonly nets: ReadonlySet<string>; readonly cuts: readonly RailCut[] } {
  const nets = new Set([net]);
  const used = new Set<RailCut>();
  for (let before = -1; before < nets.size; ) {
    before = nets.size;
    for (const cut of cuts) {
      const [one, other] = cut.nets;
      if (bars.has(one) || bars.has(other) || nets.has(one) === nets.has(other)) continue;
      nets.add(one).add(other);
      used.add(cut);
    }
  }
  return { nets, cuts: [...used] };
}

const known = new WeakMap<Board, readonly RailGroup[]>();

/** The rails of the board in file order, and the bus where there is one. */
export function railGroups(board: Board): readonly RailGroup[] {
  const before = known.get(board);
  if (before !== undefined) return before;
  const parts = [...board.parts.values()];
  const cuts = parts.flatMap((part) => cutOf(part) ?? []);
  const { bus, rails } = deriveRoles(board);
  const group = (name: string, net: string, back: string, volts: number, around: readonly RailCut[]) => {
    const others = rails.map((rail) => rail.net).filter((other) => other !== net);
    const found = reached(around, net, new Set([...others, back]));
    const members = parts.flatMap((part) => memberOf(part, found.nets, back) ?? []);
    return { name, net, back, volts, members, cuts: found.cuts };
  };
  const groups = rails.map(({ name, net, back, volts }) => group(name, net, back, volts, cuts));
  const peak = board.supply.volts * (board.supply.kind === "ac" ? Math.SQRT2 : 1);
  // the nets in front of a bus are the rectifier's: it is looked at as one net
  if (bus !== null) groups.push(group("bus", bus.plus, bus.minus, peak, []));
  known.set(board, groups);
  return groups;
}

/** Ohms of a fault where it names none: the board file's nominal short. */
const NOMINAL_SHORT = 0.2;

/** A short of a rail: at one of its members, or (dirt, null) somewhere along it. */
export interface RailShort {
  readonly member: RailMember | null;
  readonly ohms: number;
}

/** Does the fault short the rail, and where? */
export function railShort(group: RailGroup, fault: Fault): RailShort | null {
  if (fault.mode !== "short" && fault.mode !== "leaky") return null;
  const ohms = fault.value ?? (fault.mode === "short" ? NOMINAL_SHORT : Number.POSITIVE_INFINITY);
  if (ohms > RAIL_SHORT_OHMS) return null;
  if (fault.of === "nets") {
    const nets = new Set([group.net, ...group.cuts.flatMap((cut) => cut.nets)]);
    const there = fault.nets.some((net) => nets.has(net)) && fault.nets.includes(group.back);
    return there ? { member: null, ohms } : null;
  }
  const member = group.members.find((one) => one.part.ref === fault.part && one.junction === fault.junction);
  return member === undefined ? null : { member, ohms };
}
