import { describe, expect, it } from "vitest";
import type { Belief } from "../src/diagnosis/belief.ts";
import { calibrationOf, compared, scoreOf } from "./shop-score.ts";

const belief = (probabilities: Readonly<Record<string, number>>): Belief => ({
  priors: [],
  suspects: Object.entries(probabilities).map(([part, probability]) => ({
    part,
    probability,
    modes: [],
    because: () => ({ speaksFor: [], speaksAgainst: [], maskedBy: [], untested: false }),
  })),
  healthyProbability: 0,
  explanations: [],
  remainder: 0,
  unexplained: [],
  notSolved: [],
});

describe("the score of a belief", () => {
  it("is the logarithm of what it gave to what was so, part by part, leaks between nets left out", () => {
    const { loss, toTrue } = scoreOf(belief({ F1: 0.8, C1: 0.1, "A~B": 0.5 }), new Set(["F1"]));
    expect(loss).toBeCloseTo(-Math.log(0.8) - Math.log(0.9), 12);
    expect(toTrue).toBe(0.8);
  });

  it("is calibrated where as many were bad as was said", () => {
    const scores = Array.from({ length: 10 }, (_, at) =>
      scoreOf(belief({ F1: 0.2 }), new Set(at < 2 ? ["F1"] : [])),
    );
    const row = calibrationOf(scores).find(({ parts }) => parts > 0);
    expect(row).toMatchObject({ parts: 10, said: expect.closeTo(0.2, 12), was: 0.2 });
    // each job is one draw: the variance of a share of ten
    expect(row?.error).toBeCloseTo(Math.sqrt((0.2 * 0.8) / 10), 12);
  });

  it("counts parts that are bad together as one draw", () => {
    const together = (bad: boolean) =>
      scoreOf(belief({ F1: 0.2, C1: 0.2 }), new Set(bad ? ["F1", "C1"] : []));
    const scores = Array.from({ length: 10 }, (_, at) => together(at < 2));
    const row = calibrationOf(scores).find(({ parts }) => parts > 0);
    expect(row).toMatchObject({ parts: 20, was: 0.2 });
    expect(row?.error).toBeCloseTo(Math.sqrt((0.2 * 0.8) / 10), 12);
  });

  it("is compared job by job, so that a hard job weighs on neither side", () => {
    expect(compared([1, 5, 9], [2, 6, 10])).toEqual({ mean: -1, error: 0 });
    expect(compared([1, 2], [1, 4]).error).toBeCloseTo(Math.sqrt(2 / 2), 12);
  });
});
