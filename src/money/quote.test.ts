import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { amountOf, amountText, NOTHING } from "./amount.ts";
import type { JobSum } from "./job-sum.ts";
import { type Expected, leastPrice, makeQuote } from "./quote.ts";
import { DEFAULT_TERMS, type Terms } from "./terms.ts";

const SPENT: JobSum = {
  minutes: amountOf(20),
  labour: amountOf(10),
  parts: [],
  partsTotal: NOTHING,
  total: amountOf(10),
};
const EXPECTED: Expected = {
  minutes: { mean: 40, high: 80 },
  partsMoney: { mean: 12, high: 30 },
  money: 32,
  repairProbability: 0.8,
  goesOn: true,
  runs: false,
  whyStop: "",
};

function quoted(terms: Partial<Terms> = {}, expected: Partial<Expected> = {}) {
  const { offers, ...rest } = makeQuote(SPENT, { ...EXPECTED, ...expected }, { ...DEFAULT_TERMS, ...terms });
  const sums = Object.fromEntries(
    offers.map(({ offer, price, cap }) => [
      offer,
      [price, cap].map((sum) => (sum === null ? null : amountText(sum, terms.currency ?? "EUR"))),
    ]),
  );
  return { ...rest, sums };
}

describe("a quote", () => {
  it("is the shop's usual price, and a cap that the dearer of such jobs still keep", () => {
    // 10 spent, 80 min at 30 and 30 of parts: 80, below the usual price
    expect(quoted().sums.repair).toEqual(["140.00", "140.00"]);
    expect(quoted({ agreedPrice: 60, newBoardPrice: 400 }).sums.repair).toEqual(["60.00", "80.00"]);
    // the parts with a half on top
    expect(quoted({ agreedPrice: 60, partsMarkUp: 0.5 }).sums.repair).toEqual(["60.00", "95.00"]);
  });

  it("asks no less than leaves the shop's margin, what was spent and the comebacks counted", () => {
    const terms = {
      ...DEFAULT_TERMS,
      agreedPrice: 40,
      minimumMargin: 30,
      feeIfNotRepaired: 10,
      warrantyCost: 5,
    };
    // p (x - 5) + (1 - p) 10 - 32 - 10 = 30 with p = 0.8
    const least = leastPrice(SPENT.total, EXPECTED, terms) ?? Number.NaN;
    expect(0.8 * (least - 5) + 0.2 * 10 - 32 - 10).toBeCloseTo(30, 9);
    expect(quoted(terms).sums.repair?.[0]).toBe("93.00");
  });

  it("advises a new board where the repair would cost more than half of it, and no repair where none is to be had", () => {
    expect(quoted().advised).toBe("replace");
    expect(quoted({ newBoardPrice: 300 }).advised).toBe("repair");
    const stops = { goesOn: false, whyStop: "U3 is dead and nobody sells it." };
    expect(quoted({ newBoardPrice: 300 }, stops)).toMatchObject({
      advised: "replace",
      reason: stops.whyStop,
    });
    expect(quoted({ newBoardPrice: 0 }, stops).advised).toBe("decline");
  });

  it("advises no new board in the place of one that runs", () => {
    const quote = quoted({}, { runs: true });
    expect(quote.advised).toBe("repair");
    expect(plain(quote.reason)).toContain("The board runs");
  });

  it("names no price at which a board that cannot be repaired would pay", () => {
    expect(leastPrice(SPENT.total, { ...EXPECTED, repairProbability: 0 }, DEFAULT_TERMS)).toBeNull();
    expect(quoted({}, { repairProbability: 0 }).advised).toBe("replace");
  });

  it("is in whole coins of currencies without cents", () => {
    expect(quoted({ currency: "JPY", agreedPrice: 14_000, newBoardPrice: 60_000 }).sums.repair?.[0]).toBe(
      "14000",
    );
  });
});
