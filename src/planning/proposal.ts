import type { JobEvent, LookEvent, MeasureEvent } from "../bench/event.ts";
import type { CostToGo } from "./cost-spread.ts";
import type { FirstMinute } from "./first-minute-shape.ts";

type WithoutReading<E> = E extends MeasureEvent
  ? Omit<MeasureEvent, "reading">
  : E extends LookEvent
    ? Omit<LookEvent, "finding">
    : E;
/** An event that has not happened yet: a measure has no reading, a look no finding. */
export type Action = WithoutReading<JobEvent>;

/** One thing that may come out, what it would mean. `low`/`high` are null where the outcome is no number. */
export interface Expectation {
  readonly if: string;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: string;
  readonly probability: number;
  /** in the trade's words, e.g. "BR1 or C1-C3 shorted" */
  readonly means: string;
}

/** What could still waste the money this action spends. */
export interface AtStake {
  readonly money: number;
  readonly risks: readonly {
    readonly what: string;
    readonly probability: number;
    readonly minutesToRuleOut: number | null;
  }[];
  /** "the shop's usual price" where no price is agreed */
  readonly priceNote: string | null;
}

/** One way to feed the board, and what it would break. */
export interface FeedRisk {
  /** e.g. "lamp, 100 W" */
  readonly what: string;
  readonly anyBreaks: number;
  /** money expected to be lost by what breaks */
  readonly lossMoney: number;
  /** the feed of this step */
  readonly chosen: boolean;
}

/** One rung of the ladder as it stands on this board and this bench. */
export interface RungState {
  readonly name: string;
  /** `shut`: not before what `note` says */
  readonly state: "done" | "now" | "open" | "shut";
  /** why it is shut and what opens it, or why it is left out; null where nothing is to be said */
  readonly note: string | null;
}

/** What would break at power-up, from what is still believed. */
export interface Forecast {
  /** what this rung proves, when to go on, when to stop */
  readonly rung: { readonly proves: string; readonly goOn: string; readonly stop: string };
  readonly ladder: readonly RungState[];
  /** every feed this bench can do, gentlest first */
  readonly feeds: readonly FeedRisk[];
  /** cold checks that would see beforehand most of what this feed would lose, by what they save a minute */
  readonly lowers: readonly {
    readonly what: string;
    readonly minutes: number;
    /** share of the expected loss that is seen beforehand */
    readonly share: number;
  }[];
  /** money already spent on parts for this job, and the chance that this power-up shows it lost; null: nothing spent */
  readonly spent: { readonly money: number; readonly probability: number } | null;
  /** probability that anything breaks */
  readonly anyBreaks: number;
  readonly breaks: readonly {
    readonly part: string;
    readonly probability: number;
    readonly because: string;
  }[];
  /** lamp watts or current limit to use, with the reason */
  readonly advice: string;
}

export interface Proposal {
  readonly action: Action;
  /** further measure events worth taking with the same set-up */
  readonly row: readonly Action[];
  readonly minutes: number;
  readonly money: number;
  readonly why: string;
  readonly expect: readonly Expectation[];
  readonly others: readonly {
    readonly action: Action;
    readonly minutes: number;
    readonly money: number;
    readonly why: string;
  }[];
  readonly cautions: readonly string[];
  readonly atStake: AtStake | null;
  readonly forecast: Forecast | null;
  /** the gate that this step serves, which one tap and a reason pass over; left out: none of its own */
  readonly gate?: "motor";
  /** what to watch at this power-up, or at the one that is on; null where the step is at none. Worked out when asked. */
  firstMinute(): FirstMinute | null;
  /** what going on costs from here, and when to stop. Worked out when asked. */
  costToGo(): CostToGo;
  /** where the probes go, in the largest words */
  readonly probesOn: string | null;
  /** expected result of the job from here, in the job's currency, and the chance it ends repaired */
  readonly outlook: { readonly expectedMargin: number; readonly repairProbability: number };
}
