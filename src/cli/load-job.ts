import { dirname, resolve } from "node:path";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import type { Job } from "../job/job.ts";
import { boardPathOf, parseJob } from "../job/parse-job.ts";
import type { Parsed } from "../units/outcome.ts";
import { readJson } from "./read-file.ts";

export interface LoadedJob {
  readonly job: Job;
  /** the file's own content, for writing it back with nothing lost */
  readonly content: Readonly<Record<string, unknown>>;
}

/** Reads a job file, and the board file it names if it names one. A problem names the file in which it lies. */
export function loadJob(file: string): Parsed<LoadedJob> {
  const content = readJson(file);
  if (!content.ok) return content;
  const boardPath = boardPathOf(content.value);
  const board = boardPath === null ? null : loadBoard(resolve(dirname(file), boardPath));
  if (board !== null && !board.ok) return { ok: false, problem: `${file}: board: ${board.problem}` };
  const job = parseJob(content.value, board === null ? null : board.value);
  if (!job.ok) return { ok: false, problem: `${file}: ${job.problem}` };
  return { ok: true, value: { job: job.value, content: content.value as Record<string, unknown> } };
}

export function loadBoard(file: string): Parsed<Board> {
  const content = readJson(file);
  if (!content.ok) return content;
  const board = parseBoard(content.value);
  return board.ok ? board : { ok: false, problem: `${file}: ${board.problem}` };
}
