/**
 * What the readings say of one element more beside a set: nothing, where none of them could show it; else how much likelier they
 * are with it. A fault that moves a reading by less than its spread is neither silent nor ruled out, and a search that keeps the
 * best sets drops it: its mass would be lost.
 */

import { oddsBeside } from "./beside-odds.ts";
import type { ElementHearing } from "./element-hearing.ts";
import { COMMON_POINTS, overCommon } from "./evidence.ts";
import type { ScoredSet } from "./scored-set.ts";
import { insertSorted } from "./set-order.ts";
import type { Universe } from "./universe.ts";

/** Odds below this are not followed up. */
const LEAST_LOG_ODDS = -9;

/**
 * P(readings | set and element) / P(readings | set) per element: 1 for what is silent, 0 for what is as good as ruled out.
 * @param hearing - what each piece hears beside the set, asked of the circuit
 * @param isFound - is the set with the element an explanation of its own? Then it counts there
 */
export function readingRatios(
  universe: Universe,
  logWeights: Float64Array,
  scored: ScoredSet,
  hearing: ElementHearing,
  isFound: (set: readonly number[]) => boolean,
): Float64Array {
  const ratios = hearing.silent();
  const odds = oddsBeside(universe, scored.set);
  const total = new Float64Array(COMMON_POINTS.length);
  for (const { vector } of scored.hearings) for (let z = 0; z < total.length; z++) total[z] += vector[z];
  for (let e = 0; e < ratios.length; e++) {
    if (ratios[e] === 1 || odds[e] <= 0 || isFound(insertSorted(scored.set, e))) continue;
    const least = LEAST_LOG_ODDS - Math.log(odds[e]);
    ratios[e] = Math.exp(gained(e, least));
  }
  return ratios;

  /** ln of the ratio; -Infinity as soon as it cannot come to `least` unless what is left explains better than the set does. */
  function gained(element: number, least: number): number {
    const fault = universe.fault[element];
    const moved = total.slice();
    let log = 0;
    for (const [i, { heard, vector: before }] of scored.hearings.entries()) {
      if (!hearing.hears(i, element)) continue;
      const after = heard.with(fault).vector;
      for (let z = 0; z < moved.length; z++) moved[z] += after[z] - before[z];
      log = overCommon(moved, logWeights) - scored.logLikelihood;
      if (log < least) return Number.NEGATIVE_INFINITY;
    }
    return log;
  }
}
