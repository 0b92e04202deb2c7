/** How long a technician waits: from entering a reading to the next proposal, over practice jobs, as milliseconds of this machine. */
import { performance } from "node:perf_hooks";
import { Course } from "../evaluate/players/course.ts";
import { practiceBench } from "../evaluate/players/hidden-bench.ts";
import { trialJob } from "../evaluate/trial.ts";
import type { Board } from "../src/board/board.ts";
import { AssessmentSession, assess } from "../src/job/assess.ts";

export interface Waits {
  /** proposals of the same session before them not counted: the first of each job stands by itself */
  readonly proposals: number;
  readonly medianMs: number;
  readonly ninetyFifthMs: number;
  readonly slowestMs: number;
  /** the first proposal of a fresh job, prior table and circuit included: median over the jobs */
  readonly firstMs: number;
  /** the first that is weighed: every store just proven empty, nothing of the circuit asked before */
  readonly firstWeighedMs: number;
}

/** Most proposals followed of one job. */
const MOST_STEPS = 40;

/** Plays `seeds` jobs and gathers every wait but the first of each. The bench answers from a session of its own. */
export async function measureWaits(board: Board, seeds: readonly number[]): Promise<Waits> {
  const waits: number[] = [];
  const first: number[] = [];
  const weighed: number[] = [];
  for (const seed of seeds) {
    const job = trialJob(board, seed);
    const [session, hidden] = [new AssessmentSession(), new AssessmentSession()];
    const bench = practiceBench(job, hidden.priors(job), seed, (_board, state) =>
      hidden.predictor(job, state),
    );
    const course = new Course(job, bench);
    let fresh = true;
    for (let step = 0; step < MOST_STEPS && course.verdict === null; step++) {
      const started = performance.now();
      const assessed = assess({ ...job, log: course.log }, session);
      const took = performance.now() - started;
      if (!assessed.ok) throw new Error(assessed.problem);
      const { action, row } = assessed.value.proposal;
      const proves = action.do === "measure" && action.mode === "dcv";
      const weighs = !proves && action.do !== "clip" && action.do !== "unclip";
      if (step === 0) first.push(took);
      else if (fresh && weighs) weighed.push(took);
      else waits.push(took);
      if (weighs) fresh = false;
      for (const next of [action, ...row]) await course.take(next);
    }
  }
  return {
    proposals: waits.length,
    medianMs: quantile(waits, 0.5),
    ninetyFifthMs: quantile(waits, 0.95),
    slowestMs: quantile(waits, 1),
    firstMs: quantile(first, 0.5),
    firstWeighedMs: quantile(weighed, 0.5),
  };
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
