/** The live board of a log: as it stands, as it stood when it was last powered, and as each of its power-ups left it. */
import { type BenchState, benchKey } from "../bench/bench-state.ts";
import type { Observed, PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";
import { LiveStates } from "./live-states.ts";
import { feedOf } from "./power-feed.ts";
import { loadOf } from "./under-load.ts";

function lastPower(timeline: Timeline): { readonly event: PowerEvent; readonly bench: BenchState } | null {
  for (const { event, after } of timeline.entries.toReversed())
    if (event.do === "power") return { event, bench: after };
  return null;
}

/**
 * The board with these faults as it stood when the log last powered it, fed so and after what was seen then; null where it never
 * was.
 */
export function liveWhenPowered(
  board: Board,
  timeline: Timeline,
  faults: readonly Fault[],
): LiveState | null {
  const last = lastPower(timeline);
  if (last === null) return null;
  const { event, bench } = last;
  return new LiveBoard(board, bench, feedOf(event, board), seenAt(event), loadOf(event)).state(faults);
}

/** The board as it stands now, clips and all; null where the log leaves it without power. */
export function liveOfLog(board: Board, timeline: Timeline, faults: readonly Fault[]): LiveState | null {
  const last = lastPower(timeline);
  if (last === null || !timeline.now.powered) return null;
  return new LiveBoard(
    board,
    timeline.now,
    feedOf(last.event, board),
    seenAt(last.event),
    loadOf(last.event),
  ).state(faults);
}

/** The board under the feed of this power-up, as it lay on the bench and after what was seen. */
export function liveStates(board: Board, bench: BenchState, power: PowerEvent): LiveStates {
  const live = new LiveBoard(board, bench, feedOf(power, board), seenAt(power), loadOf(power));
  return new LiveStates(live, liveKey(board, bench, power));
}

/** All that the states of a board under a power-up depend on besides its faults, in a word. */
export function liveKey(board: Board, bench: BenchState, power: PowerEvent): string {
  return `${benchKey(bench)}|${JSON.stringify(feedOf(power, board))}|${seenAt(power).join(",")}|${power.load ?? ""}`;
}

/** What was seen that leaves the board another one: all other sights leave its states as they were before the power-up, and shared with it. */
const OPENS: ReadonlySet<Observed> = new Set(["fuse-blew", "trip"]);

function seenAt({ observed }: PowerEvent): readonly Observed[] {
  return [observed ?? []].flat().filter((one) => OPENS.has(one));
}
