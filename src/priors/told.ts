/** What the customer was asked beyond cause and symptom, as far as it weighs on what has failed. */
export interface Told {
  /** for water: whether it was powered while wet; null where nobody knows */
  readonly poweredWet: boolean | null;
}

export const NOTHING_TOLD: Told = { poweredWet: null };

/** The question under which the log keeps it, and its answers. */
export const POWERED_WET = { question: "powered-while-wet", yes: "yes", no: "no" } as const;

/** The question under which the log keeps the insulation of a motor to its frame, in megohms (`12`, `over 50`, `OL`). */
export const MOTOR_INSULATION = { question: "motor-insulation", good: "over 50" } as const;
