import type { Board } from "../board/board.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { Predictor } from "../meter/prediction.ts";
import { benchMinutes } from "../money/minutes.ts";
import { type CandidateCheck, candidateChecks } from "./candidate-checks.ts";
import { bitsOf, checkPartition, type Partition, refine } from "./check-outcomes.ts";
import { gainOf } from "./decision.ts";
import { handsOnSteps } from "./hands-on-steps.ts";
import { type Hypotheses, heaviest } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { separations } from "./separations.ts";
import { shortedRailSteps } from "./shorted-rail.ts";
import { type FindingStep, partitionShares, valueAfter } from "./steps.ts";
import { jobValue } from "./value.ts";

interface WeighedCheck {
  readonly candidate: CandidateCheck;
  readonly partition: Partition;
}

/** Everything that could be found out from here, and how to weigh it. */
export interface Findings {
  readonly steps: readonly FindingStep[];
  /** the checks of each set-up, in order */
  readonly bySetUp: ReadonlyMap<string, readonly WeighedCheck[]>;
  readonly checkOf: ReadonlyMap<FindingStep, WeighedCheck>;
}

/** Single checks, whole rows of one set-up, looks, lifts and removals that could tell something. */
export function findings(
  input: PlanningInput,
  belief: Belief,
  hypotheses: Hypotheses,
  predictor: Predictor,
): Findings {
  const { board, timeline } = input;
  const bySetUp = new Map<string, WeighedCheck[]>();
  const checkOf = new Map<FindingStep, WeighedCheck>();
  const steps: FindingStep[] = [];
  for (const candidate of screened(
    candidateChecks(board, timeline.now, timeline, belief),
    hypotheses,
    predictor,
  )) {
    const partition = checkPartition(candidate.check, hypotheses, predictor);
    if (partition === null || partition.outcomes.length < 2) continue;
    const weighed = { candidate, partition };
    const step = checkStep(board, weighed, [], partition);
    steps.push(step);
    checkOf.set(step, weighed);
    bySetUp.set(candidate.setUp, [...(bySetUp.get(candidate.setUp) ?? []), weighed]);
  }
  for (const row of bySetUp.values()) {
    if (row.length < 2) continue;
    const [first, ...rest] = row;
    const joint = rest.reduce((partition, next) => refine(partition, next.partition), first.partition);
    steps.push(checkStep(board, first, rest, joint));
  }
  steps.push(...handsOnSteps(input, belief, hypotheses), ...shortedRailSteps(input, hypotheses));
  if (input.predictorFor !== undefined)
    steps.push(...separations(input, belief, hypotheses, input.predictorFor));
  return { steps, bySetUp, checkOf };
}

/**
 * The checks that tell the heaviest hypotheses apart, in their order: only these are weighed with all of them. A check that tells
 * the light ones alone is worth little by their weight.
 */
function screened(
  candidates: readonly CandidateCheck[],
  hypotheses: Hypotheses,
  predictor: Predictor,
): readonly CandidateCheck[] {
  const heavy = heaviest(hypotheses, PLANNING_RATES.screenedHypotheses);
  const telling = candidates
    .map((candidate) => {
      const partition = checkPartition(candidate.check, heavy, predictor);
      return { candidate, bits: partition === null ? 0 : bitsOf(partition, heavy) };
    })
    .filter(({ bits }) => bits > 0)
    .sort((a, b) => b.bits - a.bits)
    .slice(0, PLANNING_RATES.screenedChecks);
  const kept = new Set(telling.map(({ candidate }) => candidate));
  return candidates.filter((candidate) => kept.has(candidate));
}

function actionOf({ check }: CandidateCheck): Action {
  return { do: "measure", mode: check.mode, red: check.red, black: check.black };
}

function checkStep(
  board: Board,
  first: WeighedCheck,
  rest: readonly WeighedCheck[],
  joint: Partition,
): FindingStep {
  const { measure } = benchMinutes(board);
  return {
    action: actionOf(first.candidate),
    row: rest.map(({ candidate }) => actionOf(candidate)),
    minutes: measure,
    allMinutes: measure * (1 + rest.length),
    outcomes: joint.outcomes,
    shares: partitionShares(joint),
    inHand: first.candidate.inHand,
    lossMoney: 0,
    lead: null,
  };
}

export interface WeighedStep {
  readonly step: FindingStep;
  /** money gained by it above its own cost */
  readonly net: number;
  readonly perMoney: number;
}

/** Every finding step with its worth, best first: most gained for each unit of money it costs. */
export function weighSteps(
  steps: readonly FindingStep[],
  hypotheses: Hypotheses,
  model: RepairModel,
  minutesPerBit: number,
): readonly WeighedStep[] {
  const now = jobValue(model.weights, model, minutesPerBit);
  return steps
    .map((step): WeighedStep => {
      const slip = step.action.do === "measure" ? PLANNING_RATES.slip : 0;
      const after = valueAfter(step.shares, hypotheses, model, minutesPerBit, slip);
      return { step, ...gainOf(after, now, step.allMinutes * model.perMinute + step.lossMoney) };
    })
    .sort((a, b) => b.perMoney - a.perMoney);
}

/** Those that gain more than it would be worth naming. */
export function payingSteps(
  weighed: readonly WeighedStep[],
  { perMinute }: RepairModel,
): readonly WeighedStep[] {
  return weighed.filter(({ net }) => net > PLANNING_RATES.leastGainMinutes * perMinute);
}

/** Adds to a chosen check the further checks of its set-up that are worth their minutes with the probes already there. */
export function withRow(
  step: FindingStep,
  found: Findings,
  hypotheses: Hypotheses,
  model: RepairModel,
  minutesPerBit: number,
): FindingStep {
  const chosen = found.checkOf.get(step);
  if (chosen === undefined) return step;
  let joint = chosen.partition;
  let worth = valueAfter(partitionShares(joint), hypotheses, model, minutesPerBit, PLANNING_RATES.slip);
  const row: Action[] = [];
  for (const next of found.bySetUp.get(chosen.candidate.setUp) ?? []) {
    if (next === chosen) continue;
    const refined = refine(joint, next.partition);
    const then = valueAfter(partitionShares(refined), hypotheses, model, minutesPerBit, PLANNING_RATES.slip);
    if (then - worth <= (model.minutes.measure + PLANNING_RATES.leastGainMinutes) * model.perMinute) continue;
    joint = refined;
    worth = then;
    row.push(actionOf(next.candidate));
  }
  return row.length > 0 ? { ...step, row } : step;
}

/** The single check a row starts with, for its words: what its first reading may be. */
export function firstOf(step: FindingStep, found: Findings): FindingStep {
  if (step.row.length === 0) return step;
  for (const [single, weighed] of found.checkOf)
    if (JSON.stringify(actionOf(weighed.candidate)) === JSON.stringify(step.action))
      return { ...single, row: step.row };
  return step;
}
