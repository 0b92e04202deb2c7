/** A catalogue file on disk. */
import type { CatalogueType, StockLine } from "../../parts/catalogue.ts";
import { catalogueCells, type ReadCatalogue, readHeader, readRows } from "../../parts/catalogue-rows.ts";
import { STANDARD_TYPES } from "../../parts/standard-types.ts";
import { csvRows, csvText } from "../../units/csv-text.ts";
import type { Parsed } from "../../units/outcome.ts";
import { readText } from "../read-file.ts";

export interface CatalogueFile extends ReadCatalogue {
  /** rows below the header */
  readonly rows: number;
}

/**
 * Reads every row of a file. A problem is one that leaves no row to read: no such file, no header that can be read.
 * @param known - types beside the standard ones that rows may name, and must not contradict
 */
export function readCatalogueFile(file: string, known: readonly CatalogueType[] = []): Parsed<CatalogueFile> {
  const text = readText(file);
  if (!text.ok) return text;
  const refuse = (problem: string): Parsed<never> => ({ ok: false, problem: `${file}: ${problem}` });
  const [header, ...below] = csvRows(text.value);
  if (header === undefined) return refuse("it is empty; the first line names the columns");
  if (header.problem !== null) return refuse(`line ${header.line}: ${header.problem}`);
  const columns = readHeader(header);
  if (!columns.ok) return refuse(columns.problem);
  return {
    ok: true,
    value: { rows: below.length, ...readRows(columns.value, below, [...STANDARD_TYPES, ...known]) },
  };
}

/** The lines of a file in which every row can be read; else a problem that names the first that cannot. */
export function loadCatalogue(file: string): Parsed<readonly StockLine[]> {
  const read = readCatalogueFile(file);
  if (!read.ok) return read;
  const [first] = read.value.refused;
  if (first === undefined) return { ok: true, value: read.value.lines.map(({ stock }) => stock) };
  const more = read.value.refused.length - 1;
  const rest = more === 0 ? "" : `; ${more} more rows are refused, see faultwright catalogue check`;
  return { ok: false, problem: `${file}: line ${first.line}: ${first.reasons.join("; ")}${rest}` };
}

export function catalogueText(lines: readonly StockLine[]): string {
  return csvText(catalogueCells(lines));
}
