/** One board with hidden faults, played by every player. */

import type { Board } from "../src/board/board.ts";
import { AssessmentSession } from "../src/job/assess.ts";
import type { Job } from "../src/job/job.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { CAUSES } from "../src/priors/cause.ts";
import { allKnowing } from "./players/all-knowing.ts";
import { Course, type Outcome } from "./players/course.ts";
import { enginePlayer } from "./players/engine-player.ts";
import { fixedWalk } from "./players/fixed-walk.ts";
import { practiceBench } from "./players/hidden-bench.ts";
import { walkWithInference } from "./players/walk-with-inference.ts";

export const PLAYERS = ["engine", "walk", "walk with inference", "all-knowing"] as const;
export type PlayerName = (typeof PLAYERS)[number];

export interface Trial {
  readonly board: string;
  readonly cause: string;
  readonly seed: number;
  readonly outcomes: Readonly<Record<PlayerName, Outcome>>;
  /** milliseconds from each entry to the engine's next proposal */
  readonly waits: readonly number[];
}

/** The job of a trial: causes in turn, a lamp on the bench. */
export function trialJob(board: Board, seed: number): Job {
  const content = {
    format: "faultwright-job/1",
    board: "trial",
    cause: CAUSES[seed % CAUSES.length],
    symptom: "dead",
    equipment: ["lamp-100"],
    log: [],
  };
  const job = parseJob(content, board);
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

/** Plays one board with each player; every player meets the same hidden faults and the same noise. */
export async function playTrial(id: string, board: Board, seed: number, clock: () => number): Promise<Trial> {
  const job = trialJob(board, seed);
  const waits: number[] = [];
  const session = new AssessmentSession();
  const bench = () =>
    practiceBench(job, session.priors(job), seed, (_board, state) => session.predictor(job, state));
  const play = async (player: (course: Course) => Promise<void>): Promise<Outcome> => {
    const course = new Course(job, bench());
    const arrived = course.bench.faulty(course.timeline);
    await player(course);
    return course.outcome(arrived);
  };
  const outcomes = {
    engine: await play((course) => enginePlayer(course, session, clock, (ms) => waits.push(ms))),
    walk: await play((course) => fixedWalk(course)),
    "walk with inference": await play((course) => walkWithInference(course, session)),
    "all-knowing": await play(allKnowing),
  };
  return { board: id, cause: job.cause, seed, outcomes, waits };
}
