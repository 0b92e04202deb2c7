/** The next step of a job: made safe first, then whatever the sum of minutes, money and chances says. */
import { storesOfCharge } from "../board/stores-of-charge.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { isHarmless } from "../priors/harmless.ts";
import { cautionsNow } from "../safety/cautions.ts";
import { dueProposal } from "./cards.ts";
import { closingStep } from "./closing.ts";
import { decide } from "./decide.ts";
import { fittedEnough } from "./fitted-enough.ts";
import { deadChance } from "./hands-on-steps.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { unreadClips } from "./live-clips.ts";
import { liveProposal } from "./live-proposal.ts";
import { makeSafe } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import type { Proposal } from "./proposal.ts";
import { repairModel } from "./repair-model.ts";
import { fedRailProposal } from "./shorted-rail.ts";

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
  const [clipped] = unreadClips(timeline);
  const due = closingStep(timeline, Math.max(0, ...deadChance(hypotheses).values())) ?? makeSafe(input);
  const draft =
    clipped !== undefined
      ? liveProposal(input, clipped, hypotheses, model)
      : due === null
        ? decide(input, belief, priors, predictor, hypotheses, model)
        : (fedRailProposal(input, hypotheses, model) ?? dueProposal(input, due, model));
  return { ...draft, cautions: cautionsNow([draft.action, ...draft.row], board, timeline) };
}
