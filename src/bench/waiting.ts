/** What a job waits for, and since when. */
import type { JobEvent, WaitsFor } from "./event.ts";
import { undoneEvents } from "./fold.ts";

export interface Waiting {
  readonly for: WaitsFor;
  /** which part, or what was asked; null where nobody wrote it down */
  readonly what: string | null;
  /** RFC 3339; null where the log does not tell */
  readonly since: string | null;
}

/** Said or written about a job while it lies aside; anything else is a hand on the board again. */
const LEAVES_IT_ASIDE: ReadonlySet<JobEvent["do"]> = new Set(["note", "answer", "mark", "overrule", "undo"]);

/**
 * What a log leaves the job waiting for; null where it is on the bench, or closed. A wait ends when the job is taken up again, at the
 * next step of the hand, and one for the customer's answer when that is in the log. The last of several counts.
 */
export function waitingFor(log: readonly JobEvent[]): Waiting | null {
  const undone = undoneEvents(log);
  let waiting: Waiting | null = null;
  for (const [index, event] of log.entries()) {
    if (undone[index] === true || LEAVES_IT_ASIDE.has(event.do)) continue;
    if (event.do === "wait") waiting = { for: event.for, what: event.what ?? null, since: event.at ?? null };
    else if (event.do !== "quote" || waiting?.for === "answer") waiting = null;
  }
  return waiting;
}
