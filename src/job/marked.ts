/** What the technician marked on this very board while working on it, put into the board and the list of absent parts. */
import type { JobEvent, PartMark } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import type { Board, Part } from "../board/board.ts";
import { FrozenMap } from "../units/frozen.ts";

/** The last mark of each part, undone ones left out. */
function lastMarks(log: readonly JobEvent[]): ReadonlyMap<string, PartMark> {
  const marks = new Map<string, PartMark>();
  if (!log.some((event) => event.do === "mark")) return marks;
  const undone = undoneEvents(log);
  for (const [index, event] of log.entries())
    if (event.do === "mark" && undone[index] !== true) marks.set(event.part, event.as);
  return marks;
}

interface Marked {
  readonly board: Board;
  readonly absent: readonly string[];
}

/** Marked boards by what is marked: caches behind a board are told apart by the object. */
const known = new WeakMap<Board, Map<string, Board>>();

/**
 * The board as marked. A part marked absent is not in the circuit; one that is different, or that nobody is sure of, is assumed:
 * the diagnosis widens there; `as-drawn` takes back what was marked at intake too.
 */
export function asMarked(board: Board, absent: readonly string[], log: readonly JobEvent[]): Marked {
  const marks = lastMarks(log);
  if (marks.size === 0) return { board, absent };
  const away = new Set(absent);
  const assumed = new Map<string, boolean>();
  for (const [part, mark] of marks) {
    // a mark on a part that the board does not have is for the fold to refuse
    if (!board.parts.has(part)) continue;
    if (mark === "absent") away.add(part);
    else away.delete(part);
    assumed.set(part, mark === "different" || mark === "unsure");
  }
  return { board: withAssumed(board, assumed), absent: [...away] };
}

function withAssumed(board: Board, assumed: ReadonlyMap<string, boolean>): Board {
  const changed = [...assumed].filter(([ref, yes]) => board.parts.get(ref)?.assumed !== yes);
  if (changed.length === 0) return board;
  const key = changed
    .map(([ref, yes]) => `${ref} ${yes}`)
    .sort()
    .join(",");
  const ofBoard = known.get(board) ?? new Map<string, Board>();
  known.set(board, ofBoard);
  const made = ofBoard.get(key);
  if (made !== undefined) return made;
  const change = new Map(changed);
  const parts = [...board.parts].map(([ref, part]): [string, Part] => [
    ref,
    { ...part, assumed: change.get(ref) ?? part.assumed },
  ]);
  const marked: Board = { ...board, parts: new FrozenMap(parts) };
  ofBoard.set(key, marked);
  return marked;
}
