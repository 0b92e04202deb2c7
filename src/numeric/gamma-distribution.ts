import { logGamma } from "./gamma-function.ts";
import { quantileOf } from "./quantile.ts";

/** P(X <= x) for X of a Gamma with this shape and rate 1: the series below the mean (A&S 6.5.29), the fraction above (6.5.31). */
export function gammaCumulative(x: number, shape: number): number {
  if (x <= 0) return 0;
  const log = shape * Math.log(x) - x - logGamma(shape);
  if (x < shape + 1) {
    let term = 1 / shape;
    let sum = term;
    for (let k = 1; k < 2000 && term > sum * 1e-17; k++) {
      term *= x / (shape + k);
      sum += term;
    }
    return Math.exp(log) * sum;
  }
  let b = x + 1 - shape;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let k = 1; k < 2000; k++) {
    const step = -k * (k - shape);
    b += 2;
    d = 1 / (step * d + b);
    c = b + step / c;
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return 1 - Math.exp(log) * value;
}

/** The value that lies below with this probability, of a Gamma with this shape and rate. */
export function gammaQuantile(probability: number, shape: number, rate: number): number {
  return quantileOf((x) => gammaCumulative(x, shape), probability, 0, Number.POSITIVE_INFINITY) / rate;
}
