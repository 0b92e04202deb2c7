/** What is said, taken apart at its seams and put together again. */
import { CLOSE, END_GIVEN, GIVEN, OPEN } from "./said.ts";

/** A sentence: its English pieces, and between them what is filled in, each with its place. */
export interface Sentence {
  readonly pieces: readonly string[];
  readonly given: readonly { readonly index: number; readonly text: Text }[];
}
/** Sentences, and what stands around them. */
export type Text = readonly (string | Sentence)[];

/** A text with its marks, whole again. */
export function written(text: Text): string {
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

/** The pieces of a text with its marks; a mark that is left open ends with the text. */
export function textOf(marked: string): Text {
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
