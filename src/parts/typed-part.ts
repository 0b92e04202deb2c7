/** A candidate as a person types it off its data sheet: `igbt; volts 650V; hotAmps 40A; gateCoulombs 95nC; copack yes`. */

import { KIND_NAMES } from "../board/kinds.ts";
import { said } from "../messages/said.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type { CatalogueType } from "./catalogue.ts";
import { readRating } from "./rating-text.ts";
import { RATINGS, type Ratings } from "./ratings.ts";

/** Kind first, then ratings by name, parted by semicolons. A problem names the piece and what would be right. */
export function readTypedPart(text: string): Parsed<CatalogueType> {
  const [head = "", ...rest] = text
    .split(";")
    .map((piece) => piece.trim())
    .filter((piece) => piece !== "");
  const kind = KIND_NAMES.find((one) => one === head.toLowerCase());
  if (kind === undefined)
    return { ok: false, problem: said`${quoted(head)} is no kind of part${suggestion(head, KIND_NAMES)}` };
  const ratings: Record<string, unknown> = {};
  for (const piece of rest) {
    const [key = "", ...words] = piece.split(/[\s=:]+/);
    const name = [...RATINGS.keys()].find((one) => one.toLowerCase() === key.toLowerCase());
    if (name === undefined)
      return { ok: false, problem: said`${quoted(key)} is no rating${suggestion(key, [...RATINGS.keys()])}` };
    const read = readRating(words.join(" "), name);
    if (!read.ok) return { ok: false, problem: said`${name}: ${read.problem}` };
    ratings[name] = read.value;
  }
  return { ok: true, value: { name: "the candidate", kind, ratings: ratings as Ratings, source: null } };
}
