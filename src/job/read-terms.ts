/** The money of a job as its file gives it, and the shop's own terms, which a new job starts with. */
import { said } from "../messages/said.ts";
import { DEFAULT_TERMS, type Terms } from "../money/terms.ts";
import type { Fields } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";

export const TERM_FIELDS = [
  "currency",
  "ratePerHour",
  "agreedPrice",
  "newBoardPrice",
  "feeIfNotRepaired",
  "comebackCost",
  "usualPrice",
  "partsMarkUp",
  "minimumMargin",
  "warrantyCost",
  "taxRate",
  "boardStays",
  "carcassValue",
  "exchangeCredit",
  "waitCost",
] as const;
const MOST_CURRENCY = 8;

/** The `terms` of a job file or of a shop; what is left out is as the format has it. */
export function readTerms(job: Fields): Terms {
  if (!job.has("terms")) return DEFAULT_TERMS;
  const terms = job.object("terms");
  terms.only(TERM_FIELDS, said`the terms`);
  const currency = terms.text("currency") ?? DEFAULT_TERMS.currency;
  if (currency.trim() === "" || currency.length > MOST_CURRENCY)
    terms.complain("currency", said`expected a short word such as EUR, found ${quoted(currency)}`);
  const money = (key: Exclude<(typeof TERM_FIELDS)[number], "currency" | "usualPrice" | "boardStays">) =>
    terms.number(key, { least: 0 }) ?? DEFAULT_TERMS[key];
  const usualPrice = terms.number("usualPrice", { least: 0 }) ?? DEFAULT_TERMS.agreedPrice;
  const taxRate = terms.number("taxRate", { least: 0, most: 1 }) ?? DEFAULT_TERMS.taxRate;
  return {
    currency,
    ratePerHour: money("ratePerHour"),
    agreedPrice: terms.has("agreedPrice") ? money("agreedPrice") : usualPrice,
    newBoardPrice: money("newBoardPrice"),
    feeIfNotRepaired: money("feeIfNotRepaired"),
    comebackCost: money("comebackCost"),
    waitCost: money("waitCost"),
    atHand: DEFAULT_TERMS.atHand,
    agreed: terms.has("agreedPrice"),
    partsMarkUp: money("partsMarkUp"),
    minimumMargin: money("minimumMargin"),
    warrantyCost: money("warrantyCost"),
    taxRate,
    boardStays: terms.mark("boardStays") === true,
    carcassValue: money("carcassValue"),
    exchangeCredit: money("exchangeCredit"),
  };
}
