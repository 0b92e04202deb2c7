/** The live board of a log: as its last power-up leaves it, and as each of its power-ups left it. */
import { type BenchState, benchKey } from "../bench/bench-state.ts";
import type { Observed, PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";
import { LiveStates } from "./live-states.ts";
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

/** The board under the feed of this power-up, as it lay on the bench and after what was seen. */
export function liveStates(board: Board, bench: BenchState, power: PowerEvent): LiveStates {
  const feed = feedOf(power, board);
  const seen = seenAt(power);
  const live = new LiveBoard(board, bench, feed, seen);
  return new LiveStates(live, `${benchKey(bench)}|${JSON.stringify(feed)}|${seen.join(",")}`);
}

function seenAt({ observed }: PowerEvent): readonly Observed[] {
  if (observed === undefined) return [];
  return typeof observed === "string" ? [observed] : observed;
}
