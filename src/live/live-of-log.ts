/** The live board of a log that leaves it powered. */
import type { PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";
import { feedOf } from "./power-feed.ts";

/**
 * The board with these faults, fed as the log's last `power` says and after what was seen then; null where the log leaves it
 * without power. Parts off the board, lifted pins and clips are as the log leaves them.
 */
export function liveOfLog(board: Board, timeline: Timeline, faults: readonly Fault[]): LiveState | null {
  if (!timeline.now.powered) return null;
  const last = timeline.entries.map(({ event }) => event).findLast((event) => event.do === "power");
  if (last === undefined) return null;
  return new LiveBoard(board, timeline.now, feedOf(last, board), seenAt(last)).state(faults);
}

function seenAt({ observed }: PowerEvent): ConstructorParameters<typeof LiveBoard>[3] {
  if (observed === undefined) return [];
  return typeof observed === "string" ? [observed] : observed;
}
