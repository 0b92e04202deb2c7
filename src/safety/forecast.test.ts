import { expect, test } from "vitest";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { forecastPower } from "./forecast.ts";

const fault = (part: string): FaultPrior => ({
  fault: { of: "part", part, junction: null, mode: "short", value: null },
  reportAs: `${part}:short`,
  part,
  site: part,
  rate: 0.01,
  spreadLn: 0,
});
const PRIORS: PriorTable = {
  faults: [fault("D1"), fault("F1"), fault("U1")],
  knockOns: [
    { parent: 0, child: 1, rate: 2, rule: "short-opens-fuse" },
    { parent: 2, child: 1, rate: 0.5, rule: "short-opens-fuse" },
  ],
  breaksAtPower: [0.01, 0, 0.02],
  fittedBad: { new: 0.01, used: 0.1, fittedWrong: 0.02 },
};
const explanation = (
  present: readonly number[],
  probability: number,
  silent: readonly number[],
): Explanation => ({
  faults: present.map((f) => ({ fault: f, since: -1 })),
  presentNow: present,
  probability,
  silent: Float64Array.from(silent),
  nothingBeside: silent.reduce((none, q) => none * (1 - q), 1),
  readingLogLikelihood: new Map(),
});
const belief = (...explanations: Explanation[]): Belief => ({
  priors: PRIORS.faults,
  suspects: [],
  healthyProbability: 0,
  explanations,
  remainder: 0,
  unexplained: [],
  notSolved: [],
});

test("a fuse breaks by the knock-ons of what is still believed shorted: 0.3 (1 - e^-2) + 0.7 (1 - e^-0.05)", () => {
  const forecast = forecastPower(
    belief(explanation([0], 0.3, [0, 0, 0]), explanation([], 0.7, [0, 0, 0.1])),
    PRIORS,
    new Set(),
  );
  const fuse = forecast.breaks.find(({ part }) => part === "F1");
  expect(fuse?.probability).toBeCloseTo(0.3 * (1 - Math.exp(-2)) + 0.7 * (1 - Math.exp(-0.05)), 12);
  expect(fuse?.because).toEqual({ fault: "D1:short", probability: expect.closeTo(0.3, 12) });
});

test("a board with nothing wrong breaks only by its own rates, and says no fault is behind it", () => {
  const forecast = forecastPower(belief(explanation([], 1, [0, 0, 0])), PRIORS, new Set());
  expect(forecast.anyBreaks).toBeCloseTo(1 - Math.exp(-0.03), 12);
  expect(forecast.breaks[0]).toEqual({
    part: "U1",
    probability: expect.closeTo(1 - Math.exp(-0.02), 12),
    because: null,
  });
});

test("a dead part does not die again, and a part off the board neither dies nor kills", () => {
  const dead = forecastPower(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set());
  expect(dead.breaks.find(({ part }) => part === "D1")?.probability).toBe(0);
  const off = forecastPower(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set(["D1"]));
  expect(off.breaks.map(({ part }) => part)).not.toContain("D1");
  expect(off.breaks.find(({ part }) => part === "F1")?.probability).toBe(0);
});
