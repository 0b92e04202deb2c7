/** The bill of a job as its log stands, in the words of one language; needs no diagnosis. */
import type { Timeline } from "../bench/timeline.ts";
import { englishCatalogue } from "../messages/catalogue.ts";
import { PAPERS } from "../messages/papers/en.ts";
import { type Speaker, speaker } from "../messages/speaker.ts";
import { type Amount, amountNumber, amountText } from "../money/amount.ts";
import { acceptedQuote, type BillLine, makeBill } from "../money/bill.ts";
import { jobSum } from "../money/job-sum.ts";
import { closedAs } from "./closed-as.ts";
import { isOwnFault } from "./comeback-of.ts";
import type { Job } from "./job.ts";
import type { BillView } from "./money-view-shape.ts";

const ENGLISH = speaker<typeof PAPERS>(englishCatalogue(PAPERS));

export function billView(
  job: Job,
  timeline: Timeline,
  speak: Pick<Speaker<typeof PAPERS>, "say"> = ENGLISH,
): BillView {
  const { terms } = job;
  const bill = makeBill(jobSum(job.board, timeline, terms), terms, {
    verdict: closedAs(job.log),
    accepted: acceptedQuote(timeline),
    comeback: isOwnFault(job.comebackOf),
  });
  const basis = speak.say(`basis.${bill.basis}`);
  const text = (amount: Amount) => amountText(amount, terms.currency);
  return {
    soFar: !timeline.closed,
    basis: timeline.closed ? basis : speak.say("basis.soFar", { basis }),
    lines: bill.lines.map((line) => ({
      words: lineWords(line, speak),
      amount: text(line.amount),
      minutes: line.minutes === undefined ? null : amountNumber(line.minutes),
      estimated: line.part?.estimated ?? false,
    })),
    net: text(bill.net),
    taxPercent: Math.round(bill.taxRate * 1e6) / 1e4,
    tax: text(bill.tax),
    total: text(bill.total),
  };
}

function lineWords({ what, part }: BillLine, { say }: Pick<Speaker<typeof PAPERS>, "say">): string {
  if (what !== "part") return say(`bill.${what}`);
  if (part === undefined) throw new Error("a line for a part names no part");
  const named = part.with === null ? part.part : `${part.part}, ${part.with}`;
  return say(part.used ? "bill.pulled" : "bill.part", { part: named });
}
