/** The bill of a job as its log stands, in the words of one language; needs no diagnosis. */
import type { Timeline } from "../bench/timeline.ts";
import type { PartKind } from "../board/board.ts";
import { kindOf } from "../board/kinds.ts";
import type { PAPERS } from "../messages/papers/en.ts";
import { said } from "../messages/said.ts";
import type { Speaker } from "../messages/speaker.ts";
import type { WORDS } from "../messages/words/en.ts";
import { type Amount, amountNumber, amountText } from "../money/amount.ts";
import { acceptedQuote, type BillBasis, type BillLine, makeBill } from "../money/bill.ts";
import { jobSum } from "../money/job-sum.ts";
import { closedAs } from "./closed-as.ts";
import { isOwnFault } from "./comeback-of.ts";
import type { Job } from "./job.ts";
import type { BillView } from "./money-view-shape.ts";

type BillSpeaker = Pick<Speaker<typeof PAPERS & typeof WORDS>, "say" | "shown">;

/** The English of the papers, for a screen to tell: it knows its language, this does not. */
const TOLD: Readonly<Record<`basis.${BillBasis}` | `bill.${Exclude<BillLine["what"], "part">}`, string>> = {
  "bill.work": said`Work at the bench`,
  "bill.not-charged": said`Not charged`,
  "bill.fee": said`Diagnosis fee`,
  "bill.new-board": said`New board`,
  "bill.agreed-most": said`Not above what was agreed`,
  "bill.agreed-least": said`To the price agreed`,
  "basis.comeback": said`Comeback of the shop's own repair: nothing is charged.`,
  "basis.new-board": said`A new board in the place of this one, as quoted, and the diagnosis fee.`,
  "basis.not-repaired": said`Not repaired: the diagnosis fee alone. Parts fitted go back to the shop.`,
  "basis.by-work": said`By work and parts: no price was agreed.`,
  "basis.within": said`By work and parts, within what was agreed.`,
  "basis.most": said`Not above what was agreed without asking again.`,
  "basis.price": said`The price agreed for the repaired board.`,
};

type Given = Readonly<Partial<Record<"part" | "basis" | "kind" | "ref" | "detail", string>>>;

/** Without the words of a paper: said, to be told where it is shown. */
const SCREEN = {
  shown: (figure: string) => figure,
  say(key: string, { part = "", basis = "", kind = "", ref = "", detail = "" }: Given = {}): string {
    if (key.startsWith("kind.")) return kindOf(key.slice("kind.".length) as PartKind).words;
    if (key === "part.named") return said`${kind} ${ref}`;
    if (key === "bill.detail") return said`${part}, ${detail}`;
    if (key === "basis.soFar")
      return said`The job is open; this is the bill if it were repaired as it stands. ${basis}`;
    if (key === "bill.pulled") return said`${part}, pulled`;
    return key === "bill.part" ? part : TOLD[key as keyof typeof TOLD];
  },
} as BillSpeaker;

export function billView(job: Job, timeline: Timeline, speak: BillSpeaker = SCREEN): BillView {
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
