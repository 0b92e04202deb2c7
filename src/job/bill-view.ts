/** The bill of a job as its log stands, in words and text; needs no diagnosis. */
import type { Timeline } from "../bench/timeline.ts";
import { type Amount, amountNumber, amountText } from "../money/amount.ts";
import { acceptedQuote, makeBill } from "../money/bill.ts";
import { jobSum } from "../money/job-sum.ts";
import { closedAs } from "./closed-as.ts";
import { isOwnFault } from "./comeback-of.ts";
import type { Job } from "./job.ts";
import type { BillView } from "./money-view-shape.ts";

export function billView(job: Job, timeline: Timeline): BillView {
  const { terms } = job;
  const bill = makeBill(jobSum(job.board, timeline, terms), terms, {
    verdict: closedAs(job.log),
    accepted: acceptedQuote(timeline),
    comeback: isOwnFault(job.comebackOf),
  });
  const text = (amount: Amount) => amountText(amount, terms.currency);
  return {
    soFar: !timeline.closed,
    basis: timeline.closed
      ? bill.basis
      : `The job is open; this is the bill if it were repaired as it stands. ${bill.basis}`,
    lines: bill.lines.map(({ words, amount, minutes, part }) => ({
      words,
      amount: text(amount),
      minutes: minutes === undefined ? null : amountNumber(minutes),
      estimated: part?.estimated ?? false,
    })),
    net: text(bill.net),
    taxPercent: Math.round(bill.taxRate * 1e6) / 1e4,
    tax: text(bill.tax),
    total: text(bill.total),
  };
}
