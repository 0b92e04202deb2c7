import { readFileSync } from "node:fs";
import type { Board } from "../../src/board/board.ts";
import { parseBoard } from "../../src/board/parse-board.ts";
import { SHIPPED } from "../../src/shipped/shipped.ts";

/** The boards that come with the program, from their files. */
export function shippedBoards(): readonly { readonly id: string; readonly board: Board }[] {
  return SHIPPED.map(({ id }) => {
    const parsed = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
    if (!parsed.ok) throw new Error(`${id}: ${parsed.problem}`);
    return { id, board: parsed.value };
  });
}
