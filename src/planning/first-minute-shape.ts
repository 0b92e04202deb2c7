/** What a power card says of the first minute: plain data, made in `first-minute.ts`. */
import type { Place } from "../bench/event.ts";

/** One thing to watch, with the band of a good board. */
export interface WatchRow {
  readonly what: string;
  /** where it is read; null for what is seen or felt */
  readonly places: readonly [Place, Place] | null;
  /** a meter hangs there, so that it can be read hands off */
  readonly clipped: boolean;
  /** what a good board shows, in words */
  readonly good: string;
  /** readings outside that band, the likeliest first, and what they would mean */
  readonly otherwise: readonly {
    readonly if: string;
    readonly means: string;
    readonly probability: number;
  }[];
}

/** What to watch at one power-up. */
export interface FirstMinute {
  /** it is told to drive a load: how that ends is asked when it is switched off */
  readonly underLoad: boolean;
  /** the board is on; false: it is about to be */
  readonly on: boolean;
  readonly rows: readonly WatchRow[];
  /** off at once, each in one line */
  readonly abort: readonly string[];
  /** seconds after switch-on at which something is looked at, and what */
  readonly marks: readonly { readonly seconds: number; readonly what: string }[];
}
