/** The states of one live board, remembered by their faults: all readings after one power-up ask for the same ones. */
import { type Fault, faultName } from "../board/fault.ts";
import type { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";

/** States kept; each holds the waveforms of a few nets. */
const MOST_STATES = 1500;

export class LiveStates {
  /** bench, feed and what was seen, in a word */
  readonly key: string;
  readonly #live: LiveBoard;
  readonly #states = new Map<string, LiveState>();

  constructor(live: LiveBoard, key: string) {
    this.key = key;
    this.#live = live;
  }

  /** What the board shows with just these faults, in any order. */
  state(faults: readonly Fault[]): LiveState {
    const name = faults.map(faultName).sort().join(",");
    const known = this.#states.get(name);
    if (known !== undefined) return known;
    const oldest = this.#states.keys().next();
    if (this.#states.size >= MOST_STATES && !oldest.done) this.#states.delete(oldest.value);
    const state = this.#live.state(faults);
    this.#states.set(name, state);
    return state;
  }
}
