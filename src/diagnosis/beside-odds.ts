/** Odds of one element more beside a set: of those that no reading can hear, and of those worth trying. */
import { SetPrior } from "./set-prior.ts";
import type { Universe } from "./universe.ts";

/** The elements that the readings let stand beside a set at all: a tenth of them, so that what is summed over them is laid out by these alone. */
export interface OpenElements {
  /** ascending */
  readonly elements: Int32Array; // (open)
  /** element -> its place among the open ones; -1: the readings rule it out */
  readonly at: Int32Array; // (elements)
  /** P(readings | set and element) / P(readings | set): 1 for what no reading can show, 0 for what they rule out */
  readonly ratios: Float64Array; // (elements)
}

const opened = new WeakMap<Float64Array, OpenElements>();

/** Most cores have their ratios in common: what is open by them is gathered once. */
export function openElements(ratios: Float64Array): OpenElements {
  const known = opened.get(ratios);
  if (known !== undefined) return known;
  const elements: number[] = [];
  const at = new Int32Array(ratios.length).fill(-1);
  for (let e = 0; e < ratios.length; e++) if (ratios[e] > 0) at[e] = elements.push(e) - 1;
  const open = { elements: Int32Array.from(elements), at, ratios };
  opened.set(ratios, open);
  return open;
}

/** 1 for each site that a member of the set occupies. */
export function takenSites({ site, siteRate }: Universe, set: readonly number[]): Uint8Array {
  const taken = new Uint8Array(siteRate.length);
  for (const member of set) taken[site[member]] = 1;
  return taken;
}

/**
 * Odds of further faults beside a set: by themselves or as followers of a member; and as what explains something of it: a member that it
 * knocked on, or readings that are likelier with it.
 */
export interface SilentOdds {
  readonly alone: Float64Array; // (open)
  readonly explaining: Float64Array; // (open)
}

/**
 * For each open element the odds of standing beside the set, summed over what it knocks on: what the readings would show of that is
 * not there, and that weighs against it; what they would not may or may not be. What explains something makes the rest idle that would
 * explain it too (one cause of a member is enough, and one fault for a board that stays quiet), so those odds are given apart: they add
 * up where independent ones multiply.
 */
export function silentOdds(universe: Universe, set: readonly number[], open: OpenElements): SilentOdds {
  const { elements, at, ratios } = open;
  const { site, knocksOn, knockedOnBy } = universe;
  const alone = new Float64Array(elements.length);
  const explaining = new Float64Array(elements.length);
  const taken = takenSites(universe, set);
  const firsts = rootOddsOf(universe);
  const seen = (element: number): number => {
    let sum = 0;
    for (const { to, rate } of knocksOn[element])
      if (taken[site[to]] === 0) sum += rate * (1 - Math.min(1, ratios[to]));
    return sum;
  };
  const unseen = (element: number): number => {
    let sum = 0;
    for (const { to, rate } of knocksOn[element])
      if (taken[site[to]] === 0) sum += rate * Math.min(1, ratios[to]);
    return sum;
  };
  for (let k = 0; k < elements.length; k++) {
    const e = elements[k];
    if (taken[site[e]] === 1) continue;
    const odds = firsts[e] * Math.exp(-seen(e));
    alone[k] = Math.min(1, ratios[e]) * odds;
    explaining[k] = Math.max(0, ratios[e] - 1) * odds;
  }
  const causes = new Set(set.flatMap((member) => knockedOnBy[member].map(({ to }) => to)));
  const followers = set.flatMap((member) => knocksOn[member].map(({ to }) => to));
  const prior = new SetPrior(universe, set);
  for (const e of new Set([...causes, ...followers])) {
    const k = at[e];
    if (k < 0 || taken[site[e]] === 1) continue;
    const unheard = unseen(e);
    const first = firsts[e] * Math.exp(-unheard - seen(e));
    const rest = Math.max(0, Math.exp(prior.with(e) - prior.log) - first);
    if (causes.has(e)) explaining[k] += ratios[e] * rest * Math.exp(unheard);
    else {
      alone[k] += Math.min(1, ratios[e]) * rest;
      explaining[k] += Math.max(0, ratios[e] - 1) * rest;
    }
  }
  return { alone, explaining };
}

const rootOdds = new WeakMap<Universe, Float64Array>();

/** Odds of each element failing first, with nothing else known: made once a universe. */
function rootOddsOf(universe: Universe): Float64Array {
  const known = rootOdds.get(universe);
  if (known !== undefined) return known;
  const odds = universe.rate.map((rate, element) => {
    const siteRate = universe.siteRate[universe.site[element]];
    return siteRate > 0 ? Math.expm1(siteRate) * (rate / siteRate) : 0;
  });
  rootOdds.set(universe, odds);
  return odds;
}

/**
 * Odds of each element standing beside the set: P(S + e) / P(S) for what is tied to a member, else an upper bound, which leaves
 * out that what the element would knock on did not follow. 0 for members and for elements whose site is taken.
 */
export function oddsBeside(universe: Universe, set: readonly number[]): Float64Array {
  const odds = rootOddsOf(universe).slice();
  const related = new Set<number>();
  for (const member of set) {
    for (const edge of universe.knocksOn[member]) related.add(edge.to);
    for (const edge of universe.knockedOnBy[member]) related.add(edge.to);
  }
  if (related.size > 0) {
    const prior = new SetPrior(universe, set);
    for (const e of related) odds[e] = Math.exp(prior.with(e) - prior.log);
  }
  const taken = takenSites(universe, set);
  for (let e = 0; e < odds.length; e++) if (taken[universe.site[e]] === 1) odds[e] = 0;
  return odds;
}
