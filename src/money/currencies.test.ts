import { describe, expect, it } from "vitest";
import { currencyDigits } from "./currencies.ts";

/** Currencies to which the language's own table gives the digits that are in use, where ISO 4217 still gives more. */
const BY_USE = new Set(["IQD"]);

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
      const ours = currencyDigits(currency);
      // coins out of use: that table drops the two digits of some currencies that ISO 4217 leaves them
      if (BY_USE.has(currency) || (maximumFractionDigits === 0 && ours === 2)) continue;
      expect(`${currency} ${ours}`).toBe(`${currency} ${maximumFractionDigits}`);
    }
  });
});
