/** What a reading under power would show, hypothesis by hypothesis: the one way in which live readings are weighed here. */
import type { PowerEvent } from "../bench/event.ts";
import { type LiveCheck, type LiveReading, liveReading } from "../live/live-reading.ts";
import { type Partition, voltsPartition } from "./check-outcomes.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";

/** Under each hypothesis what the check shows at this power-up; null without a live model. */
export function livePartition(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
  check: LiveCheck,
): Partition | null {
  const live = input.liveFor?.({ ...input.timeline.now, powered: true }, power);
  if (live === undefined) return null;
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
  const live = input.liveFor?.({ ...input.timeline.now, powered: true }, power);
  return live === undefined ? null : liveReading(live.state([]), check);
}
