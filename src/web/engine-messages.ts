/** What the page and its worker say to each other. Plain data, structured-clone safe. */
import type { ActionView } from "../wire/bench-view.ts";
import type { TypedFit } from "../wire/fit-view.ts";
import type { KeptLine } from "../wire/stock-api.ts";
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
      readonly drawerSeen: number;
    } & JobSoFar)
  | ({ readonly ask: "hidden"; readonly askId: number; readonly seed: number } & JobSoFar)
  | {
      /** the shop's stock, counted with from now on */
      readonly ask: "drawer";
      readonly askId: number;
      readonly lines: readonly KeptLine[];
    }
  | {
      readonly ask: "import";
      readonly askId: number;
      /** a catalogue file */
      readonly text: string;
      readonly stock: readonly KeptLine[];
    }
  | ({ readonly ask: "compose"; readonly askId: number } & Description);

/** Told any number of times before the answer, of what takes long. */
export interface EngineProgress {
  readonly askId: number;
  readonly done: number;
  readonly of: number;
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
