/** What the page reads of "which part will do": the shapes alone. */
export type { FindingAnswer as Finding, OfferAnswer } from "../parts/fit-answer.ts";
export type { FitField, FitView, IncomingReadView, TypedFit } from "../parts/fit-view.ts";
export type { SideBySide } from "../parts/side-by-side.ts";
