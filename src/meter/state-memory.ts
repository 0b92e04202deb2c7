/**
 * Solved states of one board, kept by bytes: the predictors of its several states of the bench share the room. What was solved longest
 * ago makes place first, but for what has been asked for again since: that has one more turn (the healthy board behind every question
 * of a check is as old as the job). Only speed depends on it.
 */
import type { State } from "./settled-state.ts";

/** A tab that keeps this much is not thrown out on a phone; a job of a hundred parts needs about this. */
const MOST_BYTES = 40e6;
/** Objects and maps of a state beside its arrays. */
const OVERHEAD_BYTES = 1500;

interface Entry {
  readonly home: Map<string, State>;
  readonly key: string;
  readonly bytes: number;
}

export class StateMemory {
  readonly #entries = new Map<State, Entry>();
  readonly #mostBytes: number;
  #bytes = 0;

  constructor(mostBytes = MOST_BYTES) {
    this.#mostBytes = mostBytes;
  }

  /** Puts a state into its predictor's own map, and takes the oldest out of theirs until all fit. */
  keep(home: Map<string, State>, key: string, state: State): void {
    const bytes = bytesOf(state);
    home.set(key, state);
    this.#entries.set(state, { home, key, bytes });
    this.#bytes += bytes;
    for (const [oldest, entry] of this.#entries) {
      if (this.#bytes <= this.#mostBytes || this.#entries.size === 1) return;
      this.#entries.delete(oldest);
      if (oldest === state || oldest.askedAgain) {
        oldest.askedAgain = false;
        this.#entries.set(oldest, entry);
        continue;
      }
      this.#bytes -= entry.bytes;
      if (entry.home.get(entry.key) === oldest) entry.home.delete(entry.key);
    }
  }
}

/** Voltages, the numbers of the branches, and the factors that its linearisation keeps once it has been asked. */
function bytesOf({ settled, alternating }: State): number {
  if (alternating !== null)
    return OVERHEAD_BYTES + 16 * alternating.perVolt.re.length + 8 * alternating.values.siemens.length;
  if (settled === null) return OVERHEAD_BYTES;
  const { netlist, frame, values } = settled.problem;
  const numbers = 5 * netlist.nets + frame.plan.entries + values.siemens.length + values.saturation.length;
  return OVERHEAD_BYTES + 8 * numbers;
}
