/** Writes the shipped boards to `boards/*.json`. */
import { mkdirSync, writeFileSync } from "node:fs";
import { SHIPPED } from "../src/shipped/shipped.ts";

mkdirSync("boards", { recursive: true });
for (const { id, board } of SHIPPED) {
  writeFileSync(`boards/${id}.json`, `${JSON.stringify(board, null, 2)}\n`);
  console.log(`boards/${id}.json: ${Object.keys(board.parts as object).length} parts`);
}
