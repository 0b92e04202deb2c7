/** How fast a meter is asked, and how long it is waited for. */
export interface Pace {
  /** between a reading and the next question */
  readonly betweenMs: number;
  /** the longest that an answer may take: long integration and a change of range included */
  readonly patienceMs: number;
  /** before a wire that failed is tried again */
  readonly againMs: number;
  /** answers in a row that are no figure before the wire is begun anew */
  readonly garbageBorne: number;
}

export const USUAL_PACE: Pace = { betweenMs: 150, patienceMs: 5_000, againMs: 1_500, garbageBorne: 3 };
