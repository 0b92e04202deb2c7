/** Rows of a file taken into a stock: what each would do, before any is done. */
import { said, saidCount } from "../messages/said.ts";
import { type CatalogueType, type StockLine, stockKey } from "./catalogue.ts";
import { ratingText } from "./rating-text.ts";
import { RATINGS } from "./ratings.ts";

export type Fate = "new" | "changed" | "same";

export interface TakenRow {
  readonly fate: Fate;
  /** what is another than before, in words: `price: 2 becomes 2.5` */
  readonly changes: readonly string[];
}

export interface Taken {
  /** in the order of what was taken in */
  readonly rows: readonly TakenRow[];
  /** the stock afterwards: lines that were there keep their place, new ones follow */
  readonly stock: readonly StockLine[];
}

/**
 * A line that is there already is replaced: a file is what was counted, not what came in. What it says of a type holds for every line of that
 * type.
 */
export function takeIn(stock: readonly StockLine[], incoming: readonly StockLine[]): Taken {
  const after = new Map(stock.map((line) => [stockKey(line), line]));
  const types = new Map(stock.map(({ type }) => [type.name, type]));
  const linesOf = new Map<string, number>();
  for (const { type } of stock) linesOf.set(type.name, (linesOf.get(type.name) ?? 0) + 1);
  const rows = incoming.map((line): TakenRow => {
    const key = stockKey(line);
    const had = after.get(key);
    after.set(key, line);
    const typeHad = types.get(line.type.name);
    const ratings = typeHad === undefined ? [] : ratingChanges(typeHad, line.type);
    // told once, at the first row that has it
    types.set(line.type.name, line.type);
    const others = (linesOf.get(line.type.name) ?? 0) - (had === undefined ? 0 : 1);
    const wide = ratings.map((words) =>
      others > 0
        ? saidCount(others, "{1}, in its other line as well", "{1}, in its {0} other lines as well", words)
        : words,
    );
    const changes = [...wide, ...(had === undefined ? [] : lineChanges(had, line))];
    return { fate: had === undefined ? "new" : changes.length === 0 ? "same" : "changed", changes };
  });
  const now = new Map(incoming.map(({ type }) => [type.name, type]));
  const whole = (line: StockLine) => ({ ...line, type: now.get(line.type.name) ?? line.type });
  return { rows, stock: [...after.values()].map(whole) };
}

function ratingChanges(had: CatalogueType, has: CatalogueType): readonly string[] {
  return [...RATINGS].flatMap(([name, rule]) => {
    const [before, after] = [had.ratings[name], has.ratings[name]];
    if (before === after || after === undefined) return [];
    const text = ratingText(after, rule);
    return before === undefined
      ? [said`${rule.words}: ${text}, not known before`]
      : [said`${rule.words}: ${ratingText(before, rule)} becomes ${text}`];
  });
}

const COLUMN_WORDS = { count: said`count`, price: said`price`, supplier: said`supplier` } as const;
const NONE = said`none`;

/** What a line says beyond its name; place, donor and new or pulled are what tells it from others. */
function lineChanges(had: StockLine, has: StockLine): readonly string[] {
  return (["count", "price", "supplier"] as const).flatMap((field) =>
    had[field] === has[field]
      ? []
      : [said`${COLUMN_WORDS[field]}: ${had[field] ?? NONE} becomes ${has[field] ?? NONE}`],
  );
}
