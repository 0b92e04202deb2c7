import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import { actionMinutes } from "../money/minutes.ts";
import type { Action } from "./proposal.ts";

/** Bench minutes of an action not yet done: what a look finds takes no time. */
export function minutesOf(board: Board, bench: BenchState, action: Action): number {
  return actionMinutes(board, bench, action.do === "look" ? { ...action, finding: "other" } : action);
}
