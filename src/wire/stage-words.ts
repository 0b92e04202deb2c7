/** The stages of a board as they are said, for the page. */
export { stageWords as stageSaid } from "../board/stages.ts";
