import { faultName } from "../board/fault.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { type FeedHarm, HARM_OF_RULE, type HarmBy, knockOnHarm } from "../priors/feed-harm.ts";

/** One part that may break when power is applied. */
export interface PowerBreak {
  readonly part: string;
  readonly probability: number;
}

/** What one feed would break, from what is still believed. */
export interface PowerForecast {
  readonly anyBreaks: number;
  /** most probable first */
  readonly breaks: readonly PowerBreak[];
  /** money expected to be lost by what breaks */
  readonly lossMoney: number;
}

/** The fault still believed that contributes most to a part's breaking, with its probability. */
export interface Because {
  readonly fault: string;
  readonly probability: number;
}

/** What a broken part costs: its money, and what all of them together can cost at most. */
export interface BreakMoney {
  of(part: string): number;
  readonly most: number;
}

const KINDS: readonly HarmBy[] = ["line current", "bus energy", "bus volts", "rail volts"];
/** Explanations after this share of the belief change no figure that is shown. */
const WEIGHED_SHARE = 0.995;
/** Shape of the gamma by which parts differ in what they bear: the conjugate update of a rate after no event. From memory. */
const SURVIVOR_SHAPE = 1;
/** Rates below this break nothing that would be counted. */
const LEAST_RATE = 1e-9;

/** Rates at which each part breaks under one explanation at full mains, by what does the harm. */
interface Case {
  readonly weight: number;
  /** chance that the mains gets past the terminals: 0 behind an open fuse */
  readonly fed: number;
  readonly present: Float64Array;
  readonly alive: Float64Array;
  /** one array over the parts for each kind of harm, the part's own rate last */
  readonly rates: readonly Float64Array[];
}

/**
 * What a power-up would break, asked feed by feed. Under each explanation a part breaks with 1 - exp(-sum of its rates): its own rate
 * at power-up plus the knock-ons of every fault present, a silent fault counting by its probability, each as far as the feed
 * does harm; nothing that the mains does not reach. Averaged over the explanations; the weight of what none lists is spread over them. A dead part does not die again.
 */
export class PowerRisks {
  readonly #parts: readonly string[];
  readonly #slot: ReadonlyMap<string, number>;
  readonly #priors: PriorTable;
  readonly #off: ReadonlySet<string>;
  readonly #fitted: ReadonlySet<string>;
  readonly #cuts: ReadonlySet<number>;
  readonly #cases: readonly Case[];

  /**
   * @param off - parts that are off the board: they neither break nor break others
   * @param fitted - parts that were fitted here: they have met none of the faults yet
   * @param cuts - faults, by their place in the table, that keep the mains out: nothing breaks that is not fed
   */
  constructor(
    belief: Belief,
    priors: PriorTable,
    off: ReadonlySet<string>,
    fitted: ReadonlySet<string> = new Set(),
    cuts: ReadonlySet<number> = new Set(),
  ) {
    this.#priors = priors;
    this.#off = off;
    this.#fitted = fitted;
    this.#cuts = cuts;
    this.#parts = [...new Set(priors.faults.map(({ part }) => part))].filter((part) => !off.has(part));
    this.#slot = new Map(this.#parts.map((part, index) => [part, index]));
    const cases: Case[] = [];
    let covered = 0;
    const total = belief.explanations.reduce((sum, { probability }) => sum + probability, 0);
    for (const { presentNow, silent, probability } of belief.explanations) {
      if (covered >= WEIGHED_SHARE * total) break;
      covered += probability;
      cases.push(this.#case(presentNow, silent, probability));
    }
    this.#cases = cases.map((one) => ({ ...one, weight: one.weight / (covered > 0 ? covered : 1) }));
  }

  #case(presentNow: readonly number[], silent: Float64Array, weight: number): Case {
    const { faults, knockOns, breaksAtPower } = this.#priors;
    const present = Float64Array.from(faults, ({ part }, f) => (this.#off.has(part) ? 0 : (silent[f] ?? 0)));
    for (const f of presentNow) if (!this.#off.has(faults[f].part)) present[f] = 1;
    let fed = 1;
    for (const f of this.#cuts) fed *= 1 - present[f];
    const alive = new Float64Array(this.#parts.length).fill(1);
    const rates = [...KINDS, null].map(() => new Float64Array(this.#parts.length));
    const own = rates[KINDS.length];
    faults.forEach(({ part }, f) => {
      const at = this.#slot.get(part);
      if (at === undefined) return;
      own[at] += breaksAtPower[f] ?? 0;
      alive[at] = Math.max(0, alive[at] - present[f]);
    });
    for (const { parent, child, rate, rule } of knockOns) {
      if (present[parent] === 0 || faults[child].part === faults[parent].part) continue;
      const at = this.#slot.get(faults[child].part);
      if (at === undefined) continue;
      // where it is not known that the parent is there, it is likelier to be where the child has failed of it already
      const both = present[parent] < 1 && !this.#fitted.has(faults[child].part) ? Math.exp(-rate) : 1;
      rates[KINDS.indexOf(HARM_OF_RULE[rule] ?? KINDS[0])][at] += rate * present[parent] * both;
    }
    this.#asSurvivors(rates.slice(0, KINDS.length));
    return { weight, fed, present, alive, rates };
  }

  /**
   * What came alive through the power that the faults were there under has shown that it bears more than most: with strengths spread as
   * widely as their mean (a gamma of shape 1), having survived a rate r once leaves r / (1 + r).
   */
  #asSurvivors(knocked: readonly Float64Array[]): void {
    this.#parts.forEach((part, at) => {
      if (this.#fitted.has(part)) return;
      const once = knocked.reduce((sum, rates) => sum + rates[at], 0);
      for (const rates of knocked) rates[at] /= 1 + once / SURVIVOR_SHAPE;
    });
  }

  /** What this feed would break, and what that costs. */
  under(harm: FeedHarm, money: BreakMoney): PowerForecast {
    const { reaches } = harm;
    const costs = this.#parts.map((part) => money.of(part));
    const shares = [...KINDS.map((kind) => harm.by[kind]), harm.own];
    const reached = this.#parts.map((part) => reaches === null || part.includes("~") || reaches.has(part));
    const sum = new Float64Array(this.#parts.length);
    let anyBreaks = 0;
    let lossMoney = 0;
    for (const { weight: believed, fed, alive, rates } of this.#cases) {
      // a supply at two places of the board needs no fuse
      const weight = reaches === null ? believed * fed : believed;
      let total = 0;
      let lost = 0;
      for (let p = 0; p < sum.length; p++) {
        if (!reached[p]) continue;
        let rate = 0;
        for (let k = 0; k < shares.length; k++) rate += shares[k] * rates[k][p];
        rate *= alive[p];
        if (rate < LEAST_RATE) continue;
        const breaks = -Math.expm1(-rate);
        sum[p] += weight * breaks;
        total += rate;
        lost += breaks * costs[p];
      }
      anyBreaks += weight * -Math.expm1(-total);
      lossMoney += weight * Math.min(money.most, lost);
    }
    const breaks = this.#parts
      .map((part, index) => ({ part, probability: sum[index] }))
      .sort((a, b) => b.probability - a.probability || (a.part < b.part ? -1 : 1));
    return { anyBreaks, breaks, lossMoney };
  }

  /** The fault that contributes most to this part's breaking under the feed; null: it would break by itself. */
  because(part: string, harm: FeedHarm): Because | null {
    const { faults, knockOns } = this.#priors;
    const given = new Map<number, number>();
    for (const knock of knockOns) {
      const { parent, child, rate } = knock;
      if (faults[child].part !== part || faults[parent].part === part) continue;
      const strength = rate * knockOnHarm(harm, knock, faults);
      const believed = strength * this.#chanceOf(parent);
      if (believed > 0) given.set(parent, (given.get(parent) ?? 0) + believed);
    }
    if (given.size === 0) return null;
    const [fault] = [...given].reduce((best, entry) => (entry[1] > best[1] ? entry : best));
    const prior = faults[fault];
    return {
      fault: prior.reportAs === "" ? faultName(prior.fault) : prior.reportAs,
      probability: this.#chanceOf(fault),
    };
  }

  #chanceOf(fault: number): number {
    return this.#cases.reduce((sum, { weight, present }) => sum + weight * present[fault], 0);
  }
}
