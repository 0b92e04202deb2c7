/** What is left where a job is given up: the fee, what goes back to the shelf, and what the board itself still fetches. */

import type { ReplaceEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, Part } from "../board/board.ts";
import { said } from "../messages/said.ts";
import {
  type Amount,
  amountNumber,
  amountOf,
  labour,
  minus,
  NOTHING,
  plus,
  rounded,
  shareOf,
} from "./amount.ts";
import { actionMinutes } from "./minutes.ts";
import { isObtainable, partPrice } from "./prices.ts";
import type { Terms } from "./terms.ts";

/** Shares assumed, all from memory until the shop's own outcomes tell. */
const GIVEN_UP = {
  /** worth on the shelf of a part that was fitted here and comes off again, of its price */
  pulledShare: 0.5,
  /** of what a donor costs, what one on the shelf is worth: not every one is asked for */
  donorShare: 0.4,
} as const;

export interface Remains {
  readonly what: string;
  readonly amount: Amount;
  /** counted in the sum; not where something better is done with the same thing, or where it does not pay */
  readonly counted: boolean;
  readonly why: string;
  /** the shop's wherever the board goes: the fee, and a part fitted here whose name the shelf can keep; else it goes with the board */
  readonly shops: boolean;
}

export interface GivenUp {
  readonly rows: readonly Remains[];
  readonly total: Amount;
}

/**
 * Sums what the technician gets out of a board that is given up now. An exchange board asks for this one whole, so it stands against
 * carcass and controller, and the better counts.
 * @param faultChance - how likely a part is faulty by now
 */
export function givenUp(
  board: Board,
  timeline: Timeline,
  terms: Terms,
  faultChance: (part: string) => number,
): GivenUp {
  const { currency } = terms;
  const paid = (money: number) => rounded(amountOf(money), currency);
  const fee: Remains = {
    what: said`diagnosis fee`,
    amount: paid(terms.feeIfNotRepaired),
    counted: true,
    why: terms.feeIfNotRepaired > 0 ? said`as the terms have it` : said`the terms name none`,
    shops: true,
  };
  const pulled = fittedHere(timeline).map(({ part, price, used, named }) => {
    const known = board.parts.get(part);
    if (known === undefined) throw new Error(`${part} was fitted and is not on this board`);
    const cost = amountOf(price ?? partPrice(known, terms.newBoardPrice));
    const half = used
      ? said`${part} was pulled already and counts as pulled`
      : said`${part} was new and counts as pulled`;
    const off = takenOff(
      known,
      shareOf(cost, GIVEN_UP.pulledShare),
      half,
      board,
      timeline,
      terms,
      faultChance,
    );
    return { ...off, shops: named };
  });
  const kept = [
    ...controllers(board, timeline).map((part) =>
      takenOff(
        part,
        shareOf(amountOf(partPrice(part, terms.newBoardPrice)), GIVEN_UP.donorShare),
        said`${part.ref} is programmed and sold by nobody: a donor for the next such board`,
        board,
        timeline,
        terms,
        faultChance,
      ),
    ),
    ...(terms.carcassValue > 0
      ? [
          {
            what: said`carcass`,
            amount: paid(terms.carcassValue),
            counted: true,
            why: said`for its parts, where the customer leaves it`,
            shops: false,
          },
        ]
      : []),
  ];
  const rows = [fee, ...pulled, ...exchanged(kept, terms)];
  return { rows, total: sumOf(rows) };
}

function sumOf(rows: readonly Remains[]): Amount {
  return plus(...rows.filter(({ counted }) => counted).map(({ amount }) => amount));
}

/** Exchange board or keeping it: the better of the two counts. */
function exchanged(kept: readonly Remains[], terms: Terms): readonly Remains[] {
  if (terms.exchangeCredit <= 0) return kept;
  const credit = rounded(amountOf(terms.exchangeCredit), terms.currency);
  const keeps = sumOf(kept).micros > credit.micros;
  return [
    ...kept.map((one) =>
      keeps || !one.counted
        ? one
        : { ...one, counted: false, why: said`${one.why}; in exchange the board goes whole` },
    ),
    {
      what: said`exchange board`,
      amount: credit,
      counted: !keeps,
      why: keeps
        ? said`keeping the board fetches more`
        : said`given for this board, whole and with its controller`,
      shops: false,
    },
  ];
}

/** A part off the board again: its worth if it is good, less the minutes of taking it off. */
function takenOff(
  part: Part,
  worth: Amount,
  why: string,
  board: Board,
  timeline: Timeline,
  terms: Terms,
  faultChance: (part: string) => number,
): Remains {
  const bench = { ...timeline.now, powered: false };
  // what came off at the close is in the minutes worked already
  const isOff = bench.off.has(part.ref) || shelvedAtClose(timeline).includes(part.ref);
  const minutes = isOff ? 0 : actionMinutes(board, bench, { do: "remove", part: part.ref });
  const good = 1 - Math.min(1, Math.max(0, faultChance(part.ref)));
  const fetched = rounded(shareOf(worth, good), terms.currency);
  const work = labour(amountOf(minutes), amountOf(terms.ratePerHour), terms.currency);
  const amount = minus(fetched, work);
  const pays = amount.micros > 0n;
  const likely = good < 0.995 ? said`${why}, good in ${Math.round(100 * good)} of ${100}` : why;
  const less = minutes > 0 ? said`${likely}, less ${`${minutes} min`} of taking it off` : likely;
  return {
    what: part.ref,
    amount,
    counted: pays,
    why: pays ? less : said`${less}: it stays on`,
    shops: false,
  };
}

/** Parts fitted in this job and still there, each once, with what was paid for the one that is on it now. */
function fittedHere({ entries }: Timeline): readonly {
  readonly part: string;
  readonly price: number | undefined;
  readonly used: boolean;
  /** it has a name to be kept by on the shelf */
  readonly named: boolean;
}[] {
  const fitted = new Map<string, ReplaceEvent>();
  for (const { event } of entries) if (event.do === "replace") fitted.set(event.part, event);
  return [...fitted.values()].map(({ part, price, used, with: name }) => ({
    part,
    price,
    used: used === true,
    named: name !== undefined,
  }));
}

/** What went back onto the shelf when the job was closed. */
function shelvedAtClose({ entries }: Timeline): readonly string[] {
  const last = entries.findLast(({ event }) => event.do === "close")?.event;
  return last?.do === "close" ? (last.shelved ?? []) : [];
}

function controllers(board: Board, { replacedIn, now }: Timeline): readonly Part[] {
  return [...board.parts.values()].filter(
    (part) =>
      part.kind === "controller" &&
      !isObtainable(part) &&
      !replacedIn.has(part.ref) &&
      !now.off.has(part.ref),
  );
}

/** Money that giving up now leaves, as a plan counts it: all that remains where the board stays with the shop, else what is the shop's. */
export function stopMoney(left: GivenUp, { boardStays }: Terms): number {
  return amountNumber(boardStays ? left.total : sumOf(left.rows.filter(({ shops }) => shops)));
}

/** What the job leaves where it is given up now: what remains, less what it has taken. */
export function resultOfGivingUp({ total }: GivenUp, spent: Amount): Amount {
  return plus(NOTHING, minus(total, spent));
}
