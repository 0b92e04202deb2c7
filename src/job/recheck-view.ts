/** The cold re-check beside what was read before the parts went in, in words. */

import { isColdMode } from "../bench/words.ts";
import { shownWords } from "../diagnosis/cold-evidence.ts";
import { shownWord } from "../diagnosis/shown-words.ts";
import { said } from "../messages/said.ts";
import { amissWords, type BesideBaseline, besideBaseline } from "../planning/beside-baseline.ts";
import type { Action } from "../planning/proposal.ts";
import { checkKey } from "../planning/still-known.ts";
import type { Assessment } from "./assess.ts";
import type { BaselineView, RecheckView } from "./bench-view-shape.ts";
import { placeWords } from "./words.ts";

type Beside = readonly BesideBaseline[];

export function besideOf({ job, timeline, predictor }: Assessment): Beside {
  return besideBaseline({ board: job.board, timeline }, predictor);
}

function readingText(mode: BesideBaseline["check"]["mode"], reading: BesideBaseline["before"]): string {
  return typeof reading === "number" ? shownWords(mode, reading) : shownWord(reading);
}

/** What was read again, in the order of the log. */
export function recheckView({ job: { board } }: Assessment, beside: Beside): readonly RecheckView[] {
  return beside.flatMap((one) => {
    const { part, check, before, after, says } = one;
    if (after === null || says === null) return [];
    const [was, is] = [readingText(check.mode, before), readingText(check.mode, after)];
    const [red, black] = [placeWords(board, check.red), placeWords(board, check.black)];
    const amiss = amissWords(one);
    const meaning =
      amiss ??
      (says === "as before" ? said`as before` : said`as a good board shows, with what lies across it`);
    const words = said`${part}, red on ${red}, black on ${black}: ${was} before it went in, ${is} now: ${meaning}`;
    return [{ words, amiss: amiss !== null }];
  });
}

/** `0.46 V`, where this check is one that the part had in the hand; null elsewhere. */
export function baselineWords(beside: Beside, action: Action): string | null {
  if (action.do !== "measure" || !isColdMode(action.mode)) return null;
  const { mode, red = "", black = "" } = action;
  const key = checkKey({ mode, red, black });
  const had = beside.find(({ check }) => checkKey(check) === key);
  return had === undefined ? null : readingText(mode, had.before);
}

export function baselinesView(beside: Beside): readonly BaselineView[] {
  return beside.map(({ part, check: { mode, red, black }, before }) => {
    return { part, mode, red, black, words: readingText(mode, before) };
  });
}
