/**
 * How long a technician waits: from entering a reading to the next proposal on the outdoor unit's board, over a whole
 * practice job, as milliseconds of this machine and as a multiple of one ngspice operating point in the same run.
 */
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { playJob } from "../evaluate/play-job.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { parseJob } from "../src/job/parse-job.ts";

export interface Waits {
  readonly board: string;
  readonly proposals: number;
  readonly medianMs: number;
  readonly ninetyFifthMs: number;
  readonly slowestMs: number;
}

/** Plays `seeds` jobs and gathers every wait. */
export function measureWaits(id: string, seeds: readonly number[]): Waits {
  const board = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!board.ok) throw new Error(board.problem);
  const waits: number[] = [];
  for (const seed of seeds) {
    const content = {
      format: "faultwright-job/1",
      board: id,
      cause: "surge",
      symptom: "dead",
      equipment: ["lamp-100"],
      log: [],
    };
    const job = parseJob(content, board.value);
    if (!job.ok) throw new Error(job.problem);
    waits.push(...playJob(job.value, seed, () => performance.now()).waits);
  }
  waits.sort((a, b) => a - b);
  const at = (share: number): number => waits[Math.min(waits.length - 1, Math.floor(share * waits.length))];
  return { board: id, proposals: waits.length, medianMs: at(0.5), ninetyFifthMs: at(0.95), slowestMs: at(1) };
}
