/**
 * Anytime search over sets of faults. Several faults at once is the normal case (de Kleer & Williams 1987, 1989), so sets
 * are grown best first: add, drop and swap (a drop, then an add), and a parent together with what it knocks on, because a
 * silent open may hide a loud short and then neither step alone improves. A step is evaluated only where some reading could
 * hear the added fault and where an upper bound of its score is worth it. Deterministic: ties break by the set itself.
 */

import { oddsBeside } from "./beside-odds.ts";
import { crossedSwaps } from "./crossed-swaps.ts";
import { ElementHearing } from "./element-hearing.ts";
import { type Evidence, overCommon } from "./evidence.ts";
import type { HeardSet } from "./heard-set.ts";
import { Hopes, MISFIT } from "./hopes.ts";
import { pairsBeside } from "./pairs.ts";
import { finish, jointLog, type ScoredSet, scoreSet } from "./scored-set.ts";
import type { SearchLimits } from "./search-limits.ts";
import { byScore, insertSorted } from "./set-order.ts";
import { logPrior } from "./set-prior.ts";
import { slipMenders } from "./slip-menders.ts";
import { presentAt, type Universe } from "./universe.ts";

/** The first sets are expanded with exact knowledge of what each reading can hear; later ones with a guess. */
const EXACT_EXPANSIONS = 2;
/** Log likelihoods further apart than this are different answers: a silent fault moves a reading by a tenth of its spread at most. */
const SAME_ANSWER = 0.05;

/** A grown set is kept only when no further than this below the set it grew from (nats): in the first expansions, and later. */
const EARLY_REACH = 6.5;
const LATE_REACH = 3;
const EARLY_EXPANSIONS = 4;
/** Of so many of the best sets found, every member is exchanged at the end. Bound on work. */
const LAST_SWAPS = 2;
/** What is left after a drop is expanded for its swaps only while so few sets have been. */
const EARLY_SWAPS = 8;

function differ(a: number, b: number): boolean {
  return a !== b && !(Math.abs(a - b) <= SAME_ANSWER);
}

/** What each piece says of the set that is grown, ln, and how much more it may be hoped to say of a larger one. */
interface Growth {
  readonly own: readonly number[];
  /** less once a set has shown what can be said */
  readonly hoped: Float64Array;
}

/** Search state and its moves; one instance a search. */
export class ExplanationSearch {
  readonly #universe: Universe;
  readonly #evidence: readonly Evidence[];
  readonly #logWeights: Float64Array;
  readonly #limits: SearchLimits;
  readonly #elementCount: number;
  readonly #found = new Map<string, ScoredSet>();
  readonly #expanded = new Set<string>();
  readonly #rejected = new Set<string>();
  #best = Number.NEGATIVE_INFINITY;
  readonly #hopes: Hopes;
  /** what each piece hears on a board with nothing wrong: asked once, guessed to hold beside later sets */
  #alone: ElementHearing | null = null;

  constructor(
    universe: Universe,
    evidence: readonly Evidence[],
    commonLogWeights: Float64Array,
    limits: SearchLimits,
  ) {
    this.#universe = universe;
    this.#evidence = evidence;
    this.#logWeights = commonLogWeights;
    this.#limits = limits;
    this.#elementCount = universe.fault.length;
    this.#hopes = new Hopes(evidence);
  }

  /** All sets found within the width, best first. */
  run(): ScoredSet[] {
    this.#keep(this.#score([]));
    for (let step = 0; step < this.#limits.expansions; step++) {
      const next = this.#nextToExpand();
      if (next === null) break;
      this.#expand(next);
    }
    for (const scored of this.ranked().slice(0, LAST_SWAPS)) this.#swapEach(scored);
    this.#mendSlips();
    const [best] = this.ranked();
    if (best !== undefined)
      for (const set of crossedSwaps(
        best,
        this.#elementCount,
        (one) => this.#found.get(one.join(",")) ?? null,
      ))
        if (!this.holds(set)) this.#keep(this.#score(set));
    return this.ranked();
  }

  /**
   * Each member of a set exchanged for whatever else explains what it explains: where many faults are needed, the search ends in the ways
   * to explain one of them and has not come to the like parts beside another.
   */
  #swapEach({ set }: ScoredSet): void {
    for (const member of set) {
      const left = set.filter((element) => element !== member);
      const key = left.join(",");
      if (this.#expanded.has(key)) continue;
      this.#expanded.add(key);
      this.#addOne(this.#found.get(key) ?? this.#score(left));
    }
  }

  /** Gives what the best set leaves to a slip one more chance, beside the sets near it. */
  #mendSlips(): void {
    const ranked = this.ranked();
    const [best] = ranked;
    if (best === undefined) return;
    const own = best.hearings.map(({ vector }) => overCommon(vector, this.#logWeights));
    for (const worst of this.#hopes.misfits(own))
      for (const set of slipMenders(this.#universe, this.#evidence, this.#logWeights, worst, ranked))
        if (set.length <= this.#limits.size && !this.holds(set)) this.#keep(this.#score(set));
  }

  /**
   * The set without its silent members: what is left is a core. A set may be found with a member that no reading hears, because the
   * member makes the rest likelier (a short that has blown the fuse it now hides behind); such stand beside the core.
   */
  coreOf(scored: ScoredSet): ScoredSet {
    let core = scored;
    for (;;) {
      const silent = core.set.find((member) => !this.#isHeard(core, member));
      if (silent === undefined) return core;
      core = this.#without(core, silent);
    }
  }

  #without({ set }: ScoredSet, member: number): ScoredSet {
    const rest = set.filter((element) => element !== member);
    return this.#found.get(rest.join(",")) ?? this.#score(rest);
  }

  /** A member that changes an answer is heard; where all answers are alike the circuit is asked. */
  #isHeard(scored: ScoredSet, member: number): boolean {
    const known = this.#without(scored, member);
    const changes = scored.hearings.some(({ vector }, i) => {
      const before = known.hearings[i].vector;
      return vector !== before && vector.some((log, z) => differ(log, before[z]));
    });
    return changes || this.#evidence.some((piece, i) => this.#hears(piece, known.hearings[i].heard, member));
  }

  #hears(piece: Evidence, heard: HeardSet, element: number): boolean {
    return presentAt(this.#universe, element, piece.logIndex) && heard.hears(this.#universe.fault[element]);
  }

  ranked(): ScoredSet[] {
    return [...this.#found.values()]
      .filter((scored) => scored.score >= this.#best - this.#limits.width)
      .sort(byScore);
  }

  /** Is this set, its elements ascending, among those found? */
  holds(set: readonly number[]): boolean {
    return this.#found.has(set.join(","));
  }

  #score(set: readonly number[]): ScoredSet {
    return scoreSet(this.#universe, this.#evidence, this.#logWeights, set);
  }

  #keep(scored: ScoredSet): void {
    this.#found.set(scored.set.join(","), scored);
    if (scored.score > this.#best) this.#best = scored.score;
  }

  #nextToExpand(): ScoredSet | null {
    let next: ScoredSet | null = null;
    for (const [key, scored] of this.#found) {
      if (this.#expanded.has(key) || scored.score < this.#best - this.#limits.width) continue;
      if (next === null || byScore(scored, next) < 0) next = scored;
    }
    return next;
  }

  #expand(scored: ScoredSet): void {
    this.#expanded.add(scored.set.join(","));
    this.#dropOne(scored);
    if (this.#expanded.size <= EARLY_SWAPS) this.#swapPairs(scored);
    if (scored.set.length < this.#limits.size) this.#addOne(scored);
  }

  /** Drop each member, and expand what is left too: that is the swap. */
  #dropOne(scored: ScoredSet): void {
    for (const member of scored.set) {
      const rest = scored.set.filter((element) => element !== member);
      const key = rest.join(",");
      if (!this.#found.has(key)) this.#keep(this.#score(rest));
      const left = this.#found.get(key);
      if (left !== undefined && !this.#expanded.has(key) && this.#expanded.size <= EARLY_SWAPS) {
        this.#expanded.add(key);
        this.#addOne(left);
      }
    }
  }

  /** Swaps a fault and its knock-on for another pair: legs behind one winding read alike, and no single swap leads to the next. */
  #swapPairs(scored: ScoredSet): void {
    for (const parent of scored.set)
      for (const { to } of this.#universe.knocksOn[parent]) {
        if (!scored.set.includes(to)) continue;
        const rest = scored.set.filter((element) => element !== parent && element !== to);
        const left = this.#found.get(rest.join(",")) ?? this.#score(rest);
        const own = left.hearings.map(({ vector }) => overCommon(vector, this.#logWeights));
        const [worst] = this.#hopes.misfits(own);
        if (worst !== undefined) this.#addPairs(left, worst, own, this.#hopes.gain(own));
      }
  }

  /**
   * Adds one element in every way worth trying. Whatever set explains the piece explained worst must hold a fault that this
   * piece hears, so those come first: every order of adding leads to the same set. Where none of them makes the set any better
   * (a slip is explained by nothing), the next worst piece has its turn, and at last whatever any piece hears.
   */
  #addOne(scored: ScoredSet): void {
    const exact = this.#expanded.size <= EXACT_EXPANSIONS;
    const own = this.#evidence.map((_, i) => overCommon(scored.hearings[i].vector, this.#logWeights));
    const misfits = this.#hopes.misfits(own);
    const hearing = exact ? this.hearingBeside(scored) : this.#guessed(scored, misfits);
    const gain = this.#hopes.gain(own);
    const growth: Growth = { own, hoped: Float64Array.from(own, (log, i) => this.#hopes.of(i) - log) };
    const worthTrying = this.#worthTrying(scored, hearing, gain);
    const tried = new Uint8Array(this.#elementCount);
    for (const worst of [...misfits, -1]) {
      let better = false;
      for (const { element, logOdds } of worthTrying) {
        if (tried[element] === 1 || (worst >= 0 && !hearing.hears(worst, element))) continue;
        tried[element] = 1;
        const grown = this.#tryAdd(scored, element, logOdds, hearing, growth, exact);
        if (grown !== null && grown.score > scored.score) better = true;
      }
      if (better && !exact) break;
    }
    const [worst] = misfits;
    if (exact && worst !== undefined && scored.set.length + 2 <= this.#limits.size)
      this.#addPairs(scored, worst, own, gain);
  }

  /** Beside these faults a piece may hear what it never hears alone: an open fuse shows only where the bus behind it is shorted. */
  #guessed(scored: ScoredSet, misfits: readonly number[]): ElementHearing {
    const asked = misfits.map(
      (i) => [i, this.#evidence[i].audible(scored.hearings[i].heard.faults)] as const,
    );
    return this.hearingAlone().with(new Map(asked));
  }

  /** Elements that some piece hears, and that could come within the width if all readings were explained best. */
  #worthTrying(
    scored: ScoredSet,
    hearing: ElementHearing,
    gain: number,
  ): readonly { readonly element: number; readonly logOdds: number }[] {
    const odds = oddsBeside(this.#universe, scored.set);
    const floor = this.#floor(scored);
    const worth: { element: number; logOdds: number }[] = [];
    for (let element = 0; element < this.#elementCount; element++) {
      if (odds[element] <= 0 || hearing.by[element] === 0) continue;
      const logOdds = Math.log(odds[element]);
      // what no slip explains has no score to compare: it is tried
      if (scored.score + logOdds + gain < floor) continue;
      worth.push({ element, logOdds });
    }
    return worth;
  }

  /** Scores below this are not worth keeping beside what is known, nor as growth of this set. */
  #floor(scored: ScoredSet): number {
    // The common unknown couples readings: a little slack keeps the bound honest.
    return Math.max(this.#best - this.#limits.width - 1, scored.score - this.#reach());
  }

  /** Which elements each piece can hear beside the set, asked of the circuit. */
  hearingBeside(scored: ScoredSet): ElementHearing {
    return this.#hearing((piece, i) => piece.audible(scored.hearings[i].heard.faults));
  }

  /** Which elements each piece hears on a board with nothing else wrong: the guess that holds beside later sets. */
  hearingAlone(): ElementHearing {
    this.#alone ??= this.#hearing((piece) => piece.audible([]));
    return this.#alone;
  }

  #hearing(ask: (piece: Evidence, i: number) => Uint8Array): ElementHearing {
    return ElementHearing.of(this.#universe, this.#evidence, this.#evidence.map(ask));
  }

  /**
   * Evaluates the set with one element more, giving up as soon as it cannot come within the width. Where what is heard is a
   * guess, what is good enough is scored once more by every piece: a reading may hear faults together that it hears not alone.
   * @param logOdds - an upper bound of what the element adds to ln P before any reading
   */
  #tryAdd(
    scored: ScoredSet,
    element: number,
    logOdds: number,
    hearing: ElementHearing,
    { own, hoped }: Growth,
    exact: boolean,
  ): ScoredSet | null {
    const { pieces, heard: heardBits } = hearing;
    const row = element * pieces;
    let bound = scored.score + logOdds;
    for (let i = 0; i < pieces; i++) if (heardBits[row + i] === 1) bound += hoped[i];
    const floor = this.#floor(scored);
    if (bound < floor) return null;
    const set = insertSorted(scored.set, element);
    const key = set.join(",");
    const known = this.#found.get(key);
    if (known !== undefined) return known;
    if (this.#rejected.has(key)) return null;
    const prior = logPrior(this.#universe, set);
    bound += prior - scored.logPrior - logOdds;
    if (bound < floor) {
      this.#rejected.add(key);
      return null;
    }
    const heardBy: number[] = [];
    for (let i = 0; i < pieces; i++) if (heardBits[row + i] === 1) heardBy.push(i);
    // First what the set explains worst: a fault that does not mend that is given up after one prediction.
    heardBy.sort((a, b) => hoped[b] - hoped[a] || a - b);
    const fault = this.#universe.fault[element];
    const vectors = scored.hearings.map(({ vector }) => vector);
    for (const i of heardBy) {
      if (bound < floor) {
        this.#rejected.add(key);
        return null;
      }
      const heard = scored.hearings[i].heard.with(fault);
      vectors[i] = heard.vector;
      const log = heard.log(this.#logWeights);
      bound += log - this.#hopes.of(i);
      if (this.#hopes.heard(i, log)) hoped[i] = this.#hopes.of(i) - own[i];
    }
    const guessed = prior + jointLog(vectors, this.#logWeights);
    const grown =
      guessed < floor ? null : exact ? this.#grown(scored, element, set, prior, vectors) : this.#score(set);
    if (grown === null || grown.score < floor) {
      this.#rejected.add(key);
      return null;
    }
    this.#keep(grown);
    return grown;
  }

  /** The set with the element, by the answers that each piece gave with it or, where it is silent, had given without. */
  #grown(
    { hearings }: ScoredSet,
    element: number,
    set: readonly number[],
    prior: number,
    vectors: readonly Float64Array[],
  ): ScoredSet {
    const fault = this.#universe.fault[element];
    const grown = hearings.map(({ heard }, i) => ({
      heard: presentAt(this.#universe, element, this.#evidence[i].logIndex) ? heard.with(fault) : heard,
      vector: vectors[i],
    }));
    return finish(this.#logWeights, set, prior, grown);
  }

  /** How far below the set it grew from a new one may fall: later sets are only asked for near equals. */
  #reach(): number {
    return this.#expanded.size <= EARLY_EXPANSIONS ? EARLY_REACH : LATE_REACH;
  }

  /**
   * Two faults at once, for what the set explains worst: two shorted switches of a leg short the bus, though each alone moves
   * nothing there. Pairs that no `gain` of the readings can lift within the width are not asked about.
   */
  #addPairs(scored: ScoredSet, worst: number, own: readonly number[], gain: number): void {
    const least = this.#best - this.#limits.width - 1;
    const piece = this.#evidence[worst];
    const { heard } = scored.hearings[worst];
    for (const [one, other] of pairsBeside(this.#universe, scored.set, piece.logIndex)) {
      const set = insertSorted(insertSorted(scored.set, one), other);
      if (scored.logLikelihood + gain + logPrior(this.#universe, set) < least) continue;
      if (this.#found.has(set.join(","))) continue;
      const both = heard.with(this.#universe.fault[one]).with(this.#universe.fault[other]);
      if (both.log(this.#logWeights) < own[worst] + MISFIT) continue;
      this.#keep(this.#score(set));
    }
  }
}
