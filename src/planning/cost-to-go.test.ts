import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Ending, outlookOf } from "./cost-spread.ts";
import { costToGo } from "./cost-to-go.ts";
import { handModel, type Row } from "./hand-model.fixture.ts";
import { jobValue } from "./value.ts";

const PRICE = 140;

const mean = (endings: readonly Ending[], figure: (ending: Ending) => number) =>
  endings.reduce((sum, ending) => sum + ending.chance * figure(ending), 0);

describe("what is still expected", () => {
  it("of two ways that cost 10 and 60, tried the likelier first: 10 in six of ten jobs, 70 in the rest", () => {
    const model = handModel(
      [
        { p: 0.6, cost: 10 },
        { p: 0.4, cost: 60 },
      ],
      PRICE,
    );
    const going = costToGo(model, 100);
    expect(going.course).toBe("repair");
    const outlook = outlookOf(going);
    expect(outlook.money.mean).toBeCloseTo(0.6 * 10 + 0.4 * 70, 9);
    expect([outlook.money.low, outlook.money.high]).toEqual([10, 70]);
    expect(outlook.repairProbability).toBeCloseTo(1, 12);
    // repaired in every one: worth giving up only from the whole price on
    expect(outlook.stopLine).toBeCloseTo(PRICE, 9);
  });

  it("of one half that nobody can repair: one bit at three minutes of 0.5 before the rest is fitted, and the stop line is half the price", () => {
    const model = handModel(
      [
        { p: 0.5, cost: 20 },
        { p: 0.5, cost: 0, possible: false },
      ],
      PRICE,
    );
    const going = costToGo(model, 3);
    expect(going.course).toBe("find out");
    const outlook = outlookOf(going);
    expect(outlook.money.mean).toBeCloseTo(0.5 * 20 + 3 * 0.5, 9);
    expect(outlook.minutes.mean).toBeCloseTo(3, 9);
    expect(outlook.stopLine).toBeCloseTo(PRICE / 2, 9);
    expect(going.value).toBeCloseTo(outlook.stopLine - outlook.money.mean, 9);
  });

  it("with a share of comebacks set aside a repair earns less and the stop line comes nearer by its chance of that", () => {
    const rows: readonly Row[] = [
      { p: 0.5, cost: 20 },
      { p: 0.5, cost: 0, possible: false },
    ];
    const model = handModel(rows, PRICE, 0, { warrantyCost: 16 });
    expect(outlookOf(costToGo(model, 3)).stopLine).toBeCloseTo((PRICE - 16) / 2, 9);
  });

  it("with a least margin, and with a carcass that stays, stops earlier by the chance of a repair; the margin told is the true one", () => {
    const rows: readonly Row[] = [
      { p: 0.5, cost: 20 },
      { p: 0.5, cost: 0, possible: false },
    ];
    const plain = outlookOf(costToGo(handModel(rows, PRICE), 3));
    const choosy = outlookOf(costToGo(handModel(rows, PRICE, 0, { minimumMargin: 30 }), 3));
    expect(choosy.stopLine).toBeCloseTo((PRICE - 30) / 2, 9);
    expect(choosy.margin).toBeCloseTo(plain.margin, 9);
    const carcass = outlookOf(costToGo(handModel(rows, PRICE, 0, {}, 24), 3));
    expect(carcass.stopLine).toBeCloseTo((PRICE - 24) / 2, 9);
    expect(carcass.margin).toBeCloseTo(plain.margin + 24 / 2, 9);
  });
});

const row = fc.record({
  p: fc.double({ min: 0.01, max: 1, noNaN: true }),
  cost: fc.double({ min: 0.1, max: 60, noNaN: true }),
  breaks: fc.double({ min: 0, max: 30, noNaN: true }),
  possible: fc.boolean(),
});

describe("the figures are the planner's own", () => {
  it("what the endings earn less what they cost is what the planner says that going on is worth", () => {
    const same = fc.property(
      fc.array(row, { minLength: 1, maxLength: 6 }),
      fc.constantFrom(0.5, 3, 25, 200),
      fc.constantFrom(0, 2),
      fc.constantFrom(0, 17),
      fc.constantFrom(0, 9),
      (rows, minutesPerBit, testMoney, minimumMargin, stopMoney) => {
        const total = rows.reduce((sum, { p }) => sum + p, 0);
        const model = handModel(
          rows.map((one) => ({ ...one, p: one.p / total })),
          PRICE,
          testMoney,
          { minimumMargin },
          stopMoney,
        );
        const going = costToGo(model, minutesPerBit);
        const { endings, perMinute, value, stopValue } = going;
        expect(mean(endings, () => 1)).toBeCloseTo(1, 9);
        const earned = mean(endings, ({ repaired }) => (repaired ? PRICE - minimumMargin : stopMoney));
        const cost = mean(
          endings,
          ({ minutes, partsMoney, brokenMoney }) => minutes * perMinute + partsMoney + brokenMoney,
        );
        expect(earned - cost).toBeCloseTo(value, 7);
        expect(Math.max(value, stopValue)).toBeCloseTo(jobValue(model.weights, model, minutesPerBit), 7);
      },
    );
    fc.assert(same, { seed: 31, numRuns: 500 });
  });

  it("giving up is better exactly where what is still expected exceeds the stop line", () => {
    const same = fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
      const total = rows.reduce((sum, { p }) => sum + p, 0);
      const dear = handModel(
        rows.map((one) => ({ ...one, cost: one.cost * 3, p: one.p / total })),
        PRICE,
      );
      // known to cost more than it earns, it is given up
      const groups = dear.groups.map((group) => ({ ...group, knownValue: Math.max(0, group.knownValue) }));
      const model = { ...dear, groups };
      const going = costToGo(model);
      const { money, stopLine } = outlookOf(going);
      expect(money.low).toBeLessThanOrEqual(money.high);
      if (Math.abs(going.value - going.stopValue) > 1e-6)
        expect(money.mean > stopLine).toBe(going.stopValue > going.value);
    });
    fc.assert(same, { seed: 32, numRuns: 300 });
  });
});
