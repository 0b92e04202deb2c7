/** What the end of a job says of the board as it left. */
import type { Verdict } from "../bench/event.ts";
import type { Sourced } from "../units/mark.ts";

/** How likely a job ends so where nothing is wrong with the board any more, and where something still is; only their ratio counts. */
export interface OutcomeWeight extends Sourced {
  readonly whole: number;
  readonly faulty: number;
}

const row = (id: string, whole: number, faulty: number, words: string): OutcomeWeight => ({
  id: `V-${id}`,
  mark: "from memory",
  words,
  whole,
  faulty,
});

const SAYS_NOTHING = row("given-up", 1, 1, "a board given up says nothing of what was left on it");

/** By verdict; a board that came back corrects the verdict it left with. */
export const OUTCOME_WEIGHTS: Readonly<Record<Verdict, OutcomeWeight>> = {
  repaired: row(
    "repaired",
    1,
    0.05,
    "a repaired board that stays away was repaired; one in twenty only hides its fault",
  ),
  "no-fault": row("no-fault", 1, 0.2, "no fault found, and it never came back: mostly none was there"),
  "not-economic": SAYS_NOTHING,
  "not-repairable": SAYS_NOTHING,
  declined: SAYS_NOTHING,
};

export const CAME_BACK: OutcomeWeight = row(
  "came-back",
  0.1,
  1,
  "a board that comes back still had its fault; one in ten broke anew",
);

/**
 * A part that was exchanged on a board which then was handed back working, against one that was not wrong: the technician saw more of it
 * than stands in the log, but also acts on the very readings that stand there, so that it speaks gently.
 */
export const EXCHANGED_AND_CURED: OutcomeWeight = row(
  "exchanged",
  0.2,
  1,
  "a part exchanged on the way to a cure is five times as often a bad one, beyond what the log's readings say of it",
);
