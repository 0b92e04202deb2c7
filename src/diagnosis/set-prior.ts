/**
 * The prior of a set of elements, and of the same set with one more: what the two-layer sum of `universe.ts` needs of a set is
 * gathered once, so that a term takes a few additions and a further member only its own knock-ons.
 */
import { logFailed, logSumExp } from "../numeric/log-space.ts";
import type { Universe } from "./universe.ts";

/** ln of failing first, the rest of its site not having: one per element, made once a universe. */
const firstLogs = new WeakMap<Universe, Float64Array>();

function firstLogsOf(universe: Universe): Float64Array {
  const known = firstLogs.get(universe);
  if (known !== undefined) return known;
  const logs = Float64Array.from(universe.rate, (rate, element) => {
    const siteRate = universe.siteRate[universe.site[element]];
    return rate > 0 ? siteRate + logFailed(siteRate) + Math.log(rate / siteRate) : Number.NEGATIVE_INFINITY;
  });
  firstLogs.set(universe, logs);
  return logs;
}

/** Members by position: `rates[from * size + to]` is what the first knocks on the second, or its site. */
interface Members {
  readonly size: number;
  readonly first: Float64Array;
  /** sum of the knock-on rates towards sites that no member occupies: those did not follow */
  readonly outside: Float64Array;
  readonly toElement: Float64Array;
  readonly toSite: Float64Array;
}

function room(size: number): Members {
  return {
    size,
    first: new Float64Array(size),
    outside: new Float64Array(size),
    toElement: new Float64Array(size * size),
    toSite: new Float64Array(size * size),
  };
}

/** The sum over which members failed first and which followed. */
function logOf({ size, first, outside, toElement, toSite }: Members, totalRate: number): number {
  let followers = 0;
  for (let at = 0; at < toElement.length; at++) if (toElement[at] > 0) followers |= 1 << (at % size);
  // Only what some member knocks on can have followed: the rest failed first in every term.
  const terms: number[] = [];
  for (let followed = followers; ; followed = (followed - 1) & followers) {
    let log = -totalRate;
    for (let i = 0; i < size && log > Number.NEGATIVE_INFINITY; i++) {
      if ((followed & (1 << i)) === 0) {
        log += first[i] - outside[i];
        continue;
      }
      let element = 0;
      let site = 0;
      for (let j = 0; j < size; j++) {
        if ((followed & (1 << j)) !== 0) continue;
        element += toElement[j * size + i];
        site += toSite[j * size + i];
      }
      log = element > 0 ? log + logFailed(site) + Math.log(element / site) : Number.NEGATIVE_INFINITY;
    }
    if (log > Number.NEGATIVE_INFINITY) terms.push(log);
    if (followed === 0) break;
  }
  return logSumExp(terms);
}

/** A set whose prior is asked for together with that of its neighbours. Elements in any order, none twice. */
export class SetPrior {
  /** ln P(exactly this set of elements has failed); -Infinity where two share a site */
  readonly log: number;
  readonly #universe: Universe;
  readonly #set: readonly number[];
  readonly #members: Members;
  /** per member, the sum of its knock-on rates towards each site; made when a neighbour is first asked for */
  #towards: readonly Float64Array[] | null = null;

  constructor(universe: Universe, set: readonly number[]) {
    this.#universe = universe;
    this.#set = set;
    const members = room(set.length);
    this.#members = members;
    const firsts = firstLogsOf(universe);
    for (let i = 0; i < set.length; i++) {
      members.first[i] = firsts[set[i]];
      for (const { to, rate } of universe.knocksOn[set[i]]) {
        const j = this.#memberAt(universe.site[to]);
        if (j < 0) {
          members.outside[i] += rate;
          continue;
        }
        members.toSite[i * set.length + j] += rate;
        if (set[j] === to) members.toElement[i * set.length + j] += rate;
      }
    }
    this.log = this.#sitesClash() ? Number.NEGATIVE_INFINITY : logOf(members, universe.totalRate);
  }

  /** ln P of the set with `element` besides; -Infinity where its site is taken. */
  with(element: number): number {
    const { site, knocksOn, knockedOnBy, totalRate } = this.#universe;
    if (this.log === Number.NEGATIVE_INFINITY || this.#memberAt(site[element]) >= 0)
      return Number.NEGATIVE_INFINITY;
    const before = this.#members;
    const n = before.size;
    const size = n + 1;
    const grown = room(size);
    const towards = this.#rates();
    grown.first[n] = firstLogsOf(this.#universe)[element];
    for (let i = 0; i < n; i++) {
      const toNew = towards[i][site[element]];
      grown.first[i] = before.first[i];
      grown.outside[i] = before.outside[i] - toNew;
      for (let j = 0; j < n; j++) {
        grown.toElement[i * size + j] = before.toElement[i * n + j];
        grown.toSite[i * size + j] = before.toSite[i * n + j];
      }
      grown.toSite[i * size + n] = toNew;
    }
    for (const { to, rate } of knockedOnBy[element]) {
      const i = this.#set.indexOf(to);
      if (i >= 0) grown.toElement[i * size + n] += rate;
    }
    for (const { to, rate } of knocksOn[element]) {
      const j = this.#memberAt(site[to]);
      if (j < 0) {
        grown.outside[n] += rate;
        continue;
      }
      grown.toSite[n * size + j] += rate;
      if (this.#set[j] === to) grown.toElement[n * size + j] += rate;
    }
    return logOf(grown, totalRate);
  }

  #memberAt(site: number): number {
    for (let i = 0; i < this.#set.length; i++) if (this.#universe.site[this.#set[i]] === site) return i;
    return -1;
  }

  #sitesClash(): boolean {
    return this.#set.some((element, i) => this.#memberAt(this.#universe.site[element]) !== i);
  }

  #rates(): readonly Float64Array[] {
    if (this.#towards !== null) return this.#towards;
    const { site, siteRate, knocksOn } = this.#universe;
    this.#towards = this.#set.map((member) => {
      const rates = new Float64Array(siteRate.length);
      for (const { to, rate } of knocksOn[member]) rates[site[to]] += rate;
      return rates;
    });
    return this.#towards;
  }
}

/** Priors kept of one universe. */
const MOST_KEPT = 40_000;
const priors = new WeakMap<Universe, Map<string, number>>();

/** ln P(exactly this set of elements has failed); -Infinity where two share a site. Elements in any order, none twice. */
export function logPrior(universe: Universe, set: readonly number[]): number {
  const kept = priors.get(universe) ?? new Map<string, number>();
  priors.set(universe, kept);
  const key = set.join(",");
  const known = kept.get(key);
  if (known !== undefined) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const { log } = new SetPrior(universe, set);
  kept.set(key, log);
  return log;
}
