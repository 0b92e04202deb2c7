/**
 * The cold step that tells most about what is wrong for its minutes, whatever it is worth in money: a session goes on with it where
 * the engine would rather repair. Told are bits over the planner's hypotheses, its own outcomes taken for granted.
 */
import { type Assessment, planningInput } from "../src/job/assess.ts";
import { findings } from "../src/planning/finding-steps.ts";
import { type Hypotheses, planningHypotheses } from "../src/planning/hypotheses.ts";
import type { Action } from "../src/planning/proposal.ts";
import { outcomeProbabilities } from "../src/planning/steps.ts";

/** Below this a step says nothing. */
const LEAST_BITS = 0.002;

function entropy(probabilities: readonly number[]): number {
  return probabilities.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
}

/** Mutual information of the outcome and what is wrong: a look may come out either way whatever is true. */
function bits(shares: readonly Float64Array[], hypotheses: Hypotheses): number {
  const noise = hypotheses.list.reduce(
    (sum, { weight }, h) => sum + weight * entropy(shares.map((share) => share[h])),
    0,
  );
  return entropy(outcomeProbabilities(shares, hypotheses)) - noise;
}

const HANDS: ReadonlySet<string> = new Set(["measure", "look", "lift", "remove"]);

/** One reading, look or part set free, not among `refused`; null where nothing tells anything. */
export function tellingStep(
  { job, timeline, belief, predictor }: Assessment,
  refused: ReadonlySet<string>,
): Action | null {
  const hypotheses = planningHypotheses(belief, new Set(job.absent));
  const input = planningInput(job, timeline);
  let best: Action | null = null;
  let most = 0;
  for (const { action, row, shares, allMinutes } of findings(input, belief, hypotheses, predictor).steps) {
    if (!HANDS.has(action.do) || row.length > 0 || refused.has(JSON.stringify(action))) continue;
    const told = bits(shares, hypotheses);
    if (told < LEAST_BITS || told / allMinutes <= most) continue;
    most = told / allMinutes;
    best = action;
  }
  return best;
}
