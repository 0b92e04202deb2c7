/** Shipped boards and one of a few answers, as decks and back: the same file, byte for byte. */
import { expect, test } from "vitest";
import { composeBoard } from "../src/compose/compose-board.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { readDeck } from "../src/traced/read-deck.ts";
import { writeDeck } from "../src/traced/write-deck.ts";

const own = composeBoard({ supply: "400-3", switches: "discrete" });
if (!own.ok) throw new Error(own.problem);

test.each([
  ...SHIPPED.map(({ id, board }) => [id, board] as const),
  ["a board of a few answers", own.value.board] as const,
])("%s comes back from its deck", (_, board) => {
  const deck = writeDeck(board);
  const back = readDeck(deck);
  if (!back.ok) throw new Error(back.problem);
  expect(back.value.notUnderstood).toEqual([]);
  expect(JSON.stringify(back.value.board, null, 2)).toBe(JSON.stringify(board, null, 2));
  expect(writeDeck(back.value.board)).toBe(deck);
});
