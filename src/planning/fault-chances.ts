import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { faultWords } from "../board/fault-words.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";

/**
 * Probability of each fault, by its words, among the hypotheses that an outcome leaves.
 * @param share - P(outcome | hypothesis); null for all hypotheses as they stand
 * @param named - faults to be spoken of, as indices into the prior table
 */
export function faultChances(
  hypotheses: Hypotheses,
  board: Board,
  share: Float64Array | null,
  named: ReadonlySet<number>,
): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  let total = 0;
  hypotheses.list.forEach((hypothesis, h) => {
    const w = hypothesis.weight * (share === null ? 1 : share[h]);
    if (w === 0) return;
    total += w;
    for (const f of faultsOf(hypothesis, hypotheses)) {
      if (!named.has(f)) continue;
      const words = faultWords(hypotheses.priors[f].fault, board);
      sums.set(words, (sums.get(words) ?? 0) + w);
    }
  });
  if (total > 0) for (const [words, sum] of sums) sums.set(words, sum / total);
  return sums;
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
