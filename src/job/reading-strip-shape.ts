/** What a check would read on a good board and with each of the main suspects, on one scale: plain data. */

export interface StripRow {
  readonly words: string;
  readonly good: boolean;
  /** null: over the limit */
  readonly value: number | null;
  /** two deviations to either side; null where over the limit */
  readonly low: number | null;
  readonly high: number | null;
}

/** A reading that climbs: values over time, capacitors empty before. */
export interface ClimbRow {
  readonly words: string;
  readonly good: boolean;
  readonly points: readonly { readonly seconds: number; readonly value: number }[];
}

export interface StripView {
  readonly unit: "V" | "ohm" | "F";
  readonly scale: "linear" | "log";
  /** ends of the scale; what lies above is over the limit */
  readonly from: number;
  readonly to: number;
  readonly rows: readonly StripRow[];
  /** the reading, or the span that a coarse one leaves; null: none yet. Both ends null: over the limit */
  readonly reading: {
    readonly words: string;
    readonly low: number | null;
    readonly high: number | null;
  } | null;
  /** null: it stands at once */
  readonly climb: {
    readonly rows: readonly ClimbRow[];
    readonly reading: { seconds: number; value: number } | null;
  } | null;
}
