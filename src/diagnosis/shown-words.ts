/** What a meter shows that is no figure. */
import { said } from "../messages/said.ts";

const SHOWN: Readonly<Record<string, string>> = {
  beep: said`beep`,
  silent: said`silent`,
  zero: said`zero`,
  junction: said`junction`,
  high: said`high`,
};

/** Of a prediction that did not come about. */
export const NO_ANSWER = said`no answer`;

/** A word of the log for what a meter shows, as it is said; `OL`, and what is said already, as it is. */
export function shownWord(word: string): string {
  return SHOWN[word] ?? word;
}
