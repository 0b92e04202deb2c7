/**
 * What stands beside a core unseen, or seen so little that the readings allow it. Silent faults fail independently of one another, each with what it knocks on: a *family*. A
 * family counts as often as its first failure; what may have followed unseen is summed over, so it adds no weight to the core, but
 * it makes the follower likelier, and a family can bring the board in by what followed in it. Where the core leaves the symptom
 * unaccounted for, some family must account for it, so the families that could are each other's alternatives.
 */
import { silentOdds } from "./beside-odds.ts";
import { presentAt, type Universe } from "./universe.ts";

/** Chance that a board with nothing wrong is brought in as dead (a fault elsewhere in the unit; from memory). */
export const DEAD_THOUGH_HEALTHY = 0.02;

export interface SilentBeside {
  /** ln of how many times the core's own weight it has with all that may stand beside it, before the symptom speaks */
  readonly logWeight: number;
  /** probability that the board would come in as it did, given this core */
  readonly symptom: number;
  /** per element: probability that it stands beside the core unseen */
  readonly each: Float64Array; // (elements)
  /** probability that nothing beside the core is there now, given that the board came in as it did */
  readonly noneNow: number;
  /** probability that one at least of `elements` stands beside the core */
  any(elements: readonly number[]): number;
}

/**
 * @param ratios - P(readings | core and element) / P(readings | core): 1 for each element that no reading could show
 * @param accounts - for each element the probability that it brings the board in as it came
 * @param now - an index behind the last event of the log
 */
export function silentBeside(
  universe: Universe,
  set: readonly number[],
  ratios: Float64Array,
  accounts: ArrayLike<number>,
  now: number,
): SilentBeside {
  const families = new Families(universe, set, ratios, accounts);
  // The symptom speaks of the board as it arrived: where no fault in the core accounts for it, a silent one must.
  const missed = set.reduce((none, element) => none * (1 - accounts[element]), 1 - DEAD_THOUGH_HEALTHY);
  const present = (element: number) => (presentAt(universe, element, now) ? 1 : 0);
  const unaccounted = missed * families.none(families.reach);
  const symptom = 1 - unaccounted;
  const cured = missed * families.none(families.reach.map((reach, e) => reach * (1 - present(e))));
  return {
    logWeight: families.logWeight,
    symptom,
    each: families.each(unaccounted),
    noneNow: (families.none(families.reach.map((_, e) => present(e))) * (1 - cured)) / symptom,
    any: (elements) => families.any(elements, unaccounted),
  };
}

class Families {
  readonly #universe: Universe;
  readonly #accounts: ArrayLike<number>;
  /** per element: how far the readings let it stand beside the core (at most 1); 0 where its site is taken */
  readonly #free: Float64Array;
  /** per element: probability of having failed first, one mode a site; the site one past the last is that of what knocked on a member */
  readonly #alone: Float64Array;
  readonly #explaining: Float64Array;
  /** per element: probability that its family, being there, accounts for the symptom */
  readonly reach: Float64Array;
  readonly #siteReach: Float64Array; // (sites + 1)
  readonly logWeight: number;

  constructor(universe: Universe, set: readonly number[], ratios: Float64Array, accounts: ArrayLike<number>) {
    this.#universe = universe;
    this.#accounts = accounts;
    const taken = new Set(set.map((member) => universe.site[member]));
    this.#free = ratios.map((ratio, e) => (taken.has(universe.site[e]) ? 0 : Math.min(1, ratio)));
    const { alone, explaining } = silentOdds(universe, set, ratios);
    const siteOdds = new Float64Array(universe.siteRate.length);
    for (let e = 0; e < alone.length; e++) siteOdds[universe.site[e]] += alone[e];
    this.#alone = alone.map((odds, e) => odds / (1 + siteOdds[universe.site[e]]));
    const causes = explaining.map((odds, e) => odds / (1 + siteOdds[universe.site[e]]));
    const explained = causes.reduce((sum, odds) => sum + odds, 0);
    this.#explaining = causes.map((odds) => odds / (1 + explained));
    this.logWeight = siteOdds.reduce((sum, odds) => sum + Math.log1p(odds), Math.log1p(explained));
    this.reach = alone.map((odds, e) => (odds + explaining[e] > 0 ? this.#reachOf(e) : 0));
    this.#siteReach = this.#bySite(this.reach);
  }

  #reachOf(element: number): number {
    let rate = 0;
    for (const edge of this.#universe.knocksOn[element])
      rate += edge.rate * this.#free[edge.to] * this.#accounts[edge.to];
    return 1 - (1 - this.#accounts[element]) * Math.exp(-rate);
  }

  #bySite(weight: Float64Array): Float64Array {
    const sites = new Float64Array(this.#universe.siteRate.length + 1);
    for (let e = 0; e < weight.length; e++) {
      sites[this.#universe.site[e]] += this.#alone[e] * weight[e];
      sites[sites.length - 1] += this.#explaining[e] * weight[e];
    }
    return sites;
  }

  /** Probability that no family is there that counts, each counting with its weight. */
  none(weight: Float64Array): number {
    return this.#bySite(weight).reduce((product, share) => product * (1 - share), 1);
  }

  /** @param unaccounted - probability that nothing accounts for the symptom */
  each(unaccounted: number): Float64Array {
    const { site, knockedOnBy } = this.#universe;
    const causes = this.#siteReach.length - 1;
    return this.#alone.map((alone, e) => {
      if (this.#free[e] === 0) return 0;
      const own = 1 - this.reach[e];
      let none = (1 - alone) * (1 - this.#explaining[e]);
      let noneUnaccounted =
        unaccounted *
        (1 - (alone * own) / (1 - this.#siteReach[site[e]])) *
        (1 - (this.#explaining[e] * own) / (1 - this.#siteReach[causes]));
      for (const { to: parent, rate } of knockedOnBy[e]) {
        const first = this.#alone[parent] + this.#explaining[parent];
        if (first === 0) continue;
        const followed = -Math.expm1(-rate) * this.#free[e];
        none *= 1 - first * followed;
        noneUnaccounted *=
          1 -
          (first * (1 - this.reach[parent]) * followed * (1 - this.#accounts[e])) /
            (1 - this.#siteReach[site[parent]]);
      }
      return Math.min(1, Math.max(0, 1 - (none - noneUnaccounted) / (1 - unaccounted)));
    });
  }

  any(elements: readonly number[], unaccounted: number): number {
    const { site, knockedOnBy } = this.#universe;
    const among = new Set(elements);
    const rates = new Map<number, { all: number; idle: number }>();
    for (const element of elements)
      for (const { to: parent, rate } of knockedOnBy[element]) {
        if (this.#free[element] === 0 || among.has(parent)) continue;
        if (this.#alone[parent] + this.#explaining[parent] === 0) continue;
        const sum = rates.get(parent) ?? { all: 0, idle: 0 };
        sum.all += rate * this.#free[element];
        sum.idle += rate * this.#free[element] * (1 - this.#accounts[element]);
        rates.set(parent, sum);
      }
    // Per site: the share of families that reach one of these, and by how much that raises the share that reach them or the symptom.
    const touching = new Map<number, { share: number; more: number }>();
    const touch = (at: number, share: number, more: number) => {
      const sum = touching.get(at) ?? { share: 0, more: 0 };
      touching.set(at, { share: sum.share + share, more: sum.more + more });
    };
    const touches = (e: number, share: number, more: number) => {
      touch(site[e], this.#alone[e] * share, this.#alone[e] * more);
      touch(this.#siteReach.length - 1, this.#explaining[e] * share, this.#explaining[e] * more);
    };
    for (const e of elements) touches(e, 1, 1 - this.reach[e]);
    for (const [parent, { all, idle }] of rates)
      touches(parent, -Math.expm1(-all), (1 - this.reach[parent]) * -Math.expm1(-idle));
    let none = 1;
    let noneUnaccounted = unaccounted;
    for (const [at, { share, more }] of touching) {
      none *= 1 - share;
      noneUnaccounted *= 1 - more / (1 - this.#siteReach[at]);
    }
    return Math.min(1, Math.max(0, 1 - (none - noneUnaccounted) / (1 - unaccounted)));
  }
}
