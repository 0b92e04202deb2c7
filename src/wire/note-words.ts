/** Notes that are one tap, for the page. */
export { LEFT_OUT, turnedWords } from "../bench/note-words.ts";
