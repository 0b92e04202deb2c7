/** A file's lines counted into the stock: what becomes of each, and what is to be kept of them. */
import { saidCount } from "../../messages/said.ts";
import { type StockLine, stockKey } from "../catalogue.ts";
import { type TakenRow, takeIn } from "../catalogue-import.ts";
import { type KeptLine, stockLine } from "./stock.ts";
import type { CountEvent } from "./stock-event.ts";

export interface ImportCount {
  /** in the order of the lines */
  readonly rows: readonly TakenRow[];
  /** null where the stock has them all as they are */
  readonly count: CountEvent | null;
}

/** A line whose count was found wrong by fitting is counted again even by a file that says the same. */
export function importCount(stock: readonly KeptLine[], incoming: readonly StockLine[]): ImportCount {
  const short = new Map(stock.filter((line) => line.short > 0).map((line) => [stockKey(line), line.short]));
  const rows = takeIn(stock.map(stockLine), incoming).rows.map((row, at): TakenRow => {
    const line = incoming[at];
    const lacking = line === undefined ? undefined : short.get(stockKey(line));
    if (lacking === undefined) return row;
    const words = saidCount(
      lacking,
      "counted again: {0} more was fitted than lay there",
      "counted again: {0} more were fitted than lay there",
    );
    return { fate: "changed", changes: [...row.changes, words] };
  });
  const lines = incoming.filter((_, at) => rows[at]?.fate !== "same");
  return { rows, count: lines.length === 0 ? null : { do: "count", lines, gone: [] } };
}
