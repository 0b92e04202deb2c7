import type { BenchState } from "../bench/bench-state.ts";
import type { PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { LivePredictor } from "../diagnosis/live-evidence.ts";
import type { Predictor } from "../meter/prediction.ts";
import type { Terms } from "../money/terms.ts";
import type { Cause } from "../priors/cause.ts";

/** What the planner knows of the job beside what is believed of the board. */
export interface PlanningInput {
  readonly board: Board;
  /** the bench as it is now */
  readonly bench: BenchState;
  readonly timeline: Timeline;
  readonly terms: Terms;
  /** what this bench has beyond one meter; nothing else is proposed */
  readonly equipment: readonly string[];
  /** what happened to the board; absent: unknown */
  readonly cause?: Cause;
  /** what the board would show under a power-up; without it no reading under power is proposed */
  readonly liveFor?: (bench: BenchState, power: PowerEvent) => LivePredictor;
  /** predictors of the bench as it would be with a plug pulled; without it no plug is proposed */
  readonly predictorFor?: (bench: BenchState) => Predictor;
}

/** Parts that never came with the board: those that were off it before the first event. */
export function absentParts({ timeline }: PlanningInput): ReadonlySet<string> {
  return timeline.entries[0]?.before.off ?? timeline.now.off;
}
