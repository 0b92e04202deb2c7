/** What happened to the board, as the customer tells it. */
export const CAUSES = ["water", "surge", "overload", "age", "insects", "impact", "unknown"] as const;
export type Cause = (typeof CAUSES)[number];

/** What the board does when it comes in. */
export const SYMPTOMS = ["dead", "trips-supply", "starts-then-stops", "no-output", "other"] as const;
export type Symptom = (typeof SYMPTOMS)[number];
