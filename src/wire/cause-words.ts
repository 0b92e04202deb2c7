/** What happened to a board, as it is said, for the page. */
export { CAUSE_WORDS } from "../learning/cause-words.ts";
