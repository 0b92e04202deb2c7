/** Resistors, one or several in a row, that do nothing but drain the DC bus: between its poles, and nothing else hangs in between. */
import type { Board, Part } from "./board.ts";
import { type Bus, busGroups } from "./bus.ts";

/** Longest row followed. */
const MOST_IN_A_ROW = 6;
/** Below this a resistor across the bus is a load. Common practice: bleeders run from 22 k to 470 k. */
const BLEEDER_OHMS = 5_000;

const otherEnd = (part: Part, net: string): string =>
  [...part.pins.values()].find((one) => one !== net) ?? net;

/** References, in file order. */
export function busBleeders(board: Board, bus: Bus): readonly string[] {
  const groups = busGroups(board);
  const on = new Map<string, Part[]>();
  for (const part of board.parts.values())
    for (const net of new Set(part.pins.values())) on.set(net, [...(on.get(net) ?? []), part]);
  const isPole = (net: string) => groups.same(net, bus.plus) || groups.same(net, bus.minus);
  const found = new Set<string>();
  for (const first of board.parts.values()) {
    if (first.kind !== "resistor" || (first.value.ohms ?? 0) < BLEEDER_OHMS) continue;
    const from = [...first.pins.values()].find((net) => groups.same(net, bus.plus));
    if (from === undefined) continue;
    const row = [first];
    let at = otherEnd(first, from);
    while (!isPole(at) && row.length < MOST_IN_A_ROW) {
      const next = (on.get(at) ?? []).filter((part) => part !== row.at(-1));
      const [only] = next;
      if (next.length !== 1 || only?.kind !== "resistor") break;
      row.push(only);
      at = otherEnd(only, at);
    }
    if (groups.same(at, bus.minus)) for (const part of row) found.add(part.ref);
  }
  return [...board.parts.keys()].filter((ref) => found.has(ref));
}
