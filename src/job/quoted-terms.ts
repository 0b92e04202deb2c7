/** The price of an accepted quote is the price agreed from then on: the planner and every card count with it. */
import type { JobEvent } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import type { Terms } from "../money/terms.ts";

/** The terms with what the last answered quote of the log made of them; the same object where there is none. */
export function quotedTerms(terms: Terms, log: readonly JobEvent[]): Terms {
  if (!log.some((event) => event.do === "quote")) return terms;
  const undone = undoneEvents(log);
  const last = log.findLast((event, index) => event.do === "quote" && undone[index] !== true);
  if (last?.do !== "quote" || last.answer !== "accepted" || last.offer !== "repair") return terms;
  const price = last.price ?? last.cap;
  return price === undefined ? terms : { ...terms, agreedPrice: price, agreed: true };
}
