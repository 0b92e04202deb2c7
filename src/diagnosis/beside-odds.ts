/** Odds of one element more beside a set: of those that no reading can hear, and of those worth trying. */
import { SetPrior } from "./set-prior.ts";
import type { Universe } from "./universe.ts";

/**
 * Odds of further faults beside a set: by themselves or as followers of a member; and as what explains something of it: a member that it
 * knocked on, or readings that are likelier with it.
 */
export interface SilentOdds {
  readonly alone: Float64Array; // (elements)
  readonly explaining: Float64Array; // (elements)
}

/**
 * For each element the odds of standing beside the set, summed over what it knocks on: what the readings would show of that is
 * not there, and that weighs against it; what they would not may or may not be. What explains something makes the rest idle that would
 * explain it too (one cause of a member is enough, and one fault for a board that stays quiet), so those odds are given apart: they add
 * up where independent ones multiply.
 * @param ratios - P(readings | set and element) / P(readings | set): 1 for what no reading can show
 */
export function silentOdds(universe: Universe, set: readonly number[], ratios: Float64Array): SilentOdds {
  const count = universe.rate.length;
  const alone = new Float64Array(count);
  const explaining = new Float64Array(count);
  const taken = new Set(set.map((member) => universe.site[member]));
  const knocks = (element: number, part: (unseen: number) => number): number => {
    let sum = 0;
    for (const { to, rate } of universe.knocksOn[element])
      if (!taken.has(universe.site[to])) sum += rate * part(Math.min(1, ratios[to]));
    return sum;
  };
  const seen = (unseen: number) => 1 - unseen;
  const unseen = (share: number) => share;
  const free = (element: number) => ratios[element] > 0 && !taken.has(universe.site[element]);
  for (let e = 0; e < count; e++) {
    if (!free(e)) continue;
    const odds = rootOdds(universe, e) * Math.exp(-knocks(e, seen));
    alone[e] = Math.min(1, ratios[e]) * odds;
    explaining[e] = Math.max(0, ratios[e] - 1) * odds;
  }
  const causes = new Set(set.flatMap((member) => universe.knockedOnBy[member].map(({ to }) => to)));
  const followers = set.flatMap((member) => universe.knocksOn[member].map(({ to }) => to));
  const prior = new SetPrior(universe, set);
  for (const e of new Set([...causes, ...followers])) {
    if (!free(e)) continue;
    const unheard = knocks(e, unseen);
    const first = rootOdds(universe, e) * Math.exp(-unheard - knocks(e, seen));
    const rest = Math.max(0, Math.exp(prior.with(e) - prior.log) - first);
    if (causes.has(e)) explaining[e] += ratios[e] * rest * Math.exp(unheard);
    else {
      alone[e] += Math.min(1, ratios[e]) * rest;
      explaining[e] += Math.max(0, ratios[e] - 1) * rest;
    }
  }
  return { alone, explaining };
}

/** Odds of failing first, with nothing else known. */
function rootOdds(universe: Universe, element: number): number {
  const siteRate = universe.siteRate[universe.site[element]];
  return siteRate > 0 ? Math.expm1(siteRate) * (universe.rate[element] / siteRate) : 0;
}

/**
 * Odds of each element standing beside the set: P(S + e) / P(S) for what is tied to a member, else an upper bound, which leaves
 * out that what the element would knock on did not follow. 0 for members and for elements whose site is taken.
 */
export function oddsBeside(universe: Universe, set: readonly number[]): Float64Array {
  const count = universe.rate.length;
  const odds = new Float64Array(count);
  for (let e = 0; e < count; e++) odds[e] = rootOdds(universe, e);
  const related = new Set<number>();
  for (const member of set) {
    for (const edge of universe.knocksOn[member]) related.add(edge.to);
    for (const edge of universe.knockedOnBy[member]) related.add(edge.to);
  }
  if (related.size > 0) {
    const prior = new SetPrior(universe, set);
    for (const e of related) odds[e] = Math.exp(prior.with(e) - prior.log);
  }
  const taken = new Set(set.map((member) => universe.site[member]));
  for (let e = 0; e < count; e++) if (taken.has(universe.site[e])) odds[e] = 0;
  return odds;
}
