/** The entry that an undo takes back: the last that counts. */
import { undoneEvents } from "../bench/fold.ts";
import type { KeptEvent } from "../job/job-store.ts";

/** Null where nothing was done, or all of it is undone. */
export function lastEntry(events: readonly KeptEvent[]): KeptEvent | null {
  const undone = undoneEvents(events);
  return events.findLast((event, index) => event.do !== "undo" && undone[index] !== true) ?? null;
}
