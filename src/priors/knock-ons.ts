import type { Board } from "../board/board.ts";
import type { FaultPrior, KnockOn } from "./fault-prior.ts";

/** The knock-ons of this board. */
export function knockOnsOf(_board: Board, _faults: readonly FaultPrior[]): KnockOn[] {
  return [];
}
