/** What was done and what was seen, as one line of the log. */
import type { IncomingEvent, JobEvent, MeasureEvent } from "../bench/event.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import { shownWords } from "../diagnosis/cold-evidence.ts";
import { shownLive } from "../diagnosis/live-evidence.ts";
import { actionWords } from "./words.ts";

export function eventWords(board: Board, event: JobEvent | undefined): string {
  if (event === undefined) return "?";
  const words = actionWords(board, event);
  if (event.do === "measure" || event.do === "incoming") {
    const from =
      event.do === "incoming" || event.instrument === undefined ? "" : `, off the wire (${event.instrument})`;
    return `${words} read ${readingWords(event)}${from}`;
  }
  if (event.do === "beside")
    return `${words} read ${event.reading === "OL" ? "OL" : shownWords(event.mode, event.reading)}`;
  if (event.do === "look") return `${words}: ${event.finding}`;
  if (event.do === "power" && event.observed !== undefined)
    return `${words}: ${[event.observed].flat().join(", ")}`;
  if (event.do === "unpower" && event.observed !== undefined)
    return `${words}; until then: ${[event.observed].flat().join(", ")}`;
  return words;
}

/** A reading as the display showed it. */
export function readingWords(event: MeasureEvent | IncomingEvent): string {
  const climbing = event.do === "measure" && event.settling === "climbing" ? ", still climbing" : "";
  if (typeof event.reading === "string") return `${event.reading}${climbing}`;
  return isColdMode(event.mode)
    ? `${shownWords(event.mode, event.reading)}${climbing}`
    : shownLive(event.mode, event.reading);
}
