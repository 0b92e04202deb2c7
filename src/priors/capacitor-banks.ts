/** Capacitors side by side and one behind the other: what the others carry on with when one of them fails. */
import type { Board, Part } from "../board/board.ts";
import { type CircuitView, netsOf } from "./circuit-view.ts";

/** A bank does with this share of its capacitance (from memory). */
const ENOUGH_FARADS = 0.6;

/** Do the other capacitors across the same nets carry on with this share of its own left, as in a bank across the bus? */
export function isBanked(board: Board, part: Part, left: number): boolean {
  if (part.kind !== "capacitor") return false;
  const nets = netsOf(part);
  const own = part.value.farads ?? 0;
  let all = 0;
  for (const other of board.parts.values())
    if (other.kind === "capacitor" && netsOf(other).every((net) => nets.includes(net)))
      all += other.value.farads ?? 0;
  return all > own && all - own * (1 - left) >= ENOUGH_FARADS * all;
}

/** Is it a resistor that shares the volts out between two capacitors in series? */
export function balances(view: CircuitView, part: Part): boolean {
  const nets = netsOf(part);
  return (
    part.kind === "resistor" &&
    view.seriesPairs.flat().some((one) => netsOf(one).every((net) => nets.includes(net)))
  );
}
