import type { JobEvent, Verdict } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";

/** The verdict a log was closed with; null where it is open. Other events than closes and undos may be left out of `log`. */
export function closedAs(log: readonly JobEvent[]): Verdict | null {
  const undone = undoneEvents(log);
  const close = log.findLast((event, index) => event.do === "close" && undone[index] !== true);
  return close?.do === "close" ? close.verdict : null;
}
