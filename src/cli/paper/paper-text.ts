/** A paper as lines for the terminal, and as CSV. */
import { csvText } from "../../units/csv-text.ts";
import { table } from "../answer-text.ts";
import type { Paper, PaperTable } from "./paper.ts";

export function paperText({ title, facts, tables, notes }: Paper): string {
  return [
    `${title}\n`,
    ...facts.map((fact) => `  ${fact}\n`),
    ...tables.map((one) => `${one.title === "" ? "\n" : `\n${one.title}\n`}${rowsText(one)}`),
    ...(notes.length > 0 ? ["\n"] : []),
    ...notes.map((note) => `${note}\n`),
  ].join("");
}

/** Amounts stand under each other, to the right. */
function rowsText({ head, rows }: PaperTable): string {
  const all = [head, ...rows];
  const width = Math.max(...all.map((row) => row.at(-1)?.length ?? 0));
  return table(all.map((row) => [...row.slice(0, -1), (row.at(-1) ?? "").padStart(width)]));
}

/** Each table with its head; one empty row between two. */
export function paperCsv({ tables }: Paper): string {
  return tables.map(({ head, rows }) => csvText([head, ...rows])).join("\n");
}
