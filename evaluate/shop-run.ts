/** What a run of the simulated shop leaves: scores by set of figures, job by job. */
import type { Score } from "./shop-score.ts";

export const FIGURES = ["tables", "learnt", "told the truth", "the shop's own"] as const;
export type FiguresName = (typeof FIGURES)[number];

export interface ShopRun {
  /** before any reading, every job */
  readonly before: Map<FiguresName, Score[]>;
  /** after the first few, the jobs of `readAt` */
  readonly after: Map<FiguresName, Score[]>;
  readonly readAt: number[];
}
