/** What is said, told in a reader's language. */
import { isSaid, type Saying, type Sayings } from "./said.ts";
import { type Sentence, type Text, textOf, written } from "./said-text.ts";

/** What telling needs of a language. */
export interface Teller {
  /** the saying of an English sentence; undefined where there is none, and the English stands */
  find(english: string): Saying | undefined;
  /** the plural category of a count */
  category(count: number): string;
  /** what is filled in and is no text itself: a figure, a reading, the name of a part */
  value(text: string): string;
}

/** The text in the teller's language. A sentence without a saying stays English, with what is filled in told. */
export function tell(text: string, teller: Teller): string {
  return isSaid(text) ? told(textOf(text), teller) : text;
}

function told(text: Text, teller: Teller): string {
  return text.map((piece) => (typeof piece === "string" ? piece : sentenceTold(piece, teller))).join("");
}

function sentenceTold({ pieces, given }: Sentence, teller: Teller): string {
  const [head = "", ...tail] = pieces;
  const english = tail.reduce((before, piece, at) => `${before}{${given[at]?.index}}${piece}`, head);
  const values = new Map(given.map(({ index, text }) => [index, text]));
  const count = written(values.get(0) ?? ["1"]);
  return formOf(english, count, teller).replace(/\{(\d)\}/g, (_, digit: string) => {
    const value = values.get(Number(digit));
    // a form that shows no figure in English may show one in the other language
    if (value === undefined) return teller.value(count);
    return value.every((piece) => typeof piece === "string")
      ? teller.value(value.join(""))
      : told(value, teller);
  });
}

function formOf(english: string, count: string, teller: Teller): string {
  const saying = teller.find(english);
  if (saying === undefined) return english;
  if (typeof saying === "string") return saying;
  return saying[teller.category(Number(count))] ?? saying.other ?? english;
}

/** Finds sayings by their English, the counted ones by both of their English forms. */
export function finder(sayings: Sayings): Teller["find"] {
  const all = new Map(Object.entries(sayings));
  for (const saying of Object.values(sayings)) if (typeof saying !== "string") all.set(saying.en, saying);
  return (english) => all.get(english);
}
