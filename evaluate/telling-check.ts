/**
 * The cold check that tells most about what is wrong, whatever it is worth in money: a session goes on with it where the engine
 * would rather repair. Most is meant in bits over the planner's hypotheses, its own outcomes taken for granted.
 */
import type { Assessment } from "../src/job/assess.ts";
import { findings } from "../src/planning/finding-steps.ts";
import { planningHypotheses } from "../src/planning/hypotheses.ts";
import type { Action } from "../src/planning/proposal.ts";
import { outcomeProbabilities } from "../src/planning/steps.ts";

/** Below this a check says nothing. */
const LEAST_BITS = 0.002;

function bits(probabilities: readonly number[]): number {
  return probabilities.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
}

/** One reading, not among `refused` and not taken before with the bench as it is; null where none tells anything. */
export function tellingCheck(
  { job, timeline, belief, predictor }: Assessment,
  refused: ReadonlySet<string>,
): Action | null {
  const hypotheses = planningHypotheses(belief, new Set(job.absent));
  const input = {
    board: job.board,
    bench: timeline.now,
    timeline,
    terms: job.terms,
    equipment: job.equipment,
    cause: job.cause,
  };
  let best: Action | null = null;
  let most = LEAST_BITS;
  for (const { action, row, shares } of findings(input, belief, hypotheses, predictor).steps) {
    if (action.do !== "measure" || row.length > 0 || refused.has(JSON.stringify(action))) continue;
    const told = bits(outcomeProbabilities(shares, hypotheses));
    if (told <= most) continue;
    most = told;
    best = action;
  }
  return best;
}
