/**
 * The updates that all learning here rests on: what was believed stands as counts, and what was seen is added to them
 * (Gelman and others, Bayesian Data Analysis, chapters 2 and 3).
 */
import { betaQuantile } from "../numeric/beta-distribution.ts";
import { gammaQuantile } from "../numeric/gamma-distribution.ts";

/** A figure with what it may be: its mean, and the ends between which it lies with the probability asked for. */
export interface Spread {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** Probability that a figure lies between the ends shown of it. */
export const SHOWN_WITHIN = 0.9;

export interface Beta {
  readonly yes: number;
  readonly no: number;
}

/** Beta(a, b) after `yes` of `yes + no` trials is Beta(a + yes, b + no); counts may be expected ones and no whole numbers. */
export function updateBeta(prior: Beta, yes: number, no: number): Beta {
  return { yes: prior.yes + yes, no: prior.no + no };
}

export function betaSpread({ yes, no }: Beta, within = SHOWN_WITHIN): Spread {
  const tail = (1 - within) / 2;
  return {
    mean: yes / (yes + no),
    low: betaQuantile(tail, yes, no),
    high: betaQuantile(1 - tail, yes, no),
  };
}

export interface Gamma {
  /** events seen, those of the prior among them */
  readonly shape: number;
  /** exposure in which they were seen */
  readonly rate: number;
}

/** A Gamma after `events` in `exposure`: shape and rate grow by them. */
export function updateGamma(prior: Gamma, events: number, exposure: number): Gamma {
  return { shape: prior.shape + events, rate: prior.rate + exposure };
}

export function gammaSpread({ shape, rate }: Gamma, within = SHOWN_WITHIN): Spread {
  const tail = (1 - within) / 2;
  return {
    mean: shape / rate,
    low: gammaQuantile(tail, shape, rate),
    high: gammaQuantile(1 - tail, shape, rate),
  };
}

/**
 * Shares after counts: each share is a Gamma of its own whose sum is made one, which is the Dirichlet where all were exposed alike,
 * (a_i + x_i) / (sum of a + sum of x). Where what happened to the boards made some likelier to be met than others, each has an exposure
 * of its own: the number of parts' failures in which it could have been the mode, weighed by what made it likelier.
 * @param pseudo - the prior's counts, one a share
 * @param counts - what was seen, same order
 * @param exposures - same order; left out: all were exposed alike, to the sum of the counts
 * @returns shares that sum to one, same order
 */
export function updateShares(
  pseudo: readonly number[],
  counts: readonly number[],
  exposures?: readonly number[],
): number[] {
  const strength = pseudo.reduce((sum, one) => sum + one, 0);
  const seen = counts.reduce((sum, one) => sum + one, 0);
  const rates = pseudo.map((one, at) => (one + counts[at]) / (strength + (exposures?.[at] ?? seen)));
  const total = rates.reduce((sum, one) => sum + one, 0);
  return rates.map((one) => one / total);
}

export interface Normal {
  readonly mean: number;
  /** how many observations it is worth */
  readonly weight: number;
}

/** A mean known as well as `weight` observations know it, after `count` more whose mean this is. */
export function updateNormal(prior: Normal, mean: number, count: number): Normal {
  const weight = prior.weight + count;
  return { mean: count === 0 ? prior.mean : (prior.weight * prior.mean + count * mean) / weight, weight };
}
