/** Quote and bill, as the customer reads them. */
import type { Timeline } from "../bench/timeline.ts";
import { billView } from "../job/bill-view.ts";
import type { Job } from "../job/job.ts";
import type { MoneyView } from "../job/money-view-shape.ts";
import type { PaperSpeaker } from "../messages/paper-speaker.ts";
import { certainty } from "./certainty.ts";
import { paperOf, usualFacts } from "./head-facts.ts";
import type { Cell, Paper, PaperHead } from "./paper.ts";

export function money(decimal: string, speak: PaperSpeaker): Cell {
  return { decimal, text: speak.amount(decimal) };
}

export function billPaper(job: Job, timeline: Timeline, head: PaperHead, speak: PaperSpeaker): Paper {
  const { say } = speak;
  const bill = billView(job, timeline, speak);
  const tax =
    bill.taxPercent > 0
      ? [
          [say("bill.net"), "", money(bill.net, speak)],
          [say("bill.tax", { percent: speak.number(bill.taxPercent, 4) }), "", money(bill.tax, speak)],
        ]
      : [];
  const rows = bill.lines.map(({ words, minutes, amount, estimated }) => [
    estimated ? say("bill.usual", { words }) : words,
    minutes === null ? "" : speak.shown(`${minutes} min`),
    money(amount, speak),
  ]);
  return paperOf(speak, head, {
    title: say(bill.soFar ? "title.billSoFar" : "title.bill"),
    facts: usualFacts(job, head, speak),
    blocks: [
      {
        block: "table",
        head: [say("head.what"), say("head.howMuch"), job.terms.currency],
        rows: [...rows, ...tax, [say("bill.toPay"), "", money(bill.total, speak)]],
        sums: tax.length + 1,
        shares: [0.5, 0.3, 0.2],
      },
      { block: "text", text: bill.basis },
    ],
  });
}

/** Why the offer that is advised is advised. */
export function groundsWords({ quote }: Pick<MoneyView, "quote">, speak: PaperSpeaker): string {
  return quote.grounds === "chance"
    ? speak.say("reason.chance", { percent: speak.percent(certainty(quote.repairProbability)) })
    : speak.say(`reason.${quote.grounds}`);
}

/** Whether the sums of a quote bear tax yet. */
export function taxWords(taxPercent: number, { say, number }: PaperSpeaker): string {
  return taxPercent > 0 ? say("tax.beforeOf", { percent: number(taxPercent, 4) }) : say("tax.before");
}

export function quotePaper(job: Job, view: MoneyView, head: PaperHead, speak: PaperSpeaker): Paper {
  const { say } = speak;
  return paperOf(speak, head, {
    title: say("title.quote"),
    facts: usualFacts(job, head, speak),
    blocks: [
      {
        block: "table",
        head: [say("head.offer"), say("head.cap"), view.currency],
        rows: view.quote.offers.map(({ offer, cap, price }) => {
          const words = say(`offer.${offer}`);
          return [
            offer === view.quote.advised ? say("offer.advised", { offer: words }) : words,
            cap === null ? "" : money(cap, speak),
            price === null ? "" : money(price, speak),
          ];
        }),
        sums: 0,
        shares: [0.5, 0.3, 0.2],
      },
      { block: "text", text: groundsWords(view, speak) },
      { block: "text", text: taxWords(view.bill.taxPercent, speak) },
    ],
  });
}
