/** The next step of a job: made safe first, then whatever the sum of minutes, money and chances says. */
import type { PowerEvent } from "../bench/event.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { isHarmless } from "../priors/harmless.ts";
import { cautionsNow } from "../safety/cautions.ts";
import { type AfterRun, afterRun, insteadOfGivingUp, whileOn } from "./after-run.ts";
import { type Draft, dueProposal } from "./cards.ts";
import { closedStep } from "./closing.ts";
import { decide } from "./decide.ts";
import { firstMinute } from "./first-minute.ts";
import { fittedEnough } from "./fitted-enough.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { makeSafe } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import type { Action, Proposal } from "./proposal.ts";
import { repairModel } from "./repair-model.ts";

/**
 * Proposes the next action of a job. Order alone decides what safety demands (switch off, prove discharged, take the resistor
 * off) and the closing of a board that has run; everything else is the action with the best expected margin: a check, a row of checks, a
 * look, a lift, a replacement, power-up, or stopping. Deterministic.
 * @param belief - what is believed after the whole log
 * @param predictor - of the board with the bench as it is now
 */
export function propose(
  input: PlanningInput,
  belief: Belief,
  priors: PriorTable,
  predictor: Predictor,
): Proposal {
  const { board, timeline, terms } = input;
  const enough = fittedEnough(board, timeline, predictor);
  const livedWith = (fault: FaultPrior) => enough.has(fault.part) || isHarmless(board, fault);
  const hypotheses = planningHypotheses(belief, absentParts(input), livedWith);
  const model = repairModel(hypotheses, board, timeline.now, terms, priors, storesOfCharge(board).length);
  const given = { input, belief, priors, predictor, hypotheses, model, livedWith };
  const draft = nextDraft(given);
  return {
    ...draft,
    cautions: cautionsNow([draft.action, ...draft.row], board, timeline),
    firstMinute: () => {
      const power = watchedPower(input, draft.action);
      return power === null ? null : firstMinute(input, hypotheses, power);
    },
  };
}

/** The power-up that this step is, or at which it is taken. */
function watchedPower({ timeline }: PlanningInput, action: Action): PowerEvent | null {
  if (action.do === "power") return action;
  const last = timeline.entries.findLast(({ event }) => event.do === "power")?.event;
  return timeline.now.powered && last?.do === "power" ? last : null;
}

function nextDraft(given: AfterRun): Draft {
  const { input, belief, priors, predictor, hypotheses, model } = given;
  const closed = closedStep(input.timeline);
  if (closed !== null) return dueProposal(input, closed, model);
  const next = whileOn(given) ?? afterRun(given);
  if (next !== null) return next;
  const safe = makeSafe(input);
  if (safe !== null) return dueProposal(input, safe, model);
  return insteadOfGivingUp(given, decide(input, belief, priors, predictor, hypotheses, model));
}
