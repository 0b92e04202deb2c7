/**
 * Faults that a board lives with: a leak so high that it only warms (`POWER_EFFECTS` says "none" of it). A technician neither hunts for
 * one nor buys a part for it; where it shows in a reading it must still be believed in. Common practice.
 */
import type { Board } from "../board/board.ts";
import { viewOf } from "./circuit-view.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { powerEffect } from "./power-effects.ts";

/** Is the fault a leak that nobody needs to cure? */
export function isHarmless(board: Board, { fault }: FaultPrior): boolean {
  return fault.mode === "leaky" && powerEffect(viewOf(board), fault) === "none";
}
