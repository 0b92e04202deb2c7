/** What one closed job teaches, in expected counts: the faults it had as far as its readings and its end tell, beside those it was to have. */
import type { FaultMode } from "../board/fault.ts";
import type { Cause } from "../priors/cause.ts";
import type { GoodReading } from "./references.ts";

/** First faults: `expected` by the tables before any reading, `count` by all readings and the outcome. Both are sums of probabilities. */
export interface Tally {
  readonly expected: number;
  readonly count: number;
  /** sum of the squares of the probabilities that `expected` is the sum of: how near to certain they are each */
  readonly expectedSquares: number;
  /** of `count`, what no reading has shown: it stands there for the tables' rates alone */
  readonly unseen: number;
  /** the same of `unseen` */
  readonly unseenSquares: number;
  /** the tables' rates, whether or not a board is brought in */
  readonly rate: number;
  /** those rates, each weighed by the chance that such a fault brings the board in as it came */
  readonly bringing: number;
}

export interface ModeTally extends Tally {
  readonly sort: string;
  /** null: a leak between nets */
  readonly shape: string | null;
  readonly mode: FaultMode;
}

export interface PartTally extends Tally {
  readonly part: string;
  readonly sort: string;
}

/** How often one rule's parent was there and its child could follow, and how often it did, beside what the table's strength makes of it. */
export interface KnockOnTally {
  readonly rule: string;
  readonly trials: number;
  readonly expected: number;
  readonly count: number;
}

/** Minutes that one kind of action took against those of the format, as the natural logarithm of their ratio. */
export interface PaceTaken {
  readonly action: string;
  readonly logRatios: readonly number[];
}

/** A part bought: what was paid, and what it was to cost by the board file or the usual share of a new board. */
export interface PricePaid {
  readonly part: string;
  readonly kind: string;
  readonly paid: number;
  readonly usual: number;
}

export interface Lesson {
  readonly family: string;
  readonly boardName: string;
  /** what the board is known by, whatever it was called at the time */
  readonly identity: string;
  readonly cause: Cause;
  /** parts on the board, by sort */
  readonly seen: Readonly<Record<string, number>>;
  /** by the tables' figures, the chance that nothing brings such a board in: what it is known not to have been */
  readonly stayedAway: number;
  readonly modes: readonly ModeTally[];
  readonly parts: readonly PartTally[];
  readonly knockOns: readonly KnockOnTally[];
  readonly paces: readonly PaceTaken[];
  readonly prices: readonly PricePaid[];
  /** what a good board beside it read */
  readonly good: readonly GoodReading[];
  /** the board had been here before, and its parts were counted then */
  readonly again: boolean;
}
