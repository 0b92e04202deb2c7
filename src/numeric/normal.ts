/** The normal distribution, right in its far tails. */

/** ln of the standard normal density. */
export function logNormalDensity(x: number): number {
  return -0.5 * x * x - 0.9189385332046727; // ln sqrt(2 pi)
}

/**
 * P(X > x) for a standard normal X: Abramowitz & Stegun 7.1.26-style fits lose the tail, so this is the continued fraction of
 * Laplace beyond 3 and the Taylor series of the error function below (A&S 7.1.5, 26.2.14).
 */
export function normalTail(x: number): number {
  if (x < 0) return 1 - normalTail(-x);
  if (x > 3) {
    let fraction = x;
    for (let k = 40; k >= 1; k--) fraction = x + k / fraction;
    return Math.exp(logNormalDensity(x)) / fraction;
  }
  let term = x;
  let sum = x;
  for (let k = 1; k < 60; k++) {
    term *= (-x * x) / (2 * k);
    sum += term / (2 * k + 1);
  }
  return 0.5 - sum * 0.3989422804014327; // 1 / sqrt(2 pi)
}
