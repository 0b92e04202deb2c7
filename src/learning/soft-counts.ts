/** Expected counts of what a board came in with, over everything it may have been (the E step of Dempster, Laird and Rubin 1977). */
import type { PriorTable } from "../priors/fault-prior.ts";
import {
  type Chance,
  type FirstFaults,
  firstFaults,
  type KnockOnIndex,
  knockOnIndex,
} from "./first-faults.ts";

/** One thing the board may have been, as the diagnosis left it. */
export interface MayHaveBeen {
  readonly probability: number;
  /** faults of the table that it came in with, for certain in this one */
  readonly faults: readonly number[];
  /** probability of each other fault of the table that it came in with that beside them */
  readonly beside: ArrayLike<number>; // (faults of the table)
}

export interface SoftCounts {
  /** expected number of boards on which this fault was there from the first, brought by no other */
  readonly first: Float64Array; // (faults of the table)
  /** of those, what stands beside the explanations unseen: it is believed for its rate, not for anything that was read */
  readonly unseen: Float64Array; // (faults of the table)
  readonly rules: ReadonlyMap<string, { trials: number; expected: number; count: number }>;
}

/** What each rule was tried and did, and what failed by itself; the probabilities are made to sum to one. */
export function softCounts(table: PriorTable, boards: readonly MayHaveBeen[]): SoftCounts {
  const index = knockOnIndex(table);
  const first = new Float64Array(table.faults.length);
  const unseen = new Float64Array(table.faults.length);
  const rules = new Map<string, { trials: number; expected: number; count: number }>();
  const total = boards.reduce((sum, { probability }) => sum + probability, 0);
  for (const board of boards) {
    if (board.probability <= 0) continue;
    addBoard(table, index, board, board.probability / total, { first, unseen, rules });
  }
  for (let fault = 0; fault < first.length; fault++) first[fault] += unseen[fault];
  return { first, unseen, rules };
}

interface Sums extends Pick<SoftCounts, "first" | "unseen"> {
  readonly rules: Map<string, { trials: number; expected: number; count: number }>;
}

function addBoard(
  table: PriorTable,
  index: KnockOnIndex,
  { faults: set, beside }: MayHaveBeen,
  weight: number,
  { first, unseen, rules }: Sums,
): void {
  const split = firstFaults(table, index, set);
  set.forEach((parent, i) => {
    first[parent] += weight * split.first[i];
  });
  const into = ratesInto(table, index, set, split, beside);
  const besideShare = (child: number): number => {
    const made = into[child] + table.faults[child].rate;
    return made > 0 ? beside[child] / made : 0;
  };
  for (let fault = 0; fault < beside.length; fault++)
    unseen[fault] += weight * table.faults[fault].rate * besideShare(fault);
  set.forEach((parent, i) => {
    for (const chance of index.chancesOf(parent)) {
      const made = rules.get(chance.rule) ?? { trials: 0, expected: 0, count: 0 };
      rules.set(chance.rule, made);
      const { trials, count } = tried(
        chance,
        i,
        set,
        split,
        (child) => index.rate(parent, child),
        besideShare,
      );
      made.trials += weight * trials;
      made.expected += weight * trials * -Math.expm1(-chance.rate);
      made.count += weight * Math.min(trials, count);
    }
  });
}

/** Rounds in which what stands unseen is sorted into first faults and what they brought: each knows the last one's first faults. */
const ROUNDS = 3;

/** Per fault: the rate at which the others brought it, those certain and those unseen, each as far as it failed first. */
function ratesInto(
  table: PriorTable,
  index: KnockOnIndex,
  set: readonly number[],
  split: FirstFaults,
  beside: ArrayLike<number>,
): Float64Array {
  const ofCertain = new Float64Array(table.faults.length);
  const add = (to: Float64Array, parent: number, share: number) => {
    for (const { children } of index.chancesOf(parent))
      for (const [child, rate] of children) to[child] += rate * share;
  };
  set.forEach((parent, i) => {
    add(ofCertain, parent, split.first[i]);
  });
  let into = ofCertain;
  for (let round = 0; round < ROUNDS; round++) {
    const next = Float64Array.from(ofCertain);
    for (let fault = 0; fault < beside.length; fault++) {
      if (beside[fault] < LEAST_PRESENT) continue;
      const { rate } = table.faults[fault];
      add(next, fault, (beside[fault] * rate) / (rate + into[fault]));
    }
    into = next;
  }
  return into;
}

/** What is less likely there than this brings nothing worth counting. */
const LEAST_PRESENT = 1e-4;

/** How often this chance was there to be taken, and was. `besideShare`: presence of an unseen child over all rates that could have made it. */
function tried(
  chance: Chance,
  parent: number,
  set: readonly number[],
  split: FirstFaults,
  rateTo: (child: number) => number,
  besideShare: (child: number) => number,
): { trials: number; count: number } {
  const there = set.findIndex((member, j) => j !== parent && chance.children.has(member));
  if (there >= 0) {
    // where the child failed first too there was nothing left to bring; what two rules could have brought they share
    const own = (chance.children.get(set[there]) ?? 0) / rateTo(set[there]);
    return { trials: split.tried[parent][there], count: split.brought[parent][there] * own };
  }
  let count = 0;
  for (const [child, own] of chance.children) count += split.first[parent] * own * besideShare(child);
  return { trials: split.first[parent], count };
}
