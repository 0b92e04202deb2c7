/** What a short or leak across a resistor does under power. */
import type { Part } from "../board/board.ts";
import { type CircuitView, netsOf } from "./circuit-view.ts";

/** Shares of its own ohms from which on a path across a resistor is not noticed, and from which on it shifts what is measured. `from memory` */
const BESIDE_RESISTOR = { none: 10, weak: 1 } as const;

/** A path across a resistor tells by the resistor's own ohms; the others of a row of bleeders carry on, hotter. */
export function resistorEffect(view: CircuitView, part: Part, ohms: number): "none" | "weak" | null {
  const own = part.value.ohms;
  if (part.kind !== "resistor" || own === undefined) return null;
  if (ohms > BESIDE_RESISTOR.none * own) return "none";
  if (ohms > BESIDE_RESISTOR.weak * own || inBleederRow(view, part)) return "weak";
  return null;
}

function inBleederRow(view: CircuitView, part: Part): boolean {
  const { bus, bleeders } = view.roles;
  return (
    bleeders.includes(part.ref) &&
    bus !== null &&
    !netsOf(part).every((net) => net === bus.plus || net === bus.minus)
  );
}
