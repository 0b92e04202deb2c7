/** What good ones read, written into the file of a board of one's own by hand, or taken out of it. */

import { placeProblem } from "../bench/place.ts";
import type { ReferenceMode } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import { netOfPlace } from "../meter/good-readings.ts";
import type { Parsed } from "../units/outcome.ts";
import { parseReadingText } from "../units/reading-text.ts";
import { pooledWith } from "./pooled-board.ts";

type Content = Readonly<Record<string, unknown>>;

interface Check {
  readonly mode: ReferenceMode;
  readonly red: string;
  readonly black: string;
}

export type ReferenceChange =
  /** one settled reading of one good board, as typed off the meter */
  ({ readonly do: "good-read"; readonly text: string } & Check) | ({ readonly do: "good-forgotten" } & Check);

/** The board file's content with the change, or one line why not. */
export function changedReferences(content: Content, change: ReferenceChange): Parsed<Content> {
  const read = parseBoard(content);
  if (!read.ok) return read;
  const board = read.value;
  for (const key of ["red", "black"] as const) {
    const problem = placeProblem(board, change[key]);
    if (problem !== null) return { ok: false, problem: `${key}: ${problem}` };
  }
  const [red, black] = [netOfPlace(board, change.red), netOfPlace(board, change.black)];
  const { mode } = change;
  if (red === black)
    return { ok: false, problem: said`red and black are both on ${red}; two places are needed` };
  if (change.do === "good-read") {
    const reading = parseReadingText(change.text, mode);
    if (!reading.ok) return reading;
    if (typeof reading.value !== "number" || reading.value <= 0)
      return {
        ok: false,
        problem: said`"${change.text}": a figure above 0 is kept; write it as 0.47, 4k7 or 22u`,
      };
    const one = { mode, red, black, reading: reading.value };
    return { ok: true, value: { ...content, references: pooledWith(board, [], [one]) } };
  }
  const left = pooledWith(board, [], []).filter(
    (one) => !(one.mode === mode && one.red === red && one.black === black),
  );
  const { references: _, ...rest } = content;
  return { ok: true, value: left.length === 0 ? rest : { ...content, references: left } };
}
