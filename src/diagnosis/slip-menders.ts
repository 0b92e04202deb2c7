/**
 * A reading that the best set leaves to a slip may be explained by two changes at once: one member exchanged for its like, and one fault more that
 * only shows beside the other. Neither step alone gets there: the exchange explains less, and beside the member as it was the further fault is
 * not heard. So the sets near the best, exchanged ones among them, are asked for one fault more that explains that reading.
 */
import { oddsBeside } from "./beside-odds.ts";
import { type Evidence, overCommon } from "./evidence.ts";
import type { ScoredSet } from "./scored-set.ts";
import { insertSorted } from "./set-order.ts";
import { presentAt, type Universe } from "./universe.ts";

/** A piece explained better by so many nats was no slip. */
const EXPLAINS = 3;
/** Sets that are asked: so many of the best, and none further below it (nats). Bounds on work. */
const MOST_NEAR = 60;
const NEAR_BEST = 6;
/** Sets that would end further than this below the best are not asked about (nats). */
const RIVALS = 1;

/**
 * Sets worth scoring, each with one element more than one of those near the best.
 * @param worst - index of the piece that is left to a slip
 * @param ranked - all sets found, best first
 */
export function slipMenders(
  universe: Universe,
  evidence: readonly Evidence[],
  logWeights: Float64Array,
  worst: number,
  ranked: readonly ScoredSet[],
): readonly (readonly number[])[] {
  const best = ranked[0]?.score ?? Number.NEGATIVE_INFINITY;
  const near = ranked.slice(0, MOST_NEAR).filter(({ score }) => score > best - NEAR_BEST);
  const piece = evidence[worst];
  const sets: (readonly number[])[] = [];
  for (const scored of near) {
    const { heard, vector } = scored.hearings[worst];
    const own = overCommon(vector, logWeights);
    // what explains this piece already needs no mending
    if (own > piece.best - EXPLAINS) continue;
    const mask = piece.audible(heard.faults);
    const odds = oddsBeside(universe, scored.set);
    for (let e = 0; e < odds.length; e++) {
      const fault = universe.fault[e];
      if (odds[e] <= 0 || mask[fault] === 0 || !presentAt(universe, e, piece.logIndex)) continue;
      const most = scored.score + Math.log(odds[e]);
      if (most + piece.best - own < best - RIVALS) continue;
      const log = heard.with(fault).log(logWeights);
      if (log > own + EXPLAINS && most + log - own >= best - RIVALS) sets.push(insertSorted(scored.set, e));
    }
  }
  return sets;
}
