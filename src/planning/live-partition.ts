/** What a reading under power would show, hypothesis by hypothesis: the one way in which live readings are weighed here. */
import type { BenchState } from "../bench/bench-state.ts";
import type { PowerEvent } from "../bench/event.ts";
import type { LivePredictor } from "../diagnosis/live-evidence.ts";
import { type LiveCheck, type LiveReading, liveReading } from "../live/live-reading.ts";
import { type Partition, voltsPartition } from "./check-outcomes.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";

/** The bench when power comes: what was lifted or taken off to be measured is back by then. A motor at rest changes no volts. */
function benchUnderPower(input: PlanningInput): BenchState {
  const { now } = input.timeline;
  return now.powered ? now : { lifted: new Set(), off: absentParts(input), clips: [], powered: true };
}

/** The board under this power-up; null without a live model. */
export function boardUnder(input: PlanningInput, power: PowerEvent): LivePredictor | null {
  return input.liveFor?.(benchUnderPower(input), power) ?? null;
}

/** Under each hypothesis what the check shows at this power-up; null without a live model. */
export function livePartition(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
  check: LiveCheck,
): Partition | null {
  const live = boardUnder(input, power);
  if (live === null) return null;
  const readings = hypotheses.list.map((hypothesis) =>
    liveReading(live.state(faultsOf(hypothesis, hypotheses).map((f) => hypotheses.priors[f].fault)), check),
  );
  return voltsPartition(readings);
}

/** What a board with nothing wrong shows there; null where nobody can say. */
export function goodLiveReading(
  input: PlanningInput,
  power: PowerEvent,
  check: LiveCheck,
): LiveReading | null {
  const live = boardUnder(input, power);
  return live === null ? null : liveReading(live.state([]), check);
}
