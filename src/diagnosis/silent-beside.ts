/**
 * What stands beside a core unseen, or seen so little that the readings allow it. Silent faults fail independently of one another, each with what it knocks on: a *family*. A
 * family counts as often as its first failure; what may have followed unseen is summed over, so it adds no weight to the core, but
 * it makes the follower likelier, and a family can bring the board in by what followed in it. Where the core leaves the symptom
 * unaccounted for, some family must account for it, so the families that could are each other's alternatives.
 */
import { type OpenElements, openElements, silentOdds, takenSites } from "./beside-odds.ts";
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
  const families = new Families(universe, set, openElements(ratios), accounts);
  // The symptom speaks of the board as it arrived: where no fault in the core accounts for it, a silent one must.
  const missed = set.reduce((none, element) => none * (1 - accounts[element]), 1 - DEAD_THOUGH_HEALTHY);
  const { reach } = families;
  const present = Float64Array.from(families.open.elements, (e) => (presentAt(universe, e, now) ? 1 : 0));
  const unaccounted = missed * families.none(reach);
  const symptom = 1 - unaccounted;
  const cured = missed * families.none(reach.map((one, k) => one * (1 - present[k])));
  return {
    logWeight: families.logWeight,
    symptom,
    each: families.each(unaccounted),
    noneNow: (families.none(present) * (1 - cured)) / symptom,
    any: (elements) => families.any(elements, unaccounted),
  };
}

/** Families by their first failure; what is laid out by open elements has one number for each of them. */
class Families {
  readonly open: OpenElements;
  readonly #universe: Universe;
  readonly #accounts: ArrayLike<number>;
  readonly #taken: Uint8Array; // (sites)
  /** probability of having failed first, one mode a site; the site one past the last is that of what knocked on a member */
  readonly #alone: Float64Array; // (open)
  readonly #explaining: Float64Array; // (open)
  /** probability that the family, being there, accounts for the symptom */
  readonly reach: Float64Array; // (open)
  readonly #siteReach: Float64Array; // (sites + 1)
  readonly logWeight: number;

  constructor(universe: Universe, set: readonly number[], open: OpenElements, accounts: ArrayLike<number>) {
    this.#universe = universe;
    this.#accounts = accounts;
    this.open = open;
    this.#taken = takenSites(universe, set);
    const { site } = universe;
    const { elements } = open;
    const { alone, explaining } = silentOdds(universe, set, open);
    const siteOdds = new Float64Array(universe.siteRate.length);
    for (let k = 0; k < elements.length; k++) siteOdds[site[elements[k]]] += alone[k];
    this.#alone = alone.map((odds, k) => odds / (1 + siteOdds[site[elements[k]]]));
    const causes = explaining.map((odds, k) => odds / (1 + siteOdds[site[elements[k]]]));
    const explained = causes.reduce((sum, odds) => sum + odds, 0);
    this.#explaining = causes.map((odds) => odds / (1 + explained));
    this.logWeight = siteOdds.reduce((sum, odds) => sum + Math.log1p(odds), Math.log1p(explained));
    this.reach = alone.map((odds, k) => (odds + explaining[k] > 0 ? this.#reachOf(elements[k]) : 0));
    this.#siteReach = this.#bySite(this.reach);
  }

  /** How far the readings let the element stand beside the core (at most 1); 0 where its site is taken. */
  #free(element: number): number {
    return this.#taken[this.#universe.site[element]] === 1 ? 0 : Math.min(1, this.open.ratios[element]);
  }

  /** Probability that the element failed first. */
  #first(element: number): number {
    const k = this.open.at[element];
    return k < 0 ? 0 : this.#alone[k] + this.#explaining[k];
  }

  #reachOf(element: number): number {
    let rate = 0;
    for (const edge of this.#universe.knocksOn[element])
      rate += edge.rate * this.#free(edge.to) * this.#accounts[edge.to];
    return 1 - (1 - this.#accounts[element]) * Math.exp(-rate);
  }

  #bySite(weight: Float64Array): Float64Array {
    const { site, siteRate } = this.#universe;
    const { elements } = this.open;
    const sites = new Float64Array(siteRate.length + 1);
    for (let k = 0; k < weight.length; k++) {
      sites[site[elements[k]]] += this.#alone[k] * weight[k];
      sites[sites.length - 1] += this.#explaining[k] * weight[k];
    }
    return sites;
  }

  /** Probability that no family is there that counts, each counting with its weight. */
  none(weight: Float64Array): number {
    return this.#bySite(weight).reduce((product, share) => product * (1 - share), 1);
  }

  /**
   * For each element of the universe.
   * @param unaccounted - probability that nothing accounts for the symptom
   */
  each(unaccounted: number): Float64Array {
    const { site, knockedOnBy } = this.#universe;
    const { elements, at } = this.open;
    const each = new Float64Array(at.length);
    const causes = this.#siteReach.length - 1;
    for (let k = 0; k < elements.length; k++) {
      const e = elements[k];
      const free = this.#free(e);
      if (free === 0) continue;
      const own = 1 - this.reach[k];
      const alone = this.#alone[k];
      let none = (1 - alone) * (1 - this.#explaining[k]);
      let noneUnaccounted =
        unaccounted *
        (1 - (alone * own) / (1 - this.#siteReach[site[e]])) *
        (1 - (this.#explaining[k] * own) / (1 - this.#siteReach[causes]));
      for (const { to: parent, rate } of knockedOnBy[e]) {
        const first = this.#first(parent);
        if (first === 0) continue;
        const followed = -Math.expm1(-rate) * free;
        none *= 1 - first * followed;
        noneUnaccounted *=
          1 -
          (first * (1 - this.reach[at[parent]]) * followed * (1 - this.#accounts[e])) /
            (1 - this.#siteReach[site[parent]]);
      }
      each[e] = Math.min(1, Math.max(0, 1 - (none - noneUnaccounted) / (1 - unaccounted)));
    }
    return each;
  }

  any(elements: readonly number[], unaccounted: number): number {
    const { site, knockedOnBy } = this.#universe;
    const { at } = this.open;
    const among = new Set(elements);
    const rates = new Map<number, { all: number; idle: number }>();
    for (const element of elements)
      for (const { to: parent, rate } of knockedOnBy[element]) {
        const free = this.#free(element);
        if (free === 0 || this.#first(parent) === 0 || among.has(parent)) continue;
        const sum = rates.get(parent) ?? { all: 0, idle: 0 };
        sum.all += rate * free;
        sum.idle += rate * free * (1 - this.#accounts[element]);
        rates.set(parent, sum);
      }
    // Per site: the share of families that reach one of these, and by how much that raises the share that reach them or the symptom.
    const touching = new Map<number, { share: number; more: number }>();
    const touch = (of: number, share: number, more: number) => {
      const sum = touching.get(of) ?? { share: 0, more: 0 };
      sum.share += share;
      sum.more += more;
      touching.set(of, sum);
    };
    const touches = (e: number, share: number, more: number) => {
      const k = at[e];
      if (k < 0) return;
      touch(site[e], this.#alone[k] * share, this.#alone[k] * more);
      if (this.#explaining[k] > 0)
        touch(this.#siteReach.length - 1, this.#explaining[k] * share, this.#explaining[k] * more);
    };
    for (const e of elements) touches(e, 1, 1 - (this.reach[at[e]] ?? 0));
    for (const [parent, { all, idle }] of rates)
      touches(parent, -Math.expm1(-all), (1 - this.reach[at[parent]]) * -Math.expm1(-idle));
    let none = 1;
    let noneUnaccounted = unaccounted;
    for (const [of, { share, more }] of touching) {
      none *= 1 - share;
      noneUnaccounted *= 1 - more / (1 - this.#siteReach[of]);
    }
    return Math.min(1, Math.max(0, 1 - (none - noneUnaccounted) / (1 - unaccounted)));
  }
}
