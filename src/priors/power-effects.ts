import type { Board, Part } from "../board/board.ts";
import type { Fault, PartFault } from "../board/fault.ts";
import { type CircuitView, joins, netsOf, viewOf } from "./circuit-view.ts";

/** What a fault does to a board under power, worst first as far as each hides the next. */
export const POWER_EFFECTS = [
  "input-open",
  "line-short",
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

function ohmsOf(fault: Fault): number {
  if (fault.mode === "short") return fault.value ?? 0.2;
  return fault.mode === "leaky" ? (fault.value ?? 1000) : Number.POSITIVE_INFINITY;
}

function crossEffect(view: CircuitView, nets: readonly [string, string], ohms: number): PowerEffect {
  const { bus, line } = view.roles;
  const has = (net: string): boolean => nets.includes(net);
  if (bus !== null && has(bus.plus) && has(bus.minus))
    return ohms < 50 ? "bus-short" : ohms < BUS_LEAK_OHMS ? "bus-leak" : "none";
  if (nets.every((net) => line.includes(net))) return ohms < 50 ? "line-short" : "none";
  for (const rail of view.board.rails)
    if (has(rail.net) && has(rail.against ?? view.board.zero))
      return ohms < RAIL_SHORT_OHMS ? "rail-short" : ohms < 300 ? "weak" : "none";
  return ohms < 5000 ? "no-run" : "none";
}

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

function openEffect(view: CircuitView, part: Part, fault: PartFault): PowerEffect {
  const group = view.groupOf.get(part.ref);
  if (part.kind === "transformer" && inLine(view, part, fault.junction)) return "feed-open";
  if (tankOf(view, part) !== undefined) return "no-run";
  if (view.roles.resonants.some((one) => one.busCapacitors.includes(part.ref))) return "weak";
  if (fromLine(view, part) && hasTwin(view, part)) return "weak";
  if (SERIES.has(part.kind) && (group === "input" || group === "rectifier")) {
    const series = part.kind !== "resistor" || (part.value.ohms ?? 1e6) < 300;
    return series ? (group === "input" ? "input-open" : "feed-open") : "none";
  }
  if (view.inrushLimiters.includes(part)) return "feed-open";
  if (part.kind === "relay" && group === "inrush") return "weak";
  if (group === "rectifier") return "weak";
  if (group === "supply") {
    if (part.kind === "capacitor") return (part.value.farads ?? 0) >= 1e-6 ? "supply-dead" : "none";
    return part.kind === "zener" ? "none" : "supply-dead";
  }
  if (part.kind === "regulator" && fault.junction === "inout") return "supply-dead";
  if (part.kind === "capacitor" || part.kind === "zener" || part.kind === "varistor") return "none";
  return "no-run";
}

function shortEffect(view: CircuitView, part: Part, fault: PartFault): PowerEffect {
  const ohms = ohmsOf(fault);
  const group = view.groupOf.get(part.ref);
  const site = fault.junction === null ? part.ref : `${part.ref}.${fault.junction}`;
  // Harmless at rest: the switch meets the whole bus at its first pulse.
  if (tankOf(view, part) !== undefined) return ohms < 200 ? "leg-half" : "no-run";
  if (group === "supply" && fromLine(view, part)) return ohms < 200 ? "supply-short" : "weak";
  if (view.motorSwitches.some((found) => found.fault === site)) return ohms < 200 ? "leg-half" : "none";
  if (view.otherSwitches.some((found) => found.fault === site))
    return ohms < 50 ? "bus-short" : ohms < BUS_LEAK_OHMS ? "bus-leak" : "none";
  if (view.supplySwitches.some((found) => found.fault === site))
    return ohms < 50 ? "supply-short" : ohms < 2000 ? "supply-dead" : ohms < BUS_LEAK_OHMS ? "weak" : "none";
  if (part.kind === "varistor" || (part.kind === "capacitor" && group === "input"))
    // One to earth, or in series with another, carries no line current by itself.
    return ohms < 50 && netsOf(part).every((net) => view.roles.line.includes(net)) ? "line-short" : "none";
  if (group === "rectifier" && (part.kind === "bridge" || part.kind === "diode"))
    return ohms < 50 ? "bus-short" : "weak";
  if (part.kind === "controller" || part.kind === "ic" || part.kind === "module")
    return chipEffect(fault.junction ?? "", ohms);
  if (part.kind === "capacitor" || part.kind === "zener" || part.kind === "resistor") {
    const [a = "", b = ""] = netsOf(part);
    const across = crossEffect(view, [a, b], ohms);
    return across === "no-run" && group === "supply" ? "supply-dead" : across;
  }
  if (group === "supply") return ohms < 200 ? (part.kind === "diode" ? "rail-short" : "supply-dead") : "none";
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
  if (fault.mode === "drift") return "weak";
  return fault.mode === "open" ? openEffect(view, part, fault) : shortEffect(view, part, fault);
}

/** A part that is off the board is as open as it can be; a motor is no part of the board, and is tried again before it goes out. */
function absentEffect(view: CircuitView, part: Part): PowerEffect {
  if (part.kind === "motor") return "none";
  if (part.kind === "bridge") return "feed-open";
  return openEffect(view, part, { of: "part", part: part.ref, junction: "inout", mode: "open", value: null });
}

/** Does no current path through a bridge remain: every junction to plus, or from minus, open? */
function bridgeDead(faults: readonly Fault[]): boolean {
  const open = new Map<string, Set<string>>();
  for (const fault of faults)
    if (fault.of === "part" && fault.mode === "open" && fault.junction !== null)
      open.set(fault.part, (open.get(fault.part) ?? new Set()).add(fault.junction));
  return [...open.values()].some(
    (junctions) =>
      (junctions.has("ac1plus") && junctions.has("ac2plus")) ||
      (junctions.has("minusac1") && junctions.has("minusac2")),
  );
}

/** What one fault brings to the sum: its own effect by rank, and whether a second like it would make it worse. */
interface Share {
  readonly board: Board;
  readonly rank: number;
  /** the motor switch it shorts */
  readonly shorted: string | null;
  readonly bridgeOpen: boolean;
}

const shares = new WeakMap<Fault, Share>();

/** Remembered for the fault objects of a prior table: asked for every fault at every power-up of a log. */
function shareOf(view: CircuitView, fault: Fault): Share {
  const before = shares.get(fault);
  if (before?.board === view.board) return before;
  const rank = POWER_EFFECTS.indexOf(powerEffect(view, fault));
  const site = fault.of === "part" ? `${fault.part}.${fault.junction ?? ""}` : "";
  const shorted =
    fault.mode === "short" && view.motorSwitches.some((found) => found.fault === site) ? site : null;
  const bridgeOpen =
    fault.of === "part" && fault.mode === "open" && view.board.parts.get(fault.part)?.kind === "bridge";
  const share = { board: view.board, rank, shorted, bridgeOpen };
  shares.set(fault, share);
  return share;
}

const FEED_OPEN = POWER_EFFECTS.indexOf("feed-open");
const BUS_SHORT = POWER_EFFECTS.indexOf("bus-short");
const NOBODY: ReadonlySet<string> = new Set();

/**
 * What a board with these faults does under power, as one of the effects above: the first that stands. Two shorted
 * switches of one leg are a short of the bus.
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
  for (const fault of faults) {
    if (fault.of === "part" && off.has(fault.part)) continue;
    const share = shareOf(view, fault);
    rank = Math.min(rank, share.rank);
    if (share.shorted !== null) shorted.push(share.shorted);
    if (share.bridgeOpen) bridgeOpens.push(fault);
  }
  for (const ref of off) {
    const part = board.parts.get(ref);
    if (part !== undefined) rank = Math.min(rank, POWER_EFFECTS.indexOf(absentEffect(view, part)));
  }
  if (bridgeOpens.length > 1 && bridgeDead(bridgeOpens)) rank = Math.min(rank, FEED_OPEN);
  const legShort =
    shorted.length > 1 &&
    view.legs.some(([upper, lower]) => shorted.includes(upper.fault) && shorted.includes(lower.fault));
  if (legShort) rank = Math.min(rank, BUS_SHORT);
  return POWER_EFFECTS[rank] ?? "none";
}

/** Whether a short of this board lies between the two nets a bench supply is clipped to. */
export function shortBetween(board: Board, faults: readonly Fault[], at: readonly [string, string]): boolean {
  const view = viewOf(board);
  const rail = board.rails.find((one) => at.includes(one.net));
  return faults.some((fault) => {
    if (ohmsOf(fault) >= 100) return false;
    if (fault.of === "nets") return at.includes(fault.nets[0]) && at.includes(fault.nets[1]);
    const part = board.parts.get(fault.part);
    if (part === undefined) return false;
    if (fault.junction === "supply" || fault.junction === "drive")
      return (
        [...part.pins.values()].includes(rail?.net ?? at[0]) && powerEffect(view, fault) === "rail-short"
      );
    return joins(part, at[0], at[1]) && netsOf(part).length === 2;
  });
}
