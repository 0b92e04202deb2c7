import { describe, expect, it } from "vitest";
import { betaSpread, gammaSpread, updateBeta, updateGamma, updateNormal, updateShares } from "./conjugate.ts";

describe("counts added to what was believed", () => {
  it("V1, V2: 437 of 980 on a flat prior is Beta(438, 544), mean .44602851, 95 % in .41506549 to .47719977 (BDA chapter 2)", () => {
    const after = updateBeta({ yes: 1, no: 1 }, 437, 980 - 437);
    expect(after).toEqual({ yes: 438, no: 544 });
    const { mean, low, high } = betaSpread(after, 0.95);
    expect(mean).toBeCloseTo(0.44602851, 8);
    expect(low).toBeCloseTo(0.41506549, 8);
    expect(high).toBeCloseTo(0.47719977, 8);
  });

  it.each([
    [
      [1, 1, 1],
      [5, 2, 3],
      [0.461538, 0.230769, 0.307692],
    ],
    [
      [10, 4, 6],
      [12, 8, 5],
      [0.488889, 0.266667, 0.244444],
    ],
    [
      [2, 3, 4, 5],
      [1, 0, 6, 2],
      [0.130435, 0.130435, 0.434783, 0.304348],
    ],
    [
      [0.8, 1.5, 2, 0.7],
      [0, 1, 0, 2],
      [0.1, 0.3125, 0.25, 0.3375],
    ],
  ])(
    "V3: Dirichlet %j and counts %j have the means %j (functions.boardflare.com)",
    (pseudo, counts, means) => {
      updateShares(pseudo, counts).forEach((share, at) => {
        expect(share).toBeCloseTo(means[at] ?? Number.NaN, 6);
      });
    },
  );

  it("V4: a Dirichlet's mean is (a_i + x_i) / (n + sum of a) (Berkeley STAT 238, lecture 13)", () => {
    const [pseudo, counts] = [
      [0.3, 2.2, 7],
      [11, 0, 4],
    ];
    const [n, a] = [15, 9.5];
    updateShares(pseudo, counts).forEach((share, at) => {
      expect(share).toBeCloseTo((pseudo[at] + counts[at]) / (n + a), 14);
    });
  });

  it("V11: a poll of 727, 583 and 137 on a flat prior is Dirichlet(728, 584, 138) (BDA3 chapter 3, from memory)", () => {
    const shares = updateShares([1, 1, 1], [727, 583, 137]);
    expect(shares.map((share) => share * 1450)).toEqual([
      expect.closeTo(728, 9),
      expect.closeTo(584, 9),
      expect.closeTo(138, 9),
    ]);
  });

  it("a mode that was looked for twice as hard, and met twice as often, has the same share as before", () => {
    const even = updateShares([2, 2], [40, 40], [80, 80]);
    const skewed = updateShares([2, 2], [80, 40], [160, 80]);
    expect(even).toEqual([0.5, 0.5]);
    expect(skewed[0]).toBeCloseTo(0.5, 12);
  });

  it("a rate after events in an exposure is their ratio, prior's own counts included", () => {
    // one pseudo-event in one unit, then three in nine: Gamma(4, 10); of one event alone the ends are the exponential's
    expect(gammaSpread(updateGamma({ shape: 1, rate: 1 }, 3, 9)).mean).toBeCloseTo(0.4, 14);
    const one = gammaSpread({ shape: 1, rate: 1 }, 0.9);
    expect(one.low).toBeCloseTo(-Math.log(0.95), 12);
    expect(one.high).toBeCloseTo(-Math.log(0.05), 12);
  });

  it("a mean is the weighted one, in one step or in many", () => {
    const prior = { mean: 2, weight: 4 };
    const whole = updateNormal(prior, (1 + 4 + 7) / 3, 3);
    const steps = [1, 4, 7].reduce((now, value) => updateNormal(now, value, 1), prior);
    expect(whole).toEqual({ mean: 20 / 7, weight: 7 });
    expect(steps.mean).toBeCloseTo(20 / 7, 14);
  });
});
