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
}

export interface PracticeCase {
  /** as the file format spells them */
  readonly faults: readonly string[];
  /** the recorded log, without a word of anybody */
  readonly recorded: readonly JobEvent[];
  readonly proposed: readonly WayStep[];
}
