import { type BenchState, standsWhole } from "../bench/bench-state.ts";
import type { Board, Part } from "../board/board.ts";
import { netWords } from "../board/net-words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { said } from "../messages/said.ts";
import type { Predictor } from "../meter/prediction.ts";
import { benchMinutes } from "../money/minutes.ts";
import { minutesOf } from "./action-minutes.ts";
import { type CandidateCheck, candidateChecks } from "./candidate-checks.ts";
import { checkPartition, type Partition, refine } from "./check-outcomes.ts";
import { semicolonList } from "./faults-in-words.ts";
import { freedBefore } from "./hands-on-steps.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { type Pull, pullOf } from "./plug-pull.ts";
import { type FindingStep, partitionShares } from "./steps.ts";

/** Plugged parts of so few ohms that two stages read as one through them, the first pulled first; sensors and the like come after. */
const JOINING: readonly Part["kind"][] = ["motor", "inductor", "choke", "transformer", "link", "fuse"];
/** Plugs weighed at once, and checks repeated with one pulled: bounds on work. */
const MOST_PLUGS = 3;
const MOST_REPEATS = 6;

/**
 * Pulling a plug to part two stages (common practice: the motor first, then the reactor): what the checks at its nets would show
 * with it off, predicted on the bench as it would then be. The cheapest separation there is, so it is weighed before any solder joint.
 */
export function separations(
  { board, timeline }: PlanningInput,
  belief: Belief,
  hypotheses: Hypotheses,
  predictorFor: (bench: BenchState) => Predictor,
): readonly FindingStep[] {
  const bench = timeline.now;
  const pulled = freedBefore(timeline);
  const plugs = [...board.parts.values()]
    .filter(
      (part) =>
        part.plugged && !bench.off.has(part.ref) && !(pulled.has(part.ref) && standsWhole(bench, part.ref)),
    )
    .sort((a, b) => turn(a) - turn(b));
  return plugs.slice(0, MOST_PLUGS).flatMap((part) => {
    const pull = pullOf(board, bench, part);
    if (pull === null) return [];
    const candidates = candidateChecks(board, pull.bench, timeline, belief);
    const step = separation(board, part, pull, candidates, hypotheses, predictorFor);
    return step === null ? [] : [step];
  });
}

const WAYS = [
  said`the repeats read one way`,
  said`the repeats read another way`,
  said`the repeats read a third way`,
];

function wayWords(at: number): string {
  return WAYS[at] ?? said`the repeats read way ${at + 1}`;
}

function turn({ kind }: Part): number {
  const at = JOINING.indexOf(kind);
  return at < 0 ? JOINING.length : at;
}

function separation(
  board: Board,
  part: Part,
  pull: Pull,
  candidates: readonly CandidateCheck[],
  hypotheses: Hypotheses,
  predictorFor: (bench: BenchState) => Predictor,
): FindingStep | null {
  const apart = predictorFor(pull.bench);
  const nets = new Set(part.pins.values());
  let joint: Partition | null = null;
  const repeated: string[] = [];
  for (const { check } of candidates) {
    if (repeated.length >= MOST_REPEATS) break;
    if (!nets.has(check.red) && !nets.has(check.black)) continue;
    const partition = checkPartition(check, hypotheses, apart);
    if (partition === null || partition.outcomes.length < 2) continue;
    const refined: Partition = joint === null ? partition : refine(joint, partition);
    // a repeat that tells nothing beyond those before it is not taken
    if (joint !== null && refined.outcomes.length === joint.outcomes.length) continue;
    joint = refined;
    repeated.push(said`${netWords(board, check.red)} to ${netWords(board, check.black)}`);
  }
  if (joint === null) return null;
  return {
    action: pull.action,
    row: [],
    minutes: minutesOf(board, apart.bench, pull.action),
    allMinutes: pull.minutes + benchMinutes(board).measure * repeated.length + pull.backMinutes,
    // six readings side by side tell nobody anything: what they mean together stands beside each
    outcomes: joint.outcomes.map((_, at) => ({ word: wayWords(at), low: null, high: null })),
    shares: partitionShares(joint),
    inHand: null,
    lossMoney: 0,
    lead: said`With the plug of ${part.ref} pulled, what hangs together through it stands apart. Then again, red to black: ${semicolonList(repeated)}.`,
  };
}
