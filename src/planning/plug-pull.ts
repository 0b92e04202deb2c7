/** How a plug comes off and goes back on: as a whole, or contact by contact where that is quicker. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Board, Part } from "../board/board.ts";
import { minutesOf } from "./action-minutes.ts";
import type { Action } from "./proposal.ts";

/** What is done first, the bench with all of it done, and the minutes there and back. */
export interface Pull {
  readonly action: Action;
  readonly bench: BenchState;
  readonly minutes: number;
  readonly backMinutes: number;
}

/** Off as a whole, or contact by contact where that is quicker; null where it is apart already. */
export function pullOf(board: Board, bench: BenchState, part: Part): Pull | null {
  const places = [...part.pins.keys()].map((pin) => `${part.ref}.${pin}`);
  const still = places.filter((place) => !bench.lifted.has(place)).slice(0, -1);
  if (still.length === 0) return null;
  const sum = (actions: readonly Action[]) =>
    actions.reduce((minutes, action) => minutes + minutesOf(board, bench, action), 0);
  const lifts = sum(still.map((place) => ({ do: "lift", place })));
  const whole: Action = { do: "remove", part: part.ref };
  if (sum([whole]) <= lifts)
    return {
      action: whole,
      bench: { ...bench, off: new Set([...bench.off, part.ref]) },
      minutes: sum([whole]),
      backMinutes: sum([{ do: "restore", part: part.ref }]),
    };
  return {
    action: { do: "lift", place: still[0] },
    bench: { ...bench, lifted: new Set([...bench.lifted, ...still]) },
    minutes: lifts,
    backMinutes: sum(still.map((place) => ({ do: "refit", place }))),
  };
}

/** The next move that puts it back. The part must be off or have a contact up (a broken invariant throws). */
export function backOf({ off, lifted }: BenchState, { ref }: Part): Action {
  if (off.has(ref)) return { do: "restore", part: ref };
  const place = [...lifted].sort().find((one) => one.startsWith(`${ref}.`));
  if (place === undefined) throw new Error(`${ref} is in its place`);
  return { do: "refit", place };
}
