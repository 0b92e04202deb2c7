/** Notes that are one tap: the log keeps them as they read in English, and tells them again in the reader's language. */
import { plain, said } from "../messages/said.ts";
import type { NoteEvent } from "./event.ts";

/** Of a job from which nothing is to be learnt. */
export const LEFT_OUT = said`left out of what is learnt`;

/** Of a motor or fan that turned while it was plugged in. */
export function turnedWords(part: string): string {
  return said`${part} turned while plugged in`;
}

/** The text of a note; what somebody wrote stays as it is. */
export function noteText({ text, turned, leftOut }: NoteEvent): string {
  const tapped = [
    ...(leftOut === true ? [LEFT_OUT] : []),
    ...(turned === undefined ? [] : [turnedWords(turned)]),
  ];
  return tapped.find((words) => plain(words) === text) ?? text;
}
