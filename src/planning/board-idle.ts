/** What a good board draws and shows, by the live model: the watts a lamp has to carry, what a bench supply must not stop at, the bus. */
import type { Place } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import { liveStates } from "../live/live-of-log.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { IDLE_WATTS } from "../safety/limiter.ts";

const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };
/** A feed that does not limit, to see what a good rail draws. */
const PLENTY_AMPS = 10;

const known = new WeakMap<Board, Map<string, number>>();

/** Each figure of a board is worked out once. */
function once(board: Board, key: string, figure: () => number): number {
  const figures = known.get(board) ?? new Map<string, number>();
  known.set(board, figures);
  const value = figures.get(key) ?? figure();
  figures.set(key, value);
  return value;
}

/** Watts that a good board draws from its mains at idle, the small supply running. Where the model cannot tell, the usual. */
export function idleWatts(board: Board): number {
  return once(board, "watts", () => {
    const { supplyWatts } = liveStates(board, BARE, { do: "power", feed: "mains" }).state([]);
    return supplyWatts > 0 ? supplyWatts : IDLE_WATTS;
  });
}

/** Volts of a good board's bus behind a lamp of these watts; where the model cannot tell, the mains' peak. */
export function lampBusVolts(board: Board, watts: number): number {
  return once(board, `bus ${watts}`, () => {
    const { supply } = board;
    const peak = supply.volts * (supply.kind === "ac" ? Math.SQRT2 : 1);
    const { bus } = viewOf(board).roles;
    if (bus === null) return peak;
    const good = liveStates(board, BARE, { do: "power", feed: "lamp", watts }).state([]);
    return Math.abs(good.volts(bus.plus, bus.minus)?.dc ?? peak);
  });
}

/** Does a lamp of these watts go dark on a good board? */
export function lampGoesDark(board: Board, watts: number): boolean {
  const dark = once(board, `dark ${watts}`, () => {
    const { observed } = liveStates(board, BARE, { do: "power", feed: "lamp", watts }).state([]);
    return observed.at(-1) === "lamp-dark" ? 1 : 0;
  });
  return dark === 1;
}

/** Amps that a good board draws from a bench supply of these volts clipped there. */
export function goodAmps(board: Board, volts: number, at: readonly [Place, Place]): number {
  return once(board, `${volts} V ${at.join(" ")}`, () => {
    const feed = { do: "power", feed: "bench", volts, limitAmps: PLENTY_AMPS, at } as const;
    return liveStates(board, BARE, feed).state([]).feedAmps?.amps ?? 0;
  });
}
