/** What the customer was asked beyond cause and symptom, as far as it weighs on what has failed. */
export interface Told {
  /** for water: whether it was powered while wet; null where nobody knows */
  readonly poweredWet: boolean | null;
}

export const NOTHING_TOLD: Told = { poweredWet: null };

/** The question under which the log keeps it, and its answers. */
export const POWERED_WET = { question: "powered-while-wet", yes: "yes", no: "no" } as const;

/**
 * The question under which the log keeps the insulation of a motor to its frame, in megohms (`12`, `over 50`, `under 2`, `OL`), the answers
 * that are one tap, what a sound one reads, and the answer where it cannot be read at this bench.
 */
export const MOTOR_INSULATION = {
  question: "motor-insulation",
  answers: ["over 50", "10 to 50", "2 to 10", "under 2"],
  good: "over 50",
  notRead: "not read",
} as const;
