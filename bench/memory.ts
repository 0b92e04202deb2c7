/**
 * What the engine keeps in memory: five practice jobs after one another in one session, as a page's worker works them. The session
 * holds one job's caches at a time, so what counts is the most it held. Bytes of the same engine that a browser's worker runs,
 * after a full collection each time.
 */
import { memoryUsage } from "node:process";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { Course } from "../evaluate/players/course.ts";
import { practiceBench } from "../evaluate/players/hidden-bench.ts";
import { trialJob } from "../evaluate/trial.ts";
import type { Board } from "../src/board/board.ts";
import { AssessmentSession, assess } from "../src/job/assess.ts";

const MOST_STEPS = 40;

export interface Memory {
  /** megabytes above what was there before the first job: the most after any proposal looked at, and at the end */
  readonly most: number;
  readonly atEnd: number;
}

function collect(): () => void {
  setFlagsFromString("--expose-gc");
  return runInNewContext("gc") as () => void;
}

/** Plays `seeds` jobs in one session; every eighth proposal and the end of each job are looked at. */
export async function measureMemory(board: Board, seeds: readonly number[]): Promise<Memory> {
  const gc = collect();
  const megabytes = (): number => {
    gc();
    const { heapUsed, external } = memoryUsage();
    return (heapUsed + external) / 1e6;
  };
  const before = megabytes();
  const session = new AssessmentSession();
  let most = 0;
  for (const seed of seeds) {
    const job = trialJob(board, seed);
    const bench = practiceBench(job, session.priors(job), seed, (_board, state) =>
      session.predictor(job, state),
    );
    const course = new Course(job, bench);
    for (let step = 0; step < MOST_STEPS && course.verdict === null; step++) {
      const assessed = assess({ ...job, log: course.log }, session);
      if (!assessed.ok) throw new Error(assessed.problem);
      const { action, row } = assessed.value.proposal;
      for (const next of [action, ...row]) await course.take(next);
      if (step % 8 === 7) most = Math.max(most, megabytes() - before);
    }
    most = Math.max(most, megabytes() - before);
  }
  return { most, atEnd: megabytes() - before };
}
