/** The power-ups of a job that the engine played: each was proposed by it, and each is foretold anew from the log as it then was. */

import type { Board } from "../../src/board/board.ts";
import { AssessmentSession } from "../../src/job/assess.ts";
import { judgedBoards } from "../boards/judged-boards.ts";
import { oracleBench } from "../oracle/oracle-bench.ts";
import { Course } from "../players/course.ts";
import { enginePlayer } from "../players/engine-player.ts";
import { oracleHiddenBench } from "../players/oracle-hidden-bench.ts";
import { causeOf, type Trial, trialJob } from "../trial.ts";
import { type PowerUp, powerUp } from "./power-up.ts";

export async function followed({
  board: id,
  cause,
  seed,
  symptom,
  log,
}: Pick<Trial, "board" | "cause" | "seed" | "symptom" | "log">): Promise<readonly PowerUp[]> {
  const [chosen] = judgedBoards(id);
  if (chosen === undefined) throw new Error(`no board ${id}`);
  const hidden = oracleHiddenBench(oracleBench(chosen.board, cause, seed));
  const session = new AssessmentSession();
  const ups: PowerUp[] = [];
  for (const [at, event] of log.entries()) {
    if (event.do !== "power") continue;
    const course = new Course(trialJob(chosen.board, seed, symptom), hidden);
    course.log.push(...log.slice(0, at));
    const { observed: _, ...asked } = event;
    ups.push(await powerUp(id, seed, course, asked, session));
  }
  return ups;
}

/** The power-ups of a job that the engine plays to its verdict, with nobody beside it. */
export async function playedAlone(id: string, board: Board, seed: number): Promise<readonly PowerUp[]> {
  const cause = causeOf(seed);
  const bench = oracleBench(board, cause, seed);
  const { symptom } = bench.oracle;
  const course = new Course(trialJob(board, seed, symptom), oracleHiddenBench(bench));
  await enginePlayer(course, new AssessmentSession());
  return followed({ board: id, cause, seed, symptom, log: course.log });
}
