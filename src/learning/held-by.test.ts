import { describe, expect, it } from "vitest";
import { betaEvidence, gammaEvidence, HELD_TIMES, heldMean, heldShares } from "./held-by.ts";

const WORTH = 20;

/** The number of events that a Poisson of this mean stays below with this probability. */
function poissonQuantile(mean: number, probability: number): number {
  let [events, chance] = [0, Math.exp(-mean)];
  for (let below = chance; below < probability; below += chance) chance *= mean / ++events;
  return events;
}

/** Shares after counts of ninety keys, each of which truly has `factor` times what was expected, scattered as chance scatters them. */
function sharesAfter(factor: (key: number) => number): readonly number[] {
  const counts = Array.from({ length: 90 }, (_, key) =>
    poissonQuantile(40 * factor(key), (((7 * key) % 90) + 0.5) / 90),
  );
  return heldShares((times) =>
    counts.reduce(
      (sum, count) => sum + gammaEvidence({ shape: WORTH * times, rate: WORTH * times }, count, 40),
      0,
    ),
  );
}

describe("how strongly what stood before is held", () => {
  it("is anything before something was counted", () => {
    expect(heldShares(() => 0)).toEqual(HELD_TIMES.map(() => 1 / HELD_TIMES.length));
  });

  it("is hard where ninety sorts scatter as chance has it, and by the table's counts alone where each is off by itself", () => {
    const alike = sharesAfter(() => 1);
    expect((alike[2] ?? 0) + (alike[3] ?? 0)).toBeGreaterThan(0.9);
    const apart = sharesAfter((key) => (key % 2 === 0 ? 1.8 : 0.4));
    expect(apart[0]).toBeGreaterThan(0.99);
    expect(heldMean(apart, (times) => times)).toBeCloseTo(1, 1);
  });

  it("by the evidence of a Gamma: events of a rate that is known for certain are Poisson", () => {
    // a Gamma worth a million is the rate 1: log-probabilities of 3 and of 5 events in an exposure of 4 differ as Poisson's do
    const sure = { shape: 1e6, rate: 1e6 };
    const poissonLog = (n: number, factorial: number) => n * Math.log(4) - 4 - Math.log(factorial);
    // what all Gammas have in common: exposure^n / n!
    const common = (n: number, factorial: number) => n * Math.log(4) - Math.log(factorial);
    for (const [n, factorial] of [
      [3, 6],
      [5, 120],
    ] as const)
      expect(gammaEvidence(sure, n, 4) + common(n, factorial)).toBeCloseTo(poissonLog(n, factorial), 4);
  });

  it("by the evidence of a flat Beta: every number of yes is as likely, 1 in 11 of ten trials", () => {
    // over the ways in which 3 of 10 may be chosen, 120
    expect(120 * Math.exp(betaEvidence({ yes: 1, no: 1 }, 3, 7))).toBeCloseTo(1 / 11, 10);
  });
});
