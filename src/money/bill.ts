/**
 * The bill: every minute and every part of the log once, at the shop's rate and mark-up, then what was agreed about the sum, then tax.
 * Everything in exact decimal, each line rounded as the currency pays, so that the total is the sum of what stands above it.
 */
import type { QuoteEvent, Verdict } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import { type Amount, amountOf, larger, minus, NOTHING, plus, rounded, shareOf, smaller } from "./amount.ts";
import type { FittedPart, JobSum } from "./job-sum.ts";
import type { Terms } from "./terms.ts";

/** What a line is for, and why the sum is what it is: said in words by whoever prints them. */
export type BillWhat = "work" | "part" | "new-board" | "fee" | "not-charged" | "agreed-most" | "agreed-least";
export type BillBasis = "comeback" | "new-board" | "not-repaired" | "by-work" | "within" | "most" | "price";

export interface BillLine {
  readonly what: BillWhat;
  readonly amount: Amount;
  /** of `work` */
  readonly minutes?: Amount;
  /** of `part` */
  readonly part?: FittedPart;
}

export interface Bill {
  readonly currency: string;
  readonly basis: BillBasis;
  readonly lines: readonly BillLine[];
  readonly net: Amount;
  readonly taxRate: number;
  readonly tax: Amount;
  readonly total: Amount;
}

/** How a job stands when it is billed. */
export interface Billed {
  /** null while the job is open */
  readonly verdict: Verdict | null;
  /** the quote that the customer accepted last; null where none */
  readonly accepted: QuoteEvent | null;
  /** the shop's own repair came back: its work is not charged */
  readonly comeback: boolean;
}

/** The quote that counts: the last one answered, if it was accepted. */
export function acceptedQuote({ entries }: Pick<Timeline, "entries">): QuoteEvent | null {
  const last = entries.findLast(({ event }) => event.do === "quote")?.event;
  return last?.do === "quote" && last.answer === "accepted" ? last : null;
}

/** A part as it is billed: what it cost and the mark-up. */
export function partBilled({ amount }: Pick<FittedPart, "amount">, terms: Terms): Amount {
  return rounded(shareOf(amount, 1 + terms.partsMarkUp), terms.currency);
}

/** What a new board comes to, fee and mark-up included, before tax. */
export function newBoardBilled(terms: Terms): Amount {
  return rounded(shareOf(amountOf(terms.newBoardPrice), 1 + terms.partsMarkUp), terms.currency);
}

/** Work and parts alone, as they are billed. */
export function workAndParts(sum: JobSum, terms: Terms): Amount {
  return plus(sum.labour, ...sum.parts.map((part) => partBilled(part, terms)));
}

export function makeBill(sum: JobSum, terms: Terms, billed: Billed): Bill {
  const { currency, taxRate } = terms;
  const worked = workLines(sum, terms);
  const settled = settlement(workAndParts(sum, terms), terms, billed);
  const lines = [...worked, ...settled.lines.filter(({ amount }) => amount.micros !== 0n)];
  const net = plus(...lines.map(({ amount }) => amount));
  const tax = rounded(shareOf(net, taxRate), currency);
  return { currency, basis: settled.basis, lines, net, taxRate, tax, total: plus(net, tax) };
}

function workLines(sum: JobSum, terms: Terms): readonly BillLine[] {
  return [
    { what: "work", amount: sum.labour, minutes: sum.minutes },
    ...sum.parts.map(
      (part): BillLine => ({
        what: "part",
        amount: partBilled(part, terms),
        part,
      }),
    ),
  ];
}

interface Settlement {
  readonly basis: BillBasis;
  readonly lines: readonly BillLine[];
}

/** What was agreed about a sum of work and parts. */
function settlement(worked: Amount, terms: Terms, { verdict, accepted, comeback }: Billed): Settlement {
  const off: BillLine = { what: "not-charged", amount: minus(NOTHING, worked) };
  if (comeback) return { basis: "comeback", lines: [off] };
  const fee: BillLine = {
    what: "fee",
    amount: rounded(amountOf(feeOf(terms, accepted)), terms.currency),
  };
  if (accepted?.offer === "replace" && verdict !== "repaired")
    return {
      basis: "new-board",
      lines: [
        off,
        fee,
        {
          what: "new-board",
          amount:
            accepted.price === undefined
              ? newBoardBilled(terms)
              : minus(rounded(amountOf(accepted.price), terms.currency), fee.amount),
        },
      ],
    };
  if (verdict !== null && verdict !== "repaired")
    return {
      basis: "not-repaired",
      lines: [off, fee],
    };
  return withinAgreed(worked, terms, accepted);
}

/** What is taken for a board given up: as the customer was told, else as the terms have it. */
function feeOf(terms: Terms, accepted: QuoteEvent | null): number {
  return (accepted?.offer === "decline" ? accepted.price : undefined) ?? terms.feeIfNotRepaired;
}

/** At least the price agreed, and not above the cap: between the two what was really worked and fitted. */
function withinAgreed(worked: Amount, terms: Terms, accepted: QuoteEvent | null): Settlement {
  const limits = agreedLimits(terms, accepted);
  if (limits === null) return { basis: "by-work", lines: [] };
  const { least, most } = limits;
  const due = smaller(larger(worked, least), most);
  const off = minus(due, worked);
  return {
    basis:
      due.micros === worked.micros && least.micros !== most.micros
        ? "within"
        : off.micros < 0n
          ? "most"
          : "price",
    lines: [{ what: off.micros < 0n ? "agreed-most" : "agreed-least", amount: off }],
  };
}

/** The price below which a repaired board is not billed, and the cap; null where nothing was agreed. */
export function agreedLimits(
  terms: Terms,
  accepted: QuoteEvent | null,
): { readonly least: Amount; readonly most: Amount } | null {
  const paid = (money: number) => rounded(amountOf(money), terms.currency);
  if (accepted?.offer === "repair" && (accepted.price ?? accepted.cap) !== undefined) {
    const { price = 0, cap = price } = accepted;
    return { least: paid(price), most: paid(Math.max(price, cap)) };
  }
  return terms.agreed ? { least: paid(terms.agreedPrice), most: paid(terms.agreedPrice) } : null;
}
