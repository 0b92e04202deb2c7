/** A whole catalogue as text: every row read, and lines written back. */
import { said, saidCount } from "../messages/said.ts";
import { type CsvRow, csvRows, csvText } from "../units/csv-text.ts";
import type { Parsed } from "../units/outcome.ts";
import type { CatalogueType, StockLine } from "./catalogue.ts";
import { CatalogueReader, catalogueCells, type ReadCatalogue, readHeader } from "./catalogue-rows.ts";
import { STANDARD_TYPES } from "./standard-types.ts";

export interface CatalogueText extends ReadCatalogue {
  /** rows below the header */
  readonly rows: number;
}

/** Told after some hundreds of rows, and at the end. */
export type RowsRead = (done: number, of: number) => void;
const ROWS_A_WORD = 250;

/**
 * Reads every row. A problem is one that leaves no row to read: nothing in it, or no header that can be read.
 * @param counted - types beside the standard ones that rows may name without more, and correct
 */
export function readCatalogueText(
  text: string,
  counted: readonly CatalogueType[] = [],
  told: RowsRead = () => undefined,
): Parsed<CatalogueText> {
  const [header, ...below] = csvRows(text);
  if (header === undefined)
    return { ok: false, problem: said`it is empty; the first line names the columns` };
  if (header.problem !== null) return { ok: false, problem: said`line ${header.line}: ${header.problem}` };
  const columns = readHeader(header.cells);
  if (!columns.ok) return { ok: false, problem: said`line ${header.line}: ${columns.problem}` };
  const reader = new CatalogueReader(columns.value, STANDARD_TYPES, counted);
  below.forEach((row: CsvRow, at) => {
    if (at % ROWS_A_WORD === 0) told(at, below.length);
    reader.add(row);
  });
  told(below.length, below.length);
  return { ok: true, value: { rows: below.length, ...reader.read() } };
}

/** The lines where every row can be read; else a problem that names the first that cannot. */
export function allRows(read: ReadCatalogue): Parsed<readonly StockLine[]> {
  const [first] = read.refused;
  if (first === undefined) return { ok: true, value: read.lines.map(({ stock }) => stock) };
  const more = read.refused.length - 1;
  const problem = said`line ${first.line}: ${first.reasons.join("; ")}`;
  if (more === 0) return { ok: false, problem };
  return {
    ok: false,
    problem: saidCount(more, "{1}; {0} more row is refused", "{1}; {0} more rows are refused", problem),
  };
}

export function catalogueText(lines: readonly StockLine[]): string {
  return csvText(catalogueCells(lines));
}
