/** One line of stock as a person types it: read by the rules of a file's row, and held against what is there. */
import { said } from "../../messages/said.ts";
import type { Parsed } from "../../units/outcome.ts";
import { type CatalogueType, keyOfName, type LineName, lineName } from "../catalogue.ts";
import { CatalogueReader, readHeader } from "../catalogue-rows.ts";
import { STANDARD_TYPES } from "../standard-types.ts";
import type { KeptLine, Stock } from "./stock.ts";
import type { CountEvent } from "./stock-event.ts";

export interface TypedLine {
  /** texts by column of a catalogue file; an empty one is not known */
  readonly cells: Readonly<Record<string, string>>;
  /** the line that is corrected; null: a new one */
  readonly was: LineName | null;
  /** what the person saw as its count: parts may have gone meanwhile */
  readonly countWas: number | null;
}

export interface GoneLine {
  readonly was: LineName;
  readonly countWas: number | null;
}

/** The line to be corrected, as long as it is as it was seen. */
function seen(stock: Stock, was: LineName, countWas: number | null): Parsed<KeptLine> {
  const line = stock.line(was);
  if (line === null)
    return { ok: false, problem: said`${was.name}: is no longer there; look at the drawer again` };
  if (line.count === countWas) return { ok: true, value: line };
  const [before, now] = [countWas ?? said`none`, line.count ?? said`none`];
  return { ok: false, problem: said`count: was ${before} and is ${now} by now; look at the drawer again` };
}

/** Of a name that is corrected nothing counts that the stock said of it before; what other lines' types say does. */
function typesOf(stock: Stock, corrected: string | null): readonly CatalogueType[] {
  const types = new Map(stock.lines().map(({ type }) => [type.name, type]));
  if (corrected !== null) types.delete(corrected);
  return [...types.values()];
}

/** The count that a typed line asks for; a problem is one line that begins with the column. */
export function typedCount(stock: Stock, typed: TypedLine): Parsed<CountEvent> {
  const had = typed.was === null ? null : seen(stock, typed.was, typed.countWas);
  if (had !== null && !had.ok) return had;
  const cells = Object.entries(typed.cells);
  const columns = readHeader(cells.map(([column]) => column));
  if (!columns.ok) return columns;
  const reader = new CatalogueReader(columns.value, [
    ...STANDARD_TYPES,
    ...typesOf(stock, typed.was?.name ?? null),
  ]);
  reader.add({ line: 2, cells: cells.map(([, text]) => text), problem: null });
  const { lines, refused } = reader.read();
  const [first] = lines;
  if (first === undefined)
    return { ok: false, problem: refused[0]?.reasons.join("; ") ?? said`nothing was typed` };
  const line = first.stock;
  const name = lineName(line);
  const moved = typed.was !== null && keyOfName(typed.was) !== keyOfName(name);
  if ((typed.was === null || moved) && stock.line(name) !== null)
    return {
      ok: false,
      problem: said`name: ${name.name} is in that place already; correct the line that is there`,
    };
  return { ok: true, value: { do: "count", lines: [line], gone: moved && typed.was ? [typed.was] : [] } };
}

export function goneCount(stock: Stock, { was, countWas }: GoneLine): Parsed<CountEvent> {
  const had = seen(stock, was, countWas);
  return had.ok ? { ok: true, value: { do: "count", lines: [], gone: [was] } } : had;
}
