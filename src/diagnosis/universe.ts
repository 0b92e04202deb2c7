/**
 * What can be wrong before any reading speaks: elements (a fault with the span in which it appeared), their rates, which
 * exclude each other, and which cause which.
 *
 * The prior of a set S unrolls failure in two layers, first failures R and what they knocked on, so that a leg may kill its
 * driver and a driver its leg without the definition going round in circles:
 *
 *   P(S) = sum over R within S of  P(exactly R fails first) * P(exactly S \ R follows | R)
 *
 * A site (one junction, in one life of the part) fails first with probability 1 - exp(-sum of its rates), its mode drawn in
 * proportion to the rates; given R it follows with 1 - exp(-sum of the knock-on rates from R). The two layers each sum to one,
 * so P does.
 */

import { logFailed, logSumExp } from "../numeric/log-space.ts";

export interface KnockOnEdge {
  readonly to: number;
  readonly rate: number;
}

export interface Universe {
  /** element -> index of its fault in the prior table */
  readonly fault: Int32Array; // (elements)
  /** element -> site; elements of one site exclude each other */
  readonly site: Int32Array; // (elements)
  /** element -> rate of failing first */
  readonly rate: Float64Array; // (elements)
  /** log index from which the element is there, and from which it is cured */
  readonly from: Int32Array; // (elements)
  readonly until: Int32Array; // (elements)
  /** element -> what it knocks on, and what can knock it on */
  readonly knocksOn: readonly (readonly KnockOnEdge[])[];
  readonly knockedOnBy: readonly (readonly KnockOnEdge[])[];
  /** site -> sum of the rates of its elements */
  readonly siteRate: Float64Array; // (sites)
  readonly totalRate: number;
}

export interface UniverseParts {
  readonly fault: readonly number[];
  readonly site: readonly number[];
  readonly rate: readonly number[];
  readonly from: readonly number[];
  readonly until: readonly number[];
  readonly knockOns: readonly { readonly from: number; readonly to: number; readonly rate: number }[];
}

/** Freezes the parts of a universe into flat arrays. Rates must be positive or zero; sites are numbered from 0. */
export function makeUniverse(parts: UniverseParts): Universe {
  const count = parts.fault.length;
  const sites = parts.site.reduce((most, site) => Math.max(most, site + 1), 0);
  const siteRate = new Float64Array(sites);
  for (let e = 0; e < count; e++) siteRate[parts.site[e]] += parts.rate[e];
  const knocksOn: KnockOnEdge[][] = Array.from({ length: count }, () => []);
  const knockedOnBy: KnockOnEdge[][] = Array.from({ length: count }, () => []);
  for (const edge of parts.knockOns) {
    if (parts.site[edge.from] === parts.site[edge.to]) continue;
    knocksOn[edge.from].push({ to: edge.to, rate: edge.rate });
    knockedOnBy[edge.to].push({ to: edge.from, rate: edge.rate });
  }
  return {
    fault: Int32Array.from(parts.fault),
    site: Int32Array.from(parts.site),
    rate: Float64Array.from(parts.rate),
    from: Int32Array.from(parts.from),
    until: Int32Array.from(parts.until),
    knocksOn,
    knockedOnBy,
    siteRate,
    totalRate: siteRate.reduce((sum, rate) => sum + rate, 0),
  };
}

/** Is the element on the board at this index of the log? */
export function presentAt(universe: Universe, element: number, logIndex: number): boolean {
  return universe.from[element] <= logIndex && logIndex < universe.until[element];
}

/** ln P(exactly this set of elements has failed); -Infinity where two share a site. Elements in any order, none twice. */
export function logPrior(universe: Universe, set: readonly number[]): number {
  for (let i = 0; i < set.length; i++)
    for (let j = 0; j < i; j++)
      if (universe.site[set[i]] === universe.site[set[j]]) return Number.NEGATIVE_INFINITY;
  const edges = edgesWithin(universe, set);
  const everyone = (1 << set.length) - 1;
  if (edges.length === 0) return logPriorOfRoots(universe, set, everyone, edges);
  const terms: number[] = [];
  // Only what some member knocks on can have followed: the rest failed first in every term.
  let followers = 0;
  for (const { to } of edges) followers |= 1 << to;
  for (let followed = followers; ; followed = (followed - 1) & followers) {
    const term = logPriorOfRoots(universe, set, everyone & ~followed, edges);
    if (term > Number.NEGATIVE_INFINITY) terms.push(term);
    if (followed === 0) break;
  }
  return logSumExp(terms);
}

interface InnerEdge {
  readonly from: number;
  readonly to: number;
  readonly rate: number;
}

/** Knock-ons between members of the set, by position in it. */
function edgesWithin(universe: Universe, set: readonly number[]): InnerEdge[] {
  const edges: InnerEdge[] = [];
  for (let i = 0; i < set.length; i++)
    for (const edge of universe.knocksOn[set[i]]) {
      const j = set.indexOf(edge.to);
      if (j >= 0) edges.push({ from: i, to: j, rate: edge.rate });
    }
  return edges;
}

/** ln of one term of the sum: `roots` (bits over positions in `set`) failed first, the rest followed. */
function logPriorOfRoots(
  universe: Universe,
  set: readonly number[],
  roots: number,
  edges: readonly InnerEdge[],
): number {
  let log = -universe.totalRate;
  for (let i = 0; i < set.length; i++) {
    if ((roots & (1 << i)) === 0) continue;
    const element = set[i];
    const siteRate = universe.siteRate[universe.site[element]];
    if (universe.rate[element] <= 0) return Number.NEGATIVE_INFINITY;
    log += siteRate + logFailed(siteRate) + Math.log(universe.rate[element] / siteRate);
  }
  for (let i = 0; i < set.length; i++) {
    if ((roots & (1 << i)) !== 0) {
      log -= knockTotalOutside(universe, set, set[i]);
      continue;
    }
    let toElement = 0;
    for (const edge of edges) if (edge.to === i && (roots & (1 << edge.from)) !== 0) toElement += edge.rate;
    if (toElement <= 0) return Number.NEGATIVE_INFINITY;
    const toSite = knockRateToSite(universe, set, roots, universe.site[set[i]]);
    log += logFailed(toSite) + Math.log(toElement / toSite);
  }
  return log;
}

/** Sum of the knock-on rates of `element` towards sites that no member of `set` occupies (those did not follow). */
function knockTotalOutside(universe: Universe, set: readonly number[], element: number): number {
  let sum = 0;
  for (const edge of universe.knocksOn[element]) {
    let occupied = false;
    for (const member of set) if (universe.site[member] === universe.site[edge.to]) occupied = true;
    if (!occupied) sum += edge.rate;
  }
  return sum;
}

function knockRateToSite(universe: Universe, set: readonly number[], roots: number, site: number): number {
  let sum = 0;
  for (let i = 0; i < set.length; i++) {
    if ((roots & (1 << i)) === 0) continue;
    for (const edge of universe.knocksOn[set[i]]) if (universe.site[edge.to] === site) sum += edge.rate;
  }
  return sum;
}

/** Odds of silent faults beside a set: by themselves or as followers of a member, and as what knocked a member on. */
export interface SilentOdds {
  readonly alone: Float64Array; // (elements)
  readonly explaining: Float64Array; // (elements)
}

/**
 * For each element that no reading can hear (`audible` 0) the odds of standing beside the set, silent faults summed over: what it
 * knocks on unheard may or may not be there, but what would be heard is not, and that weighs against it. As causes of members
 * the silent make each other idle (one is enough), so those odds are given apart: they add up where independent ones multiply.
 */
export function silentOdds(universe: Universe, set: readonly number[], audible: Uint8Array): SilentOdds {
  const count = universe.rate.length;
  const alone = new Float64Array(count);
  const explaining = new Float64Array(count);
  const taken = new Set(set.map((member) => universe.site[member]));
  const knocks = (element: number, heard: boolean): number => {
    let sum = 0;
    for (const { to, rate } of universe.knocksOn[element])
      if ((audible[to] === 1) === heard && !taken.has(universe.site[to])) sum += rate;
    return sum;
  };
  const free = (element: number) => audible[element] === 0 && !taken.has(universe.site[element]);
  for (let e = 0; e < count; e++) if (free(e)) alone[e] = rootOdds(universe, e) * Math.exp(-knocks(e, true));
  const causes = new Set(set.flatMap((member) => universe.knockedOnBy[member].map(({ to }) => to)));
  const followers = set.flatMap((member) => universe.knocksOn[member].map(({ to }) => to));
  const before = causes.size + followers.length > 0 ? logPrior(universe, set) : 0;
  for (const e of new Set([...causes, ...followers])) {
    if (!free(e)) continue;
    const unheard = knocks(e, false);
    const first = rootOdds(universe, e) * Math.exp(-unheard - knocks(e, true));
    const rest = Math.max(0, Math.exp(logPrior(universe, [...set, e]) - before) - first);
    if (causes.has(e)) explaining[e] = rest * Math.exp(unheard);
    else alone[e] += rest;
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
    const before = logPrior(universe, set);
    for (const e of related) odds[e] = Math.exp(logPrior(universe, [...set, e]) - before);
  }
  const taken = new Set(set.map((member) => universe.site[member]));
  for (let e = 0; e < count; e++) if (taken.has(universe.site[e])) odds[e] = 0;
  return odds;
}
