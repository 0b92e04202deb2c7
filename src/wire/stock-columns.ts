/** The columns of a catalogue as a form shows them, and a line's texts in them. */
import { KIND_NAMES } from "../board/kinds.ts";
import { catalogueCells } from "../parts/catalogue-rows.ts";
import { choicesOf } from "../parts/rating-text.ts";
import { RATINGS } from "../parts/ratings.ts";
import { type KeptLine, stockLine } from "../parts/stock/stock.ts";

export interface RatingColumn {
  readonly name: string;
  readonly words: string;
  readonly unit: string | null;
  /** the words that may be chosen; empty where it is typed */
  readonly choices: readonly string[];
}

export const KINDS: readonly string[] = KIND_NAMES;

export const RATING_COLUMNS: readonly RatingColumn[] = [...RATINGS].map(([name, rule]) => ({
  name,
  words: rule.words,
  unit: rule.reads === "figure" ? rule.unit : null,
  choices: choicesOf(rule),
}));

/** A line's texts by column, as a file has them. */
export function cellsOf(line: KeptLine): Readonly<Record<string, string>> {
  const [columns = [], texts = []] = catalogueCells([stockLine(line)]);
  return Object.fromEntries(columns.map((column, at) => [column, texts[at] ?? ""]));
}
