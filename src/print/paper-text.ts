/** A paper as lines for the terminal or a messenger, and its tables as CSV. */
import type { Block, Cell, Paper, PaperTable } from "../papers/paper.ts";
import { csvText } from "../units/csv-text.ts";
import { withoutSteering } from "./visual-runs.ts";

/** Marks that steer the order of mixed directions are left in: whoever shows the text goes by them. */
export function paperText({ title, facts, blocks }: Paper): string {
  return `${title}\n${facts.map(({ line }) => `  ${line}\n`).join("")}${blocks.map(blockText).join("")}`;
}

/** The lines alone, as they are pasted into a messenger. */
export function messageText({ blocks }: Paper): string {
  return blocks.flatMap((block) => (block.block === "text" ? [`${block.text}\n`] : [])).join("");
}

function blockText(block: Block): string {
  switch (block.block) {
    case "heading":
      return `\n${block.text}\n`;
    case "text":
      return `${block.text}\n`;
    case "list":
      return block.items.map((item, at) => `  ${block.numbered ? `${at + 1}.` : "-"} ${item}\n`).join("");
    case "caution":
      return block.items.map((item) => `  ! ${item}\n`).join("");
    case "table":
      return `\n${tableText(block)}\n`;
    case "pictures":
      return "";
    case "code":
      return `${block.text}: ${block.content}\n`;
  }
}

const textOf = (cell: Cell) => (typeof cell === "string" ? cell : cell.text);
const lengthOf = (text: string) => withoutSteering(text).length;

/** Columns of equal width, amounts under each other to the right. */
function tableText({ head, rows }: PaperTable): string {
  const all: readonly (readonly Cell[])[] = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => lengthOf(textOf(row[column] ?? "")))));
  const money = head.map((_, column) => rows.some((row) => typeof row[column] === "object"));
  return all
    .map((row) => {
      const cells = row.map((cell, column) => {
        const text = textOf(cell);
        const pad = " ".repeat((widths[column] ?? 0) - lengthOf(text));
        return money[column] === true ? `${pad}${text}` : `${text}${pad}`;
      });
      return `${cells.join("  ").trimEnd()}\n`;
    })
    .join("");
}

/** Each table with its head, amounts as plain decimals; one empty row between two. */
export function paperCsv({ blocks }: Paper): string {
  return blocks
    .flatMap((block) => (block.block === "table" ? [block] : []))
    .map(({ head, rows }) =>
      csvText([
        head.map(withoutSteering),
        ...rows.map((row) =>
          row.map((cell) => (typeof cell === "string" ? withoutSteering(cell) : cell.decimal)),
        ),
      ]),
    )
    .join("\n");
}
