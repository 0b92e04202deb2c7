import type { Outcome, Partition } from "./check-outcomes.ts";
import { worthAfter } from "./decision.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { jobValue } from "./value.ts";

/** A step that finds something out: what it takes, and what may come of it. */
export interface FindingStep {
  readonly action: Action;
  /** further checks of the same set-up, included in the outcomes */
  readonly row: readonly Action[];
  /** of the action alone */
  readonly minutes: number;
  /** of everything the outcomes need: the row, and what has to be put back */
  readonly allMinutes: number;
  readonly outcomes: readonly Outcome[];
  /** P(outcome | hypothesis), one array over the hypotheses for each outcome */
  readonly shares: readonly Float64Array[];
  /** the part on whose own pins the probes stand */
  readonly inHand: string | null;
  /** money that the step itself is expected to destroy (power only) */
  readonly lossMoney: number;
  /** one sentence on what it does, where the check itself does not say */
  readonly lead: string | null;
}

/** A step of one action on its own: what it tells, and its minutes. */
export function plainStep(
  action: Action,
  { outcomes, shares }: Pick<FindingStep, "outcomes" | "shares">,
  minutes: number,
  allMinutes: number = minutes,
): FindingStep {
  return { action, row: [], minutes, allMinutes, outcomes, shares, inHand: null, lossMoney: 0, lead: null };
}

/** What a partition tells. */
export function toldBy(partition: Partition): Pick<FindingStep, "outcomes" | "shares"> {
  return { outcomes: partition.outcomes, shares: partitionShares(partition) };
}

/** The shares of a partition: one where the hypothesis leads to the outcome, else zero. */
export function partitionShares({ classOf, outcomes }: Partition): Float64Array[] {
  const shares = outcomes.map(() => new Float64Array(classOf.length));
  classOf.forEach((outcome, h) => {
    shares[outcome][h] = 1;
  });
  return shares;
}

/**
 * Expected worth of the job after a step, before the step's own cost. A slipped reading lets a little of every hypothesis through
 * whatever came out.
 * @param slip - chance that the outcome says nothing
 */
export function valueAfter(
  shares: readonly Float64Array[],
  hypotheses: Hypotheses,
  model: RepairModel,
  minutesPerBit: number,
  slip: number,
): number {
  const states = {
    weights: Float64Array.from(hypotheses.list, ({ weight }) => weight),
    groupOf: model.groupOf,
    groupCount: model.groups.length,
  };
  return worthAfter(shares, states, slip, (weights) => jobValue(weights, model, minutesPerBit));
}

/** Probability of each outcome among the hypotheses weighed. */
export function outcomeProbabilities(
  shares: readonly Float64Array[],
  hypotheses: Hypotheses,
): readonly number[] {
  const weights = shares.map((share) =>
    hypotheses.list.reduce((sum, { weight }, h) => sum + share[h] * weight, 0),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => (total > 0 ? weight / total : 0));
}
