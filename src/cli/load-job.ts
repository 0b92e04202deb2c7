import { dirname, resolve } from "node:path";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import type { Job } from "../job/job.ts";
import { boardPathOf, parseJob } from "../job/parse-job.ts";
import type { StockLine } from "../parts/catalogue.ts";
import { atHandFor } from "../parts/stock/at-hand.ts";
import type { Parsed } from "../units/outcome.ts";
import { loadCatalogue } from "./catalogue/catalogue-file.ts";
import { readJson } from "./read-file.ts";

export interface LoadedJob {
  readonly job: Job;
  /** the file's own content, for writing it back with nothing lost */
  readonly content: Readonly<Record<string, unknown>>;
  /** what the job counts with as at hand, as a file has it */
  readonly stock: unknown;
}

/**
 * Reads a job file, and the board file it names if it names one. A problem names the file in which it lies.
 * @param drawer - a shop's stock: what of it may go into which place counts as at hand, beside what the file itself says
 */
export function loadJob(file: string, drawer: readonly StockLine[] = []): Parsed<LoadedJob> {
  const content = readJson(file);
  if (!content.ok) return content;
  const boardPath = boardPathOf(content.value);
  const board = boardPath === null ? null : loadBoard(resolve(dirname(file), boardPath));
  if (board !== null && !board.ok) return { ok: false, problem: `${file}: board: ${board.problem}` };
  const job = parseJob(content.value, board === null ? null : board.value);
  if (!job.ok) return { ok: false, problem: `${file}: ${job.problem}` };
  const own = content.value as Record<string, unknown>;
  if (drawer.length === 0) return { ok: true, value: { job: job.value, content: own, stock: own.stock } };
  const known = job.value.asBrought.board;
  const stock = { ...atHandFor(known, drawer), ...(own.stock as object | undefined) };
  const filled = parseJob({ ...own, stock }, known);
  return filled.ok ? { ok: true, value: { job: filled.value, content: own, stock } } : filled;
}

export function loadBoard(file: string): Parsed<Board> {
  const content = readJson(file);
  if (!content.ok) return content;
  const board = parseBoard(content.value);
  return board.ok ? board : { ok: false, problem: `${file}: ${board.problem}` };
}

/** A job with the drawer of `--stock`, where one was named. */
export function loadJobWithStock(file: string, catalogue: string | undefined): Parsed<LoadedJob> {
  if (catalogue === undefined) return loadJob(file);
  const drawer = loadCatalogue(catalogue);
  return drawer.ok ? loadJob(file, drawer.value) : drawer;
}
