/** What the customer was asked beyond cause and symptom, as far as it weighs on what has failed. */
export interface Told {
  /** for water: whether it was powered while wet; null where nobody knows */
  readonly poweredWet: boolean | null;
}

export const NOTHING_TOLD: Told = { poweredWet: null };

/** The question under which the log keeps it, and its answers. */
export const POWERED_WET = { question: "powered-while-wet", yes: "yes", no: "no" } as const;
