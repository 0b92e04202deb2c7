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
