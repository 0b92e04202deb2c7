/** The bill of a job as its log stands, in the words of one language; needs no diagnosis. */
import type { Timeline } from "../bench/timeline.ts";
import { englishCatalogue } from "../messages/catalogue.ts";
import { PAPERS } from "../messages/papers/en.ts";
import { type Speaker, speaker } from "../messages/speaker.ts";
import { WORDS } from "../messages/words/en.ts";
import { type Amount, amountNumber, amountText } from "../money/amount.ts";
import { acceptedQuote, type BillLine, makeBill } from "../money/bill.ts";
import { jobSum } from "../money/job-sum.ts";
import { closedAs } from "./closed-as.ts";
import { isOwnFault } from "./comeback-of.ts";
import type { Job } from "./job.ts";
import type { BillView } from "./money-view-shape.ts";

type BillWords = typeof PAPERS & typeof WORDS;
type BillSpeaker = Pick<Speaker<BillWords>, "say" | "shown">;
const ENGLISH: BillSpeaker = speaker<BillWords>(englishCatalogue({ ...PAPERS, ...WORDS }));

export function billView(job: Job, timeline: Timeline, speak: BillSpeaker = ENGLISH): BillView {
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

/** What a part is stands with its name, for nobody who pays knows what F1 is: by what was fitted, else by the figures of what was there. */
function lineWords({ what: of, part }: BillLine, { say, shown }: BillSpeaker): string {
  if (of !== "part") return say(`bill.${of}`);
  if (part === undefined) throw new Error("a line for a part names no part");
  const what =
    part.kind === null ? part.part : say("part.named", { kind: say(`kind.${part.kind}`), ref: part.part });
  const details = part.with === null ? part.value.map(shown) : [part.with];
  const named = details.reduce((line, detail) => say("bill.detail", { part: line, detail }), what);
  return say(part.used ? "bill.pulled" : "bill.part", { part: named });
}
