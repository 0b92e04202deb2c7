/**
 * What a stage came to, kept by the faults that it asked about: a board whose other faults the stage never looks at comes to the
 * same. What was asked is noted, not guessed, so that nothing needs to know which faults matter to which stage.
 */
import { type Fault, faultName } from "../board/fault.ts";
import { answers, type FaultedBoard } from "./faulted-board.ts";

interface Kept<T> {
  readonly value: T;
  /** where faults would have changed it, or might have */
  readonly asked: ReadonlySet<string>;
}

/** Results of one stage kept at most. */
const MOST_KEPT = 2000;

const names = new WeakMap<Fault, string>();

function nameOf(fault: Fault): string {
  const known = names.get(fault) ?? faultName(fault);
  names.set(fault, known);
  return known;
}

export class Remembered<T> {
  readonly #kept = new Map<string, Kept<T>>();

  /**
   * What `make` comes to for the board, worked out only where no other board looked the same to it.
   * @param conditions - everything else that `make` goes by, parts opened by power excepted
   */
  of(board: FaultedBoard, conditions: string, make: (board: FaultedBoard) => T): T {
    const start = `${board.openedKey}|${conditions}`;
    let matter: readonly Fault[] = [];
    for (;;) {
      const kept = this.#with(board, matter, start, make);
      const next = board.faults.filter((fault) => matter.includes(fault) || answers(fault, kept.asked));
      if (next.length === matter.length) return kept.value;
      matter = next;
    }
  }

  #with(
    board: FaultedBoard,
    faults: readonly Fault[],
    start: string,
    make: (board: FaultedBoard) => T,
  ): Kept<T> {
    const key = faults.length === 0 ? start : `${start}|${faults.map(nameOf).join(",")}`;
    const known = this.#kept.get(key);
    if (known !== undefined) return known;
    if (this.#kept.size >= MOST_KEPT) this.#kept.clear();
    const asked = new Set<string>();
    const kept = { value: make(board.only(faults, asked)), asked };
    this.#kept.set(key, kept);
    return kept;
  }
}
