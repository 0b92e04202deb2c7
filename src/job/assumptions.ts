/** Which readings of a job rest on parts that nobody has seen, judged by the explanation that is believed most. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Belief, DatedFault } from "../diagnosis/belief.ts";
import { coldCheckOf } from "../diagnosis/cold-evidence.ts";
import type { Predictor } from "../meter/prediction.ts";

/** Log index of a cold reading -> the assumed parts that make much of its spread, weightiest first. */
export type Assumptions = ReadonlyMap<number, readonly string[]>;

/** Readings that rest on no assumed part are left out. */
export function assumptionsBehind(
  board: Board,
  timeline: Timeline,
  belief: Belief,
  predictorFor: (bench: BenchState) => Predictor,
): Assumptions {
  const found = new Map<number, readonly string[]>();
  if (![...board.parts.values()].some((part) => part.assumed)) return found;
  const believed = belief.explanations[0]?.faults ?? [];
  for (const { event, logIndex, before } of timeline.entries) {
    const check = event.do === "measure" ? coldCheckOf(event) : null;
    if (check === null || before.powered) continue;
    const faults = believed
      .filter((dated) => isThere(dated, logIndex, timeline, belief))
      .map(({ fault }) => belief.priors[fault].fault);
    const prediction = predictorFor(before).predict(check, faults);
    if (prediction.solved && prediction.restsOn.length > 0) found.set(logIndex, prediction.restsOn);
  }
  return found;
}

/** Had the fault come by then, and was its part not replaced meanwhile? */
function isThere(
  { fault, since }: DatedFault,
  logIndex: number,
  timeline: Timeline,
  belief: Belief,
): boolean {
  if (since >= logIndex) return false;
  const { part } = belief.priors[fault];
  return !timeline.entries.some(
    (entry) =>
      entry.event.do === "replace" &&
      entry.event.part === part &&
      entry.logIndex > since &&
      entry.logIndex < logIndex,
  );
}
