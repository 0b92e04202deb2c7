/** What a job has taken so far: every minute and every part of its log once. What was undone never happened. */

import type { Timeline } from "../bench/timeline.ts";
import type { Board, PartKind } from "../board/board.ts";
import { kindOf } from "../board/kinds.ts";
import { partValue } from "../board/part-value.ts";
import { said } from "../messages/said.ts";
import { type Amount, amountOf, labour, NOTHING, plus, rounded } from "./amount.ts";
import { actionMinutes } from "./minutes.ts";
import { fittedPrice } from "./prices.ts";
import type { Terms } from "./terms.ts";

/** One part fitted. */
export interface FittedPart {
  readonly part: string;
  /** null: no part of the board file */
  readonly kind: PartKind | null;
  /** its figures as printed on it, such as `6.3 A` */
  readonly value: readonly string[];
  /** the catalogue name that was noted, or null */
  readonly with: string | null;
  readonly used: boolean;
  readonly amount: Amount;
  /** nobody noted what it cost: the board's price, or its kind's usual share of a new board */
  readonly estimated: boolean;
}

/** `IGBT Q1, 600 V, 30 A, pulled`, or `IGBT Q1, its catalogue name` where that was noted: it says more than the figures of the one before. */
export function fittedWords({ part, kind, value, with: named, used }: FittedPart): string {
  const what = kind === null ? part : said`${kindOf(kind).words} ${part}`;
  const details = named === null ? value : [named];
  const fitted = details.reduce((line, detail) => said`${line}, ${detail}`, what);
  return used ? said`${fitted}, pulled` : fitted;
}

export interface JobSum {
  /** minutes, as exact as they were given */
  readonly minutes: Amount;
  readonly labour: Amount;
  readonly parts: readonly FittedPart[];
  readonly partsTotal: Amount;
  readonly total: Amount;
}

/** Sums in the terms' currency, each line rounded to it, so that the total is the sum of what stands above it. */
export function jobSum(board: Board, timeline: Timeline, terms: Terms): JobSum {
  let minutes = NOTHING;
  const parts: FittedPart[] = [];
  for (const { event, before } of timeline.entries) {
    minutes = plus(minutes, amountOf(actionMinutes(board, before, event)));
    if (event.do !== "replace") continue;
    const part = board.parts.get(event.part);
    const price = event.price ?? (part === undefined ? 0 : fittedPrice(part, terms));
    parts.push({
      part: event.part,
      kind: part?.kind ?? null,
      value: part === undefined ? [] : partValue(part),
      with: event.with ?? null,
      used: event.used === true,
      amount: rounded(amountOf(price), terms.currency),
      estimated: event.price === undefined,
    });
  }
  const worked = labour(minutes, amountOf(terms.ratePerHour), terms.currency);
  const partsTotal = plus(...parts.map(({ amount }) => amount));
  return { minutes, labour: worked, parts, partsTotal, total: plus(worked, partsTotal) };
}
