import fc from "fast-check";
import { expect, test } from "vitest";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { planningHypotheses } from "./hypotheses.ts";

function priorsOf(count: number): readonly FaultPrior[] {
  return Array.from({ length: count }, (_, i) => ({
    fault: { of: "part", part: `D${i}`, junction: null, mode: "short", value: null },
    reportAs: `D${i}:short`,
    part: `D${i}`,
    site: `D${i}`,
    rate: 0.01,
    spreadLn: 0,
  }));
}

function beliefOf(
  explanations: readonly { present: number[]; probability: number; silent: number[] }[],
): Belief {
  const count = Math.max(...explanations.map(({ silent }) => silent.length));
  return {
    priors: priorsOf(count),
    suspects: [],
    healthyProbability: 0,
    explanations: explanations.map(
      ({ present, probability, silent }): Explanation => ({
        faults: present.map((fault) => ({ fault, since: -1 })),
        presentNow: present,
        probability,
        silent: Float64Array.from(silent),
        nothingBeside: silent.reduce((none, q) => none * (1 - q), 1),
        readingLogLikelihood: new Map(),
      }),
    ),
    remainder: 1 - explanations.reduce((sum, { probability }) => sum + probability, 0),
    unexplained: [],
    notSolved: [],
  };
}

test("an explanation splits into itself alone and itself with one silent fault, by their odds", () => {
  const { list } = planningHypotheses(
    beliefOf([{ present: [0], probability: 1, silent: [0, 0.1, 0.2] }]),
    new Set(),
  );
  const weight = (dead: string) => list.find((hypothesis) => hypothesis.dead.join("+") === dead)?.weight;
  expect(weight("D0")).toBeCloseTo(0.9 * 0.8, 12);
  // both silent faults at once (0.02) are spread over the single ones
  expect(weight("D0+D1")).toBeCloseTo((0.28 * (0.1 / 0.9)) / (0.1 / 0.9 + 0.2 / 0.8), 12);
});

test("a hundred single faults that explain about equally well are planned from the set they share", () => {
  const count = 100;
  const silent = Array.from({ length: count }, () => 0);
  const belief = beliefOf(
    silent.map((_, i) => ({ present: [i], probability: 0.9 / count + (i === 0 ? 0.1 : 0), silent })),
  );
  const { cores, list, remainder } = planningHypotheses(belief, new Set());
  expect(cores.map(({ present }) => present)).toEqual([[0], []]);
  expect(remainder).toBeLessThan(1e-9);
  expect(new Set(list.flatMap(({ dead }) => dead)).size).toBe(count);
});

test("explanations that differ only in what has been cured are one hypothesis, with the weight of all", () => {
  const alike = { present: [0], silent: [0, 0] };
  const belief = beliefOf([
    { ...alike, probability: 0.55 },
    { ...alike, probability: 0.4 },
    { ...alike, probability: 0.05 },
  ]);
  const { list, remainder } = planningHypotheses(belief, new Set());
  expect(remainder).toBeLessThan(1e-9);
  expect(list.filter(({ weight }) => weight > 0).map(({ dead }) => dead)).toEqual([["D0"]]);
});

test("a leak that a board lives with makes readings and wants no cure", () => {
  const belief = beliefOf([{ present: [0, 1], probability: 1, silent: [0, 0, 0.3] }]);
  const { list } = planningHypotheses(belief, new Set(), ({ part }) => part === "D1");
  expect(list.map(({ dead }) => dead)).toEqual([["D0"], ["D0", "D2"]]);
});

test("parts that never came with the board have nothing to cure", () => {
  const { list } = planningHypotheses(
    beliefOf([{ present: [], probability: 1, silent: [0.5, 0.1] }]),
    new Set(["D0"]),
  );
  expect(list.flatMap(({ dead }) => dead)).toEqual(["D1"]);
});

test("hypotheses and remainder sum to one, whatever is believed", () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          share: fc.double({ min: 0.01, max: 1, noNaN: true }),
          silent: fc.array(fc.double({ min: 0, max: 0.9, noNaN: true }), { minLength: 6, maxLength: 6 }),
        }),
        { minLength: 1, maxLength: 20 },
      ),
      (rows) => {
        const total = rows.reduce((sum, { share }) => sum + share, 0) * 1.1;
        const belief = beliefOf(
          rows.map(({ share, silent }, i) => ({ present: [i % 6], probability: share / total, silent })),
        );
        const { list, remainder } = planningHypotheses(belief, new Set());
        // nothing that is listed as an explanation may get lost, but for the share at which the list may end
        const kept = list.reduce((weight, hypothesis) => weight + hypothesis.weight, 0);
        expect(kept).toBeGreaterThan(0.98 / 1.1);
        const sum = list.reduce((weight, hypothesis) => weight + hypothesis.weight, remainder);
        expect(sum).toBeCloseTo(1, 9);
        expect(list.length).toBeLessThanOrEqual(160);
      },
    ),
    { seed: 7, numRuns: 60 },
  );
});
