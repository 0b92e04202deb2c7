/** What the closed jobs of a bench say together, each figure with its default, its counts and how far it may be off. */
import type { ReferenceReading } from "../board/board.ts";
import type { FaultMode } from "../board/fault.ts";
import { ruleStrength } from "../priors/knock-on-rules.ts";
import { MODE_SHARES, type Shape } from "../priors/mode-shares.ts";
import { type Beta, betaSpread, type Spread, updateBeta, updateShares } from "./conjugate.ts";
import { betaEvidence, gammaEvidence, HELD_TIMES, heldMean, heldShares } from "./held-by.ts";
import type { Lesson } from "./lesson.ts";
import { type LearntPace, pacesOf } from "./pace.ts";
import { type LearntPrice, pricesOf } from "./prices.ts";
import { FACTOR_ENDS, PSEUDO_COUNTS } from "./pseudo-counts.ts";
import { factorOfSort, familyKey, LEAST_SEEN, learnRates, type RateFactors, shownIn } from "./rate-chain.ts";
import { referencesOf } from "./references.ts";

export interface LearntShares {
  readonly shape: string;
  readonly modes: readonly FaultMode[];
  readonly before: readonly number[];
  readonly shares: readonly number[];
  readonly counts: readonly number[];
}

export interface LearntKnockOn extends Spread {
  /** chance of the rule by the tables, and as learnt in `mean`, over the pairs met */
  readonly before: number;
  readonly trials: number;
  readonly count: number;
  readonly strength: number;
  /** times the rule's strength */
  readonly factor: number;
}

export interface Learnt extends RateFactors {
  readonly jobs: number;
  readonly boards: number;
  /** parts met, by sort */
  readonly seen: ReadonlyMap<string, number>;
  readonly shares: ReadonlyMap<string, LearntShares>;
  readonly familyShares: ReadonlyMap<string, LearntShares>;
  readonly knockOns: ReadonlyMap<string, LearntKnockOn>;
  readonly paces: ReadonlyMap<string, LearntPace>;
  readonly prices: ReadonlyMap<string, LearntPrice>;
  /** what the boards are called, by what they are known by: as the last of the lessons had it */
  readonly names: ReadonlyMap<string, string>;
  /** what good boards read, by what the board is known by */
  readonly references: ReadonlyMap<string, readonly ReferenceReading[]>;
}

export function learn(lessons: readonly Lesson[]): Learnt {
  const rates = learnRates(lessons);
  const seen = new Map<string, number>();
  for (const lesson of lessons)
    if (!lesson.again)
      for (const [sort, count] of Object.entries(lesson.seen)) seen.set(sort, (seen.get(sort) ?? 0) + count);
  return {
    jobs: lessons.length,
    boards: lessons.filter(({ again }) => !again).length,
    seen,
    names: new Map(lessons.map(({ identity, boardName }) => [identity, boardName])),
    ...rates,
    ...learnModes(lessons, rates),
    knockOns: learnKnockOns(lessons),
    paces: pacesOf(lessons.flatMap(({ paces }) => paces)),
    prices: pricesOf(lessons),
    references: referencesOf(lessons),
  };
}

interface ModeSums {
  readonly counts: Map<string, number>;
  readonly expected: Map<string, number>;
}

function learnModes(lessons: readonly Lesson[], rates: RateFactors): Pick<Learnt, "shares" | "familyShares"> {
  const everywhere = new Map<string, ModeSums>();
  const inFamily = new Map<string, ModeSums>();
  const add = (sums: Map<string, ModeSums>, key: string, mode: string, count: number, expected: number) => {
    const of = sums.get(key) ?? { counts: new Map(), expected: new Map() };
    of.counts.set(mode, (of.counts.get(mode) ?? 0) + count);
    of.expected.set(mode, (of.expected.get(mode) ?? 0) + expected);
    sums.set(key, of);
  };
  for (const lesson of lessons) {
    const shown = shownIn(lesson, rates);
    for (const tally of lesson.modes) {
      const { sort, shape, mode } = tally;
      if (shape === null) continue;
      const factor = factorOfSort(rates, lesson, sort);
      const { count, due } = shown(tally, factor);
      const expected = due * factor;
      add(everywhere, shape, mode, count, expected);
      add(inFamily, familyKey(lesson.family, shape), mode, count, expected);
    }
  }
  const shares = sharesOf(everywhere, () => null, PSEUDO_COUNTS.modes.worth);
  const ofShape = (key: string) => shares.get(shapeIn(key)) ?? null;
  return { shares, familyShares: sharesOf(inFamily, ofShape, PSEUDO_COUNTS.familyModes.worth) };
}

/** The shape of a key that may begin with a family. */
const shapeIn = (key: string): string => key.slice(key.indexOf("\n") + 1);

interface ModesMet extends Omit<LearntShares, "shares"> {
  readonly key: string;
  readonly exposures: readonly number[];
}

/** What was met of a shape's modes; null for a shape that this program does not know, or of which next to nothing was seen. */
function modesMet(key: string, before: LearntShares | null, sums: ModeSums): ModesMet | null {
  const shape = shapeIn(key);
  const table = Object.hasOwn(MODE_SHARES, shape) ? MODE_SHARES[shape as Shape].shares : null;
  if (table === null) return null;
  const modes = Object.keys(table) as FaultMode[];
  const ofTable = modes.map((mode) => table[mode] ?? 0);
  const counts = modes.map((mode) => Math.max(0, sums.counts.get(mode) ?? 0));
  if (counts.reduce((sum, one) => sum + one, 0) < LEAST_SEEN) return null;
  // The expectation holds the table's share; over that share it is the number of failures in which the mode could have been met.
  const exposures = modes.map((mode, at) => Math.max(0, sums.expected.get(mode) ?? 0) / ofTable[at]);
  return { key, shape, modes, before: before?.shares ?? ofTable, counts, exposures };
}

/** Every shape's modes after the counts, each held to what stood before as strongly as all of them together have it. */
function sharesOf(
  sums: ReadonlyMap<string, ModeSums>,
  before: (key: string) => LearntShares | null,
  worth: number,
): Map<string, LearntShares> {
  const all = [...sums].flatMap(([key, of]) => modesMet(key, before(key), of) ?? []);
  const held = heldShares((times) => all.reduce((sum, met) => sum + modesEvidence(met, times * worth), 0));
  return new Map(
    all.map(({ key, exposures, ...met }) => {
      const after = HELD_TIMES.map((times) =>
        updateShares(
          met.before.map((share) => times * worth * share),
          met.counts,
          exposures,
        ),
      );
      const shares = met.modes.map((_, mode) => heldMean(held, (_, at) => after[at]?.[mode] ?? 0));
      return [key, { ...met, shares }];
    }),
  );
}

/** Each share a Gamma of its own, as in `updateShares`. */
function modesEvidence({ before, counts, exposures }: ModesMet, worth: number): number {
  return before.reduce(
    (sum, share, at) =>
      share > 0 ? sum + gammaEvidence({ shape: worth * share, rate: worth }, counts[at], exposures[at]) : sum,
    0,
  );
}

function learnKnockOns(lessons: readonly Lesson[]): Map<string, LearntKnockOn> {
  const sums = new Map<string, { trials: number; expected: number; count: number }>();
  for (const { rule, trials, expected, count } of lessons.flatMap((lesson) => lesson.knockOns)) {
    const sum = sums.get(rule) ?? { trials: 0, expected: 0, count: 0 };
    sums.set(rule, {
      trials: sum.trials + trials,
      expected: sum.expected + expected,
      count: sum.count + count,
    });
  }
  const all = [...sums]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([rule, { trials, expected, count }]) => {
      const strength = ruleStrength(rule);
      if (strength === null || trials < LEAST_SEEN || !(expected > 0 && expected < trials)) return [];
      return [
        { rule, strength, trials, count, before: expected / trials, failed: Math.max(0, trials - count) },
      ];
    });
  const prior = (before: number, times: number): Beta => {
    const worth = times * PSEUDO_COUNTS.knockOn.worth;
    return { yes: worth * before, no: worth * (1 - before) };
  };
  const held = heldShares((times) =>
    all.reduce(
      (sum, { before, count, failed }) => sum + betaEvidence(prior(before, times), count, failed),
      0,
    ),
  );
  return new Map(
    all.map(({ rule, failed, ...one }) => {
      const after = mixedBeta(held, (times) => updateBeta(prior(one.before, times), one.count, failed));
      const spread = betaSpread(after);
      // chance 1 - exp(-rate): the rates stand to each other as the logarithms of what was spared
      const factor = Math.log1p(-spread.mean) / Math.log1p(-one.before);
      const within = Math.min(FACTOR_ENDS.most, Math.max(FACTOR_ENDS.least, factor));
      return [rule, { ...spread, ...one, factor: within }];
    }),
  );
}

/** The Beta with the mean and the variance of the mixture. */
function mixedBeta(held: readonly number[], of: (times: number) => Beta): Beta {
  const mean = heldMean(held, (times) => of(times).yes / (of(times).yes + of(times).no));
  const square = heldMean(held, (times) => {
    const { yes, no } = of(times);
    return (yes * (yes + 1)) / ((yes + no) * (yes + no + 1));
  });
  const worth = (mean - square) / (square - mean ** 2);
  return { yes: worth * mean, no: worth * (1 - mean) };
}
