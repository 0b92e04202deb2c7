/** What was done and what was seen, as one line of the log. */
import type {
  IncomingEvent,
  JobEvent,
  MeasureEvent,
  MeasureMode,
  Observed,
  PowerEvent,
  Reading,
} from "../bench/event.ts";
import { FINDING_WORDS, isColdMode, OBSERVED_WORDS } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import { shownWords } from "../diagnosis/cold-evidence.ts";
import { shownLive } from "../diagnosis/live-evidence.ts";
import { shownWord } from "../diagnosis/shown-words.ts";
import { signShown, signsOf } from "../live/signs.ts";
import { said } from "../messages/said.ts";
import { commaList } from "../planning/faults-in-words.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { insulationRead } from "./insulation-words.ts";
import { actionWords } from "./words.ts";

export function eventWords(board: Board, event: JobEvent | undefined): string {
  if (event === undefined) return "?";
  const words = actionWords(board, event);
  if (event.do === "measure" || event.do === "incoming") {
    const reading = readingWords(event);
    return event.do === "incoming" || event.instrument === undefined
      ? said`${words} read ${reading}`
      : said`${words} read ${reading}, off the wire (${event.instrument})`;
  }
  if (event.do === "beside")
    return said`${words} read ${event.reading === "OL" ? "OL" : shownWords(event.mode, event.reading)}`;
  if (event.do === "answer" && event.question === MOTOR_INSULATION.question)
    return insulationRead(event.answer);
  if (event.do === "look") return said`${words}: ${FINDING_WORDS[event.finding]}`;
  if (event.do === "power" && event.observed !== undefined)
    return said`${words}: ${commaList([observedWords(event.observed), ...signsNoted(board, event)])}`;
  if (event.do === "unpower" && event.observed !== undefined)
    return said`${words}; until then: ${observedWords(event.observed)}`;
  return words;
}

/** Signs of life that were noted at this power-up, by their parts. */
function signsNoted(board: Board, { signs = {} }: PowerEvent): readonly string[] {
  return signsOf(board).flatMap((sign) => {
    const there = signs[sign.part];
    return there === undefined ? [] : [signShown(sign, there)];
  });
}

function observedWords(observed: Observed | readonly Observed[]): string {
  return commaList([observed].flat().map((one) => OBSERVED_WORDS[one]));
}

/** A reading as the display showed it. */
export function readingWords(event: MeasureEvent | IncomingEvent): string {
  const shown = shownReading(event.mode, event.reading);
  return event.do === "measure" && event.settling === "climbing" ? said`${shown}, still climbing` : shown;
}

function shownReading(mode: MeasureMode, reading: Reading): string {
  if (typeof reading === "string") return shownWord(reading);
  return isColdMode(mode) ? shownWords(mode, reading) : shownLive(mode, reading);
}
