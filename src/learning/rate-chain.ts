/** How often things fail at a bench, learnt level by level from the expected counts of its closed jobs. */
import { type Gamma, updateGamma } from "./conjugate.ts";
import { gammaEvidence, heldMean, heldShares } from "./held-by.ts";
import type { Lesson, Tally } from "./lesson.ts";
import { FACTOR_ENDS, PSEUDO_COUNTS } from "./pseudo-counts.ts";

/** A factor on a rate, a Gamma: `mean` of 1 leaves it as it was. How far it may be off is worked out where it is shown. */
export interface LearntFactor extends Gamma {
  readonly mean: number;
  readonly count: number;
  /** faults expected in the same jobs by what stood before */
  readonly expected: number;
}

/** Keys of the levels: a sort alone, `cause sort`, `family\nsort`, `board\npart`. */
export interface RateFactors {
  /** of all sorts together; null where next to nothing was seen */
  readonly bench: LearntFactor | null;
  readonly sorts: ReadonlyMap<string, LearntFactor>;
  readonly causes: ReadonlyMap<string, LearntFactor>;
  readonly families: ReadonlyMap<string, LearntFactor>;
  readonly parts: ReadonlyMap<string, LearntFactor>;
}

export const causeKey = (cause: string, sort: string): string => `${cause}\n${sort}`;
export const familyKey = (family: string, sort: string): string => `${family}\n${sort}`;
export const partKey = (board: string, part: string): string => `${board}\n${part}`;

/** Less than this of a fault seen or expected says nothing worth a line. */
export const LEAST_SEEN = 0.05;

/** The Gamma with the mean and the variance of the mixture. */
function mixedGamma(shares: readonly number[], of: (times: number) => Gamma): Gamma {
  const mean = heldMean(shares, (times) => of(times).shape / of(times).rate);
  const square = heldMean(shares, (times) => {
    const { shape, rate } = of(times);
    return (shape * (shape + 1)) / rate ** 2;
  });
  const rate = mean / (square - mean ** 2);
  return { shape: mean * rate, rate };
}

/** One level of the chain: counts beside what the levels before it make of the tables' expectation. */
class Level {
  readonly #tallies = new Map<string, { count: number; expected: number }>();

  add(key: string, count: number, expected: number): void {
    const tally = this.#tallies.get(key) ?? { count: 0, expected: 0 };
    tally.count += count;
    tally.expected += expected;
    this.#tallies.set(key, tally);
  }

  learn(worth: number): Map<string, LearntFactor> {
    const tallies = [...this.#tallies]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      // readings that raise what they cannot show leave a little less than nothing
      .map(([key, { count, expected }]) => ({
        key,
        count: Math.max(0, count),
        expected: Math.max(0, expected),
      }))
      .filter(({ count, expected }) => count >= LEAST_SEEN || expected >= LEAST_SEEN);
    const before = (times: number): Gamma => ({ shape: times * worth, rate: times * worth });
    const shares = heldShares((times) =>
      tallies.reduce((sum, { count, expected }) => sum + gammaEvidence(before(times), count, expected), 0),
    );
    return new Map(
      tallies.map(({ key, count, expected }) => {
        const gamma = mixedGamma(shares, (times) => updateGamma(before(times), count, expected));
        const mean = Math.min(FACTOR_ENDS.most, Math.max(FACTOR_ENDS.least, gamma.shape / gamma.rate));
        return [key, { ...gamma, mean, count, expected }];
      }),
    );
  }
}

const NOTHING: RateFactors = {
  bench: null,
  sorts: new Map(),
  causes: new Map(),
  families: new Map(),
  parts: new Map(),
};
const meanOf = (of: ReadonlyMap<string, LearntFactor>, key: string): number => of.get(key)?.mean ?? 1;

/** What the levels down to the family make of a sort's rate in a job of this kind. */
export function factorOfSort(
  { bench, sorts, causes, families }: RateFactors,
  { cause, family }: { readonly cause: string; readonly family: string },
  sort: string,
): number {
  const ofSort = (bench?.mean ?? 1) * meanOf(sorts, sort);
  return ofSort * meanOf(causes, causeKey(cause, sort)) * meanOf(families, familyKey(family, sort));
}

/** What readings and outcome of a job have shown, and what of the tables' expectation they could have shown. */
export interface Shown {
  readonly count: number;
  /** by the tables' figures: what the levels make of it is a factor on this */
  readonly due: number;
}

/**
 * What no reading has shown is neither found nor missed: it was believed for its rate, would be believed as much the more for a higher one, and
 * so tells nothing of the rate. It is left out of what was found and of what was due alike (the fixed point of
 * expectation and maximisation, Dempster, Laird and Rubin 1977, without its slow steps).
 *
 * Only what was brought in is seen. Of a board that the tables hold for whole it is known that something must have failed, so that each fault
 * is the likelier; where the rates are higher than the tables', less follows from its having come. With u the chance that
 * nothing would have brought it in, a fault that brings it in with chance a is there at a rate of (1 - (1 - a) u) / (1 - u) times its own.
 * Boards that came back are counted with the job that they correct: what was found is added, what was to be expected is not.
 */
export function shownIn(lesson: Lesson, rates: RateFactors): (tally: Tally, factor: number) => Shown {
  const { stayedAway: before } = lesson;
  let more = 0;
  for (const { part, sort, bringing } of lesson.parts) {
    const ofPart = meanOf(rates.parts, partKey(lesson.identity, part));
    more += (factorOfSort(rates, lesson, sort) * ofPart - 1) * bringing;
  }
  const now = Math.min(MOST_STAY_AWAY, before * Math.exp(-more));
  const seenAt = ({ rate, bringing }: Tally, u: number) => rate + (bringing * u) / (1 - u);
  return (tally, factor) => {
    const { count, unseen, rate } = tally;
    const brought = rate > 0 ? seenAt(tally, now) / seenAt(tally, before) : 1;
    const whole = brought * atFactor(tally.expected, tally.expectedSquares, factor);
    const hidden = atFactor(unseen, tally.unseenSquares, factor);
    return { count: count - unseen, due: lesson.again ? 0 : whole - hidden };
  };
}

/** By how much a sum of chances grows for each part of the factor: p at the tables' rate is p f / (1 - p + p f) at f times that rate. */
function atFactor(sum: number, squares: number, factor: number): number {
  const each = sum > 0 ? squares / sum : 0;
  return sum / (1 - each + each * factor);
}

/** Rates that bring next to no board in say nothing of those that came. */
const MOST_STAY_AWAY = 0.95;
/** What a board's coming in tells depends on the rates that are learnt from it: each round takes those of the one before. */
const ROUNDS = 6;

/**
 * Rates in a chain, each level's posterior being the next one's prior: all sorts of parts together, each sort, then that sort after this cause,
 * then in this family of boards, then the part of this very board. A level is a Gamma whose pseudo-counts centre on the level before it; its
 * exposure is the number of faults that the level before expects in the same jobs.
 */
export function learnRates(lessons: readonly Lesson[]): RateFactors {
  let rates = NOTHING;
  for (let round = 0; round < ROUNDS; round++) {
    const before = rates;
    rates = chain(
      lessons.map((lesson) => ({ lesson, shown: shownIn(lesson, before) })),
      before,
    );
  }
  return rates;
}

interface JobShown {
  readonly lesson: Lesson;
  readonly shown: ReturnType<typeof shownIn>;
}

/** @param before - the round before: how far what is unseen has saturated */
function chain(jobs: readonly JobShown[], before: RateFactors): RateFactors {
  let learnt = NOTHING;
  const bySort = (worth: number, keyOf: (lesson: Lesson, sort: string) => string) => {
    const level = new Level();
    for (const { lesson, shown } of jobs)
      for (const tally of lesson.modes) {
        const { count, due } = shown(tally, factorOfSort(before, lesson, tally.sort));
        level.add(keyOf(lesson, tally.sort), count, due * factorOfSort(learnt, lesson, tally.sort));
      }
    return level.learn(worth);
  };
  learnt = { ...learnt, bench: bySort(PSEUDO_COUNTS.bench.worth, () => "").get("") ?? null };
  learnt = { ...learnt, sorts: bySort(PSEUDO_COUNTS.sort.worth, (_, sort) => sort) };
  learnt = {
    ...learnt,
    causes: bySort(PSEUDO_COUNTS.cause.worth, ({ cause }, sort) => causeKey(cause, sort)),
  };
  learnt = {
    ...learnt,
    families: bySort(PSEUDO_COUNTS.family.worth, ({ family }, sort) => familyKey(family, sort)),
  };
  const parts = new Level();
  for (const { lesson, shown } of jobs)
    for (const tally of lesson.parts) {
      const key = partKey(lesson.identity, tally.part);
      const whole = factorOfSort(before, lesson, tally.sort) * meanOf(before.parts, key);
      const { count, due } = shown(tally, whole);
      parts.add(key, count, due * factorOfSort(learnt, lesson, tally.sort));
    }
  return { ...learnt, parts: parts.learn(PSEUDO_COUNTS.board.worth) };
}
