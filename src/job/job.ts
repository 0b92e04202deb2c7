import type { JobEvent } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { JobFigures } from "../learning/job-figures.ts";
import type { MeterSettings } from "../meter/settings.ts";
import type { Terms } from "../money/terms.ts";
import type { Cause, Symptom } from "../priors/cause.ts";
import type { Told } from "../priors/told.ts";
import type { ComebackOf } from "./comeback-of.ts";

/** A job: a board, what the customer said, the terms, and the log. State is a function of board + log alone. */
export interface Job {
  readonly board: Board;
  readonly cause: Cause;
  readonly symptom: Symptom;
  /** what the log's answers tell beyond them */
  readonly told: Told;
  /** board and absent parts as the job file gives them, before anything was marked in the log */
  readonly asBrought: { readonly board: Board; readonly absent: readonly string[] };
  /** the board as marked, with what a good one beside it read, and the prices and minutes of its file: what was learnt left out */
  readonly unpriced: Board;
  /** what the bench had learnt when the job was begun; null: it is worked with the tables' figures */
  readonly learned: JobFigures | null;
  /** the number that hides the faults of a practice job; null: a board on a bench */
  readonly practice: number | null;
  /** parts that are not on this board */
  readonly absent: readonly string[];
  /** what this bench has beyond one meter (`lamp-100`, `bench-supply`, ...) */
  readonly equipment: readonly string[];
  /** with the price of the quote that was accepted last, where one was */
  readonly terms: Terms;
  /** the job whose board this is, come back; null where it was not here before */
  readonly comebackOf: ComebackOf | null;
  readonly meter: MeterSettings;
  readonly log: readonly JobEvent[];
}
