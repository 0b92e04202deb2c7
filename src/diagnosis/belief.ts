import type { FaultPrior } from "../priors/fault-prior.ts";

/** A fault with the log index of the event that brought it (-1: the board came in with it). */
export interface DatedFault {
  /** index into the prior table */
  readonly fault: number;
  readonly since: number;
}

/** An explanation: a set of faults that the readings need (a core), and what stands beside it unseen. */
export interface Explanation {
  readonly faults: readonly DatedFault[];
  /** of `faults`, those still on the board (not cured by a later replacement) */
  readonly presentNow: readonly number[];
  readonly probability: number;
  /**
   * For each fault of the prior table the probability that it is present now beside this core although no reading could have
   * shown it (0 for faults that a reading would have shown).
   */
  readonly silent: Float64Array;
  /** probability that nothing stands beside it now: faults that explain the same thing are each other's alternatives, so no product of `silent` */
  readonly nothingBeside: number;
  /**
   * For each fault of the prior table the probability that the board came in with it beside this core, unseen, cured since or not;
   * worked out when asked, and only `believe` can tell
   */
  readonly arrivedBeside?: () => Float64Array;
  /** log likelihood of each reading (by log index) under this explanation */
  readonly readingLogLikelihood: ReadonlyMap<number, number>;
}

export interface SuspectMode {
  readonly fault: string;
  readonly probability: number;
}

/** One reading's weight in a verdict on a part. */
export interface Reason {
  readonly logIndex: number;
  /** natural log of how much more likely the reading is with the part's best fault than without it */
  readonly logRatio: number;
  /** what the part's best fault would have read, in the meter's words (`0.00 V`, `OL`) */
  readonly withFault: string;
  readonly without: string;
}

/** Why a part is suspected or cleared. */
export interface Because {
  /** readings for and against the part's best fault, weightiest first */
  readonly speaksFor: readonly Reason[];
  readonly speaksAgainst: readonly Reason[];
  /** parts whose fault (in the best explanation) hides this one's from every reading that would otherwise show it */
  readonly maskedBy: readonly string[];
  /** no reading taken so far could have shown any fault of it */
  readonly untested: boolean;
}

export interface Suspect {
  readonly part: string;
  /** probability that it is faulty now */
  readonly probability: number;
  readonly modes: readonly SuspectMode[];
  /** worked out when first asked: nobody reads the reasons of a hundred parts after every reading */
  because(): Because;
}

export interface Belief {
  readonly priors: readonly FaultPrior[];
  /** every part of the board, most probable first */
  readonly suspects: readonly Suspect[];
  readonly healthyProbability: number;
  /** most probable first; with `remainder` they sum to one */
  readonly explanations: readonly Explanation[];
  readonly remainder: number;
  /** log indexes of readings that no explanation accounts for */
  readonly unexplained: readonly number[];
  /** predictions that did not converge, one sentence each (they count as no evidence) */
  readonly notSolved: readonly string[];
}
