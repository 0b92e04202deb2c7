import type { Timeline } from "../bench/timeline.ts";

/**
 * Readings taken on a part's own lifted pins since it was last freed, whatever came after; null where no pin of it was lifted since it
 * was last fitted.
 */
export function measuredInHandSince(timeline: Timeline, ref: string): number | null {
  let readings: number | null = null;
  const own = (place: string | undefined): boolean => place?.startsWith(`${ref}.`) === true;
  for (const { event } of timeline.entries) {
    if (event.do === "lift" && own(event.place)) readings ??= 0;
    else if (event.do === "replace" && event.part === ref) readings = null;
    else if (event.do === "measure" && readings !== null && (own(event.red) || own(event.black))) readings++;
  }
  return readings;
}
