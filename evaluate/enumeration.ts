/**
 * Every set of faults of a small board, scored by the engine's own prior and evidence and by no search: the reference that the
 * search is held against. What a reading says of a set depends only on those of its faults that matter to it, and these are few,
 * so a set is scored from the one it grew from by looking up, per reading, which of the faults matter now. Up to `SOLVED_DEEP`
 * faults that is the answer which scoring from scratch gives; deeper, a fault which a reading hears beside no three or fewer of the
 * set's faults is taken as silent beside all of them (`enumeration.test.ts` holds both against scoring from scratch).
 */
import type { Timeline } from "../src/bench/timeline.ts";
import { type ColdGroup, coldEvidence, coldGroups, EvidenceMemory } from "../src/diagnosis/cold-evidence.ts";
import { COMMON_POINTS, type Evidence, overCommon } from "../src/diagnosis/evidence.ts";
import { logPrior } from "../src/diagnosis/set-prior.ts";
import type { Universe } from "../src/diagnosis/universe.ts";
import type { Predictor } from "../src/meter/prediction.ts";
import type { FaultPrior } from "../src/priors/fault-prior.ts";

/** What matters of a set to one reading, and what the reading says of it. */
interface Answer {
  /** prior-table indexes, ascending */
  readonly faults: readonly number[];
  readonly vector: Float64Array;
  /** answer with one fault more, by its prior-table index, as far as asked */
  readonly next: (Answer | undefined)[];
  /** whether the reading would hear one fault more, as far as asked */
  readonly hears: (boolean | undefined)[];
}

/** An answer no likelier than this above a slip is a slip (nats). */
const SLIP_MARGIN = 0.5;

/** One reading of a log in which nothing was done but measuring: all faults of a set are there at each. */
class HeardBy {
  readonly #check: ColdGroup["check"];
  readonly #predictor: Predictor;
  readonly #priors: readonly FaultPrior[];
  readonly #evidence: Evidence;
  readonly #answers = new Map<string, Answer>();

  constructor(group: ColdGroup, predictor: Predictor, priors: readonly FaultPrior[]) {
    this.#check = group.check;
    this.#predictor = predictor;
    this.#priors = priors;
    this.#evidence = coldEvidence(group, predictor, priors, new EvidenceMemory(), new Set());
  }

  answer(faults: readonly number[]): Answer {
    const kept = new Set(this.#predictor.matters(this.#check, this.#faultsOf(faults)));
    const matter = faults.filter((fault) => kept.has(this.#priors[fault].fault)).sort((a, b) => a - b);
    const key = matter.join(",");
    const known = this.#answers.get(key);
    if (known !== undefined) return known;
    const answer: Answer = {
      faults: matter,
      vector: this.#evidence.logLikelihood(matter),
      next: [],
      hears: [],
    };
    this.#answers.set(key, answer);
    return answer;
  }

  /** The answer to `set` with `fault`, from that to `set` alone: what did not matter may matter now. */
  grown(from: Answer, set: readonly number[], fault: number): Answer {
    let answer = this.#with(from, fault);
    if (answer === from) return from;
    for (let i = 0; i < set.length; i++) {
      if (answer.faults.includes(set[i])) continue;
      const after = this.#with(answer, set[i]);
      if (after === answer) continue;
      answer = after;
      i = -1;
    }
    return answer;
  }

  /** Would the reading move, though both answers are as unlikely as a slip? Answers better than that tell by themselves. */
  hears(answer: Answer, fault: number): boolean {
    if (answer.vector.some((log) => log > this.#evidence.slip + SLIP_MARGIN)) return false;
    answer.hears[fault] ??= this.#evidence.hears(answer.faults, fault);
    return answer.hears[fault];
  }

  #with(answer: Answer, fault: number): Answer {
    answer.next[fault] ??= this.answer([...answer.faults, fault]);
    return answer.next[fault];
  }

  #faultsOf(indexes: readonly number[]) {
    return indexes.map((index) => this.#priors[index].fault);
  }
}

export interface EnumeratedSet {
  /** elements, ascending */
  readonly set: readonly number[];
  /** ln P(set, readings) */
  readonly score: number;
  /** per reading */
  readonly answers: readonly Answer[];
  /** per reading, bits over positions in the set: the members which it hears beside some of the others */
  readonly heard: readonly number[];
}

/** Log likelihoods further apart than this are different answers (nats), as for the search. */
const SAME_ANSWER = 0.05;
/** Stricter, where a difference decides whether a deeper set is solved. */
const SAME_TO_SOLVE = 0.01;
/** Sets of no more faults than this are asked of the circuit whole. */
const SOLVED_DEEP = 3;

/** All sets of up to `depth` elements over a log that holds cold readings only; smaller sets come first. */
export class Enumeration {
  readonly sets: readonly EnumeratedSet[];
  readonly #readings: readonly HeardBy[];
  readonly #universe: Universe;
  readonly #logWeights: Float64Array;
  readonly #total = new Float64Array(COMMON_POINTS.length);
  readonly #at = new Map<number, number>();

  /** @param logWeights - of the unknown that the readings have in common */
  constructor(
    timeline: Timeline,
    universe: Universe,
    predictor: Predictor,
    priors: readonly FaultPrior[],
    logWeights: Float64Array,
    depth: number,
  ) {
    this.#universe = universe;
    this.#logWeights = logWeights;
    this.#readings = coldGroups(timeline).map((group) => new HeardBy(group, predictor, priors));
    const none = this.#readings.map((reading) => reading.answer([]));
    const sets = [
      this.#scored(
        [],
        none,
        none.map(() => 0),
      ),
    ];
    this.#at.set(this.#key([]), 0);
    for (let i = 0; i < sets.length; i++) {
      const from = sets[i];
      if (from.set.length === depth) break;
      for (let e = (from.set.at(-1) ?? -1) + 1; e < universe.fault.length; e++) {
        if (from.set.some((member) => universe.site[member] === universe.site[e])) continue;
        const grown = this.#grown(sets, from, e);
        this.#at.set(this.#key(grown.set), sets.length);
        sets.push(grown);
      }
    }
    this.sets = sets;
  }

  /** Where the set is in `sets`; undefined when it is larger than the depth. */
  indexOf(set: readonly number[]): number | undefined {
    return this.#at.get(this.#key(set));
  }

  /** For each set the cores it stands for: what is left when silent faults are taken away, in any order, until none is. */
  cores(): readonly (readonly number[])[] {
    const cores: (readonly number[])[] = [];
    this.sets.forEach(({ set }, i) => {
      const left = new Set<number>();
      for (const member of set) {
        const rest = this.indexOf(set.filter((element) => element !== member));
        if (rest === undefined || this.#needs(this.sets[rest], this.sets[i], member)) continue;
        for (const core of cores[rest]) left.add(core);
      }
      cores.push(left.size === 0 ? [i] : [...left]);
    });
    return cores;
  }

  /** Could some reading have shown `member` beside the rest, whether or not what was read tells? */
  #needs(rest: EnumeratedSet, whole: EnumeratedSet, member: number): boolean {
    return this.#readings.some((reading, i) => {
      const [without, together] = [rest.answers[i], whole.answers[i]];
      if (without === together) return false;
      return apart(without, together) > SAME_ANSWER || reading.hears(without, this.#universe.fault[member]);
    });
  }

  #key(set: readonly number[]): number {
    return set.reduce((key, element) => key * (this.#universe.fault.length + 1) + element + 1, 0);
  }

  #grown(sets: readonly EnumeratedSet[], from: EnumeratedSet, element: number): EnumeratedSet {
    const set = [...from.set, element];
    const everyone = (1 << set.length) - 1;
    const rests = set.map((member) => sets[this.indexOf(set.filter((other) => other !== member)) ?? 0]);
    const faults = from.set.map((member) => this.#universe.fault[member]);
    const heard: number[] = [];
    const answers = this.#readings.map((reading, i) => {
      const before = rests.reduce((bits, rest, at) => bits | widened(rest.heard[i], at), 0);
      const solve = set.length <= SOLVED_DEEP || before === everyone;
      const answer = solve
        ? reading.grown(from.answers[i], faults, this.#universe.fault[element])
        : sets[this.indexOf(set.filter((_, at) => (before & (1 << at)) !== 0)) ?? 0].answers[i];
      const now = rests.reduce(
        (bits, rest, at) =>
          answer !== rest.answers[i] && apart(answer, rest.answers[i]) > SAME_TO_SOLVE
            ? bits | (1 << at)
            : bits,
        before,
      );
      heard.push(solve ? now : before);
      return answer;
    });
    return this.#scored(set, answers, heard);
  }

  #scored(set: readonly number[], answers: readonly Answer[], heard: readonly number[]): EnumeratedSet {
    const total = this.#total.fill(0);
    for (const { vector } of answers) for (let z = 0; z < total.length; z++) total[z] += vector[z];
    return {
      set,
      score: logPrior(this.#universe, set) + overCommon(total, this.#logWeights),
      answers,
      heard,
    };
  }
}

/** Bits over positions in a set without its member `at`, as bits over those of the whole set. */
function widened(bits: number, at: number): number {
  const low = bits & ((1 << at) - 1);
  return low | ((bits - low) << 1);
}

function apart(one: Answer, other: Answer): number {
  let most = 0;
  for (let z = 0; z < one.vector.length; z++) {
    const difference = Math.abs(one.vector[z] - other.vector[z]);
    // Two impossible answers are the same answer.
    if (one.vector[z] !== other.vector[z]) most = Math.max(most, difference);
  }
  return most;
}
