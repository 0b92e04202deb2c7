/** How well beliefs did: the log-loss of each part's probability against what was wrong, and how often what was said came true. */
import type { Belief } from "../src/diagnosis/belief.ts";

/** Nothing is held for surer than this: a tail nobody can check is not to decide the figure. */
const SUREST = 1e-4;

export interface Score {
  /** nats a job, summed over the parts */
  readonly loss: number;
  /** mean probability given to the parts that were bad */
  readonly toTrue: number;
  readonly said: readonly { readonly probability: number; readonly bad: boolean }[];
}

export function scoreOf({ suspects }: Belief, faulty: ReadonlySet<string>): Score {
  let loss = 0;
  let given = 0;
  const said = suspects
    .filter(({ part }) => !part.includes("~"))
    .map(({ part, probability }) => {
      const bad = faulty.has(part);
      const held = Math.min(1 - SUREST, Math.max(SUREST, probability));
      loss -= Math.log(bad ? held : 1 - held);
      if (bad) given += probability;
      return { probability, bad };
    });
  return { loss, toTrue: given / Math.max(1, faulty.size), said };
}

/** Edges of the classes in which what was said is held against what was. */
const EDGES = [0, 0.003, 0.01, 0.03, 0.1, 0.3, 1.0001] as const;

export interface CalibrationRow {
  readonly from: number;
  readonly to: number;
  readonly parts: number;
  readonly said: number;
  readonly was: number;
  /** standard error of `was` against `said`: of a board several parts are bad at once, so jobs count and not parts */
  readonly error: number;
}

export function calibrationOf(scores: readonly Score[]): readonly CalibrationRow[] {
  return EDGES.slice(0, -1).map((from, at) => {
    const to = EDGES[at + 1] ?? 1;
    const within = ({ said }: Score) => said.filter((one) => one.probability >= from && one.probability < to);
    const inside = scores.flatMap(within);
    const parts = inside.length;
    const squares = scores
      .map((one) => within(one).reduce((sum, { probability, bad }) => sum + (bad ? 1 : 0) - probability, 0))
      .reduce((sum, off) => sum + off ** 2, 0);
    return {
      from,
      to: Math.min(1, to),
      parts,
      said: inside.reduce((sum, one) => sum + one.probability, 0) / Math.max(1, parts),
      was: inside.filter(({ bad }) => bad).length / Math.max(1, parts),
      error: Math.sqrt(squares) / Math.max(1, parts),
    };
  });
}

export interface Compared {
  /** mean of the differences, and its standard error */
  readonly mean: number;
  readonly error: number;
}

/** One list against the other, job by job: the same boards, so that only the difference is noisy. */
export function compared(ones: readonly number[], others: readonly number[]): Compared {
  const differences = ones.map((one, at) => one - (others[at] ?? 0));
  const count = Math.max(1, differences.length);
  const mean = differences.reduce((sum, one) => sum + one, 0) / count;
  const square = differences.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, count - 1);
  return { mean, error: Math.sqrt(square / count) };
}
