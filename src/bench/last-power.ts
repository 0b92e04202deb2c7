import type { PowerEvent } from "./event.ts";
import type { Timeline, TimelineEntry } from "./timeline.ts";

/** A power-up of the log, and its position in `entries`. */
export interface PoweredAt {
  readonly at: number;
  readonly entry: TimelineEntry;
  readonly power: PowerEvent;
}

/** The last power-up, a low voltage into a dead rail too; null where the board has not been powered on this bench. */
export function lastPowered({ entries }: Pick<Timeline, "entries">): PoweredAt | null {
  const at = entries.findLastIndex(({ event }) => event.do === "power");
  const entry = entries[at];
  return entry?.event.do === "power" ? { at, entry, power: entry.event } : null;
}

/** The power-up that the board is on by; null where it is off. */
export function poweredNow(timeline: Timeline): PoweredAt | null {
  return timeline.now.powered ? lastPowered(timeline) : null;
}
