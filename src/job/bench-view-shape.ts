/** What the page shows, computed in `bench-view.ts` and sent as it is: plain data, structured-clone safe. */

import type { Waiting } from "../bench/waiting.ts";
import type { FirstMinute } from "../planning/first-minute-shape.ts";
import type { Proposal } from "../planning/proposal.ts";
import type { ActionView } from "./action-view.ts";
import type { Compared } from "./good-beside.ts";
import type { MoneyView } from "./money-view-shape.ts";
import type { SafetyView } from "./safety-view-shape.ts";

/** What a good board shows at a step. */
export interface GoodHere {
  /** what a good board would show at a cold check, and what good ones read there; null where the step is none */
  readonly good: string | null;
  /** parts nobody has seen that the reading to come rests on */
  readonly restsOn: readonly string[];
}

/** The proposal in words: what it shares with the planner's own record is taken from there. */
export interface CardView
  extends GoodHere,
    Pick<
      Proposal,
      "probesOn" | "minutes" | "money" | "why" | "expect" | "cautions" | "atStake" | "forecast" | "outlook"
    > {
  readonly action: ActionView;
  /** the gate that the step serves, passed over by one tap and a reason; null: none of its own */
  readonly gate: "motor" | null;
  /** answers that are one tap, as they are kept and as they are said; empty where there are keys of another kind */
  readonly answers: readonly { readonly answer: string; readonly words: string }[];
  /** e.g. "Red on PBUS (C1 plus pin), black on NBUS (C1 minus pin), diode mode" */
  readonly headline: string;
  readonly red: string | null;
  readonly black: string | null;
  readonly mode: string | null;
  /** what each meter that is clipped on before this power-up is set to */
  readonly clipModes: readonly ("dcv" | "acv")[];
  readonly row: readonly ActionView[];
  /** the same in words, as `headline` */
  readonly rowWords: readonly string[];
  /** what to watch at this power-up, or at the one that is on */
  readonly firstMinute: FirstMinute | null;
  /** tell the person to wait for the charge of the check before */
  readonly wait: string | null;
  readonly others: readonly {
    readonly action: ActionView;
    readonly headline: string;
    readonly minutes: number;
    readonly money: number;
    readonly why: string;
  }[];
}

export interface SuspectView {
  readonly part: string;
  /** kind in words, stage */
  readonly what: string;
  readonly stage: string | null;
  readonly probability: number;
  readonly modes: readonly { readonly fault: string; readonly words: string; readonly probability: number }[];
}

/** Why a part is suspected or cleared, asked for by itself. */
export interface BecauseView {
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
  readonly maskedBy: readonly string[];
  readonly untested: boolean;
}

export interface LogLineView {
  readonly logIndex: number;
  readonly id: string | null;
  readonly words: string;
  readonly undone: boolean;
  readonly unexplained: boolean;
  /** parts nobody has seen that this reading rests on */
  readonly restsOn: readonly string[];
  readonly canUndo: boolean;
}

/** One cell of the grid of usual readings of a stage. */
export interface GridCellView {
  readonly label: string;
  readonly action: ActionView;
  readonly healthy: string;
  readonly reading: string | null;
  readonly span: "now" | "earlier" | null;
}
export interface GridView {
  readonly stage: string;
  readonly title: string;
  readonly cells: readonly GridCellView[];
}

/** One reading of the cold re-check, beside what the part read before it went in. */
export interface RecheckView {
  readonly words: string;
  /** neither as before nor as the board has it */
  readonly amiss: boolean;
}

/** What a part that was fitted read before it went in, by the check that reads the same on the board. */
export interface BaselineView {
  readonly part: string;
  readonly mode: string;
  readonly red: string;
  readonly black: string;
  /** `0.46 V` */
  readonly words: string;
}

/** A part that shows by itself whether it works: what it does when it does, and when it does not. */
export interface SignView {
  readonly part: string;
  readonly there: string;
  readonly missing: string;
}

/** What both boards read at one check, the good one beside it last. */
export type ComparedView = Omit<Compared, "logIndex">;

export interface BenchView {
  readonly boardName: string;
  readonly currency: string;
  readonly powered: boolean;
  readonly safety: SafetyView;
  readonly card: CardView | null;
  readonly suspects: readonly SuspectView[];
  readonly explanations: readonly {
    readonly faults: readonly string[];
    readonly words: string;
    readonly probability: number;
  }[];
  readonly remainder: number;
  readonly healthyProbability: number;
  readonly unexplained: readonly number[];
  readonly log: readonly LogLineView[];
  /** the board is whole, as the good one beside it is: the same reading can be taken on both */
  readonly whole: boolean;
  readonly compared: readonly ComparedView[];
  readonly grids: readonly GridView[];
  readonly places: readonly { readonly place: string; readonly words: string }[];
  /** of the parts fitted since power was last on; empty where none was read before it went in */
  readonly recheck: readonly RecheckView[];
  readonly baselines: readonly BaselineView[];
  /** what is looked at and listened for at a power-up, without a meter */
  readonly signs: readonly SignView[];
  /** pins off their pads, as `Q1.c` */
  readonly lifted: readonly string[];
  /** parts off the board */
  readonly off: readonly string[];
  /** hardware revision as printed on this board; null where nobody has said */
  readonly revision: string | null;
  readonly money: MoneyView;
  /** below this the job's meter beeps */
  readonly beepOhms: number;
  readonly minutesSpent: number;
  readonly moneySpent: number;
  /** what the job is put aside for; null where it is on the bench */
  readonly waiting: Waiting | null;
  readonly verdict: string | null;
}
