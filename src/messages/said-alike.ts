/**
 * Texts that are alike but for one thing, said as one: where they differ stands a list. It goes by the seams of what is said and not by its
 * words, so that it holds in every language.
 */
import { CLOSE, END_GIVEN, GIVEN, OPEN } from "./said.ts";

/** A sentence: its English pieces, and between them what is filled in, each with its place. */
interface Sentence {
  readonly pieces: readonly string[];
  readonly given: readonly { readonly index: number; readonly text: Text }[];
}
/** Sentences, and what stands around them. */
type Text = readonly (string | Sentence)[];

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

function written(text: Text): string {
  return text
    .map((piece) => {
      if (typeof piece === "string") return piece;
      const [head = "", ...tail] = piece.pieces;
      const filled = tail.map((english, at) => {
        const value = piece.given[at];
        const inside = value === undefined ? "" : `${GIVEN.repeat(value.index + 1)}${written(value.text)}`;
        return `${inside}${END_GIVEN}${english}`;
      });
      return `${OPEN}${head}${filled.join("")}${CLOSE}`;
    })
    .join("");
}

function textOf(marked: string): Text {
  let at = 0;
  const until = (end: string): Text => {
    const text: (string | Sentence)[] = [];
    let outside = "";
    while (at < marked.length && marked[at] !== end) {
      if (marked[at] !== OPEN) {
        outside += marked[at++];
        continue;
      }
      if (outside !== "") text.push(outside);
      outside = "";
      text.push(sentence());
    }
    at++;
    return outside === "" ? text : [...text, outside];
  };
  const sentence = (): Sentence => {
    at++;
    const pieces = [""];
    const given: { index: number; text: Text }[] = [];
    while (at < marked.length && marked[at] !== CLOSE) {
      if (marked[at] !== GIVEN) {
        pieces[pieces.length - 1] += marked[at++];
        continue;
      }
      const from = at;
      while (marked[at] === GIVEN) at++;
      given.push({ index: at - from - 1, text: until(END_GIVEN) });
      pieces.push("");
    }
    at++;
    return { pieces, given };
  };
  return until("");
}
