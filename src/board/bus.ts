/** The DC bus and the mains side, derived from the circuit. */
import type { Board, Part } from "./board.ts";
import { isNearlyWire, NetGroups, throughPairs } from "./net-groups.ts";
import { type Leg, legsOf, powerSwitches } from "./power-switches.ts";

/** The pair of nets that the bus voltage stands across. */
export interface Bus {
  readonly plus: string;
  readonly minus: string;
  readonly from: "inverter legs" | "largest capacitor";
}

/** The file format's rule: a capacitor of this rating or more may be the bus's. */
export const BUS_CAPACITOR_VOLTS = 200;

/** Of the nets of one group, the one to name the bus by: that of its capacitors, else the board's zero, else the given. */
function busNet(board: Board, groups: NetGroups, net: string, pin: "plus" | "minus"): string {
  const here = (other: string) => groups.same(net, other);
  const counts = new Map<string, number>();
  for (const part of board.parts.values()) {
    const at = part.pins.get(pin);
    if (part.kind !== "capacitor" || at === undefined || !here(at)) continue;
    if ((part.value.volts ?? 0) >= BUS_CAPACITOR_VOLTS)
      counts.set(at, (counts.get(at) ?? 0) + (part.value.farads ?? 0));
  }
  const best = [...counts].sort((a, b) => b[1] - a[1])[0];
  if (best !== undefined) return best[0];
  return here(board.zero) ? board.zero : net;
}

/** The legs across the pair of rails that most legs share (those of stage `inverter` first where they tie). */
function mainLegs(board: Board, groups: NetGroups): readonly Leg[] {
  const byRails = new Map<string, Leg[]>();
  for (const leg of legsOf(powerSwitches(board), groups)) {
    const rails = `${groups.of(leg.upper.high)} ${groups.of(leg.lower.low)}`;
    byRails.set(rails, [...(byRails.get(rails) ?? []), leg]);
  }
  const inInverter = (legs: readonly Leg[]) =>
    legs.filter((leg) => board.parts.get(leg.upper.part)?.stage === "inverter").length;
  return [...byRails.values()].sort((a, b) => b.length - a.length || inInverter(b) - inInverter(a))[0] ?? [];
}

/** Shunts, links and fuses seen through: what the bus and its legs are grouped by. */
export function busGroups(board: Board): NetGroups {
  return new NetGroups(board, isNearlyWire);
}

/** The legs that stand across the bus, in file order. */
export function busLegs(board: Board): readonly Leg[] {
  return mainLegs(board, busGroups(board));
}

function largestCapacitor(board: Board): Part | null {
  let largest: Part | null = null;
  for (const part of board.parts.values()) {
    if (part.kind !== "capacitor" || (part.value.volts ?? 0) < BUS_CAPACITOR_VOLTS) continue;
    if (largest === null || (part.value.farads ?? 0) > (largest.value.farads ?? 0)) largest = part;
  }
  return largest;
}

/** The bus: across the inverter legs, else across the largest capacitor of 200 V or more, else null. */
export function findBus(board: Board): Bus | null {
  const groups = busGroups(board);
  const leg = mainLegs(board, groups)[0];
  if (leg !== undefined) {
    return {
      plus: busNet(board, groups, leg.upper.high, "plus"),
      minus: busNet(board, groups, leg.lower.low, "minus"),
      from: "inverter legs",
    };
  }
  const capacitor = largestCapacitor(board);
  const plus = capacitor?.pins.get("plus");
  const minus = capacitor?.pins.get("minus");
  return plus === undefined || minus === undefined ? null : { plus, minus, from: "largest capacitor" };
}

function across(part: Part, one: string, other: string): boolean {
  const nets = [...part.pins.values()];
  return one !== other && nets.includes(one) && nets.includes(other);
}

/** One of two capacitors in series across the bus: from one pole to a middle net that a second takes to the other pole. */
function inSeriesPair(capacitors: readonly Part[], bus: Bus, part: Part): boolean {
  return [...part.pins.values()].some((middle) => {
    if (middle === bus.plus || middle === bus.minus) return false;
    const here = across(part, bus.plus, middle)
      ? bus.minus
      : across(part, bus.minus, middle)
        ? bus.plus
        : null;
    return here !== null && capacitors.some((other) => across(other, middle, here));
  });
}

/** References of the capacitors across the bus, members of a series pair among them, in file order. */
export function busCapacitors(board: Board, bus: Bus): readonly string[] {
  const capacitors = [...board.parts.values()].filter((part) => part.kind === "capacitor");
  return capacitors
    .filter((part) => across(part, bus.plus, bus.minus) || inSeriesPair(capacitors, bus, part))
    .map((part) => part.ref);
}

/** Parts that the mains current runs through on its way to the rectifier. */
const IN_LINE: ReadonlySet<Part["kind"]> = new Set([
  "fuse",
  "link",
  "choke",
  "inductor",
  "ntc",
  "ptc",
  "relay",
  "transformer",
]);
/** A resistor up to this may be the inrush limiter: trade practice has 10-47 ohm, common practice. */
const INRUSH_OHMS = 100;

function isInLine(part: Part): boolean {
  return (
    IN_LINE.has(part.kind) ||
    (part.kind === "resistor" && (part.value.ohms ?? Number.MAX_VALUE) <= INRUSH_OHMS)
  );
}

/** Nets at mains voltage: the supply's places and all that follow in line, up to the bridge. Empty for a dc supply. */
export function lineNets(board: Board): ReadonlySet<string> {
  const line = new Set<string>(board.supply.kind === "ac" ? board.supply.at : []);
  const inLine = [...board.parts.values()].filter(isInLine);
  for (let before = -1; before < line.size; ) {
    before = line.size;
    for (const part of inLine) {
      for (const [one, other] of throughPairs(part)) {
        if (line.has(one)) line.add(other);
        else if (line.has(other)) line.add(one);
      }
    }
  }
  return line;
}
