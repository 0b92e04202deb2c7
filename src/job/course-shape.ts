/** How a job has gone, entry by entry: plain data. */

export interface CoursePoint {
  /** entries of the log that count with it */
  readonly entries: number;
  /** the last entry, in words; empty before any */
  readonly words: string;
  /** most suspected first */
  readonly suspects: readonly { readonly part: string; readonly probability: number }[];
  /** spent so far, the hour counted, in the job's currency */
  readonly spent: number;
  /** still expected; null where nothing more is */
  readonly toGo: number | null;
  /** once more than this is still expected, giving up is better */
  readonly stopLine: number | null;
}

/** A rail's band and what was read of it since power last came on. */
export interface RailBandView {
  readonly rail: string;
  readonly volts: number;
  readonly low: number;
  readonly high: number;
  readonly readings: readonly number[];
}
