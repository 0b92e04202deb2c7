import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { faultWords } from "../board/fault-words.ts";
import { plain } from "../messages/said.ts";
import type { SpokenFault } from "./faults-in-words.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";

/** A fault of a prior table as it is spoken of; levels of one resistance are said alike and are one. */
export interface NamedFault extends SpokenFault {
  /** one of those that are said so */
  readonly fault: Fault;
}

interface Spoken {
  readonly byIndex: Map<number, NamedFault>;
  readonly byName: Map<string, NamedFault>;
}

const spoken = new WeakMap<Hypotheses["priors"], Spoken>();

/** The same object for faults that are said alike. */
function namedFault(priors: Hypotheses["priors"], index: number, board: Board): NamedFault {
  const known = spoken.get(priors) ?? { byIndex: new Map(), byName: new Map() };
  spoken.set(priors, known);
  const before = known.byIndex.get(index);
  if (before !== undefined) return before;
  const { fault } = priors[index];
  const words = faultWords(fault, board);
  const name = plain(words);
  const part = fault.of === "part" ? fault.part : null;
  const found = known.byName.get(name) ?? { part, words, name, fault };
  known.byName.set(name, found);
  known.byIndex.set(index, found);
  return found;
}

/**
 * Probability of each fault, as it is said, among the hypotheses that an outcome leaves.
 * @param share - P(outcome | hypothesis); null for all hypotheses as they stand
 * @param named - faults to be spoken of, as indices into the prior table
 */
export function faultChances(
  hypotheses: Hypotheses,
  board: Board,
  share: Float64Array | null,
  named: ReadonlySet<number>,
): ReadonlyMap<NamedFault, number> {
  const sums = new Map<NamedFault, number>();
  let total = 0;
  hypotheses.list.forEach((hypothesis, h) => {
    const w = hypothesis.weight * (share === null ? 1 : share[h]);
    if (w === 0) return;
    total += w;
    for (const f of faultsOf(hypothesis, hypotheses)) {
      if (!named.has(f)) continue;
      const fault = namedFault(hypotheses.priors, f, board);
      sums.set(fault, (sums.get(fault) ?? 0) + w);
    }
  });
  if (total > 0) for (const [fault, sum] of sums) sums.set(fault, sum / total);
  return sums;
}

/** Likeliest first; of those alike by their names. */
export function byChance(a: readonly [SpokenFault, number], b: readonly [SpokenFault, number]): number {
  return b[1] - a[1] || (a[0].name < b[0].name ? -1 : 1);
}

/** Of two faults that hold nearly as much as each other neither is the likeliest. From memory. */
const CLEARLY = 1.25;

/** The fault that most makes a name (a part, or dirt between two nets) one to be cured; null where none does, or two do alike. */
export function likeliestFault(name: string, hypotheses: Hypotheses): Fault | null {
  const sums = new Map<number, number>();
  for (const hypothesis of hypotheses.list)
    for (const f of faultsOf(hypothesis, hypotheses))
      if (hypotheses.priors[f].part === name) sums.set(f, (sums.get(f) ?? 0) + hypothesis.weight);
  const [most, next] = [...sums].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  if (most === undefined || (next !== undefined && most[1] < CLEARLY * next[1])) return null;
  return hypotheses.priors[most[0]].fault;
}
