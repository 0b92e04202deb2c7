/** For tests: a shipped board under power, asked by the names of its faults. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Observed } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";
import type { PowerFeed } from "./power-feed.ts";
import type { Running } from "./run-state.ts";

export const BARE: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: true };

export function shippedBoard(id: string): Board {
  const parsed = parseBoard(SHIPPED.find((one) => one.id === id)?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

/** `names`: faults with spaces between; throws where one is none of this board. */
export function faultsNamed(board: Board, names: string): readonly Fault[] {
  return names
    .split(" ")
    .filter((name) => name !== "")
    .map((name) => {
      const fault = parseFault(name, board);
      if (!fault.ok) throw new Error(fault.problem);
      return fault.value;
    });
}

export class OnPower {
  readonly board: Board;
  readonly #lives = new Map<string, LiveBoard>();

  constructor(id: string) {
    this.board = shippedBoard(id);
  }

  #live(feed: PowerFeed, bench: BenchState, seen: readonly Observed[]): LiveBoard {
    const key = JSON.stringify([feed, [...bench.off], [...bench.lifted], bench.clips, seen]);
    const live = this.#lives.get(key) ?? new LiveBoard(this.board, bench, feed, seen);
    this.#lives.set(key, live);
    return live;
  }

  /** `names`: faults with spaces between. */
  with(
    names: string,
    feed: PowerFeed = { kind: "mains" },
    bench: BenchState = BARE,
    seen: readonly Observed[] = [],
  ): LiveState {
    return this.#live(feed, bench, seen).state(faultsNamed(this.board, names));
  }

  running(names: string, feed: PowerFeed = { kind: "mains" }, bench: BenchState = BARE): Running {
    return this.#live(feed, bench, []).running(faultsNamed(this.board, names));
  }
}

/** Mean volts between two places; throws where the model cannot say. */
export function dc(state: LiveState, red: string, black: string): number {
  const volts = state.volts(red, black);
  if (volts === null) throw new Error(`nothing is told of ${red} to ${black}`);
  return volts.dc;
}

/** Volts of the rails by name, as shares of `nominal`. */
export function railShares(state: LiveState, board: Board): ReadonlyMap<string, number> {
  return new Map(
    state.rails.map((rail) => [
      rail.name,
      rail.volts / (board.rails.find((one) => one.name === rail.name)?.volts ?? 1),
    ]),
  );
}
