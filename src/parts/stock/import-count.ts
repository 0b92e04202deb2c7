/** A file's lines counted into the stock: what becomes of each, and what is to be kept of them. */
import { type StockLine, stockKey } from "../catalogue.ts";
import { type Fate, takeIn } from "../catalogue-import.ts";
import { type KeptLine, stockLine } from "./stock.ts";
import type { CountEvent } from "./stock-event.ts";

export interface ImportCount {
  /** in the order of the lines */
  readonly fates: readonly Fate[];
  /** null where the stock has them all as they are */
  readonly count: CountEvent | null;
}

/** A line whose count was found wrong by fitting is counted again even by a file that says the same. */
export function importCount(stock: readonly KeptLine[], incoming: readonly StockLine[]): ImportCount {
  const short = new Set(stock.filter((line) => line.short > 0).map(stockKey));
  const fates = takeIn(stock.map(stockLine), incoming).fates.map((fate, at) => {
    const line = incoming[at];
    return fate === "same" && line !== undefined && short.has(stockKey(line)) ? "changed" : fate;
  });
  const lines = incoming.filter((_, at) => fates[at] !== "same");
  return { fates, count: lines.length === 0 ? null : { do: "count", lines, gone: [] } };
}
