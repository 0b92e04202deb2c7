/** The next step of a job: made safe first, then whatever the sum of minutes, money and chances says. */
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import { givenUp, stopMoney } from "../money/given-up.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { isHarmless } from "../priors/harmless.ts";
import { cautionsNow } from "../safety/cautions.ts";
import { afterItRan } from "./after-it-ran.ts";
import { type Draft, dueProposal } from "./cards.ts";
import { hasRun, staysClosed } from "./closing.ts";
import { costToGo } from "./cost-to-go.ts";
import { decide } from "./decide.ts";
import { firstMinute } from "./first-minute.ts";
import { fittedEnough } from "./fitted-enough.ts";
import { planningHypotheses } from "./hypotheses.ts";
import { clipAt, clippedOn, samePlaces, unreadClips } from "./live-clips.ts";
import { liveProposal } from "./live-proposal.ts";
import { whileUnderLoad } from "./load-run.ts";
import { type DueStep, makeSafe } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import { goesStraightOn } from "./power-step.ts";
import type { Proposal } from "./proposal.ts";
import { repairModel } from "./repair-model.ts";
import { fedRailProposal } from "./shorted-rail.ts";
import { supplyProposal } from "./supply-amps.ts";
import { FINDING_OUT_RATES } from "./value.ts";
import { warmthWhileOn } from "./warmth-while-on.ts";

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
  const chance = new Map(belief.suspects.map(({ part, probability }) => [part, probability]));
  const left = givenUp(board, timeline, terms, (part) => chance.get(part) ?? 0);
  const stop = stopMoney(left, terms);
  const stores = storesOfCharge(board).length;
  const model = repairModel(hypotheses, board, timeline.now, terms, priors, stores, stop);
  const [clipped] = unreadClips(timeline);
  const decided = () => decide(input, belief, priors, predictor, hypotheses, model);
  const readClips = ([red, black]: NonNullable<typeof clipped>) =>
    liveProposal(
      input,
      { do: "measure", mode: clipAt(board, [red, black]).mode, red, black },
      hypotheses,
      model,
    );
  const safe = makeSafe(input);
  const due = (step: DueStep) => dueProposal(input, step, model);
  const draft = ((): Draft => {
    const closed = staysClosed(timeline);
    if (closed !== null) return due(closed);
    const loaded = whileUnderLoad(input, hypotheses, model);
    if (loaded !== null) return loaded;
    if (clipped !== undefined) return readClips(clipped);
    const supply = supplyProposal(input, hypotheses, model);
    if (supply !== null) return supply;
    const warmth = warmthWhileOn(input, hypotheses, model);
    if (warmth !== null) return warmth;
    const after = hasRun(board, timeline)
      ? afterItRan(input, belief, hypotheses, model, predictor, safe === null)
      : "go on";
    if (typeof after !== "string") return after;
    if (after === "make safe" && safe !== null) return due(safe);
    if (safe === null) return decided();
    return fedRailProposal(input, hypotheses, model) ?? straightOn(board, timeline, decided) ?? due(safe);
  })();
  return {
    ...draft,
    cautions: cautionsNow([draft.action, ...draft.row], board, timeline, input.equipment),
    // where it stops, the cheap ways of finding out are used up
    costToGo: () => costToGo(model, draft.action.do === "close" ? Math.max(...FINDING_OUT_RATES) : undefined),
    firstMinute: () => firstMinute(input, hypotheses, draft.action),
  };
}

/** After a lamp that showed nothing hard the mains may follow with nobody reaching inside; null where a hand is wanted first, or not so. */
function straightOn(board: Board, timeline: Timeline, decided: () => Draft): Draft | null {
  if (timeline.closed || !goesStraightOn(board, timeline)) return null;
  const draft = decided();
  if (draft.action.do !== "power") return null;
  const meters = draft.action.meters ?? [];
  return meters.every((pair) => clippedOn(timeline).some((on) => samePlaces(on, pair))) ? draft : null;
}
