/** What the page and its worker say to each other. Plain data, structured-clone safe. */
import type { ActionView, BenchView } from "../wire/bench-view.ts";
import type { JobHeader, KeptEvent, Outcome } from "./job-event.ts";

export interface JobSoFar {
  readonly header: JobHeader;
  readonly events: readonly KeptEvent[];
}

export type EngineRequest =
  | ({ readonly ask: "view"; readonly ticket: number } & JobSoFar)
  | ({
      readonly ask: "practice";
      readonly ticket: number;
      readonly seed: number;
      readonly action: ActionView;
    } & JobSoFar)
  | ({ readonly ask: "hidden"; readonly ticket: number; readonly seed: number } & JobSoFar);

export type EngineAnswer =
  | { readonly ticket: number; readonly ok: true; readonly answer: unknown }
  | { readonly ticket: number; readonly ok: false; readonly problem: string };

/** What the practice board did: the fields to add to the action. */
export type PracticeOutcome = Outcome;

/** The faults that the practice board hides, told once the job is closed. */
export interface HiddenFaults {
  readonly faults: readonly string[];
  /** the verdict that these faults deserve after what was done to the board */
  readonly present: readonly string[];
}

export type ViewAnswer = BenchView;
