/**
 * Faults that a board lives with: a leak so high that it only warms, a clamp or a small capacitor that is gone (`POWER_EFFECTS` says "none"
 * of them). A technician neither hunts for one nor buys a part for it; where it shows in a reading it must still be believed in. Common
 * practice.
 */
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { type CircuitView, viewOf } from "./circuit-view.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { powerEffect } from "./power-effects.ts";

/** What may be let be. A short is not: what it joins was never meant to be joined. */
const LET_BE: ReadonlySet<FaultPrior["fault"]["mode"]> = new Set(["leaky", "open", "drift"]);

/** From here on a resistor of the mains filter is there to empty its capacitor once the plug is pulled (common practice: 220 k to 2.2 M). */
const DISCHARGE_OHMS = 100_000;

/** Is the fault one that nobody needs to cure? What no longer empties a store of charge endangers whoever touches it next, and is cured. */
export function isHarmless(board: Board, { fault }: FaultPrior): boolean {
  const view = viewOf(board);
  return LET_BE.has(fault.mode) && powerEffect(view, fault) === "none" && !leavesCharged(view, fault);
}

function leavesCharged({ roles, groupOf, board }: CircuitView, fault: Fault): boolean {
  if (fault.of === "nets" || fault.mode === "leaky") return false;
  const part = board.parts.get(fault.part);
  const ofFilter =
    part?.kind === "resistor" &&
    groupOf.get(part.ref) === "input" &&
    (part.value.ohms ?? 0) >= DISCHARGE_OHMS;
  return ofFilter || roles.bleeders.includes(fault.part);
}
