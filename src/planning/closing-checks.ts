/**
 * What is still looked for on a board that has run and held under load: cold checks go on as long as they are cheaper than the comeback
 * that they spare. A job handed back weak costs its price and the comeback; one more repair costs its parts and its minutes.
 */
import type { Fault } from "../board/fault.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import { boardEffect } from "../priors/power-effects.ts";
import { type Findings, findings } from "./finding-steps.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** Minutes that going on costs where nothing was wrong after all: a part changed for nothing, and the test again. From memory. */
const GOING_ON_MINUTES = 25;

/** What each hypothesis costs if the board is closed now, and if it is not: money times weight. */
interface Stakes {
  readonly closing: Float64Array;
  readonly goingOn: Float64Array;
}

function stakesOf({ board }: PlanningInput, hypotheses: Hypotheses, model: RepairModel): Stakes {
  const { agreedPrice, comebackCost } = model.terms;
  const closing = new Float64Array(hypotheses.list.length);
  const goingOn = new Float64Array(hypotheses.list.length);
  hypotheses.list.forEach((hypothesis, h) => {
    const faults: readonly Fault[] = faultsOf(hypothesis, hypotheses).map((f) => hypotheses.priors[f].fault);
    const wrong = hypothesis.dead.length > 0 && boardEffect(board, faults) !== "none";
    closing[h] = wrong ? hypothesis.weight * (agreedPrice + comebackCost) : 0;
    const { knownValue } = model.groups[model.groupOf[h]];
    goingOn[h] = hypothesis.weight * (wrong ? agreedPrice - knownValue : GOING_ON_MINUTES * model.perMinute);
  });
  return { closing, goingOn };
}

function sum(values: Float64Array, share: Float64Array | null): number {
  return values.reduce((total, value, h) => total + value * (share === null ? 1 : share[h]), 0);
}

/** Would going on with the repair, by what is believed now, cost less than handing the board back? */
export function goingOnPays(input: PlanningInput, hypotheses: Hypotheses, model: RepairModel): boolean {
  const { closing, goingOn } = stakesOf(input, hypotheses, model);
  return sum(goingOn, null) < sum(closing, null);
}

/** The check or row on the board as it lies that spares most for its minutes, with what else was found; null where none pays. */
export function closingCheck(
  input: PlanningInput,
  belief: Belief,
  hypotheses: Hypotheses,
  model: RepairModel,
  predictor: Predictor,
): { readonly step: FindingStep; readonly found: Findings } | null {
  const { closing, goingOn } = stakesOf(input, hypotheses, model);
  const expected = (share: Float64Array | null) => Math.min(sum(closing, share), sum(goingOn, share));
  const now = expected(null);
  const least = PLANNING_RATES.leastGainMinutes * model.perMinute;
  const found = findings(input, belief, hypotheses, predictor);
  let best: FindingStep | null = null;
  let most = 0;
  for (const step of found.steps) {
    // a working board is not taken apart: readings and looks alone
    if (step.action.do !== "measure" && step.action.do !== "look") continue;
    const cost = step.allMinutes * model.perMinute;
    const gain =
      (1 - PLANNING_RATES.slip) * (now - step.shares.reduce((all, share) => all + expected(share), 0));
    if (gain - cost <= least || gain / cost <= most) continue;
    best = step;
    most = gain / cost;
  }
  return best === null ? null : { step: best, found };
}
