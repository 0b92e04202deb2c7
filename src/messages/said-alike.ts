/**
 * Texts that are alike but for one thing, said as one: where they differ stands a list. It goes by the seams of what is said and not by its
 * words, so that it holds in every language.
 */
import { END_GIVEN, GIVEN } from "./said.ts";
import { type Sentence, type Text, textOf, written } from "./said-text.ts";

/**
 * The texts as one; null where they are not the same sentence with one value different.
 * @param list - several of anything in one breath
 */
export function saidTogether(
  texts: readonly string[],
  list: (several: readonly string[]) => string,
): string | null {
  const together = textsTogether(texts.map(textOf), list);
  return together === null ? null : written(together);
}

/** A text without a value that is filled in, to be held against others. */
export function saidWithout(text: string, value: string): string {
  return text.replaceAll(`${GIVEN}${value}${END_GIVEN}`, `${GIVEN}${END_GIVEN}`);
}

function textsTogether(texts: readonly Text[], list: (several: readonly string[]) => string): Text | null {
  const [first = []] = texts;
  if (texts.some(({ length }) => length !== first.length)) return null;
  const apart = first.flatMap((_, at) => (allSame(texts.map((text) => text[at] ?? "")) ? [] : [at]));
  const [at] = apart;
  if (at === undefined || apart.length > 1) return null;
  const sentences = texts.flatMap((text) => {
    const piece = text[at];
    return typeof piece === "object" ? [piece] : [];
  });
  const together = sentences.length === texts.length ? sentencesTogether(sentences, list) : null;
  return together === null ? null : first.with(at, together);
}

function sentencesTogether(
  sentences: readonly Sentence[],
  list: (several: readonly string[]) => string,
): Sentence | null {
  const [first] = sentences;
  if (first === undefined || !sentences.every(({ pieces }) => `${pieces}` === `${first.pieces}`)) return null;
  const values = first.given.map((_, at) => sentences.map(({ given }) => given[at]?.text ?? []));
  const apart = values.flatMap((texts, at) => (allSame(texts.map(written)) ? [] : [at]));
  const [at] = apart;
  const value = at === undefined ? undefined : first.given[at];
  if (at === undefined || value === undefined || apart.length > 1) return null;
  const several = values[at] ?? [];
  const text = textsTogether(several, list) ?? [list(several.map(written))];
  return { pieces: first.pieces, given: first.given.with(at, { index: value.index, text }) };
}

function allSame(pieces: readonly (string | Sentence)[]): boolean {
  const [first, ...rest] = pieces.map((piece) => written([piece]));
  return rest.every((other) => other === first);
}
