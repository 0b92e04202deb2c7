/**
 * Parts that are not fitted once more. A new part that reads like the old one is rarely bad itself: the board is not as its file says
 * there (another part in the way, one that was never fitted), and a third one would read the same. Common practice.
 */
import type { Timeline } from "../bench/timeline.ts";
import { lastPowerIndex } from "../safety/discharge.ts";

/** New parts after which the place is believed to be sound, power in between or not. */
const MOST_FITTED = 2;

/** Parts that are new since power was last on, or have been new twice. */
export function fittedEnough(timeline: Timeline): ReadonlySet<string> {
  const sincePower = lastPowerIndex(timeline);
  const times = new Map<string, number>();
  const enough = new Set<string>();
  timeline.entries.forEach(({ event }, at) => {
    if (event.do !== "replace") return;
    const count = (times.get(event.part) ?? 0) + 1;
    times.set(event.part, count);
    if (at > sincePower || count >= MOST_FITTED) enough.add(event.part);
  });
  return enough;
}
