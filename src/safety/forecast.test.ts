import { expect, test } from "vitest";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import type { FeedHarm } from "../priors/feed-harm.ts";
import { PowerRisks } from "./forecast.ts";

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
    { parent: 0, child: 1, rate: 2, arrivalRate: 2, rule: "short-opens-fuse" },
    { parent: 2, child: 1, rate: 0.5, arrivalRate: 0.5, rule: "short-opens-fuse" },
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

const MAINS: FeedHarm = {
  own: 1,
  by: { "line current": 1, "bus energy": 1, "bus volts": 1, "rail volts": 1 },
  reaches: null,
};
const FREE = { of: () => 0, most: 100 };
/** A fuse fitted here has met none of the faults yet. */
const NEW_FUSE = new Set(["F1"]);

test("a new fuse breaks by the knock-ons of what is still believed shorted: 0.3 (1 - e^-2) + 0.7 (1 - e^-0.05)", () => {
  const risks = new PowerRisks(
    belief(explanation([], 0.7, [0, 0, 0.1]), explanation([0], 0.3, [0, 0, 0])),
    PRIORS,
    new Set(),
    NEW_FUSE,
  );
  const fuse = risks.under(MAINS, FREE).breaks.find(({ part }) => part === "F1");
  expect(fuse?.probability).toBeCloseTo(0.3 * (1 - Math.exp(-2)) + 0.7 * (1 - Math.exp(-0.05)), 12);
  expect(risks.because("F1", MAINS)).toEqual({ fault: "D1:short", probability: expect.closeTo(0.3, 12) });
});

test("a fuse that came whole through the power that the short was there under bears more than a new one: a rate of 2 leaves 2 / 3", () => {
  const survivor = new PowerRisks(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set());
  const fuse = survivor.under(MAINS, FREE).breaks.find(({ part }) => part === "F1");
  expect(fuse?.probability).toBeCloseTo(1 - Math.exp(-2 / 3), 12);
});

test("a short that nobody has seen is likelier where it has opened its fuse already: half a chance of it counts e^-2 of a half", () => {
  const unseen = new PowerRisks(belief(explanation([], 1, [0.5, 0, 0])), PRIORS, new Set());
  const fuse = unseen.under(MAINS, FREE).breaks.find(({ part }) => part === "F1");
  const once = 2 * 0.5 * Math.exp(-2);
  expect(fuse?.probability).toBeCloseTo(1 - Math.exp(-once / (1 + once)), 12);
  const fitted = new PowerRisks(belief(explanation([], 1, [0.5, 0, 0])), PRIORS, new Set(), NEW_FUSE);
  expect(fitted.under(MAINS, FREE).breaks[0]).toEqual({
    part: "F1",
    probability: expect.closeTo(1 - Math.exp(-1), 12),
  });
});

test("a board with nothing wrong breaks only by its own rates, and says no fault is behind it", () => {
  const risks = new PowerRisks(belief(explanation([], 1, [0, 0, 0])), PRIORS, new Set());
  const forecast = risks.under(MAINS, FREE);
  expect(forecast.anyBreaks).toBeCloseTo(1 - Math.exp(-0.03), 12);
  expect(forecast.breaks[0]).toEqual({ part: "U1", probability: expect.closeTo(1 - Math.exp(-0.02), 12) });
  expect(risks.because("U1", MAINS)).toBeNull();
});

test("a dead part does not die again, and a part off the board neither dies nor kills", () => {
  const dead = new PowerRisks(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set()).under(MAINS, FREE);
  expect(dead.breaks.find(({ part }) => part === "D1")?.probability).toBe(0);
  const off = new PowerRisks(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set(["D1"])).under(
    MAINS,
    FREE,
  );
  expect(off.breaks.map(({ part }) => part)).not.toContain("D1");
  expect(off.breaks.find(({ part }) => part === "F1")?.probability).toBe(0);
});

test("a feed that holds the line's current to a twentieth takes a new fuse twenty times more rarely, and costs so much less", () => {
  const risks = new PowerRisks(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set(), NEW_FUSE);
  const money = { of: (part: string) => (part === "F1" ? 3 : 0), most: 100 };
  const lamp: FeedHarm = { ...MAINS, own: 0, by: { ...MAINS.by, "line current": 0.05 } };
  expect(risks.under(lamp, money).lossMoney).toBeCloseTo(3 * (1 - Math.exp(-0.1)), 12);
  expect(risks.under(MAINS, money).lossMoney).toBeGreaterThan(8 * risks.under(lamp, money).lossMoney);
});

test("what a feed does not reach does not break, and a job is lost once", () => {
  const risks = new PowerRisks(belief(explanation([0], 1, [0, 0, 0])), PRIORS, new Set());
  const rail: FeedHarm = { ...MAINS, reaches: new Set(["U1"]) };
  expect(risks.under(rail, FREE).breaks.find(({ part }) => part === "F1")?.probability).toBe(0);
  const dear = { of: () => 1000, most: 140 };
  expect(risks.under(MAINS, dear).lossMoney).toBe(140);
});

test("behind an open fuse nothing breaks of the mains; a supply across the board still does its harm", () => {
  const cuts = new Set([1]);
  const open = new PowerRisks(
    belief(explanation([0, 1], 1, [0, 0, 0.5])),
    PRIORS,
    new Set(),
    new Set(["U1"]),
    cuts,
  );
  expect(open.under(MAINS, FREE).anyBreaks).toBe(0);
  const across: FeedHarm = { ...MAINS, reaches: new Set(["U1"]) };
  expect(open.under(across, FREE).anyBreaks).toBeGreaterThan(0);
  const half = new PowerRisks(belief(explanation([0], 1, [0, 0.5, 0])), PRIORS, new Set(), NEW_FUSE, cuts);
  const whole = new PowerRisks(belief(explanation([0], 1, [0, 0.5, 0])), PRIORS, new Set(), NEW_FUSE);
  expect(half.under(MAINS, FREE).anyBreaks).toBeCloseTo(whole.under(MAINS, FREE).anyBreaks / 2, 12);
});
