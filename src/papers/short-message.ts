/** Finding and quote as a few lines to paste into a messenger. */
import { closedAs } from "../job/closed-as.ts";
import type { FoundFault } from "../job/found-faults.ts";
import type { Job } from "../job/job.ts";
import type { MoneyView, OfferView } from "../job/money-view-shape.ts";
import { arrivalPictures } from "./arrival-pictures.ts";
import { paperOf } from "./head-facts.ts";
import { groundsWords, taxWords } from "./money-papers.ts";
import type { Paper, PaperHead } from "./paper.ts";
import type { PaperWords } from "./paper-words.ts";

export interface MessageInput {
  readonly job: Job;
  readonly found: readonly FoundFault[];
  /** what was done, one line each */
  readonly done: readonly string[];
  readonly view: MoneyView;
}

export function shortMessage(input: MessageInput, head: PaperHead, words: PaperWords): Paper {
  const { job, found, view } = input;
  const { speak } = words;
  const { say } = speak;
  const verdict = closedAs(job.log);
  const lines = [
    ...[head.from, head.jobTitle ?? job.board.name].flatMap((line) => (line === null ? [] : [line])),
    ...(verdict === null ? [] : [say(`verdict.${verdict}`)]),
    ...(found.length === 0
      ? [say("report.nothingFound")]
      : [say("message.found", { faults: speak.list(found.map(({ fault }) => words.fault(fault))) })]),
    ...input.done,
    ...(verdict === null ? offered(view, words) : [toPay(view, words)]),
  ];
  return paperOf(speak, head, {
    title: say("title.message"),
    facts: [],
    blocks: [
      ...lines.map((text) => ({ block: "text" as const, text })),
      ...arrivalPictures(head, { title: say("pictures"), across: 1, most: 1 }, speak),
    ],
  });
}

function offered(view: MoneyView, { speak }: PaperWords): readonly string[] {
  return [
    groundsWords(view, speak),
    ...view.quote.offers.flatMap((offer) => offerLine(offer, view.currency, speak) ?? []),
    taxWords(view.bill.taxPercent, speak),
    ...(view.quote.answered === null ? [speak.say("message.ask")] : []),
  ];
}

function offerLine(
  { offer, price, cap }: OfferView,
  currency: string,
  { say, amount }: PaperWords["speak"],
): string | null {
  if (price === null) return null;
  const given = { price: amount(price), currency };
  return offer === "repair"
    ? say("message.repair", { ...given, cap: amount(cap ?? price) })
    : say(`message.${offer}`, given);
}

function toPay({ bill, currency }: MoneyView, { speak: { say, amount } }: PaperWords): string {
  return say(bill.taxPercent > 0 ? "message.toPay" : "message.toPayPlain", {
    amount: amount(bill.total),
    currency,
  });
}
