import type { JobEvent } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import { POWERED_WET, type Told } from "../priors/told.ts";

/** What the answers in the log tell, the last of each question that is not undone. */
export function toldIn(log: readonly JobEvent[]): Told {
  let poweredWet: boolean | null = null;
  const undone = log.some((event) => event.do === "undo") ? undoneEvents(log) : null;
  for (const [index, event] of log.entries()) {
    if (event.do !== "answer" || event.question !== POWERED_WET.question || undone?.[index] === true)
      continue;
    poweredWet = event.answer === POWERED_WET.yes ? true : event.answer === POWERED_WET.no ? false : null;
  }
  return { poweredWet };
}
