/** Rows of a file taken into a stock: what each would do, before any is done. */
import { type StockLine, stockKey } from "./catalogue.ts";

export type Fate = "new" | "changed" | "same";

export interface Taken {
  /** in the order of what was taken in */
  readonly fates: readonly Fate[];
  /** the stock afterwards: lines that were there keep their place, new ones follow */
  readonly stock: readonly StockLine[];
}

/** A line that is there already is replaced: a file is what was counted, not what came in. */
export function takeIn(stock: readonly StockLine[], incoming: readonly StockLine[]): Taken {
  const after = new Map(stock.map((line) => [stockKey(line), line]));
  const fates = incoming.map((line): Fate => {
    const key = stockKey(line);
    const had = after.get(key);
    after.set(key, line);
    if (had === undefined) return "new";
    return JSON.stringify(sortedLine(had)) === JSON.stringify(sortedLine(line)) ? "same" : "changed";
  });
  return { fates, stock: [...after.values()] };
}

/** Ratings in one order, whatever order their columns had. */
function sortedLine({ type, ...rest }: StockLine): unknown {
  const ratings = Object.entries(type.ratings).sort(([a], [b]) => (a < b ? -1 : 1));
  return [type.name, type.kind, ratings, Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1))];
}
