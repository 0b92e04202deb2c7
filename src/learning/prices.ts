/** What parts cost this bench, against what they were to cost. */
import { updateNormal } from "./conjugate.ts";
import type { Lesson } from "./lesson.ts";
import { PSEUDO_COUNTS } from "./pseudo-counts.ts";
import { partKey } from "./rate-chain.ts";

export interface LearntPrice {
  /** what the board is known by */
  readonly identity: string;
  readonly part: string;
  /** by the board file, or the usual share of a new board, in the last of the jobs */
  readonly usual: number;
  readonly price: number;
  readonly count: number;
}

/** By part of a board: prices spread by factors, so means are of logarithms; what was to be paid counts as a few purchases. */
export function pricesOf(lessons: readonly Lesson[]): Map<string, LearntPrice> {
  const paid = new Map<string, { identity: string; part: string; usual: number; logs: number[] }>();
  for (const { identity, prices } of lessons)
    for (const { part, paid: price, usual } of prices) {
      if (!(price > 0 && usual > 0)) continue;
      const key = partKey(identity, part);
      const logs = [...(paid.get(key)?.logs ?? []), Math.log(price / usual)];
      paid.set(key, { identity, part, usual, logs });
    }
  return new Map(
    [...paid].map(([key, { identity, part, usual, logs }]) => {
      const seen = logs.reduce((sum, one) => sum + one, 0) / logs.length;
      const { mean } = updateNormal({ mean: 0, weight: PSEUDO_COUNTS.price.worth }, seen, logs.length);
      return [key, { identity, part, usual, price: usual * Math.exp(mean), count: logs.length }];
    }),
  );
}
