/** What the part that is in a place now read before it went in. */
import type { IncomingEvent, JobEvent } from "./event.ts";

interface Entry {
  readonly event: JobEvent;
}

/** Which reading it is: mode and pins. */
export function incomingKey({ mode, red, black }: Pick<IncomingEvent, "mode" | "red" | "black">): string {
  return `${mode} ${red} ${black}`;
}

/**
 * The readings between the fitting before and the last one, the last of each pair of pins: of several parts that were tried in the hand
 * the one that went in was read last. Empty where none went in here, or it was not read.
 */
export function baselineOf(entries: readonly Entry[], part: string): readonly IncomingEvent[] {
  const fits = (from: number) =>
    entries.findLastIndex(({ event }, at) => at < from && event.do === "replace" && event.part === part);
  const fitted = fits(entries.length);
  if (fitted < 0) return [];
  return lastOfEach(entries.slice(fits(fitted) + 1, fitted), part);
}

/** What was read in the hand of the part that is to go in next. */
export function readInHand(entries: readonly Entry[], part: string): readonly IncomingEvent[] {
  const last = entries.findLastIndex(({ event }) => event.do === "replace" && event.part === part);
  return lastOfEach(entries.slice(last + 1), part);
}

function lastOfEach(entries: readonly Entry[], part: string): readonly IncomingEvent[] {
  const last = new Map<string, IncomingEvent>();
  for (const { event } of entries)
    if (event.do === "incoming" && event.part === part) last.set(incomingKey(event), event);
  return [...last.values()];
}
