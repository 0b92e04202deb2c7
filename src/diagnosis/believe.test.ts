import fc from "fast-check";
import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import type { Belief } from "./belief.ts";
import { believe } from "./believe.ts";
import { EvidenceMemory } from "./cold-evidence.ts";
import { diode, quietTimeline, switchboard } from "./switchboard.fixture.ts";

const NETS = ["T1", "T2", "T3", "T4"];

function beliefAfter(
  pulls: readonly (readonly string[])[],
  rates: readonly number[],
  log: readonly JobEvent[],
  together: Parameters<typeof switchboard>[2] = null,
): Belief {
  const { board, priors, predictor } = switchboard(pulls, rates, together);
  return believe({
    board,
    timeline: quietTimeline(log),
    cause: "surge",
    symptom: "dead",
    priors,
    absent: [],
    predictorFor: () => predictor,
    memory: new EvidenceMemory(),
  });
}

const probability = (belief: Belief, part: string): number =>
  belief.suspects.find((suspect) => suspect.part === part)?.probability ?? Number.NaN;

const arbitraryPulls = fc.array(fc.uniqueArray(fc.constantFrom(...NETS), { minLength: 1 }), {
  minLength: 2,
  maxLength: 6,
});
const arbitraryLog = fc.array(
  fc.tuple(fc.constantFrom(...NETS), fc.constantFrom<(number | "OL" | "zero")[]>(0, 0.5, 0.48, "OL", "zero")),
  { maxLength: 6 },
);
const SEED = { seed: 20261125, numRuns: 60 };

test("one part that explains every zero is believed before several that each explain one", () => {
  const belief = beliefAfter(
    [["T1", "T2", "T3"], ["T1"], ["T2"], ["T3"]],
    [0.02, 0.02, 0.02, 0.02],
    [diode("T1", 0), diode("T2", 0), diode("T3", 0)],
  );
  expect(probability(belief, "D0")).toBeGreaterThan(0.95);
  expect(probability(belief, "D1")).toBeLessThan(0.06);
});

test("a part hidden behind a short keeps the probability it came with, and says what masks it", () => {
  const belief = beliefAfter([["T1", "T2"], ["T1"]], [0.02, 0.02], [diode("T1", 0), diode("T2", 0)]);
  expect(probability(belief, "D1")).toBeCloseTo(1 - Math.exp(-0.02), 2);
  expect(belief.suspects.find((suspect) => suspect.part === "D1")?.because().maskedBy).toEqual(["D0"]);
});

test("a part that every explanation needs is still told why: what would be read with its fault taken away", () => {
  const belief = beliefAfter([["T1", "T2"], ["T3"]], [0.02, 0.02], [diode("T1", 0), diode("T2", 0)]);
  const because = belief.suspects.find((suspect) => suspect.part === "D0")?.because();
  expect(belief.explanations.every(({ faults }) => faults.some(({ fault }) => fault === 0))).toBe(true);
  expect(because?.speaksFor.map(({ logIndex }) => logIndex).sort()).toEqual([0, 1]);
  expect(because?.untested).toBe(false);
});

test("a slip that no fault explains does not keep the faults behind the other readings from being found", () => {
  const log = [diode("T1", 1.31), diode("T2", 0), diode("T3", 0)];
  const belief = beliefAfter([["T2"], ["T3"], ["T4"]], [0.02, 0.02, 0.02], log);
  expect(probability(belief, "D0")).toBeGreaterThan(0.9);
  expect(probability(belief, "D1")).toBeGreaterThan(0.9);
  expect(belief.unexplained).toEqual([0]);
});

test("a reading that fits clears the part that would have pulled it down, and says so", () => {
  const belief = beliefAfter([["T1"], ["T2"]], [0.5, 0.5], [diode("T1", 0.5)]);
  expect(probability(belief, "D0")).toBeLessThan(0.02);
  expect(belief.suspects.find((suspect) => suspect.part === "D0")?.because().speaksAgainst[0]?.logIndex).toBe(
    0,
  );
});

test("the customer's word that the board is dead rules out the healthy board, not the unseen fault", () => {
  const belief = beliefAfter([["T1"], ["T2"]], [0.02, 0.02], []);
  expect(probability(belief, "D0")).toBeGreaterThan(0.25);
  expect(belief.healthyProbability).toBeLessThan(0.5);
});

test("a reading that contradicts all that can be is called unexplained, whenever it was taken", () => {
  const odd = diode("T1", 1.3);
  const plain = [diode("T2", 0), diode("T2", 0.001), diode("T3", 0)];
  for (let at = 0; at <= plain.length; at++) {
    const log = [...plain.slice(0, at), odd, ...plain.slice(at)];
    expect(beliefAfter([["T1"], ["T2", "T3"]], [0.02, 0.02], log).unexplained).toContain(at);
  }
});

test("a set is judged by what its faults do together: a reading that two of three shorts would pull down speaks against them", () => {
  const log = [diode("T1", 0), diode("T2", 0), diode("T3", 0), diode("T4", 0.5)];
  const pulls = [["T1"], ["T2"], ["T3"]];
  const rates = [0.1, 0.1, 0.1];
  const all = (belief: Belief) => belief.explanations.find(({ faults }) => faults.length === 3);
  const apart = all(beliefAfter(pulls, rates, log))?.readingLogLikelihood.get(3) ?? Number.NaN;
  const joined =
    all(beliefAfter(pulls, rates, log, { parts: ["D1", "D2"], net: "T4" }))?.readingLogLikelihood.get(3) ??
    Number.NaN;
  expect(apart).toBeGreaterThan(2);
  expect(joined).toBeLessThan(-4);
});

test("property: explanations and remainder sum to one, every part is listed, no probability leaves 0..1", () => {
  fc.assert(
    fc.property(arbitraryPulls, arbitraryLog, (pulls, readings) => {
      const belief = beliefAfter(
        pulls,
        pulls.map((_, i) => 0.01 + 0.02 * i),
        readings.map(([net, reading]) => diode(net, reading)),
      );
      const sum = belief.explanations.reduce(
        (total, explanation) => total + explanation.probability,
        belief.remainder,
      );
      expect(sum).toBeCloseTo(1, 9);
      expect(belief.suspects).toHaveLength(pulls.length);
      for (const suspect of belief.suspects) {
        expect(suspect.probability).toBeGreaterThanOrEqual(0);
        expect(suspect.probability).toBeLessThanOrEqual(1 + 1e-9);
      }
    }),
    SEED,
  );
});

test("property: the order in which readings were taken does not matter", () => {
  fc.assert(
    fc.property(arbitraryPulls, arbitraryLog, (pulls, readings) => {
      const log = readings.map(([net, reading]) => diode(net, reading));
      const rates = pulls.map((_, i) => 0.01 + 0.02 * i);
      const forward = beliefAfter(pulls, rates, log);
      const backward = beliefAfter(pulls, rates, [...log].reverse());
      for (const suspect of forward.suspects)
        expect(probability(backward, suspect.part)).toBeCloseTo(suspect.probability, 9);
    }),
    SEED,
  );
});

test("property: a reading that every explanation predicts alike moves nothing", () => {
  fc.assert(
    fc.property(arbitraryPulls, arbitraryLog, (pulls, readings) => {
      const log = readings.map(([net, reading]) => diode(net, reading));
      const rates = pulls.map((_, i) => 0.01 + 0.02 * i);
      const before = beliefAfter(pulls, rates, log);
      // No part pulls T9, and a coarse answer far from its edges shares no spread with the others.
      const after = beliefAfter(pulls, rates, [...log, diode("T9", "junction")]);
      for (const suspect of before.suspects)
        expect(probability(after, suspect.part)).toBeCloseTo(suspect.probability, 9);
    }),
    SEED,
  );
});

test("faults cured since count in a set as well: with two parts replaced, eight faults explain eight readings", () => {
  const nets = Array.from({ length: 8 }, (_, i) => `T${i + 1}`);
  const { board, priors, predictor } = switchboard(
    nets.map((net) => [net]),
    nets.map(() => 0.05),
  );
  const after = (replaced: readonly string[]): Belief =>
    believe({
      ...{ board, cause: "surge", symptom: "dead", priors, absent: [] },
      timeline: {
        ...quietTimeline(nets.map((net) => diode(net, 0))),
        replacedIn: new Map(replaced.map((part) => [part, [0]])),
      },
      predictorFor: () => predictor,
      memory: new EvidenceMemory(),
    });
  expect(after([]).explanations[0].faults).toHaveLength(6);
  expect(after(["D0", "D1"]).explanations[0].faults).toHaveLength(8);
  expect(after(["D0", "D1"]).unexplained).toEqual([]);
});
