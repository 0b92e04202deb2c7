/** A catalogue file on disk. */
import type { CatalogueType, StockLine } from "../../parts/catalogue.ts";
import { allRows, type CatalogueText, type RowsRead, readCatalogueText } from "../../parts/catalogue-text.ts";
import type { Parsed } from "../../units/outcome.ts";
import { readText } from "../read-file.ts";

/** Reads every row of a file; a problem names the file. See `readCatalogueText`. */
export function readCatalogueFile(
  file: string,
  known: readonly CatalogueType[] = [],
  told?: RowsRead,
): Parsed<CatalogueText> {
  const text = readText(file);
  if (!text.ok) return text;
  const read = readCatalogueText(text.value, known, told);
  return read.ok ? read : { ok: false, problem: `${file}: ${read.problem}` };
}

/** The lines of a file in which every row can be read; else a problem that names the first that cannot. */
export function loadCatalogue(file: string): Parsed<readonly StockLine[]> {
  const read = readCatalogueFile(file);
  if (!read.ok) return read;
  const all = allRows(read.value);
  if (all.ok) return all;
  const seeAll = read.value.refused.length === 1 ? "" : ", see faultwright catalogue check";
  return { ok: false, problem: `${file}: ${all.problem}${seeAll}` };
}
