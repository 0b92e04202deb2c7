import { describe, expect, it } from "vitest";
import { currencyDigits } from "./currencies.ts";

/** Where the language's own table has the digits that shops use and not those of ISO 4217. */
const BY_USE: Readonly<Record<string, number>> = { IQD: 0, UYW: 4 };

describe("the digits of a currency", () => {
  it.each([
    ["EUR", 2],
    ["usd", 2],
    ["JPY", 0],
    ["KRW", 0],
    ["KWD", 3],
    ["TND", 3],
    ["CLF", 4],
    ["hours", 2],
  ])("%s has %i (ISO 4217)", (currency, digits) => {
    expect(currencyDigits(currency)).toBe(digits);
  });

  it("are never more than those that the language's own table knows, and the same for every currency with three or more", () => {
    const known = Intl.supportedValuesOf("currency");
    expect(known.length).toBeGreaterThan(150);
    for (const currency of known) {
      const { maximumFractionDigits = 2 } = new Intl.NumberFormat("en", {
        style: "currency",
        currency,
      }).resolvedOptions();
      const wanted = BY_USE[currency] ?? maximumFractionDigits;
      const ours = currencyDigits(currency);
      // coins out of use: that table drops the digits of some currencies which ISO 4217 still gives two
      if (wanted === 0 && ours === 2) continue;
      if (currency === "IQD") expect(ours).toBe(3);
      else expect(`${currency} ${ours}`).toBe(`${currency} ${wanted}`);
    }
  });
});
