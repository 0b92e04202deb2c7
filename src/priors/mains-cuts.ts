/** Which faults keep the mains out of a board: nothing behind them meets power, so nothing there breaks of it. */
import type { Board } from "../board/board.ts";
import type { PriorTable } from "./fault-prior.ts";
import { boardEffect } from "./power-effects.ts";

const NOTHING_OFF: ReadonlySet<string> = new Set();
const known = new WeakMap<PriorTable, ReadonlySet<number>>();

/** Faults of the table, by their place in it, that leave the board without its mains: an open fuse, an open inrush part. */
export function mainsCuts(board: Board, priors: PriorTable): ReadonlySet<number> {
  const before = known.get(priors);
  if (before !== undefined) return before;
  const cuts = new Set<number>();
  priors.faults.forEach(({ fault }, f) => {
    if (fault.mode === "open" && boardEffect(board, [fault], NOTHING_OFF) === "input-open") cuts.add(f);
  });
  known.set(priors, cuts);
  return cuts;
}
