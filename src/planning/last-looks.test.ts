import { describe, expect, it } from "vitest";
import { handModel } from "./hand-model.fixture.ts";
import { afterRun, netGain } from "./last-looks.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** Whole, or one of two parts weak: a price of 140, 30 for one that comes back, parts of 8 and 60. */
function model(whole: number, cheap: number, dear: number): RepairModel {
  const made = handModel(
    [
      { p: whole, cost: 0 },
      { p: cheap, cost: 8 },
      { p: dear, cost: 60 },
    ],
    140,
  );
  const [first, ...rest] = made.groups;
  return { ...made, groups: first === undefined ? [] : [{ ...first, cures: [] }, ...rest] };
}

/** A check that shows the cheap part's weakness, for so many minutes. */
const check = (allMinutes: number): FindingStep => ({
  action: { do: "measure", mode: "farads", red: "A", black: "B" },
  row: [],
  minutes: allMinutes,
  allMinutes,
  outcomes: [
    { word: null, low: 0, high: 1 },
    { word: null, low: 2, high: 3 },
  ],
  shares: [Float64Array.of(0, 1, 0), Float64Array.of(1, 0, 1)],
  inHand: null,
  lossMoney: 0,
  lead: null,
});

const judged = (of: RepairModel, steps: readonly FindingStep[], proofMinutes = 0) =>
  afterRun(of, { list: [...of.weights].map(alone) }, steps, proofMinutes, 0.125);

/** One hypothesis a group. */
const alone = (weight: number, core: number) => ({ core, beside: -1, unlisted: false, weight, dead: [] });

describe("a board that has run", () => {
  it("is looked at once more where a weak part would cost more than the look, its proof of being empty included", () => {
    const doubted = model(0.97, 0.03, 0);
    // found, it is worth 140 - 8 instead of -30: 0.03 of that is 4.9; 0.4 minutes are 0.2, and changing it unseen costs 8 in every job
    expect(judged(doubted, [check(0.4)])).toMatchObject({ do: "look", doubt: expect.closeTo(0.03, 9) });
    expect(judged(doubted, [check(0.4)], 3).do).toBe("look");
    expect(judged(doubted, [check(0.4)], 20).do).toBe("hand back");
    expect(judged(doubted, [check(20)]).do).toBe("hand back");
    expect(judged(doubted, []).do).toBe("hand back");
  });

  it("is handed back where hardly anything is doubted, and cured first where a part is", () => {
    expect(judged(model(0.9999, 0.0001, 0), [check(0.4)])).toMatchObject({ do: "hand back" });
    // changing it costs 8 in every job; leaving it 170 in three of ten
    expect(judged(model(0.7, 0.3, 0), [])).toMatchObject({ do: "cure", doubt: expect.closeTo(0.3, 9) });
    // the dear one is not changed on a doubt of one in five
    expect(judged(model(0.8, 0, 0.2), []).do).toBe("hand back");
  });
});

describe("a board that did not hold", () => {
  const doubted = model(0.97, 0.03, 0);
  const list = { list: [...doubted.weights].map(alone) };
  const end = { ...check(0), outcomes: ["quiet", "runs"].map((word) => ({ word, low: null, high: null })) };
  const stopped = (minutes: number) => ({
    minutes,
    after: ({ word }: { word: string | null }) => word === "quiet",
  });

  it("is worth what it is with its fault found, less the minutes of finding it", () => {
    // handed back unseen a weak one costs 30; found after 25 minutes of 0.5 it brings 140 - 8 - 12.5
    expect(netGain(end, doubted, list, stopped(25))).toBeCloseTo(0.03 * (140 - 8 - 12.5 + 30), 9);
  });

  it("takes the minutes of looking from a good board that stops as well", () => {
    const nervous = { ...end, shares: [Float64Array.of(0.1, 0, 0), Float64Array.of(0.9, 1, 1)] };
    expect(netGain(nervous, doubted, list, stopped(25))).toBeCloseTo(-0.097 * 12.5, 9);
  });
});
