/** `GET /api/stream`: server-sent events, each named as here with its data as JSON. */
import type { MeterNow } from "../instrument/meter-now.ts";
import type { KeptEvent } from "../job/job-store.ts";

export interface StreamNews {
  /** how the meter on the wire stands, at the beginning and whenever that changes */
  readonly meter: MeterNow;
  /** somebody added to a job; whoever did hears it too */
  readonly log: LogNews;
  /** nothing happened, and the bench computer is there */
  readonly beat: Readonly<Record<string, never>>;
}

export interface LogNews {
  readonly job: string;
  /** what was added, in order */
  readonly events: readonly KeptEvent[];
  /** of the log now: whoever comes to another length has missed something */
  readonly length: number;
}

/** Silence longer than two of these means that the bench computer is away. */
export const BEAT_MS = 5_000;
