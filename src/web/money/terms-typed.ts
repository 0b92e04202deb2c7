/** The terms as they are typed, and the job file's terms made of them. */

import { said } from "../../messages/said.ts";
import { amountTyped } from "./amount-typed.ts";

/** What a term is typed in: money of the currency, per cent (a share in the job file), the currency's own word, or a tick. */
type TypedIn = "money" | "percent" | "word" | "tick";

export const SHOP_TERMS = [
  {
    name: "currency",
    words: said`Currency`,
    usual: "EUR",
    typed: "word",
    hint: said`three letters, such as EUR`,
  },
  { name: "ratePerHour", words: said`Rate an hour`, usual: "30", typed: "money", hint: "" },
  { name: "agreedPrice", words: said`Usual price when repaired`, usual: "140", typed: "money", hint: "" },
  { name: "newBoardPrice", words: said`A new board costs`, usual: "260", typed: "money", hint: "" },
  {
    name: "partsMarkUp",
    words: said`Mark-up on parts, %`,
    usual: "0",
    typed: "percent",
    hint: said`on the bill alone`,
  },
  {
    name: "feeIfNotRepaired",
    words: said`Diagnosis fee when given up`,
    usual: "0",
    typed: "money",
    hint: "",
  },
  {
    name: "minimumMargin",
    words: said`Least margin of a job`,
    usual: "0",
    typed: "money",
    hint: said`above giving it up; before it is quoted`,
  },
  { name: "comebackCost", words: said`A come-back costs`, usual: "30", typed: "money", hint: "" },
  { name: "waitCost", words: said`Waiting for a part costs`, usual: "0", typed: "money", hint: "" },
  {
    name: "warrantyCost",
    words: said`Set aside for each repair`,
    usual: "0",
    typed: "money",
    hint: said`for come-backs`,
  },
  { name: "taxRate", words: said`Tax, %`, usual: "0", typed: "percent", hint: said`added to the bill` },
  {
    name: "boardStays",
    words: said`A board given up stays here`,
    usual: "no",
    typed: "tick",
    hint: said`what remains of it counts in when to stop`,
  },
  {
    name: "carcassValue",
    words: said`A dead board fetches`,
    usual: "0",
    typed: "money",
    hint: said`for its parts`,
  },
  { name: "exchangeCredit", words: said`Given for it in exchange`, usual: "0", typed: "money", hint: "" },
] as const satisfies readonly {
  readonly name: string;
  readonly words: string;
  readonly usual: string;
  readonly typed: TypedIn;
  readonly hint: string;
}[];

type TermName = (typeof SHOP_TERMS)[number]["name"];
/** As typed, before anything is read out of it. */
export type TermsTyped = Readonly<Record<TermName, string>>;

export const USUAL_TERMS = Object.fromEntries(
  SHOP_TERMS.map(({ name, usual }) => [name, usual]),
) as TermsTyped;

/** Terms of the first job format: written always; the later ones only where they say something. */
const ALWAYS: ReadonlySet<string> = new Set([
  "currency",
  "ratePerHour",
  "newBoardPrice",
  "feeIfNotRepaired",
  "comebackCost",
]);

/** What is wrong with one of them, in one line; null where nothing is. */
export function termsProblem(terms: TermsTyped): string | null {
  for (const { name, words, usual, typed } of SHOP_TERMS) {
    const text = terms[name].trim();
    if (typed === "tick") continue;
    if (typed === "word") {
      if (!/^[A-Za-z]{1,8}$/.test(text)) return said`${words}: type a short word, such as ${usual}.`;
      continue;
    }
    const amount = amountTyped(text);
    if (amount === null || amount === "wrong") return said`${words}: type an amount, such as ${usual}.`;
    if (name === "taxRate" && amount > 100) return said`${words}: 100 at the most.`;
  }
  return null;
}

/** The `terms` of a job file. Where no price is agreed the shop's usual one counts, and every card that uses it names it so. */
export function termsOf(
  terms: TermsTyped,
  agreed: boolean,
): Readonly<Record<string, string | number | true>> {
  const fields: Record<string, string | number | true> = {};
  for (const { name, typed } of SHOP_TERMS) {
    if (typed === "word") fields[name] = terms[name].trim().toUpperCase();
    else if (typed === "tick") {
      if (terms[name] === "yes") fields[name] = true;
    } else {
      const amount = Number(amountTyped(terms[name]));
      // 12.5 per cent is 0.125 and not the binary fraction beside it
      const value = typed === "percent" ? Number((amount / 100).toPrecision(12)) : amount;
      if (name === "agreedPrice") fields[agreed ? "agreedPrice" : "usualPrice"] = value;
      else if (ALWAYS.has(name) || value !== 0) fields[name] = value;
    }
  }
  return fields;
}

/** The terms of a job file, or of the shop, as they would be typed; what is left out is as usual. */
export function typedTerms(fields: Readonly<Record<string, unknown>>): TermsTyped {
  const typedOf = ({ name, typed, usual }: (typeof SHOP_TERMS)[number]): string => {
    const value = fields[name === "agreedPrice" ? "usualPrice" : name];
    if (typed === "tick") return value === true ? "yes" : usual;
    if (typed === "percent" && typeof value === "number")
      return String(Number((100 * value).toPrecision(12)));
    return value === undefined ? usual : String(value);
  };
  return Object.fromEntries(SHOP_TERMS.map((term) => [term.name, typedOf(term)])) as TermsTyped;
}
