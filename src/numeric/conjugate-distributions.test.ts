import { describe, expect, it } from "vitest";
import { betaCumulative, betaQuantile } from "./beta-distribution.ts";
import { gammaCumulative, gammaQuantile } from "./gamma-distribution.ts";
import { logGamma } from "./gamma-function.ts";

describe("the gamma function", () => {
  it("is the factorial at whole numbers and the root of pi at a half", () => {
    let factorial = 1;
    for (let n = 1; n < 20; n++) {
      expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 12);
      factorial *= n;
    }
    expect(logGamma(0.5)).toBeCloseTo(0.5 * Math.log(Math.PI), 13);
  });
});

describe("a share's distribution", () => {
  it("is a power where one of its numbers is one", () => {
    for (const x of [0.05, 0.4, 0.93]) {
      expect(betaCumulative(x, 3.5, 1)).toBeCloseTo(x ** 3.5, 13);
      expect(betaCumulative(x, 1, 0.7)).toBeCloseTo(1 - (1 - x) ** 0.7, 13);
    }
  });

  it("is a sum of the binomial's terms at whole numbers", () => {
    // P(Beta(a, b) <= x) is the chance of a or more successes in a + b - 1 trials of chance x
    const [a, b, x] = [4, 7, 0.37];
    const trials = a + b - 1;
    const choose = (k: number) => Math.exp(logGamma(trials + 1) - logGamma(k + 1) - logGamma(trials - k + 1));
    let sum = 0;
    for (let k = a; k <= trials; k++) sum += choose(k) * x ** k * (1 - x) ** (trials - k);
    expect(betaCumulative(x, a, b)).toBeCloseTo(sum, 12);
  });

  it("has its quantile where it has its probability", () => {
    for (const p of [0.001, 0.025, 0.5, 0.999])
      expect(betaCumulative(betaQuantile(p, 2.3, 41), 2.3, 41)).toBeCloseTo(p, 12);
  });
});

describe("a rate's distribution", () => {
  it("is the exponential for one failure seen, and the Poisson sum for more", () => {
    expect(gammaCumulative(0.7, 1)).toBeCloseTo(1 - Math.exp(-0.7), 13);
    // P(Gamma(5) > x) is the chance of fewer than five events at rate x
    for (const x of [0.3, 4, 19]) {
      let fewer = 0;
      for (let k = 0, term = Math.exp(-x); k < 5; term *= x / ++k) fewer += term;
      expect(1 - gammaCumulative(x, 5)).toBeCloseTo(fewer, 12);
    }
  });

  it("has its quantile where it has its probability, in units of its rate", () => {
    expect(gammaQuantile(0.95, 1, 2)).toBeCloseTo(-Math.log(0.05) / 2, 12);
    for (const p of [0.05, 0.5, 0.95])
      expect(gammaCumulative(gammaQuantile(p, 27.4, 1), 27.4)).toBeCloseTo(p, 12);
  });
});
