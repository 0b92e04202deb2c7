/** One board with hidden faults, played by every player. */

import type { JobEvent } from "../src/bench/event.ts";
import type { Board } from "../src/board/board.ts";
import { type Assessment, AssessmentSession } from "../src/job/assess.ts";
import type { Job } from "../src/job/job.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { plain } from "../src/messages/said.ts";
import { CAUSES, type Cause, type Symptom } from "../src/priors/cause.ts";
import { oracleBench } from "./oracle/oracle-bench.ts";
import { allKnowing } from "./players/all-knowing.ts";
import { Course, type Outcome } from "./players/course.ts";
import { enginePlayer } from "./players/engine-player.ts";
import { fixedWalk } from "./players/fixed-walk.ts";
import { type HiddenBench, practiceBench } from "./players/hidden-bench.ts";
import { oracleHiddenBench } from "./players/oracle-hidden-bench.ts";
import { walkWithInference } from "./players/walk-with-inference.ts";

export const PLAYERS = ["engine", "walk", "walk with inference", "all-knowing"] as const;
export type PlayerName = (typeof PLAYERS)[number];

/** Where the readings come from: ngspice with physics of its own, or our own solver, which proves nothing of the model. */
export const READINGS = ["oracle", "own solver"] as const;
export type Readings = (typeof READINGS)[number];

/** What the engine believed when it proposed the step that begins at log index `at`. */
export interface Step {
  readonly at: number;
  /** minutes gone */
  readonly minutes: number;
  /** each true fault by name, with the probability that the engine gives it */
  readonly believed: Readonly<Record<string, number>>;
  /** the most probable part that has no fault */
  readonly accused: readonly [string, number] | null;
  /** expected margin of the job and chance that it ends repaired, as the engine sees it */
  readonly margin: number;
  readonly repair: number;
  readonly why: string;
}

/** All that is kept of a trial: one line of a file. */
export interface Trial {
  readonly readings: Readings;
  readonly board: string;
  readonly cause: Cause;
  readonly symptom: Symptom;
  readonly seed: number;
  /** how this board differs from its file */
  readonly differences: readonly string[];
  /** the faults on arrival as the file format spells them, and the names of those that have to be cured */
  readonly arrived: readonly string[];
  readonly mattering: readonly string[];
  readonly outcomes: Readonly<Record<PlayerName, Outcome>>;
  /** milliseconds of processor time of the engine's proposals */
  readonly proposals: readonly number[];
  readonly seconds: Readonly<Record<PlayerName, number>>;
  readonly log: readonly JobEvent[];
  readonly steps: readonly Step[];
}

/** What a trial takes of the world around it. */
export interface Clocks {
  /** milliseconds of processor time, and of the wall */
  readonly cpu: () => number;
  readonly wall: () => number;
}

/** Causes in turn, whatever the board. */
export function causeOf(seed: number): Cause {
  return CAUSES[seed % CAUSES.length] ?? "unknown";
}

/** The job of a trial: default terms, a lamp on the bench. */
export function trialJob(board: Board, seed: number, symptom: Symptom = "dead"): Job {
  const content = {
    format: "faultwright-job/1",
    board: "trial",
    cause: causeOf(seed),
    symptom,
    equipment: ["lamp-100"],
    log: [],
  };
  const job = parseJob(content, board);
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

interface Scene {
  readonly job: Job;
  readonly bench: HiddenBench;
  readonly differences: readonly string[];
}

function sceneOf(board: Board, seed: number, readings: Readings, session: AssessmentSession): Scene {
  if (readings === "oracle") {
    const bench = oracleBench(board, causeOf(seed), seed);
    const { symptom, differences } = bench.oracle;
    return { job: trialJob(board, seed, symptom), bench: oracleHiddenBench(bench), differences };
  }
  const job = trialJob(board, seed);
  const bench = practiceBench(job, session.priors(job), seed, (_board, state) =>
    session.predictor(job, state),
  );
  return { job, bench, differences: [] };
}

const rounded = (value: number): number => Number(value.toPrecision(3));

function stepOf({ belief, proposal }: Assessment, course: Course): Step {
  const dead = course.bench.dead(course.timeline);
  const probability = new Map(belief.suspects.map((suspect) => [suspect.part, suspect.probability]));
  const accused = belief.suspects.find(({ part }) => !dead.includes(part));
  return {
    at: course.log.length,
    minutes: rounded(course.minutes),
    believed: Object.fromEntries(dead.map((name) => [name, rounded(probability.get(name) ?? 0)])),
    accused: accused === undefined ? null : [accused.part, rounded(accused.probability)],
    margin: rounded(proposal.outlook.expectedMargin),
    repair: rounded(proposal.outlook.repairProbability),
    why: plain(proposal.why),
  };
}

/** Plays one board with each player; every player meets the same hidden faults and the same noise. */
export async function playTrial(
  id: string,
  board: Board,
  seed: number,
  readings: Readings,
  clocks: Clocks,
): Promise<Trial> {
  const session = new AssessmentSession();
  const { job, bench, differences } = sceneOf(board, seed, readings, session);
  const proposals: number[] = [];
  const steps: Step[] = [];
  const start = new Course(job, bench);
  const play = async (player: (course: Course) => Promise<void>) => {
    const course = new Course(job, bench);
    const began = clocks.wall();
    try {
      await player(course);
    } catch (error) {
      course.verdict = "broken";
      course.unanswered.push(error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
    return { course, outcome: course.outcome(), seconds: rounded((clocks.wall() - began) / 1000) };
  };
  const played = {
    engine: await play((course) =>
      enginePlayer(course, session, clocks.cpu, (milliseconds, assessed) => {
        proposals.push(rounded(milliseconds));
        steps.push(stepOf(assessed, course));
      }),
    ),
    walk: await play((course) => fixedWalk(course)),
    "walk with inference": await play((course) => walkWithInference(course, session)),
    "all-knowing": await play(allKnowing),
  };
  const of = <T>(value: (player: PlayerName) => T) =>
    Object.fromEntries(PLAYERS.map((player) => [player, value(player)])) as Record<PlayerName, T>;
  return {
    readings,
    board: id,
    cause: job.cause,
    symptom: job.symptom,
    seed,
    differences,
    arrived: bench.faults(start.timeline),
    mattering: bench.faulty(start.timeline),
    outcomes: of((player) => played[player].outcome),
    proposals,
    seconds: of((player) => played[player].seconds),
    log: played.engine.course.log,
    steps,
  };
}
