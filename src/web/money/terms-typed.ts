/** The terms as they are typed, and the job file's terms made of them. */
import { amountTyped } from "./amount-typed.ts";

/** What a term is typed in: money of the currency, per cent (a share in the job file), the currency's own word, or a tick. */
type TypedIn = "money" | "percent" | "word" | "tick";

export const SHOP_TERMS = [
  { name: "currency", words: "Currency", usual: "EUR", typed: "word", hint: "three letters, such as EUR" },
  { name: "ratePerHour", words: "Rate an hour", usual: "30", typed: "money", hint: "" },
  { name: "agreedPrice", words: "Usual price when repaired", usual: "140", typed: "money", hint: "" },
  { name: "newBoardPrice", words: "A new board costs", usual: "260", typed: "money", hint: "" },
  {
    name: "partsMarkUp",
    words: "Mark-up on parts, %",
    usual: "0",
    typed: "percent",
    hint: "on the bill alone",
  },
  { name: "feeIfNotRepaired", words: "Diagnosis fee when given up", usual: "0", typed: "money", hint: "" },
  {
    name: "minimumMargin",
    words: "Least margin of a job",
    usual: "0",
    typed: "money",
    hint: "above giving it up; before it is quoted",
  },
  { name: "comebackCost", words: "A come-back costs", usual: "30", typed: "money", hint: "" },
  { name: "waitCost", words: "Waiting for a part costs", usual: "0", typed: "money", hint: "" },
  {
    name: "warrantyCost",
    words: "Set aside for each repair",
    usual: "0",
    typed: "money",
    hint: "for come-backs",
  },
  { name: "taxRate", words: "Tax, %", usual: "0", typed: "percent", hint: "added to the bill" },
  {
    name: "boardStays",
    words: "A board given up stays here",
    usual: "no",
    typed: "tick",
    hint: "what remains of it counts in when to stop",
  },
  { name: "carcassValue", words: "A dead board fetches", usual: "0", typed: "money", hint: "for its parts" },
  { name: "exchangeCredit", words: "Given for it in exchange", usual: "0", typed: "money", hint: "" },
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
      if (!/^[A-Za-z]{1,8}$/.test(text)) return `${words}: type a short word, such as ${usual}.`;
      continue;
    }
    const amount = amountTyped(text);
    if (amount === null || amount === "wrong") return `${words}: type an amount, such as ${usual}.`;
    if (name === "taxRate" && amount > 100) return `${words}: 100 at the most.`;
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
