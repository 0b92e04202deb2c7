/** What a good board draws, by the live model: the watts a lamp has to carry, and the amps a bench supply must not stop at. */
import type { Place } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import { liveStates } from "../live/live-of-log.ts";
import { IDLE_WATTS } from "../safety/limiter.ts";

const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };
/** A feed that does not limit, to see what a good rail draws. */
const PLENTY_AMPS = 10;

interface Idle {
  watts: number | null;
  readonly amps: Map<string, number>;
}

const known = new WeakMap<Board, Idle>();

function idleOf(board: Board): Idle {
  const idle = known.get(board) ?? { watts: null, amps: new Map<string, number>() };
  known.set(board, idle);
  return idle;
}

/** Watts that a good board draws from its mains at idle, the small supply running. Where the model cannot tell, the usual. */
export function idleWatts(board: Board): number {
  const idle = idleOf(board);
  if (idle.watts === null) {
    const { supplyWatts } = liveStates(board, BARE, { do: "power", feed: "mains" }).state([]);
    idle.watts = supplyWatts > 0 ? supplyWatts : IDLE_WATTS;
  }
  return idle.watts;
}

/** Amps that a good board draws from a bench supply of these volts clipped there. */
export function goodAmps(board: Board, volts: number, at: readonly [Place, Place]): number {
  const { amps } = idleOf(board);
  const key = `${volts} ${at.join(" ")}`;
  const before = amps.get(key);
  if (before !== undefined) return before;
  const feed = { do: "power", feed: "bench", volts, limitAmps: PLENTY_AMPS, at } as const;
  const drawn = liveStates(board, BARE, feed).state([]).feedAmps?.amps ?? 0;
  amps.set(key, drawn);
  return drawn;
}
