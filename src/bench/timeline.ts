import type { BenchState } from "./bench-state.ts";
import type { JobEvent } from "./event.ts";

/**
 * A span of the log between `power`, `replace`, `refit` and `restore`. Faults belong to a span: span 0 holds the faults
 * the board came in with; in any later one the opening event may have broken parts, or brought a bad one.
 */
export interface Span {
  readonly index: number;
  /** log index of the event that opened it; -1 for span 0 */
  readonly openedBy: number;
  readonly event: JobEvent | null;
}

/** One event that counts (not undone), with the bench as it was when it happened. */
export interface TimelineEntry {
  /** index in the log as written, over all events */
  readonly logIndex: number;
  readonly event: JobEvent;
  /** before the event took effect */
  readonly before: BenchState;
  readonly after: BenchState;
  /** the span in which a reading taken here falls (an opening event belongs to the span it opens) */
  readonly span: number;
}

/** The log folded: state is a function of board + log. */
export interface Timeline {
  readonly entries: readonly TimelineEntry[];
  readonly spans: readonly Span[];
  readonly now: BenchState;
  /** part -> span opened by its latest `replace`; a part not here is the one that came in */
  readonly replacedIn: ReadonlyMap<string, readonly number[]>;
  readonly closed: boolean;
}
