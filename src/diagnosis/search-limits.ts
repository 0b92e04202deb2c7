/** How far the search over sets of faults goes. */
export interface SearchLimits {
  /** sets whose neighbours are looked at */
  readonly expansions: number;
  /** sets worse than the best by more than this many nats are dropped */
  readonly width: number;
  /** most faults in one set */
  readonly size: number;
}

export const DEFAULT_LIMITS: SearchLimits = { expansions: 18, width: 8, size: 6 };
const LARGEST_SIZE = 9;

/** The limits of a log in which `cured` faults may have come and gone: those count in a set as well. */
export function limitsFor(cured: number): SearchLimits {
  return { ...DEFAULT_LIMITS, size: Math.min(LARGEST_SIZE, DEFAULT_LIMITS.size + cured) };
}
