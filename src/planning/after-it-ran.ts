import type { Belief } from "../diagnosis/belief.ts";
import { said } from "../messages/said.ts";
import type { Predictor } from "../meter/prediction.ts";
import { type Draft, dueProposal, outlook, probesOn } from "./cards.ts";
import { closingStep, outvoted } from "./closing.ts";
import { expectations } from "./expectations.ts";
import { percent } from "./faults-in-words.ts";
import { findings } from "./finding-steps.ts";
import { goodReading } from "./good-reading.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { afterRun } from "./last-looks.ts";
import { shortRun, shortRunDraft } from "./load-run.ts";
import { isLoadTested } from "./load-test.ts";
import { motorGate } from "./motor-first.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import { powerFinding } from "./power-step.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";
import { whyFinding } from "./why.ts";

/** It has stood this feed already. */
const STOOD = () => ({ anyBreaks: 0, lossMoney: 0 });

/**
 * What comes after the board has run on its own feed: it is closed, or looked at once more where what is still doubted is worth the
 * minutes. A pin lifted now would undo the run, so the last looks are readings, looks, and power for a meter at another place.
 * @param proven - every store of charge is proven empty since that run
 * @returns the proposal; `make safe` where the stores come first; `go on` where a part is still so doubtful that it is cured first
 */
export function afterItRan(
  input: PlanningInput,
  belief: Belief,
  hypotheses: Hypotheses,
  model: RepairModel,
  predictor: Predictor,
  proven: boolean,
): Draft | "make safe" | "go on" {
  const { timeline } = input;
  const cold = findings(input, belief, hypotheses, predictor).steps.filter(
    ({ action, row }) => row.length === 0 && (action.do === "measure" || action.do === "look"),
  );
  const power = powerFinding(input, hypotheses, model, STOOD, false);
  const steps = power?.again === true ? [...cold, power.step] : cold;
  const least = PLANNING_RATES.leastGainMinutes * model.perMinute;
  const after = afterRun(model, hypotheses, steps, proven ? 0 : model.proofMinutes, least);
  const handBack = after.do === "hand back" || outvoted(timeline);
  // a run under load wants no hand inside: it comes before looks that do, after looks that a proof has opened
  const load =
    isLoadTested(timeline) || (proven && after.do === "look" && !handBack)
      ? null
      : shortRun(input, hypotheses, model, proven);
  if (load !== null && (load.net > least || (load.always && (handBack || after.do === "look")))) {
    if (load.inside && !proven) return "make safe";
    const motor = load.always ? motorGate(input) : null;
    if (motor !== null) return dueProposal(input, motor, model);
    return shortRunDraft(input, hypotheses, model, load);
  }
  if (handBack) {
    const { agreedPrice, comebackCost, warrantyCost } = input.terms;
    return {
      ...dueProposal(input, closingStep(timeline, after.doubt), model),
      outlook: {
        expectedMargin: agreedPrice - warrantyCost - after.doubt * (agreedPrice + comebackCost),
        repairProbability: 1 - after.doubt,
      },
    };
  }
  if (after.do !== "look") return "go on";
  return proven ? lookDraft(input, hypotheses, model, predictor, after.step, after.doubt) : "make safe";
}

function lookDraft(
  { board, timeline }: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  predictor: Predictor,
  step: FindingStep,
  doubt: number,
): Draft {
  const { action } = step;
  return {
    action,
    row: [],
    minutes: step.minutes,
    money: 0,
    why: [
      said`It runs. Before it is handed back: ${percent(doubt)} is left that something weak is still in it, and a board that comes back costs more than this look.`,
      whyFinding(step, { board, timeline, hypotheses, model }),
    ].join(" "),
    expect: expectations(step, hypotheses, board, goodReading(predictor, action)),
    others: [],
    atStake: null,
    forecast: null,
    probesOn: probesOn(action, step.inHand),
    outlook: outlook(model),
  };
}
