/** The job's money as the page shows it: plain data. Amounts are text in exact decimal, all digits of the currency. */
import type { OfferName, QuoteAnswer } from "../bench/event.ts";

export interface MoneyLine {
  readonly words: string;
  readonly amount: string;
  /** the price was not noted: the usual one stands in */
  readonly estimated: boolean;
}

/** A figure expected, and the span of eight in ten such jobs. */
export interface SpreadView<Figure> {
  readonly mean: Figure;
  readonly low: Figure;
  readonly high: Figure;
}

/** Going on from here, by the planner's own plan. */
export interface ToGoView {
  readonly minutes: SpreadView<number>;
  readonly parts: SpreadView<string>;
  /** the hour counted */
  readonly money: SpreadView<string>;
  readonly repairProbability: number;
  /** expected margin of going on, from here; what is spent is spent */
  readonly margin: string;
  /** once more than this is still expected, giving up is better */
  readonly stopLine: string;
  /** the same if the board stayed with the shop; null where that changes nothing */
  readonly stopLineWithRemains: string | null;
  /** is more still expected than the stop line allows? */
  readonly over: boolean;
}

export interface BillView {
  /** the job is open: the bill as it would be now */
  readonly soFar: boolean;
  readonly basis: string;
  readonly lines: readonly (MoneyLine & { readonly minutes: number | null })[];
  readonly net: string;
  /** per cent */
  readonly taxPercent: number;
  readonly tax: string;
  readonly total: string;
}

export interface OfferView {
  readonly offer: OfferName;
  readonly price: string | null;
  readonly cap: string | null;
  readonly why: string;
}

export interface QuoteView {
  readonly offers: readonly OfferView[];
  readonly advised: OfferName;
  readonly reason: string;
  /** what the advice rests on, for the customer's paper */
  readonly grounds: "chance" | "over-half" | "stop" | "price" | "runs";
  /** chance that going on ends repaired */
  readonly repairProbability: number;
  /** the last answer in the log; null where none was given */
  readonly answered: {
    readonly offer: OfferName;
    readonly answer: QuoteAnswer;
    readonly price: string | null;
    readonly cap: string | null;
  } | null;
}

export interface MoneyView {
  readonly currency: string;
  readonly spent: {
    readonly minutes: number;
    readonly labour: string;
    readonly parts: readonly MoneyLine[];
    readonly total: string;
  };
  /** null where nothing more is expected: the job is closed, or the board has run */
  readonly toGo: ToGoView | null;
  /** what to make of it, in one sentence */
  readonly advice: string;
  /** what the bill may come to exceeds the cap accepted: ask again; null where not */
  readonly askAgain: string | null;
  readonly givenUp: {
    readonly rows: readonly {
      readonly what: string;
      readonly amount: string;
      readonly counted: boolean;
      readonly why: string;
    }[];
    readonly total: string;
    /** less what the job has taken */
    readonly result: string;
  };
  readonly quote: QuoteView;
  readonly bill: BillView;
}
