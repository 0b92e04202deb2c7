import type { JobEvent } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { MeterSettings } from "../meter/settings.ts";
import type { Terms } from "../money/terms.ts";
import type { Cause, Symptom } from "../priors/cause.ts";

/** A job: a board, what the customer said, the terms, and the log. State is a function of board + log alone. */
export interface Job {
  readonly board: Board;
  readonly cause: Cause;
  readonly symptom: Symptom;
  /** parts that did not come with the board */
  readonly absent: readonly string[];
  /** what this bench has beyond one meter (`lamp-100`, `bench-supply`, ...) */
  readonly equipment: readonly string[];
  readonly terms: Terms;
  readonly meter: MeterSettings;
  readonly log: readonly JobEvent[];
}
