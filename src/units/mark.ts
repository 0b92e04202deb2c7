/**
 * Where a figure comes from. `seen` and `seen-2nd` name a published source; `common practice` is what the trade agrees on;
 * `from memory` is recalled or judged, not looked up.
 */
import { said } from "../messages/said.ts";
export type Mark = "seen" | "seen-2nd" | "common practice" | "from memory";

/** A mark for a person. */
export const MARK_WORDS: Readonly<Record<Mark, string>> = {
  seen: said`seen`,
  "seen-2nd": said`seen-2nd`,
  "common practice": said`common practice`,
  "from memory": said`from memory`,
};

/** What every row of every table carries beside its figures. */
export interface Sourced {
  readonly id: string;
  readonly mark: Mark;
  /** the source, or what the figure rests on, in words */
  readonly words: string;
}
