/**
 * What the engine and the page say. A text is its own English; invisible marks keep the seams between a sentence and what was
 * filled in, so that whoever shows it can say the same sentence in another language. Texts may be filled into texts, joined and
 * kept as plain data; without its marks a text reads as English.
 */

/** Invisible operators of Unicode (U+2061 to U+2064), which no part, net or note of a person is written with. */
export const OPEN = "\u2061";
export const GIVEN = "\u2062";
export const END_GIVEN = "\u2063";
export const CLOSE = "\u2064";
const MARKS = /[\u2061-\u2064]/g;

/** A sentence that counts: its English for one, and how another language says it by plural category. */
export interface CountedSaying {
  readonly en: string;
  readonly [category: string]: string;
}
/** A sentence in another language; `{0}` stands for what is filled in first in the English. */
export type Saying = string | CountedSaying;
/** Sayings by their English, as in "Shows whether {0}."; one that counts by its English for many. */
export type Sayings = Readonly<Record<string, Saying>>;

/** A sentence with what is filled in, values in their order: `said`Shows whether ${what}.``. */
export function said(sentence: TemplateStringsArray, ...given: readonly (string | number)[]): string {
  const filled = given.map((value, at) => `${filledIn(at, value)}${sentence[at + 1]}`);
  return `${OPEN}${sentence[0]}${filled.join("")}${CLOSE}`;
}

/** A sentence that depends on a count, which stands in it as `{0}`, what else is filled in as `{1}`, `{2}`: `saidCount(n, "one reading of {1}", "{0} readings of {1}", ref)`. */
export function saidCount(
  count: number,
  one: string,
  other: string,
  ...given: readonly (string | number)[]
): string {
  const values = [count, ...given];
  const text = (count === 1 ? one : other).replace(/\{(\d)\}/g, (_, digit: string) =>
    filledIn(Number(digit), values[Number(digit)] ?? ""),
  );
  return `${OPEN}${text}${CLOSE}`;
}

/** As many marks before a value as tell which one it is: a sentence may name them in any order. */
function filledIn(index: number, value: string | number): string {
  return `${GIVEN.repeat(index + 1)}${value}${END_GIVEN}`;
}

/** The text in English, without its marks: what is written to files, printed, compared and sorted by. */
export function plain(text: string): string {
  return text.replace(MARKS, "");
}

/** Whether a text holds a sentence that can be told. */
export function isSaid(text: string): boolean {
  return text.includes(OPEN);
}
