/** What was found odd in a board file and what no cold check tells apart, as headed lists for a person. */

import type { Board } from "../board/board.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { said } from "../messages/said.ts";
import { formatQuantity } from "../units/quantity.ts";
import type { AmbiguousParts, BoardOddities, BoardReview } from "./board-review.ts";

export interface ReviewList {
  /** what the lines are, or that there are none */
  readonly title: string;
  readonly lines: readonly string[];
}

const UNIT = { ohms: "ohm", farads: "F", volts: "V" } as const;

const list = (title: string, none: string, lines: readonly string[]): ReviewList => ({
  title: lines.length === 0 ? none : title,
  lines,
});

/** What is odd in the file itself. */
export function odditiesInWords(odd: BoardOddities): readonly ReviewList[] {
  const quantity = (value: number, field: keyof typeof UNIT) => formatQuantity(value, UNIT[field]);
  const assumed =
    odd.assumed.length === 0 ? [] : [list(said`Parts nobody has seen:`, "", [odd.assumed.join(" ")])];
  return [
    list(said`Nets that end at one pin:`, said`No net ends at one pin.`, odd.floatingNets),
    list(said`Rails without a source:`, said`Every rail has a source.`, odd.railsWithoutSource),
    list(
      said`Values that nobody sells:`,
      said`Every value is one that is sold.`,
      odd.offSeries.map(
        ({ part, field, value, nearest }) =>
          said`${part}: ${quantity(value, field)}; the nearest is ${quantity(nearest, field)}`,
      ),
    ),
    list(
      said`Parts whose price can decide whether a repair pays, and has none (taken instead, of a new board):`,
      said`Every part whose price can decide has one.`,
      odd.unpriced.map(({ part, share }) => `${part} ${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`),
    ),
    ...assumed,
  ];
}

/** What no cold check tells apart, and what none shows. */
export function ambiguityInWords(
  { ambiguous, unseen }: Pick<BoardReview, "ambiguous" | "unseen">,
  board: Board,
): readonly ReviewList[] {
  return [
    list(
      said`Parts that no cold check tells apart as long as nothing is lifted:`,
      said`Cold checks tell every shorted or open part that they show from every other.`,
      ambiguous.map((group) => groupWords(group, board)),
    ),
    list(
      "",
      said`${unseen.length} faults (shorts and opens) show in no cold check; they need a lift, a look, or power.`,
      [],
    ),
  ];
}

function groupWords({ faults, split }: AmbiguousParts, board: Board): string {
  const words = faults.map((fault) => faultNameWords(fault, board)).join("; ");
  if (split === null) return `${words}\n    ${said`no single lifted pin parts them`}`;
  const into = split.into.map((parts) => parts.join(" ")).join(" | ");
  return `${words}\n    ${said`lift ${split.place}: ${into}`}`;
}
