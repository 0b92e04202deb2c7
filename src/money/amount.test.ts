import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountNumber, amountOf, amountText, labour, plus, rounded } from "./amount.ts";

const paper = (written: number, currency: string) =>
  amountText(rounded(amountOf(written), currency), currency);

describe("money on paper", () => {
  it("sums what binary fractions cannot: 0.1 and 0.2 are 0.30", () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(amountText(plus(amountOf(0.1), amountOf(0.2)), "EUR")).toBe("0.30");
    expect(amountText(plus(...Array.from({ length: 1000 }, () => amountOf(0.01))), "EUR")).toBe("10.00");
  });

  it.each([
    [2.675, "EUR", "2.68"],
    [2.665, "EUR", "2.66"],
    [1.005, "USD", "1.00"],
    [1.015, "USD", "1.02"],
    [1234.5, "JPY", "1234"],
    [1235.5, "JPY", "1236"],
    [0.0005, "KWD", "0.000"],
    [0.0015, "KWD", "0.002"],
    [0, "EUR", "0.00"],
    [1e3, "EUR", "1000.00"],
    [1e-7 * 10, "EUR", "0.00"],
  ])("rounds %s to %s as %s, half to even", (written, currency, text) => {
    expect(paper(written, currency)).toBe(text);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("is never %d", (written) => {
    expect(() => amountOf(written)).toThrow("no amount of 0 or more");
  });

  it("holds what no till holds", () => {
    expect(amountText(amountOf(1e21), "EUR")).toBe("1000000000000000000000.00");
  });

  it("is not printed before it is rounded", () => {
    expect(() => amountText(amountOf(0.001), "EUR")).toThrow("not rounded to EUR");
  });

  it("of work is minutes at an hourly rate, rounded once: 0.4 min at 30 are 0.20, seven of them at 31 are 1.45", () => {
    expect(amountText(labour(amountOf(0.4), amountOf(30), "EUR"), "EUR")).toBe("0.20");
    // 2.8 min at 31 an hour are 1.44666...
    expect(amountText(labour(amountOf(2.8), amountOf(31), "EUR"), "EUR")).toBe("1.45");
  });

  it("does not depend on the order of its lines, and a rounded sum is off by no more than half a cent", () => {
    const lines = fc.array(fc.integer({ min: 0, max: 10_000_000 }), { maxLength: 40 });
    const holds = fc.property(lines, (tenThousandths) => {
      const amounts = tenThousandths.map((value) => amountOf(value / 10_000));
      const sum = plus(...amounts);
      expect(plus(...[...amounts].reverse()).micros).toBe(sum.micros);
      expect(sum.micros).toBe(tenThousandths.reduce((all, value) => all + BigInt(value) * 100n, 0n));
      const off = rounded(sum, "EUR").micros - sum.micros;
      expect(off <= 5000n && off >= -5000n).toBe(true);
    });
    fc.assert(holds, { seed: 12, numRuns: 300 });
  });

  it("is near its number where a picture wants one", () => {
    expect(amountNumber(amountOf(12.34))).toBeCloseTo(12.34, 12);
  });
});
