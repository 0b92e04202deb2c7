/** A closed job as somebody else's practice: what was found on its board, what was read on it, and the way that would have been proposed. */
import type { JobEvent } from "../bench/event.ts";

/** One step of a way through a job. */
export interface WayStep {
  readonly words: string;
  readonly minutes: number;
  /** bought at this step */
  readonly money: number;
  /** why it was proposed, or what was believed once it was done */
  readonly why: string;
  /** places and parts that it was done at, the red probe first; left out: none, or a case from before they were kept */
  readonly places?: readonly string[];
}

/** A fault that power brought while the recorded job was worked on. */
export interface BrokeAtPower {
  readonly fault: string;
  /** which of `recorded` the power-up is, from 0 */
  readonly entry: number;
}

export interface PracticeCase {
  /** those that the board came in with, as the file format spells them */
  readonly faults: readonly string[];
  /** left out: power broke nothing */
  readonly broke?: readonly BrokeAtPower[];
  /** the recorded log, without a word of anybody */
  readonly recorded: readonly JobEvent[];
  readonly proposed: readonly WayStep[];
}

/** All that was wrong with the board of a case, sooner or later. */
export function foundInCase({
  faults,
  broke = [],
}: Pick<PracticeCase, "faults" | "broke">): readonly string[] {
  return [...new Set([...faults, ...broke.map(({ fault }) => fault)])];
}
