const SQRT_TWO_PI_LOG = 0.9189385332046727; // ln sqrt(2 pi)
/** Bernoulli terms of Stirling's series, B(2k) / (2k (2k - 1)): Abramowitz & Stegun 6.1.40. */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];
/** Above this the series is right to the last digits of a double. */
const ASYMPTOTIC = 10;

/** ln of the gamma function for x > 0: Stirling's series (A&S 6.1.40), reached by the recurrence where x is small. */
export function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  for (; z < ASYMPTOTIC; z++) shift += Math.log(z);
  const inverse = 1 / (z * z);
  let power = 1 / z;
  let series = 0;
  for (const term of STIRLING) {
    series += term * power;
    power *= inverse;
  }
  return (z - 0.5) * Math.log(z) - z + SQRT_TWO_PI_LOG + series - shift;
}
