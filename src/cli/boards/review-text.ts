import type { Board } from "../../board/board.ts";
import { faultNameWords } from "../../board/fault-words.ts";
import type { AmbiguousParts, BoardReview } from "../../review/board-review.ts";
import { formatQuantity } from "../../units/quantity.ts";
import { percent } from "../answer-text.ts";

const UNIT = { ohms: "ohm", farads: "F", volts: "V" } as const;

/** What is odd in a board file and what no cold check tells apart, for a person. */
export function reviewText(review: BoardReview, board: Board): string {
  const list = (title: string, none: string, lines: readonly string[]) =>
    lines.length === 0 ? `${none}\n` : `${title}\n${lines.map((line) => `  ${line}\n`).join("")}`;
  const quantity = (value: number, field: keyof typeof UNIT) => formatQuantity(value, UNIT[field]);
  const assumed =
    review.assumed.length === 0 ? "" : list("Parts nobody has seen:", "", [review.assumed.join(" ")]);
  return [
    list("Nets that end at one pin:", "No net ends at one pin.", review.floatingNets),
    list("Rails without a source:", "Every rail has a source.", review.railsWithoutSource),
    list(
      "Values that nobody sells:",
      "Every value is one that is sold.",
      review.offSeries.map(
        ({ part, field, value, nearest }) =>
          `${part}: ${quantity(value, field)}; the nearest is ${quantity(nearest, field)}`,
      ),
    ),
    list(
      "Parts whose price can decide whether a repair pays, and has none (taken instead, of a new board):",
      "Every part whose price can decide has one.",
      review.unpriced.map(({ part, share }) => `${part} ${percent(share)}`),
    ),
    assumed,
    list(
      "Parts that no cold check tells apart as long as nothing is lifted:",
      "Cold checks tell every shorted or open part that they show from every other.",
      review.ambiguous.map((group) => groupWords(group, board)),
    ),
    `${review.unseen.length} faults (shorts and opens) show in no cold check; they need a lift, a look, or power.\n`,
  ].join("");
}

function groupWords({ faults, split }: AmbiguousParts, board: Board): string {
  const words = faults.map((fault) => faultNameWords(fault, board)).join("; ");
  if (split === null) return `${words}\n    no single lifted pin parts them`;
  return `${words}\n    lift ${split.place}: ${split.into.map((parts) => parts.join(" ")).join(" | ")}`;
}
