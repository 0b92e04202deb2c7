/**
 * The decision itself, without boards: the best course for a weighting of states, and what finding something out first is worth. Stopping, repairing
 * and every check are weighed by these two functions alone. Method: preposterior analysis (Raiffa & Schlaifer 1961).
 */

/** One thing that can be done, and its worth in money times weight. */
export interface Course<Name extends string> {
  readonly course: Name;
  readonly value: number;
}

/** The course of most worth; of equals the earliest, so that stopping, named first, is only left for something better. */
export function bestOf<Name extends string>(
  first: Course<Name>,
  ...others: readonly Course<Name>[]
): Course<Name> {
  return others.reduce((best, one) => (one.value > best.value ? one : best), first);
}

/** States of which several may call for the same: `weights` one for each state, `groupOf` the group that the state counts to. */
export interface States {
  readonly weights: ArrayLike<number>;
  readonly groupOf: ArrayLike<number>;
  readonly groupCount: number;
}

/**
 * Expected worth once something has been found out, its cost not counted: over all that may come out, the worth of going on with the
 * weights that are then left. Less the worth of going on now it is the value of the information (of a sample, or of a perfect one where each
 * state has an outcome of its own).
 * @param shares - P(outcome | state), one array over the states for each outcome
 * @param slip - chance that the outcome says nothing: a little of every state is let through whatever came out
 * @param worth - worth of the best course, in money times weight, for the weights of the groups
 */
export function worthAfter(
  shares: readonly ArrayLike<number>[],
  states: States,
  slip: number,
  worth: (weights: Float64Array) => number,
): number {
  const { weights: before, groupOf, groupCount } = states;
  let value = 0;
  const weights = new Float64Array(groupCount);
  for (const share of shares) {
    weights.fill(0);
    let reached = 0;
    for (let h = 0; h < share.length; h++) reached += share[h] * before[h];
    if (reached === 0) continue;
    for (let h = 0; h < share.length; h++) {
      const kept = (1 - slip) * share[h] + slip * reached;
      weights[groupOf[h]] += kept * before[h];
    }
    value += worth(weights);
  }
  return value;
}

/** What finding out is worth above its cost: worth doing where `net` is above 0, first where `perMoney` is most. */
export function gainOf(
  after: number,
  now: number,
  cost: number,
): { readonly net: number; readonly perMoney: number } {
  const gain = after - now;
  return { net: gain - cost, perMoney: gain / Math.max(cost, LEAST_COST) };
}

/** What costs nothing is divided by this. */
const LEAST_COST = 1e-6;
