/**
 * How long a technician waits: from entering a reading to the next proposal on the outdoor unit's board, over a whole
 * practice job, as milliseconds of this machine and as a multiple of one ngspice operating point in the same run.
 */
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { Course } from "../evaluate/players/course.ts";
import { enginePlayer } from "../evaluate/players/engine-player.ts";
import { practiceBench } from "../evaluate/players/hidden-bench.ts";
import { trialJob } from "../evaluate/trial.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { AssessmentSession } from "../src/job/assess.ts";

export interface Waits {
  readonly board: string;
  readonly proposals: number;
  readonly medianMs: number;
  readonly ninetyFifthMs: number;
  readonly slowestMs: number;
}

/** Plays `seeds` jobs and gathers every wait. */
export async function measureWaits(id: string, seeds: readonly number[]): Promise<Waits> {
  const board = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!board.ok) throw new Error(board.problem);
  const waits: number[] = [];
  for (const seed of seeds) {
    const job = trialJob(board.value, seed);
    const session = new AssessmentSession();
    const bench = practiceBench(job, session.priors(job), seed, (_board, state) =>
      session.predictor(job, state),
    );
    const clock = () => performance.now();
    await enginePlayer(new Course(job, bench), session, clock, (ms) => waits.push(ms));
  }
  waits.sort((a, b) => a - b);
  const at = (share: number): number => waits[Math.min(waits.length - 1, Math.floor(share * waits.length))];
  return { board: id, proposals: waits.length, medianMs: at(0.5), ninetyFifthMs: at(0.95), slowestMs: at(1) };
}
