import { said } from "../messages/said.ts";
import { fittedPrice } from "../money/prices.ts";
import { minutesOf } from "./action-minutes.ts";
import type { DueStep } from "./make-safe.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action, Proposal } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { jobValue, repairPlan } from "./value.ts";

/** A proposal before the cautions of its step, what to watch at it and what going on costs are put to it. */
export type Draft = Omit<Proposal, "cautions" | "firstMinute" | "costToGo">;

/** A proposal for a step that no sum has to decide. */
export function dueProposal(
  { board, timeline, terms }: PlanningInput,
  due: DueStep,
  model: RepairModel,
): Draft {
  const bought = due.action.do === "replace" ? board.parts.get(due.action.part) : undefined;
  return {
    action: due.action,
    row: due.row,
    minutes: minutesOf(board, timeline.now, due.action),
    money: bought === undefined ? 0 : fittedPrice(bought, terms),
    why: due.why,
    expect: due.expect,
    others: [],
    atStake: null,
    forecast: null,
    probesOn: probesOn(due.action, due.inHand ?? null),
    outlook: outlook(model),
    ...(due.gate === undefined ? {} : { gate: due.gate }),
  };
}

export function probesOn(action: Action, inHand: string | null): Proposal["probesOn"] {
  if (action.do !== "measure") return null;
  return inHand === null ? said`ON THE BOARD` : said`ON THE PART IN YOUR HAND`;
}

/** What the job is worth from here and how often it ends repaired. */
export function outlook(model: RepairModel): Proposal["outlook"] {
  const plan = repairPlan(model.weights, model);
  const margin = jobValue(model.weights, model, PLANNING_RATES.minutesPerBit);
  let worthRepairing = 0;
  model.groups.forEach(({ knownValue }, g) => {
    if (knownValue > model.stopMoney) worthRepairing += model.weights[g];
  });
  const repairProbability = margin > plan.value ? worthRepairing : plan.repaired;
  // the sums that decide leave the least margin out wherever the job ends repaired; what is expected has it
  return { expectedMargin: margin + repairProbability * model.terms.minimumMargin, repairProbability };
}

/** Of a job that stops here: what giving it up leaves, and nothing repaired. */
export function outlookOfStopping({ stopMoney }: RepairModel): Proposal["outlook"] {
  return { expectedMargin: stopMoney, repairProbability: 0 };
}
