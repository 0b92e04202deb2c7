import type { BenchState } from "../bench/bench-state.ts";
import type { Board, Part } from "../board/board.ts";
import type { Predictor } from "../meter/prediction.ts";
import { MINUTES } from "../money/minutes.ts";
import { minutesOf } from "./action-minutes.ts";
import type { CandidateCheck } from "./candidate-checks.ts";
import { checkPartition, type Partition, refine } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { Action } from "./proposal.ts";
import { type FindingStep, partitionShares } from "./steps.ts";

/** Plugs weighed at once, and checks repeated with one pulled: bounds on work. */
const MOST_PLUGS = 3;
const MOST_REPEATS = 6;

/**
 * Pulling a plug to part two stages (trade.md 1.7, rungs 1 and 2: the motor, the reactor): what the checks at its nets would show
 * with it off, predicted on the bench as it would then be. The cheapest separation there is, so it is weighed before any solder joint.
 */
export function separations(
  board: Board,
  bench: BenchState,
  candidates: readonly CandidateCheck[],
  hypotheses: Hypotheses,
  predictorFor: (bench: BenchState) => Predictor,
): readonly FindingStep[] {
  const plugs = [...board.parts.values()].filter((part) => isPlug(part) && !bench.off.has(part.ref));
  return plugs.slice(0, MOST_PLUGS).flatMap((part) => {
    const step = separation(board, bench, part, candidates, hypotheses, predictorFor);
    return step === null ? [] : [step];
  });
}

function isPlug(part: Part): boolean {
  return part.plugged || part.kind === "motor";
}

function separation(
  board: Board,
  bench: BenchState,
  part: Part,
  candidates: readonly CandidateCheck[],
  hypotheses: Hypotheses,
  predictorFor: (bench: BenchState) => Predictor,
): FindingStep | null {
  const action: Action = { do: "remove", part: part.ref };
  const apart = predictorFor({ ...bench, off: new Set([...bench.off, part.ref]) });
  const nets = new Set(part.pins.values());
  const near = candidates.filter(
    ({ check, inHand }) => inHand === null && (nets.has(check.red) || nets.has(check.black)),
  );
  let joint: Partition | null = null;
  let taken = 0;
  for (const { check } of near) {
    if (taken >= MOST_REPEATS) break;
    const partition = checkPartition(check, hypotheses, apart);
    if (partition === null || partition.outcomes.length < 2) continue;
    const refined: Partition = joint === null ? partition : refine(joint, partition);
    // a repeat that tells nothing beyond those before it is not taken
    if (joint !== null && refined.outcomes.length === joint.outcomes.length) continue;
    joint = refined;
    taken += 1;
  }
  if (joint === null) return null;
  const minutes = minutesOf(board, bench, action);
  return {
    action,
    row: [],
    minutes,
    allMinutes: minutes + MINUTES.measure * taken + minutesOf(board, bench, { do: "restore", part: part.ref }),
    outcomes: joint.outcomes,
    shares: partitionShares(joint),
    inHand: null,
    lossMoney: 0,
  };
}
