/** Published decisions, worked by the code that advises checking, repairing and stopping. */
import { describe, expect, it } from "vitest";
import { bestOf, type Course, gainOf, type States, worthAfter } from "./decision.ts";
import { handModel } from "./hand-model.fixture.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { valueAfter } from "./steps.ts";
import { bestCourse } from "./value.ts";

/** Money of going on under each state; giving up earns nothing. */
function goOnOrStop(pay: readonly number[]): (weights: Float64Array) => Course<"stop" | "go on"> {
  return (weights) =>
    bestOf(
      { course: "stop", value: 0 },
      { course: "go on", value: weights.reduce((sum, weight, state) => sum + weight * (pay[state] ?? 0), 0) },
    );
}

function statesOf(chances: readonly number[]): States {
  return {
    weights: chances,
    groupOf: chances.map((_, state) => state),
    groupCount: chances.length,
  };
}

/** What is told of each state: the outcome it leads to for sure. */
function telling(outcomes: readonly number[]): Float64Array[] {
  return [...new Set(outcomes)].map((outcome) =>
    Float64Array.from(outcomes, (one) => (one === outcome ? 1 : 0)),
  );
}

/** What it is worth to know for sure which outcome each state leads to. */
function worthOfKnowing(states: States, pay: readonly number[], outcomes: readonly number[]): number {
  const decide = goOnOrStop(pay);
  const now = decide(Float64Array.from(states.weights)).value;
  return worthAfter(telling(outcomes), states, 0, (weights) => decide(weights).value) - now;
}

describe("the oil well, in thousands of dollars (row V5, seen: Raiffa 1968, pp. 34-36 as cited)", () => {
  const DRILL = 70;
  const chances = [0.5, 0.3, 0.2];
  const pay = [0, 120, 270].map((found) => found - DRILL);
  /** P(dry, wet, soaking and this structure) */
  const joint = { none: [0.3, 0.09, 0.02], open: [0.15, 0.12, 0.08], closed: [0.05, 0.09, 0.1] };
  const shares = Object.values(joint).map((row) =>
    Float64Array.from(row, (both, state) => both / (chances[state] ?? Number.NaN)),
  );
  const states = statesOf(chances);
  const decide = goOnOrStop(pay);
  const now = decide(Float64Array.from(chances));

  it("is drilled at once for 20 on the average (row V6, calc)", () => {
    expect(now).toMatchObject({ course: "go on" });
    expect(now.value).toBeCloseTo(20, 9);
  });

  it("has no structure, an open or a closed one with 0.41, 0.35 and 0.24; drilled then it earns -30.488, 32.857 and 87.5: the first is the stop (row V6, calc)", () => {
    const after = shares.map((share) => share.map((told, state) => told * (chances[state] ?? Number.NaN)));
    const reached = after.map((weights) => weights.reduce((sum, weight) => sum + weight, 0));
    [0.41, 0.35, 0.24].forEach((published, o) => {
      expect(reached[o]).toBeCloseTo(published, 9);
    });
    const given = after.map((weights) => weights.reduce((sum, weight, s) => sum + weight * (pay[s] ?? 0), 0));
    [-30.488, 32.857, 87.5].forEach((published, o) => {
      expect((given[o] ?? Number.NaN) / (reached[o] ?? 1)).toBeCloseTo(published, 3);
    });
    expect(after.map((weights) => decide(Float64Array.from(weights)).course)).toEqual([
      "stop",
      "go on",
      "go on",
    ]);
  });

  it("is worth 32.5 with the soundings, 12.5 more than without; for 10 they gain 2.5 (row V6, calc)", () => {
    const after = worthAfter(shares, states, 0, (weights) => decide(weights).value);
    expect(after).toBeCloseTo(32.5, 9);
    expect(after - now.value).toBeCloseTo(12.5, 9);
    expect(gainOf(after, now.value, 10).net).toBeCloseTo(2.5, 9);
    expect(gainOf(after, now.value, 12.5).net).toBeCloseTo(0, 9);
  });

  it("would be worth 35 more with the truth (row V6, calc), and no soundings are worth more than that (row V10, seen)", () => {
    expect(worthOfKnowing(states, pay, [0, 1, 2])).toBeCloseTo(35, 9);
    const blurred = worthAfter(shares, states, 0.3, (weights) => decide(weights).value) - now.value;
    expect(blurred).toBeLessThan(12.5);
    expect(blurred).toBeGreaterThanOrEqual(0);
  });

  it("gains nothing by what changes no decision (row V10, seen)", () => {
    expect(worthOfKnowing(states, pay, [0, 0, 0])).toBeCloseTo(0, 9);
  });
});

describe("the wildcatter, in thousands of dollars (row V7, seen; inputs of row V8, from memory)", () => {
  const found = [0, 700, 1200];
  const foundChance = [0.5, 0.3, 0.2];
  const costs = [150, 300, 500];
  const costChance = [0.2, 0.6, 0.2];
  const every = found.flatMap((oil, o) => costs.map((cost, c) => ({ oil, o, cost, c })));
  const states = statesOf(every.map(({ o, c }) => (foundChance[o] ?? 0) * (costChance[c] ?? 0)));
  const pay = every.map(({ oil, cost }) => oil - cost);

  it("drills for 140 on the average", () => {
    const best = goOnOrStop(pay)(Float64Array.from(states.weights));
    expect(best.course).toBe("go on");
    expect(best.value).toBeCloseTo(140, 9);
  });

  it("pays up to 155 to know the oil, and up to 10 to know the cost", () => {
    expect(
      worthOfKnowing(
        states,
        pay,
        every.map(({ o }) => o),
      ),
    ).toBeCloseTo(155, 9);
    expect(
      worthOfKnowing(
        states,
        pay,
        every.map(({ c }) => c),
      ),
    ).toBeCloseTo(10, 9);
  });
});

describe("the product launch, in thousands of dollars (row V9)", () => {
  const chances = [0.5, 0.3, 0.2];
  const pay = [400, 100, -200];

  it("is launched for 190 on the average (seen)", () => {
    expect(goOnOrStop(pay)(Float64Array.from(chances)).value).toBeCloseTo(190, 9);
  });

  it("is worth 40 more with the market known (calc)", () => {
    expect(worthOfKnowing(statesOf(chances), pay, [0, 1, 2])).toBeCloseTo(40, 9);
  });
});

describe("the same on a board, derived here", () => {
  /** A part that is dead or good: one that can be had for 60, one that nobody sells. A repair earns 140. */
  const model = handModel(
    [
      { p: 0.4, cost: 60 },
      { p: 0.6, cost: 0, possible: false },
    ],
    140,
  );
  const hypotheses: Hypotheses = {
    priors: [],
    cores: [{ present: [], faults: [] }],
    list: ["A", "B"].map((part, h) => ({
      core: 0,
      beside: -1,
      unlisted: false,
      weight: h === 0 ? 0.4 : 0.6,
      dead: [part],
    })),
    remainder: 0,
  };
  /** Minutes a bit so dear that nothing but this check finds anything out. */
  const DEAR = 1e6;

  it("a repair that loses is stopped, and the check that tells is worth what it turns into a repair", () => {
    // at once: 0.4 * 140 - 60 = -4, so it stops; told first, 0.4 * (140 - 60) = 32
    expect(bestCourse(model.weights, model, DEAR)).toMatchObject({ course: "stop", value: 0 });
    expect(valueAfter(telling([0, 1]), hypotheses, model, DEAR, 0)).toBeCloseTo(32, 9);
  });
});
