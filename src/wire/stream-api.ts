/** `GET /api/stream`: server-sent events, each named as here with its data as JSON. */
import type { MeterNow } from "../instrument/meter-now.ts";

export interface StreamNews {
  /** how the meter on the wire stands, at the beginning and whenever that changes */
  readonly meter: MeterNow;
  /** nothing happened, and the bench computer is there */
  readonly beat: Readonly<Record<string, never>>;
}

/** Silence longer than two of these means that the bench computer is away. */
export const BEAT_MS = 5_000;
