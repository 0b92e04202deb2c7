/**
 * How strongly what stood before is held, learnt from all counts of a level together. Where they scatter no more than chance has it, the bench
 * is much as the tables have it, and each figure is held the harder; where they scatter more, the pseudo-counts of the table count alone
 * (a hyperparameter averaged over by its evidence; Gelman and others, Bayesian Data Analysis, chapter 5).
 */
import { logGamma } from "../numeric/gamma-function.ts";
import type { Beta, Gamma } from "./conjugate.ts";

/** Times the table's pseudo-counts; before anything is seen one is as likely as another. From memory: the last is as good as never. */
export const HELD_TIMES = [1, 4, 16, 64] as const;

/** Probability of each of `HELD_TIMES`, by the logarithms of its evidence. */
export function heldShares(evidence: (times: number) => number): readonly number[] {
  const logs = HELD_TIMES.map(evidence);
  const most = Math.max(...logs);
  const shares = logs.map((log) => Math.exp(log - most));
  const sum = shares.reduce((total, share) => total + share, 0);
  return shares.map((share) => share / sum);
}

/** The mean of figures that were worked out for each of `HELD_TIMES`. */
export function heldMean(shares: readonly number[], figure: (times: number, at: number) => number): number {
  return HELD_TIMES.reduce<number>((sum, times, at) => sum + (shares[at] ?? 0) * figure(times, at), 0);
}

/** Log-probability of so many events in this exposure where the rate is a Gamma, but for what every Gamma has in common. */
export function gammaEvidence({ shape, rate }: Gamma, events: number, exposure: number): number {
  return (
    logGamma(shape + events) -
    logGamma(shape) +
    shape * Math.log(rate) -
    (shape + events) * Math.log(rate + exposure)
  );
}

/** The same of so many yes and no where their chance is a Beta. */
export function betaEvidence(prior: Beta, yes: number, no: number): number {
  const logBeta = (a: number, b: number) => logGamma(a) + logGamma(b) - logGamma(a + b);
  return logBeta(prior.yes + yes, prior.no + no) - logBeta(prior.yes, prior.no);
}
