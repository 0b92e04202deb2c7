/** What the page reads of a board being described: the shapes alone. */
export type { ComposerView, QuestionView } from "../compose/composer-view.ts";
