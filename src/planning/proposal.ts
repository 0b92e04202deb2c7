import type { JobEvent, LookEvent, MeasureEvent } from "../bench/event.ts";
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

/** What would break at power-up, from what is still believed. */
export interface Forecast {
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
  /** what to watch at this power-up, or at the one that is on; null where the step is at none. Worked out when asked. */
  firstMinute(): FirstMinute | null;
  /** where the probes go, in the largest words */
  readonly probesOn: "ON THE BOARD" | "ON THE PART IN YOUR HAND" | null;
  /** expected result of the job from here, in the job's currency, and the chance it ends repaired */
  readonly outlook: { readonly expectedMargin: number; readonly repairProbability: number };
}
