/** What the page reads of a board being described: the shapes alone. */
export type { BoardChange, OwnBoardView, PartView } from "../compose/board-change.ts";
export type { ComposerView, QuestionView } from "../compose/composer-view.ts";
