/**
 * Evidence: one reading (or a group that shares a hidden unknown) as the search sees it. It answers two questions of a set
 * of faults on the board at that moment: how likely is what was seen, and which further faults could have changed it.
 */

/**
 * What all readings of one meter and one room have in common is one standard normal unknown, summed over an even grid. A
 * quadrature of few points misses a log that pins the unknown between two of them; a reading is smoothed over the width of a
 * cell instead (`reading-model.ts`).
 */
export const COMMON_STEP = 0.5;
export const COMMON_POINTS: readonly number[] = Array.from({ length: 13 }, (_, k) => (k - 6) * COMMON_STEP);
export const COMMON_WEIGHTS: readonly number[] = (() => {
  const density = COMMON_POINTS.map((z) => Math.exp(-0.5 * z * z));
  const total = density.reduce((sum, one) => sum + one, 0);
  return density.map((one) => one / total);
})();

export interface Evidence {
  readonly logIndex: number;
  /** an upper bound of any log likelihood this evidence can give */
  readonly best: number;
  /** ln P(seen | faults, common unknown at each point); `faults` are prior-table indexes, sorted, present at `logIndex` */
  logLikelihood(faults: readonly number[]): Float64Array; // (COMMON_POINTS.length)
  /** 1 for each fault of the prior table that could change the answer when added to `faults` */
  audible(faults: readonly number[]): Uint8Array; // (faults of the prior table)
  /** the same question about one fault */
  hears(faults: readonly number[], fault: number): boolean;
  /** what would have been seen with these faults, in the meter's words */
  wouldShow(faults: readonly number[]): string;
  /** ln of what a slip alone would give: a reading no better explained than this is unexplained */
  readonly slip: number;
}

/** One piece of evidence with the log indexes it speaks for. */
export interface Piece {
  readonly evidence: Evidence;
  readonly logIndexes: readonly number[];
}

/** ln of the sum over the common unknown, with the given log weights. */
export function overCommon(vector: Float64Array, logWeights: Float64Array): number {
  let largest = Number.NEGATIVE_INFINITY;
  for (let z = 0; z < vector.length; z++) largest = Math.max(largest, vector[z] + logWeights[z]);
  if (largest === Number.NEGATIVE_INFINITY) return largest;
  let sum = 0;
  for (let z = 0; z < vector.length; z++) sum += Math.exp(vector[z] + logWeights[z] - largest);
  return largest + Math.log(sum);
}
