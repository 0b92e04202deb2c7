/** What the page and its worker say to each other. Plain data, structured-clone safe. */
import type { ActionView } from "../wire/bench-view.ts";
import type { TypedFit } from "../wire/fit-view.ts";
import type { Chained, Lesson, Linked } from "../wire/learnt-view.ts";
import type { JobHeader, KeptEvent, Outcome } from "./job-event.ts";

export interface JobSoFar {
  readonly header: JobHeader;
  readonly events: readonly KeptEvent[];
}

/** A board being described: answers by question, and what to call it (empty: as the answers say). */
export interface Description {
  readonly answers: Readonly<Record<string, string>>;
  readonly name: string;
}

export type EngineRequest =
  | ({ readonly ask: "view"; readonly askId: number } & JobSoFar)
  | ({
      readonly ask: "practice";
      readonly askId: number;
      readonly seed: number;
      readonly action: ActionView;
    } & JobSoFar)
  | ({ readonly ask: "why"; readonly askId: number; readonly part: string } & JobSoFar)
  | ({
      readonly ask: "fit";
      readonly askId: number;
      readonly part: string;
      readonly typed: TypedFit;
    } & JobSoFar)
  | ({ readonly ask: "hidden"; readonly askId: number; readonly seed: number } & JobSoFar)
  | ({ readonly ask: "compose"; readonly askId: number } & Description)
  | ({ readonly ask: "lesson-facts"; readonly askId: number } & JobSoFar)
  | ({ readonly ask: "lesson"; readonly askId: number; readonly chained: Chained } & JobSoFar)
  | { readonly ask: "chains"; readonly askId: number; readonly jobs: readonly Linked[] }
  | { readonly ask: "learnt"; readonly askId: number; readonly lessons: readonly Lesson[] }
  | {
      readonly ask: "figures";
      readonly askId: number;
      readonly lessons: readonly Lesson[];
      /** the new job's header */
      readonly header: JobHeader;
    };

/** What stands in a closed job about being learnt from. */
export interface LessonFacts {
  readonly comebackOf: string | null;
  /** the note that leaves it out */
  readonly leftOutBy: string | null;
}

export type EngineAnswer =
  | { readonly askId: number; readonly ok: true; readonly answer: unknown }
  | { readonly askId: number; readonly ok: false; readonly problem: string };

/** What the practice board did: the event's fields, the action's own among them. */
export type PracticeOutcome = Outcome;

export interface NamedFault {
  /** as the file format spells it */
  readonly fault: string;
  readonly words: string;
}

/** What the practice board hid, told once the job is closed: the faults it came with, and those on it now. */
export interface HiddenFaults {
  readonly arrived: readonly NamedFault[];
  readonly left: readonly NamedFault[];
}
