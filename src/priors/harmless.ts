/**
 * Faults that a board lives with: a leak so high that it only warms, a clamp or a small capacitor that is gone (`POWER_EFFECTS` says "none"
 * of them). A technician neither hunts for one nor buys a part for it; where it shows in a reading it must still be believed in. Common
 * practice.
 */
import type { Board } from "../board/board.ts";
import { viewOf } from "./circuit-view.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { powerEffect } from "./power-effects.ts";

/** What may be let be. A short is not: what it joins was never meant to be joined. */
const LET_BE: ReadonlySet<FaultPrior["fault"]["mode"]> = new Set(["leaky", "open", "drift"]);

/** Is the fault one that nobody needs to cure? */
export function isHarmless(board: Board, { fault }: FaultPrior): boolean {
  return LET_BE.has(fault.mode) && powerEffect(viewOf(board), fault) === "none";
}
