import type { Board } from "../../board/board.ts";
import type { BoardReview } from "../../review/board-review.ts";
import { ambiguityInWords, odditiesInWords } from "../../review/review-in-words.ts";

/** What is odd in a board file and what no cold check tells apart, for a person. */
export function reviewText(review: BoardReview, board: Board): string {
  return [...odditiesInWords(review), ...ambiguityInWords(review, board)]
    .map(({ title, lines }) => `${title}\n${lines.map((line) => `  ${line}\n`).join("")}`)
    .join("");
}
