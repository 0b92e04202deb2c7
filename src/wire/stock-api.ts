/**
 * What the page and the server say to each other of the shop's stock, under `/api/stock`. Errors as in `job-api.ts`.
 *
 * GET  /api/stock           -> StockAnswer
 * GET  /api/stock/file      -> the catalogue file (CSV) as a download
 * POST /api/stock/import    the CSV itself (text/csv) -> ImportAnswer; with one row refused nothing is kept
 * POST /api/stock/lines     TypedLine -> StockAnswer: a line added or corrected
 * POST /api/stock/gone      GoneLine -> StockAnswer: a line taken off the list
 */
import type { KeptLine } from "../parts/stock/stock.ts";

export type { ImportRow, ImportView, RowFate } from "../parts/stock/import-view.ts";
export type { KeptLine } from "../parts/stock/stock.ts";
export type { GoneLine, TypedLine } from "../parts/stock/typed-count.ts";

/** Largest catalogue file, bytes. */
export const CATALOGUE_BYTES = 10_000_000;

export interface StockAnswer {
  readonly lines: readonly KeptLine[];
}

export interface ImportAnswer {
  readonly rows: number;
  readonly new: number;
  readonly changed: number;
  readonly same: number;
}
