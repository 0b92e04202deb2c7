import type { Board, Part } from "../board/board.ts";
import type { Fault, PartFault } from "../board/fault.ts";
import { DRIFT } from "../board/fault-nominal.ts";
import { SUPPLY_FAILS_OHMS } from "../live/live-models.ts";
import { charsOnBus } from "./bus-sides.ts";
import { balances, isBanked } from "./capacitor-banks.ts";
import {
  acrossMains,
  type CircuitView,
  keepsSwinging,
  limitsBridge,
  limitsShorts,
  netsOf,
  viewOf,
} from "./circuit-view.ts";
import { earthEffect } from "./earth-effects.ts";
import { resistorEffect } from "./resistor-effects.ts";

/** What a fault does to a board under power, worst first as far as each hides the next. */
export const POWER_EFFECTS = [
  "input-open",
  "line-short",
  "earth-short",
  "feed-open",
  "bus-short",
  "supply-short",
  "bus-leak",
  "supply-dead",
  "rail-short",
  "leg-half",
  "no-run",
  "weak",
  "none",
] as const;
export type PowerEffect = (typeof POWER_EFFECTS)[number];

/** Above this a resistance across bus or rail only warms. `from memory`. */
const BUS_LEAK_OHMS = 20_000;
const RAIL_SHORT_OHMS = 30;
/** Across the mains this draws more than a lamp lets through or a fuse bears for long, 150 W and up; what draws less burns or comes
 *  back. `from memory`. */
const LINE_SHORT_OHMS = 350;

/** What a resistance across the mains does: above some watts it is a short, below it cooks. */
function lineEffect(ohms: number): PowerEffect {
  if (ohms < LINE_SHORT_OHMS) return "line-short";
  return ohms < BUS_LEAK_OHMS ? "weak" : "none";
}

/** Ohms of a short or leak; infinite for what is neither. */
export function ohmsOf(fault: Fault): number {
  if (fault.mode === "short") return fault.value ?? 0.2;
  return fault.mode === "leaky" ? (fault.value ?? 1000) : Number.POSITIVE_INFINITY;
}

/** A varistor or capacitor of the filter; one in series with another carries no line current by itself. */
function filterEffect(view: CircuitView, nets: readonly string[], ohms: number): PowerEffect {
  return earthEffect(view, nets, ohms) ?? (acrossMains(view, nets) ? lineEffect(ohms) : "none");
}

function crossEffect(view: CircuitView, nets: readonly [string, string], ohms: number): PowerEffect {
  const earth = earthEffect(view, nets, ohms);
  if (earth !== null) return earth;
  const { bus } = view.roles;
  const has = (net: string): boolean => nets.includes(net);
  if (bus !== null && has(bus.plus) && has(bus.minus))
    return ohms < 50 ? "bus-short" : ohms < BUS_LEAK_OHMS ? "bus-leak" : charring(view, nets, ohms);
  if (acrossMains(view, nets)) return lineEffect(ohms);
  if (acrossBridge(view, nets))
    return ohms < 50 ? bridgeShort(view) : ohms < BUS_LEAK_OHMS ? "bus-leak" : "none";
  for (const rail of view.board.rails)
    if (has(rail.net) && has(rail.against ?? view.board.zero))
      return ohms < RAIL_SHORT_OHMS ? "rail-short" : ohms < 300 ? "weak" : "none";
  return ohms < 5000 ? "no-run" : charring(view, nets, ohms);
}

/** What only warms, or chars in time. */
function charring({ board }: CircuitView, nets: readonly string[], ohms: number): PowerEffect {
  return charsOnBus(board, nets, ohms) ? "weak" : "none";
}

function acrossBridge(view: CircuitView, nets: readonly [string, string]): boolean {
  return view.roles.bridges.some((ref) => {
    const pins = view.board.parts.get(ref)?.pins;
    return pins !== undefined && ["plus", "minus"].every((pin) => nets.includes(pins.get(pin) ?? ""));
  });
}

/** A short of the bridge or right behind it: nothing holds it back where the limiter stands between bridge and bus. */
function bridgeShort(view: CircuitView): PowerEffect {
  return limitsShorts(view) && !limitsBridge(view) ? "line-short" : "bus-short";
}

/** With three wires of mains one may be missing: the board runs on two, and poorly. */
const PHASES_SPARE = 3;

/** From this on a capacitor across a rail is its reservoir. `from memory` */
const RESERVOIR_FARADS = 4.7e-6;

const SERIES: ReadonlySet<string> = new Set(["fuse", "link", "choke", "inductor", "resistor"]);

/** Is the winding that failed one the mains runs through, as a current transformer's is? */
function inLine(view: CircuitView, part: Part, junction: string | null): boolean {
  const winding = part.value.windings?.[junction ?? ""];
  return winding?.pins.every((pin) => view.roles.line.includes(part.pins.get(pin) ?? "")) ?? false;
}

/** Does a second diode from the line feed the same net? */
function hasTwin(view: CircuitView, part: Part): boolean {
  const out = part.pins.get("k") ?? "";
  return view.on(out).some((other) => other !== part && other.kind === "diode" && fromLine(view, other));
}

/** A diode that takes its current straight from the line. */
function fromLine(view: CircuitView, part: Part): boolean {
  return part.kind === "diode" && view.roles.line.includes(part.pins.get("a") ?? "");
}

/** The resonant stage that a part belongs to the coil or the capacitors of. */
function tankOf(view: CircuitView, part: Part): CircuitView["roles"]["resonants"][number] | undefined {
  return view.roles.resonants.find((one) => one.coil === part.ref || one.capacitors.includes(part.ref));
}

/** Ohms of a leak below which a part of the small supply no longer does its work. */
function supplyFailsOhms(part: Part, junction: string | null): number {
  if (part.kind === "switcher")
    return junction === "fb" ? SUPPLY_FAILS_OHMS.feedback : SUPPLY_FAILS_OHMS.feed;
  return part.kind === "opto" || part.kind === "shuntref" ? SUPPLY_FAILS_OHMS.coupler : 200;
}

function isClamp(view: CircuitView, part: Part): boolean {
  return view.roles.switchers.some(({ clamp }) => clamp.includes(part.ref));
}

function openEffect(view: CircuitView, part: Part, fault: PartFault): PowerEffect {
  const group = view.groupOf.get(part.ref);
  if (part.kind === "transformer" && inLine(view, part, fault.junction)) return "feed-open";
  if (tankOf(view, part) !== undefined) return "no-run";
  if (view.roles.resonants.some((one) => one.busCapacitors.includes(part.ref))) return "weak";
  if (fromLine(view, part) && hasTwin(view, part)) return "weak";
  if (SERIES.has(part.kind) && (group === "input" || group === "rectifier")) {
    const series = part.kind !== "resistor" || (part.value.ohms ?? 1e6) < 300;
    if (series && lineOf(view, part) !== null && view.board.supply.at.length >= PHASES_SPARE) return "weak";
    return series ? (group === "input" ? "input-open" : "feed-open") : "none";
  }
  if (view.inrushLimiters.includes(part)) return "feed-open";
  // It drained the bus, no more: the board runs, and keeps its charge for longer.
  if (view.roles.bleeders.includes(part.ref)) return "none";
  // Without its brake a drive runs, and trips when it is told to stop quickly.
  if (group === "chopper") return "weak";
  if (part.kind === "relay" && group === "inrush") return "weak";
  if (group === "rectifier") return "weak";
  if (group === "supply") {
    // Without its clamp a supply starts, until a spike takes its switch.
    if (isClamp(view, part)) return part.kind === "capacitor" ? "none" : "weak";
    if (balances(view, part)) return "weak";
    if (part.kind === "capacitor")
      return (part.value.farads ?? 0) >= 1e-6 || keepsSwinging(view, part) ? "supply-dead" : "none";
    return part.kind === "zener" ? "none" : "supply-dead";
  }
  if (part.kind === "regulator" && fault.junction === "inout") return "supply-dead";
  // What a rail's own reservoir does when it has dried out, it does when it is gone; small ones only take spikes off.
  if (
    part.kind === "capacitor" &&
    (part.value.farads ?? 0) >= RESERVOIR_FARADS &&
    !isBanked(view.board, part, 0)
  )
    return "weak";
  if (part.kind === "capacitor" || part.kind === "zener" || part.kind === "varistor") return "none";
  return "no-run";
}

/** The wire of the mains that a part in line stands in; null where it is none such. */
function lineOf(view: CircuitView, part: Part): number | null {
  if (!SERIES.has(part.kind) || view.groupOf.get(part.ref) !== "input") return null;
  const poles = new Set(netsOf(part).map((net) => view.poleOf.get(net) ?? null));
  const [pole = null] = poles;
  return poles.size === 1 ? pole : null;
}

/** What a shorted brake switch does: it puts its resistor across the bus, where one is connected. */
function brakeEffect({ resistor }: CircuitView["choppers"][number], ohms: number): PowerEffect {
  if (resistor === null) return "none";
  const across = ohms + (resistor.value.ohms ?? 0);
  return across < 50 ? "bus-short" : across < BUS_LEAK_OHMS ? "bus-leak" : "none";
}

function shortEffect(view: CircuitView, part: Part, fault: PartFault): PowerEffect {
  const ohms = ohmsOf(fault);
  const group = view.groupOf.get(part.ref);
  const site = fault.junction === null ? part.ref : `${part.ref}.${fault.junction}`;
  // Harmless at rest: the switch meets the whole bus at its first pulse.
  if (tankOf(view, part) !== undefined) return ohms < 200 ? "leg-half" : "no-run";
  if (group === "supply" && fromLine(view, part)) return ohms < 200 ? "supply-short" : "weak";
  if (view.motorSwitches.some((found) => found.fault === site))
    return ohms < 200 ? "leg-half" : ohms < BUS_LEAK_OHMS ? "weak" : "none";
  if (isClamp(view, part)) return ohms < SUPPLY_FAILS_OHMS.clamp ? "supply-dead" : "none";
  const brake = view.choppers.find(({ found }) => found.fault === site);
  if (brake !== undefined) return brakeEffect(brake, ohms);
  if (view.otherSwitches.some((found) => found.fault === site))
    return ohms < 50 ? "bus-short" : ohms < BUS_LEAK_OHMS ? "bus-leak" : "none";
  if (view.supplySwitches.some((found) => found.fault === site))
    return ohms < 50 ? "supply-short" : ohms < 2000 ? "supply-dead" : ohms < BUS_LEAK_OHMS ? "weak" : "none";
  if (part.kind === "varistor" || (part.kind === "capacitor" && group === "input"))
    return filterEffect(view, netsOf(part), ohms);
  if (group === "rectifier" && (part.kind === "bridge" || part.kind === "diode"))
    return ohms < 50 ? bridgeShort(view) : "weak";
  if (view.inrushLimiters.includes(part) || (part.kind === "relay" && group === "inrush")) return "weak";
  // The partner of a shorted bus capacitor stands the whole bus: it leaks, and goes in its turn.
  if (view.seriesPairs.some((pair) => pair.includes(part))) return ohms < BUS_LEAK_OHMS ? "bus-leak" : "none";
  if (part.kind === "controller" || part.kind === "ic" || part.kind === "module")
    return chipEffect(fault.junction ?? "", ohms);
  const resistor = resistorEffect(view, part, ohms);
  if (resistor !== null) return resistor;
  if (part.kind === "capacitor" || part.kind === "zener" || part.kind === "resistor") {
    const [a = "", b = ""] = netsOf(part);
    const across = crossEffect(view, [a, b], ohms);
    if (across === "no-run" && group === "chopper") return "weak";
    return across === "no-run" && group === "supply" ? "supply-dead" : across;
  }
  if (group === "chopper") return ohms < 2000 ? "weak" : "none";
  if (group === "supply" && part.kind === "diode") return ohms < 200 ? "rail-short" : "none";
  if (group === "supply") return ohms < supplyFailsOhms(part, fault.junction) ? "supply-dead" : "none";
  if (part.kind === "link" || part.kind === "fuse" || part.kind === "inductor" || part.kind === "choke")
    return "none";
  return ohms < 2000 ? "no-run" : "none";
}

function chipEffect(junction: string, ohms: number): PowerEffect {
  if (junction === "supply" || junction === "drive")
    return ohms < 100 ? "rail-short" : ohms < 2000 ? "weak" : "none";
  return ohms < 5000 ? "no-run" : "none";
}

/** What one fault alone does under power. */
export function powerEffect(view: CircuitView, fault: Fault): PowerEffect {
  if (fault.of === "nets") return crossEffect(view, fault.nets, ohmsOf(fault));
  const part = view.board.parts.get(fault.part);
  if (part === undefined) return "none";
  if (fault.mode === "drift")
    return isBanked(view.board, part, DRIFT.farads) || view.roles.bleeders.includes(part.ref)
      ? "none"
      : "weak";
  return fault.mode === "open" ? openEffect(view, part, fault) : shortEffect(view, part, fault);
}

/** A part that is off the board is as open as it can be; a motor is no part of the board, and is tried again before it goes out. */
function absentEffect(view: CircuitView, part: Part): PowerEffect {
  if (part.kind === "motor") return "none";
  if (part.kind === "bridge") return "feed-open";
  return openEffect(view, part, { of: "part", part: part.ref, junction: "inout", mode: "open", value: null });
}

/** Does no current path through a bridge remain: no junction to plus with one from minus at another AC pin? */
function bridgeDead(board: Board, faults: readonly Fault[]): boolean {
  const open = new Map<string, Set<string>>();
  for (const fault of faults)
    if (fault.of === "part" && fault.mode === "open" && fault.junction !== null)
      open.set(fault.part, (open.get(fault.part) ?? new Set()).add(fault.junction));
  return [...open].some(([ref, junctions]) => {
    const legs = ["ac1", "ac2", "ac3"].filter((pin) => board.parts.get(ref)?.pins.has(pin));
    return !legs.some((to) =>
      legs.some((from) => from !== to && !junctions.has(`${to}plus`) && !junctions.has(`minus${from}`)),
    );
  });
}

/** What one fault brings to the sum: its own effect by rank, and whether a second like it would make it worse. */
interface Share {
  readonly board: Board;
  readonly rank: number;
  /** the motor switch or bus capacitor it shorts */
  readonly shorted: string | null;
  readonly bridgeOpen: boolean;
  /** the wire of the mains it opens, and whether it does so before everything else there */
  readonly lineOpen: number | null;
  readonly fuseOpen: boolean;
  /** the two wires it shorts behind their fuses */
  readonly lineShort: readonly (number | undefined)[] | null;
}

const shares = new WeakMap<Fault, Share>();

/** Remembered for the fault objects of a prior table: asked for every fault at every power-up of a log. */
function shareOf(view: CircuitView, fault: Fault): Share {
  const before = shares.get(fault);
  if (before?.board === view.board) return before;
  const rank = POWER_EFFECTS.indexOf(powerEffect(view, fault));
  const part = fault.of === "part" ? view.board.parts.get(fault.part) : undefined;
  const open = fault.mode === "open" && part !== undefined;
  const share = {
    board: view.board,
    rank,
    shorted: shortedSite(view, fault),
    bridgeOpen: open && part.kind === "bridge",
    lineOpen: open ? lineOf(view, part) : null,
    fuseOpen: open && part.kind === "fuse",
    lineShort: shortedWires(view, fault, rank),
  };
  shares.set(fault, share);
  return share;
}

/** The wires that a varistor, a capacitor or dirt shorts; null where the fault is no such short. */
function shortedWires(view: CircuitView, fault: Fault, rank: number): Share["lineShort"] {
  if (POWER_EFFECTS[rank] !== "line-short") return null;
  const part = fault.of === "part" ? view.board.parts.get(fault.part) : undefined;
  const nets = fault.of === "nets" ? fault.nets : part === undefined ? [] : netsOf(part);
  return nets.length === 2 && acrossMains(view, nets) ? nets.map((net) => view.poleOf.get(net)) : null;
}

/** The motor switch or bus capacitor of a pair that a short takes; null where the fault is no such short. */
export function shortedSite(view: CircuitView, fault: Fault): string | null {
  if (fault.of !== "part" || fault.mode !== "short") return null;
  const site = fault.junction === null ? fault.part : `${fault.part}.${fault.junction}`;
  const counts =
    view.motorSwitches.some((found) => found.fault === site) ||
    view.seriesPairs.some((pair) => pair.some((part) => part.ref === site));
  return counts ? site : null;
}

/** Are two shorted that lie one above the other across the bus: a leg, or a pair of capacitors? */
export function shortThrough(view: CircuitView, shorted: readonly string[]): boolean {
  const both = (upper: string, lower: string) => shorted.includes(upper) && shorted.includes(lower);
  return (
    view.legs.some(([upper, lower]) => both(upper.fault, lower.fault)) ||
    view.seriesPairs.some(([upper, lower]) => both(upper.ref, lower.ref))
  );
}

/** One of three fuses that is open takes its wire out of a short between two, and leaves the board to run on what remains. */
function lineShortRank(
  shorts: readonly (readonly (number | undefined)[])[],
  blown: ReadonlySet<number | undefined>,
): number {
  const standing = shorts.some((wires) => !wires.some((wire) => blown.has(wire)));
  return POWER_EFFECTS.indexOf(standing ? "line-short" : "weak");
}

const INPUT_OPEN = POWER_EFFECTS.indexOf("input-open");
const FEED_OPEN = POWER_EFFECTS.indexOf("feed-open");
const BUS_SHORT = POWER_EFFECTS.indexOf("bus-short");
const NOBODY: ReadonlySet<string> = new Set();

/**
 * What a board with these faults does under power, as one of the effects above: the first that stands. Two shorted
 * switches of one leg, or both capacitors of a series pair, are a short of the bus; of three wires of mains two must be open.
 */
export function boardEffect(
  board: Board,
  faults: readonly Fault[],
  off: ReadonlySet<string> = NOBODY,
): PowerEffect {
  const view = viewOf(board);
  let rank = POWER_EFFECTS.length - 1;
  const shorted: string[] = [];
  const bridgeOpens: Fault[] = [];
  const linesOpen = new Set<number>();
  const blown = new Set<number | undefined>();
  const lineShorts: (readonly (number | undefined)[])[] = [];
  for (const fault of faults) {
    if (fault.of === "part" && off.has(fault.part)) continue;
    const share = shareOf(view, fault);
    if (share.lineShort === null) rank = Math.min(rank, share.rank);
    else lineShorts.push(share.lineShort);
    if (share.fuseOpen && share.lineOpen !== null) blown.add(share.lineOpen);
    if (share.shorted !== null) shorted.push(share.shorted);
    if (share.bridgeOpen) bridgeOpens.push(fault);
    if (share.lineOpen !== null) linesOpen.add(share.lineOpen);
  }
  for (const ref of off) {
    const part = board.parts.get(ref);
    if (part === undefined) continue;
    rank = Math.min(rank, POWER_EFFECTS.indexOf(absentEffect(view, part)));
    const line = lineOf(view, part);
    if (line !== null) linesOpen.add(line);
    if (line !== null && part.kind === "fuse") blown.add(line);
  }
  if (lineShorts.length > 0) rank = Math.min(rank, lineShortRank(lineShorts, blown));
  if (linesOpen.size > 1) rank = Math.min(rank, INPUT_OPEN);
  if (bridgeOpens.length > 1 && bridgeDead(board, bridgeOpens)) rank = Math.min(rank, FEED_OPEN);
  if (shorted.length > 1 && shortThrough(view, shorted)) rank = Math.min(rank, BUS_SHORT);
  return POWER_EFFECTS[rank] ?? "none";
}
