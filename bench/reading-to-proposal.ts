/** How long a technician waits: from entering a reading to the next proposal, over practice jobs, as milliseconds of this machine. */
import { performance } from "node:perf_hooks";
import { Course } from "../evaluate/players/course.ts";
import { practiceBench } from "../evaluate/players/hidden-bench.ts";
import { trialJob } from "../evaluate/trial.ts";
import type { Board } from "../src/board/board.ts";
import { AssessmentSession, assess } from "../src/job/assess.ts";
import type { Job } from "../src/job/job.ts";
import { likelyNext, workAhead } from "../src/job/work-ahead.ts";

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
  /** the same jobs with the likely outcomes worked out ahead while the hands were busy, as the page's worker does */
  readonly aheadMedianMs: number;
  readonly aheadNinetyFifthMs: number;
  /** what working ahead took, for each proposal: it is spent while nobody waits */
  readonly spentAheadMs: number;
}

interface Gathered {
  readonly waits: number[];
  readonly first: number[];
  readonly weighed: number[];
  readonly ahead: number[];
}

/** Most proposals followed of one job. */
const MOST_STEPS = 40;

/** Plays `seeds` jobs and gathers every wait but the first of each, without work ahead and with it. */
export async function measureWaits(board: Board, seeds: readonly number[]): Promise<Waits> {
  const plain: Gathered = { waits: [], first: [], weighed: [], ahead: [] };
  const helped: Gathered = { waits: [], first: [], weighed: [], ahead: [] };
  for (const seed of seeds) {
    await playJob(board, seed, false, plain);
    await playJob(board, seed, true, helped);
  }
  return {
    proposals: plain.waits.length,
    medianMs: quantile(plain.waits, 0.5),
    ninetyFifthMs: quantile(plain.waits, 0.95),
    slowestMs: quantile(plain.waits, 1),
    firstMs: quantile(plain.first, 0.5),
    firstWeighedMs: quantile(plain.weighed, 0.5),
    aheadMedianMs: quantile(helped.waits, 0.5),
    aheadNinetyFifthMs: quantile(helped.waits, 0.95),
    spentAheadMs: quantile(helped.ahead, 0.5),
  };
}

/** The bench answers from a session of its own. */
async function playJob(board: Board, seed: number, worksAhead: boolean, gathered: Gathered): Promise<void> {
  const job = trialJob(board, seed);
  const [session, hidden] = [new AssessmentSession(), new AssessmentSession()];
  const bench = practiceBench(job, hidden.priors(job), seed, (_board, state) => hidden.predictor(job, state));
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
    if (step === 0) gathered.first.push(took);
    else if (fresh && weighs) gathered.weighed.push(took);
    else gathered.waits.push(took);
    if (weighs) fresh = false;
    for (const next of [action, ...row]) {
      if (worksAhead) gathered.ahead.push(aheadOf({ ...job, log: course.log }, session));
      await course.take(next);
    }
  }
}

/** What the page's worker does after every reading, in a row too, where nobody waits for it: milliseconds. */
function aheadOf(job: Job, session: AssessmentSession): number {
  const began = performance.now();
  const assessed = assess(job, session);
  if (assessed.ok) for (const next of likelyNext(assessed.value.proposal)) workAhead(job, next, session);
  return performance.now() - began;
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
