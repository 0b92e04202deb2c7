/** What the customer is told: repair up to a cap, a new board, or neither; with the reason for each. */

import type { OfferName } from "../bench/event.ts";
import { said } from "../messages/said.ts";
import { type Amount, amountOf, larger, minus, plus, rounded, shareOf } from "./amount.ts";
import { newBoardBilled, workAndParts } from "./bill.ts";
import type { JobSum } from "./job-sum.ts";
import type { Terms } from "./terms.ts";

/** What customers pay for a repair at most, as a share of a new board: the 50 % rule, seen in the trade. */
export const CUSTOMER_LIMIT = 0.5;

/** What is expected from here, in plain figures: an estimate. */
export interface Expected {
  readonly minutes: { readonly mean: number; readonly high: number };
  readonly partsMoney: { readonly mean: number; readonly high: number };
  /** mean money of going on, the hour counted */
  readonly money: number;
  readonly repairProbability: number;
  /** the planner goes on; false where it stops */
  readonly goesOn: boolean;
  /** why it stops, in the planner's words */
  readonly whyStop: string;
  /** the board has run: what is left is to hand it back */
  readonly runs: boolean;
}

export interface Offer {
  readonly offer: OfferName;
  /** before tax; null: nothing is asked */
  readonly price: Amount | null;
  /** not above this without asking again; null: the price is one */
  readonly cap: Amount | null;
  readonly why: string;
}

/** What the advice rests on, for a paper that says it to the customer in their own language. */
export type Grounds = "chance" | "over-half" | "stop" | "price" | "runs";

export interface Quote {
  readonly offers: readonly Offer[];
  readonly advised: OfferName;
  readonly reason: string;
  readonly grounds: Grounds;
}

/** The lowest price at which the whole job is expected to leave the shop's minimum margin; null where no price does. */
export function leastPrice(spent: Amount, expected: Expected, terms: Terms): number | null {
  const { repairProbability: p, money } = expected;
  if (p <= 0) return null;
  const cost = Number(spent.micros) / 1e6 + money + terms.minimumMargin;
  return Math.max(0, (cost - (1 - p) * terms.feeIfNotRepaired) / p + terms.warrantyCost);
}

/** The three offers and the one that the figures speak for. */
export function makeQuote(sum: JobSum, expected: Expected, terms: Terms): Quote {
  const { currency } = terms;
  const paid = (money: number) => rounded(amountOf(money), currency);
  const usual = paid(terms.agreedPrice);
  const needed = leastPrice(sum.total, expected, terms);
  const price = needed === null || terms.agreed ? usual : larger(usual, whole(paid(needed), currency));
  const worked = workAndParts(sum, terms);
  const cap = larger(price, whole(plus(worked, worstToCome(expected, terms)), currency));
  const board = newBoardBilled(terms);
  const fee = paid(terms.feeIfNotRepaired);
  const offers: readonly Offer[] = [
    { offer: "repair", price, cap, why: repairWords(price, usual, terms) },
    { offer: "replace", price: plus(board, fee), cap: null, why: said`a new board, and the diagnosis fee` },
    {
      offer: "decline",
      price: fee,
      cap: null,
      why: said`the board goes back as it is, for the diagnosis fee`,
    },
  ];
  return { offers, ...advice(price, board, needed, expected, terms) };
}

/** What may still come at the upper end of the spread, billed. */
export function worstToCome(
  { minutes, partsMoney }: Pick<Expected, "minutes" | "partsMoney">,
  terms: Terms,
): Amount {
  const work = shareOf(amountOf(terms.ratePerHour), minutes.high / 60);
  return plus(work, shareOf(amountOf(partsMoney.high), 1 + terms.partsMarkUp));
}

/** Up to the next whole unit of the currency: a cap and a price are round figures. */
function whole(amount: Amount, currency: string): Amount {
  const unit = amountOf(1);
  const over = amount.micros % unit.micros;
  return rounded(over === 0n ? amount : plus(amount, minus(unit, { micros: over })), currency);
}

function repairWords(price: Amount, usual: Amount, terms: Terms): string {
  if (terms.agreed) return said`the price that is agreed`;
  return price.micros > usual.micros
    ? said`the least at which the job is expected to pay, what was spent on it included`
    : said`the shop's usual price`;
}

function advice(
  price: Amount,
  board: Amount,
  needed: number | null,
  { goesOn, whyStop, repairProbability, runs }: Expected,
  terms: Terms,
): Omit<Quote, "offers"> {
  const other = board.micros > 0n ? "replace" : "decline";
  if (runs)
    return { advised: "repair", reason: said`The board runs: what it took is spent.`, grounds: "runs" };
  if (!goesOn || needed === null)
    return {
      advised: other,
      reason: whyStop === "" ? said`Going on is worth less than stopping.` : whyStop,
      grounds: "stop",
    };
  if (terms.agreed && needed > terms.agreedPrice && terms.minimumMargin > 0)
    return {
      advised: other,
      reason: said`At the price agreed the job is not expected to leave the shop's minimum margin of ${`${terms.minimumMargin} ${terms.currency}`}.`,
      grounds: "price",
    };
  if (board.micros > 0n && price.micros > shareOf(board, CUSTOMER_LIMIT).micros && !terms.agreed)
    return {
      advised: "replace",
      reason: said`The repair would cost more than half of a new board, and it may fail: most customers take the new one.`,
      grounds: "over-half",
    };
  return {
    advised: "repair",
    reason: said`Repaired in ${Math.round(100 * repairProbability)} of ${100} such jobs.`,
    grounds: "chance",
  };
}
