/**
 * Readings in circuit are only as good as the model of the board. Before a part that nobody sells condemns the whole board, and before a new part
 * is taken out again for another, it is measured by itself: its pin lifted (three minutes), then readings on the part in hand. Common
 * practice: lift it before condemning the controller.
 */

import type { BenchState } from "../bench/bench-state.ts";
import type { Board, Part } from "../board/board.ts";
import { faultSites } from "../board/fault-sites.ts";
import { benchMinutes } from "../money/minutes.ts";
import { placeOf } from "./candidate-checks.ts";
import { freeStep } from "./hands-on-steps.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { measuredInHandSince } from "./in-hand.ts";
import { junctionPins } from "./junction-pins.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** Readings on the part in hand that settle whether it is the one. From memory: both ways of one junction, where the second still tells anything. */
const READINGS_IN_HAND = 2;

/** The proof that is still missing, and the part that it is about. */
export interface MissingProof {
  readonly action: Action;
  readonly part: string;
  readonly step: FindingStep;
}

/**
 * The next step of proving that the part which condemns the board is the faulty one; null where there is no such part, where it cannot be
 * measured by itself, or where that has been done.
 * @param dead - chance that each part is faulty
 * @param steps - the finding steps of the bench as it is
 */
export function beforeWriteOff(
  { board, bench, timeline }: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  dead: ReadonlyMap<string, number>,
  steps: readonly FindingStep[],
): MissingProof | null {
  const [condemned] = model.cures
    .filter(({ possible }) => !possible)
    .sort((a, b) => (dead.get(b.name) ?? 0) - (dead.get(a.name) ?? 0) || (a.name < b.name ? -1 : 1));
  return condemned === undefined
    ? null
    : byItself({ board, bench, timeline }, condemned.name, READINGS_IN_HAND, hypotheses, steps);
}

/**
 * The next step of measuring a part by itself; null where it cannot be freed by a lifted pin, is off the board, or has been read so often.
 * @param readings - on the part in hand that settle it
 */
export function byItself(
  { board, bench, timeline }: Pick<PlanningInput, "board" | "bench" | "timeline">,
  ref: string,
  readings: number,
  hypotheses: Hypotheses,
  steps: readonly FindingStep[],
): MissingProof | null {
  const part = board.parts.get(ref);
  if (part === undefined || bench.off.has(part.ref)) return null;
  const inHand = measuredInHandSince(timeline, part.ref);
  if (inHand !== null && inHand >= readings) return null;
  const free = freeStep(board, bench, part, hypotheses);
  if (free === null || free.action.do !== "lift") return null;
  if (inHand === null) return { action: free.action, part: part.ref, step: free };
  const telling = steps.find((one) => one.inHand === part.ref && one.action.do === "measure");
  const step = telling ?? (inHand === 0 ? inHandStep(board, bench, part, free) : null);
  return step === null ? null : { action: step.action, part: part.ref, step };
}

/** However sure the readings in circuit are, the part in hand is asked once: across the lifted pin. */
function inHandStep(board: Board, bench: BenchState, part: Part, free: FindingStep): FindingStep | null {
  if (free.action.do !== "lift") return null;
  const { place } = free.action;
  for (const site of faultSites(part)) {
    const pins = junctionPins(part, site.junction)?.map((pin) => placeOf(bench, part, pin));
    if (pins === undefined || !pins.includes(place)) continue;
    const [red, black] = pins;
    const action: Action = { do: "measure", mode: "diode", red, black };
    const { measure } = benchMinutes(board);
    return { ...free, action, minutes: measure, allMinutes: measure };
  }
  return null;
}
