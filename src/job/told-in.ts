import type { JobEvent } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import { POWERED_WET, type Told } from "../priors/told.ts";

/** The question under which the log keeps the hardware revision that is printed on the board at hand. */
export const BOARD_REVISION = "board-revision";

/** The last answer to a question that is not undone; null where there is none. */
function lastAnswer(log: readonly JobEvent[], question: string): string | null {
  if (!log.some((event) => event.do === "answer" && event.question === question)) return null;
  const undone = undoneEvents(log);
  const last = log.findLast(
    (event, at) => event.do === "answer" && event.question === question && undone[at] !== true,
  );
  return last?.do === "answer" ? last.answer : null;
}

/** What the answers in the log tell, the last of each question that is not undone. */
export function toldIn(log: readonly JobEvent[]): Told {
  const answer = lastAnswer(log, POWERED_WET.question);
  const poweredWet = answer === POWERED_WET.yes ? true : answer === POWERED_WET.no ? false : null;
  return { poweredWet };
}

/** The revision printed on the board at hand; null where nobody has said. */
export function revisionTold(log: readonly JobEvent[]): string | null {
  const told = lastAnswer(log, BOARD_REVISION)?.trim() ?? "";
  return told === "" ? null : told;
}
