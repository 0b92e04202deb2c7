/** The stages of the board as the map shows them: plain data. */

/** What the readings have said of a stage so far. */
export type StageState = "suspect" | "masked" | "untested" | "cleared";

export interface StageView {
  readonly stage: string;
  readonly words: string;
  /** the power path from mains to motor, or what makes and uses the small supplies */
  readonly path: "power" | "small";
  /** the stage that it hangs on, where two of their parts share a net; null: none on this board */
  readonly from: string | null;
  readonly parts: number;
  readonly state: StageState;
  /** that something in the stage is faulty now, taking its parts as independent */
  readonly probability: number;
  /** most suspected first */
  readonly suspects: readonly { readonly part: string; readonly probability: number }[];
  /** parts that a fault elsewhere hides, and by which */
  readonly masked: readonly string[];
  readonly maskedBy: readonly string[];
  /** parts that no reading so far could have shown faulty */
  readonly untested: readonly string[];
}
