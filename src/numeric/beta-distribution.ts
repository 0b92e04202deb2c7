import { logGamma } from "./gamma-function.ts";
import { quantileOf } from "./quantile.ts";

/** The continued fraction of the incomplete beta function (A&S 26.5.8) by Lentz's way of evaluating one from the front. */
function fraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const safe = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / safe(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / safe(1 + even * d);
    c = safe(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / safe(1 + odd * d);
    c = safe(1 + odd / c);
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return value;
}

/** P(X <= x) for X of a Beta(a, b), a and b above 0. */
export function betaCumulative(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const log = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  // The fraction settles fast on the side of the mean that x lies on.
  if (x < (a + 1) / (a + b + 2)) return (Math.exp(log) * fraction(x, a, b)) / a;
  return 1 - (Math.exp(log) * fraction(1 - x, b, a)) / b;
}

/** The share that lies below with this probability, of a Beta(a, b). */
export function betaQuantile(probability: number, a: number, b: number): number {
  return quantileOf((x) => betaCumulative(x, a, b), probability, 0, 1);
}
