/** The dry run of an import: what would become of every row, before any is taken in. */
import type { Parsed } from "../../units/outcome.ts";
import type { Fate } from "../catalogue-import.ts";
import { type RowsRead, readCatalogueText } from "../catalogue-text.ts";
import { importCount } from "./import-count.ts";
import type { KeptLine } from "./stock.ts";

export type RowFate = Fate | "refused";

export interface ImportRow {
  readonly line: number;
  readonly name: string;
  readonly fate: RowFate;
  /** of a refused one: all of them */
  readonly reasons: readonly string[];
  /** of one that is changed, or adds to a type that is known: what becomes another */
  readonly changes: readonly string[];
}

export interface ImportView {
  /** in the file's order */
  readonly rows: readonly ImportRow[];
  readonly counts: Readonly<Record<RowFate, number>>;
}

/** `told` hears how many rows were read. A problem is one that leaves no row to read. */
export function importView(text: string, stock: readonly KeptLine[], told: RowsRead): Parsed<ImportView> {
  const read = readCatalogueText(
    text,
    stock.map((line) => line.type),
    told,
  );
  if (!read.ok) return read;
  const { lines, refused } = read.value;
  const { rows: fates } = importCount(
    stock,
    lines.map((one) => one.stock),
  );
  const taken = lines.map(({ line, stock: one }, at): ImportRow => {
    const { fate = "new", changes = [] } = fates[at] ?? {};
    return { line, name: one.type.name, fate, reasons: [], changes };
  });
  const rows = [
    ...taken,
    ...refused.map((row): ImportRow => ({ ...row, fate: "refused", changes: [] })),
  ].sort((a, b) => a.line - b.line);
  const counts = { new: 0, changed: 0, same: 0, refused: 0 };
  for (const { fate } of rows) counts[fate]++;
  return { ok: true, value: { rows, counts } };
}
