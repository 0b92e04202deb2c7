/** Sums of probabilities kept as natural logarithms. */

/** ln(sum of exp(values)); -Infinity for an empty list. */
export function logSumExp(values: ArrayLike<number>): number {
  let largest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) if (values[i] > largest) largest = values[i];
  if (largest === Number.NEGATIVE_INFINITY) return largest;
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += Math.exp(values[i] - largest);
  return largest + Math.log(sum);
}

/** ln(exp(a) + exp(b)). */
export function logAdd(a: number, b: number): number {
  const high = Math.max(a, b);
  if (high === Number.NEGATIVE_INFINITY) return high;
  return high + Math.log1p(Math.exp(Math.min(a, b) - high));
}

/** ln(1 - exp(-rate)) for rate > 0: the log chance that a Poisson failure of that rate has happened. */
export function logFailed(rate: number): number {
  return Math.log(-Math.expm1(-rate));
}
