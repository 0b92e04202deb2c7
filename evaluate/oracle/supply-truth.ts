/**
 * What faults make of the small supply and of the rails, by the volts that the live board puts there. The clipped meter of the oracle
 * reads the same live board, so that a board whose rails stand right is not one whose supply is dead, and the other way round.
 */
import type { BenchState } from "../../src/bench/bench-state.ts";
import type { Board } from "../../src/board/board.ts";
import { type Fault, faultName } from "../../src/board/fault.ts";
import { liveStates } from "../../src/live/live-of-log.ts";
import type { LiveState } from "../../src/live/live-state.ts";
import type { LiveStates } from "../../src/live/live-states.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { logNormal } from "./draw.ts";
import { rolesOf } from "./oracle-cascades.ts";

/** Shares of its volts outside which a rail keeps its board from running, and outside which it runs badly (common practice: 5 to 10 %). */
const RAIL_SHARES = { dead: [0.8, 1.3], weak: [0.93, 1.12] } as const;

/** Logarithmic deviation by which the ohms where a stage gives up differ from the engine's thresholds (from memory). */
const THRESHOLD_SPREAD_LN = 0.4;

const NOTHING: ReadonlySet<string> = new Set();
const powered = new WeakMap<Board, Map<string, LiveStates>>();

/** Leaks and shorts as the live board is to take them: each stage gives up at ohms of its own, not at those of the engine's table. */
export function asLive(faults: readonly Fault[]): readonly Fault[] {
  return faults.map((fault) => {
    if (fault.value === null || (fault.mode !== "leaky" && fault.mode !== "short")) return fault;
    const random = seededRandom(0, `gives up ${faultName(fault)} ${fault.value}`);
    return { ...fault, value: fault.value * logNormal(random, THRESHOLD_SPREAD_LN) };
  });
}

function onMains(board: Board, off: ReadonlySet<string>): LiveStates {
  const of = powered.get(board) ?? new Map<string, LiveStates>();
  powered.set(board, of);
  const key = [...off].sort().join(",");
  const bench: BenchState = { lifted: new Set(), off, clips: [], powered: true };
  const states = of.get(key) ?? liveStates(board, bench, { do: "power", feed: "mains" });
  of.set(key, states);
  return states;
}

function outside(share: number, [low, high]: readonly [number, number]): boolean {
  return share < low || share > high;
}

/** What the mains do to the rails; `blows` where they take a fuse of the line first. */
export type RailsTruth = "blows" | "dead" | "weak" | "works";

function ofState(board: Board, state: LiveState): RailsTruth {
  if (state.opened.some((ref) => rolesOf(board).lineFuses.includes(ref))) return "blows";
  const { mode } = state.supply;
  if (mode === "nothing" || mode === "hiccup") return "dead";
  const shares = board.rails.map(({ name, volts }) => {
    const rail = state.rails.find((one) => one.name === name);
    return rail === undefined ? 0 : rail.volts / volts;
  });
  if (shares.some((share) => outside(share, RAIL_SHARES.dead))) return "dead";
  return shares.some((share) => outside(share, RAIL_SHARES.weak)) ? "weak" : "works";
}

/**
 * The rails of a board on the mains with just these faults.
 * @param off - parts that are off the board or have a pin lifted
 */
export function railsWith(
  board: Board,
  faults: readonly Fault[],
  off: ReadonlySet<string> = NOTHING,
): RailsTruth {
  return ofState(board, onMains(board, off).state(asLive(faults)));
}
