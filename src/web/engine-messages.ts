/** What the page and its worker say to each other. Plain data, structured-clone safe. */
import type { PaperCatalogue } from "../messages/paper-catalogue.ts";
import type { ActionView } from "../wire/bench-view.ts";
import type { BoardChange, OwnBoardView } from "../wire/composer-view.ts";
import type { TypedFit } from "../wire/fit-view.ts";
import type { BoardFace, BoardPin, BoardSide, PictureAnswer } from "../wire/job-api.ts";
import type { Chained, Lesson, Linked } from "../wire/learnt-view.ts";
import type { ReferenceChange, TraceAnswers } from "../wire/own-board.ts";
import type { PaperHead, PaperKind } from "../wire/paper-api.ts";
import type { KeptLine } from "../wire/stock-api.ts";
import type { JobHeader, KeptEvent, KeptJob, Outcome } from "./job-event.ts";

/** What stands in the log of a check. */
export type Reading = Extract<KeptEvent, { readonly do: "measure" }>["reading"];

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
      readonly practice: PracticeInfo;
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
  | ({ readonly ask: "stages"; readonly askId: number } & JobSoFar)
  | ({
      readonly ask: "strip";
      readonly askId: number;
      readonly check: ActionView;
      /** left out: not taken yet */
      readonly reading?: Reading | undefined;
    } & JobSoFar)
  | ({ readonly ask: "good"; readonly askId: number; readonly check: ActionView } & JobSoFar)
  | ({ readonly ask: "course"; readonly askId: number } & JobSoFar)
  | ({ readonly ask: "rails"; readonly askId: number } & JobSoFar)
  | { readonly ask: "drawing"; readonly askId: number; readonly content: unknown }
  | ({
      readonly ask: "paper";
      readonly askId: number;
      readonly kind: PaperKind;
      readonly head: PaperHead;
      /** what the paper's language says */
      readonly catalogue: PaperCatalogue;
    } & JobSoFar)
  | ({ readonly ask: "hidden"; readonly askId: number; readonly practice: PracticeInfo } & JobSoFar)
  | ({ readonly ask: "teach"; readonly askId: number; readonly title: string } & JobSoFar)
  | ({ readonly ask: "ways"; readonly askId: number; readonly practice: PracticeInfo } & JobSoFar)
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
  | ({ readonly ask: "compose"; readonly askId: number } & Description)
  | {
      readonly ask: "board";
      readonly askId: number;
      readonly content: unknown;
      readonly change: BoardChange | ReferenceChange | null;
      /** of closed jobs: what good boards beside theirs read is shown with the board */
      readonly lessons: readonly Lesson[];
    }
  | {
      readonly ask: "trace";
      readonly askId: number;
      /** a deck, a netlist or a schematic */
      readonly text: string;
      readonly answers: TraceAnswers;
    }
  | ({ readonly ask: "versions"; readonly askId: number } & VersionsRequest)
  | ({ readonly ask: "pack"; readonly askId: number } & PackRequest)
  | ({ readonly ask: "bring"; readonly askId: number } & BringRequest)
  | { readonly ask: "alike"; readonly askId: number; readonly content: unknown }
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

/** A board drawn from its file: SVG of each side, and where its pins are on them, by fractions of the picture. */
export interface Drawing {
  /** millimetres */
  readonly width: number;
  readonly height: number;
  readonly faces: readonly { readonly side: BoardSide; readonly svg: string }[];
  /** the pads that are easiest to find first */
  readonly pads: readonly BoardPin[];
}

/** What stands in a closed job about being learnt from. */
export interface LessonFacts {
  readonly comebackOf: string | null;
  /** the note that leaves it out */
  readonly leftOutBy: string | null;
}

/** A board to give away, with counts of these jobs as those of `shop`; no jobs: the counts that came with it alone. */
export interface PackRequest {
  readonly content: unknown;
  readonly outcomes: Readonly<Record<string, unknown>>;
  readonly shop: string;
  readonly jobs: readonly JobSoFar[];
  /** null: without pictures */
  readonly pictures: PackedPictures | null;
}

/** A board's pictures inside a file, their bytes in base64, and the places pinned on them. */
export interface PackedPictures {
  readonly faces: readonly (Omit<BoardFace, "picture"> & {
    readonly type: PictureAnswer["type"];
    readonly data: string;
  })[];
  readonly pins: readonly BoardPin[];
}

/** A file's text and its name; `before`: the board that it would change, null where it is new. */
export interface BringRequest {
  readonly name: string;
  readonly text: string;
  readonly before: unknown;
}

/** What a file brings: kept by whoever has seen the changes. */
export interface BroughtBoard {
  readonly title: string;
  readonly content: Readonly<Record<string, unknown>>;
  readonly outcomes: Readonly<Record<string, unknown>>;
  readonly pictures: PackedPictures | null;
  /** what keeping it would change, one line each */
  readonly changes: readonly string[];
}

export type PracticeInfo = NonNullable<KeptJob["practice"]>;

/** A case made of a closed job: shown, then written or started. */
export interface TaughtCase {
  readonly title: string;
  readonly header: JobHeader;
  readonly practice: PracticeInfo;
  /** what is in it, one line each */
  readonly preview: readonly string[];
  /** the case file */
  readonly text: string;
}

/** Ways through a case, step by step, and the same as a page for the printer. */
export interface WaysThrough {
  readonly ways: readonly {
    readonly name: string;
    readonly sum: string;
    readonly steps: readonly { readonly words: string; readonly cost: string; readonly why: string }[];
  }[];
  readonly page: string;
}

/** A headed list of a board's review. */
export interface ReviewList {
  readonly title: string;
  readonly lines: readonly string[];
}

/** A board of one's own after a change: its file, what the page lists of it, and what is odd in it. */
export interface OwnBoardAnswer {
  readonly content: Readonly<Record<string, unknown>>;
  readonly view: OwnBoardView;
  readonly odd: readonly ReviewList[];
  readonly good: GoodReadingsView;
}

/** One check on good boards, with what they read in words. */
export interface GoodLine {
  readonly mode: "diode" | "ohms" | "farads";
  readonly red: string;
  readonly black: string;
  readonly words: string;
}

export interface GoodReadingsView {
  /** in the board's file */
  readonly kept: readonly GoodLine[];
  /** on good boards beside those of closed jobs */
  readonly fromJobs: readonly GoodLine[];
  /** what the file's values cannot give */
  readonly odd: ReviewList;
}

/** Versions of a board, oldest first, and the jobs on a board of its name. */
export interface VersionsRequest {
  readonly kept: readonly {
    readonly id: string;
    readonly receivedAt: string;
    readonly content: Readonly<Record<string, unknown>> | null;
  }[];
  readonly jobs: readonly {
    readonly id: string;
    readonly title: string;
    readonly createdAt: string;
    readonly board: Readonly<Record<string, unknown>>;
  }[];
}

/** Every version with its changes and jobs, latest first. */
export interface VersionsAnswer {
  readonly versions: readonly {
    readonly id: string;
    readonly number: number;
    readonly receivedAt: string;
    readonly parts: number;
    readonly changes: readonly string[];
    readonly jobs: readonly { readonly id: string; readonly title: string }[];
  }[];
  readonly otherJobs: readonly { readonly id: string; readonly title: string }[];
}

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
