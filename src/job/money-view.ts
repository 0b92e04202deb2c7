/** The job's money in words and figures: spent, still expected, when to stop; the quote, the bill, and what is left on giving up. */
import { said } from "../messages/said.ts";
import { type Amount, amountNumber, amountOf, amountText, minus, NOTHING, rounded } from "../money/amount.ts";
import { acceptedQuote, agreedLimits, workAndParts } from "../money/bill.ts";
import { givenUp, resultOfGivingUp, stopMoney } from "../money/given-up.ts";
import { fittedWords, type JobSum, jobSum } from "../money/job-sum.ts";
import { type Expected, makeQuote, type Quote, worstToCome } from "../money/quote.ts";
import type { Terms } from "../money/terms.ts";
import { type Outlook, outlookOf, type Spread } from "../planning/cost-spread.ts";
import type { Assessment } from "./assess.ts";
import { billView } from "./bill-view.ts";
import type { MoneyView, QuoteView, SpreadView, ToGoView } from "./money-view-shape.ts";

/** All of it, for the page and the commands. */
export function moneyView(assessment: Assessment): MoneyView {
  const { job, timeline, belief } = assessment;
  const { terms, board } = job;
  const text = (amount: Amount) => amountText(rounded(amount, terms.currency), terms.currency);
  const sum = jobSum(board, timeline, terms);
  const chance = new Map(belief.suspects.map(({ part, probability }) => [part, probability]));
  const left = givenUp(board, timeline, terms, (part) => chance.get(part) ?? 0);
  // what is in the plan already does not count twice
  const remains = amountNumber(left.total) - stopMoney(left, terms);
  const expected = expectedOf(assessment);
  const toGo = expected.open ? toGoView(expected, remains, terms) : null;
  return {
    currency: terms.currency,
    spent: {
      minutes: amountNumber(sum.minutes),
      labour: text(sum.labour),
      parts: sum.parts.map((part) => ({
        words: fittedWords(part),
        amount: text(part.amount),
        estimated: part.estimated,
      })),
      total: text(sum.total),
    },
    toGo,
    advice: adviceOf(assessment, expected, toGo),
    askAgain: askAgain(assessment, sum, expected),
    givenUp: {
      rows: left.rows.map((row) => ({ ...row, amount: text(row.amount) })),
      total: text(left.total),
      result: text(resultOfGivingUp(left, sum.total)),
    },
    quote: quoteView(
      makeQuote(sum, expected.forQuote, terms),
      assessment,
      expected.outlook.repairProbability,
      text,
    ),
    bill: billView(job, timeline),
  };
}

interface WhatIsExpected {
  /** there is something to go on with: neither closed nor to be handed back as it runs */
  readonly open: boolean;
  readonly outlook: Outlook;
  readonly forQuote: Expected;
}

const NOTHING_MORE: Spread = { mean: 0, low: 0, high: 0 };

function expectedOf({ proposal, timeline }: Assessment): WhatIsExpected {
  const { action } = proposal;
  const runs = action.do === "close" && (action.verdict === "repaired" || action.verdict === "no-fault");
  const open = !timeline.closed && !runs;
  const going = open ? proposal.costToGo() : null;
  const outlook: Outlook =
    going !== null
      ? outlookOf(going)
      : {
          minutes: NOTHING_MORE,
          partsMoney: NOTHING_MORE,
          money: NOTHING_MORE,
          repairProbability: proposal.outlook.repairProbability,
          margin: proposal.outlook.expectedMargin,
          stopLine: 0,
        };
  const stops = action.do === "close" && !runs;
  return {
    open,
    outlook,
    forQuote: {
      minutes: outlook.minutes,
      partsMoney: outlook.partsMoney,
      money: outlook.money.mean,
      repairProbability: outlook.repairProbability,
      goesOn: !stops,
      whyStop: stops ? proposal.why : "",
      runs,
    },
  };
}

function toGoView({ outlook }: WhatIsExpected, remains: number, terms: Terms): ToGoView {
  const text = (money: number) => signedText(money, terms.currency);
  const spread = ({ mean, low, high }: Spread): SpreadView<string> => ({
    mean: text(mean),
    low: text(low),
    high: text(high),
  });
  const { minutes, partsMoney, money, repairProbability, margin, stopLine } = outlook;
  return {
    minutes,
    parts: spread(partsMoney),
    money: spread(money),
    repairProbability,
    margin: text(margin),
    stopLine: text(stopLine),
    stopLineWithRemains: remains > 0 ? text(Math.max(0, stopLine - repairProbability * remains)) : null,
    over: money.mean > stopLine,
  };
}

/** An estimate in the digits of the currency; below 0 with its sign. */
function signedText(money: number, currency: string): string {
  const amount = rounded(amountOf(Math.abs(money)), currency);
  return amountText(money < 0 ? minus(NOTHING, amount) : amount, currency);
}

function adviceOf(
  { job, timeline, proposal }: Assessment,
  expected: WhatIsExpected,
  toGo: ToGoView | null,
): string {
  if (timeline.closed) return said`The job is closed.`;
  if (!expected.open) return said`It runs: nothing more is expected but handing it back.`;
  const { currency } = job.terms;
  if (!expected.forQuote.goesOn) return said`Stop here. ${proposal.why}`;
  if (toGo === null) return "";
  return toGo.over
    ? said`More is still expected than it would earn: only what is cheap is worth trying, then stop.`
    : said`Go on while less than ${`${toGo.stopLine} ${currency}`} is still expected; now it is ${toGo.money.mean}.`;
}

/** Would the bill, at the upper end of what is expected, pass the cap that was accepted? */
function askAgain(
  { job, timeline }: Assessment,
  sum: JobSum,
  { open, forQuote }: WhatIsExpected,
): string | null {
  const { terms } = job;
  const accepted = acceptedQuote(timeline);
  const limits = accepted === null ? null : agreedLimits(terms, accepted);
  if (!open || limits === null) return null;
  const soFar = workAndParts(sum, terms);
  const worst = rounded({ micros: soFar.micros + worstToCome(forQuote, terms).micros }, terms.currency);
  if (worst.micros <= limits.most.micros) return null;
  const text = (amount: Amount) => `${amountText(amount, terms.currency)} ${terms.currency}`;
  return soFar.micros > limits.most.micros
    ? said`Work and parts stand at ${text(soFar)}, above the ${text(limits.most)} that was accepted: ask the customer again, or bear the rest.`
    : said`It may come to ${text(worst)}, above the ${text(limits.most)} that was accepted: ask the customer again before more is fitted.`;
}

function quoteView(
  quote: Quote,
  { timeline }: Assessment,
  repairProbability: number,
  text: (amount: Amount) => string,
): QuoteView {
  const last = timeline.entries.findLast(({ event }) => event.do === "quote")?.event;
  const sum = (money: number | undefined) => (money === undefined ? null : text(amountOf(money)));
  return {
    offers: quote.offers.map(({ offer, price, cap, why }) => ({
      offer,
      price: price === null ? null : text(price),
      cap: cap === null ? null : text(cap),
      why,
    })),
    advised: quote.advised,
    reason: quote.reason,
    grounds: quote.grounds,
    repairProbability,
    answered:
      last?.do === "quote"
        ? { offer: last.offer, answer: last.answer, price: sum(last.price), cap: sum(last.cap) }
        : null,
  };
}
