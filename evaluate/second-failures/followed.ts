/** The power-ups of a job that the engine played: each was proposed by it, and each is foretold anew from the log as it then was. */

import type { Board } from "../../src/board/board.ts";
import { AssessmentSession, type Believed, beliefOf } from "../../src/job/assess.ts";
import { judgedBoards } from "../boards/judged-boards.ts";
import { oracleBench } from "../oracle/oracle-bench.ts";
import { Course } from "../players/course.ts";
import { enginePlayer } from "../players/engine-player.ts";
import type { HiddenBench } from "../players/hidden-bench.ts";
import { oracleHiddenBench } from "../players/oracle-hidden-bench.ts";
import { causeOf, type Trial, trialJob } from "../trial.ts";
import { type PowerUp, powerUp } from "./power-up.ts";

type Played = Pick<Trial, "board" | "cause" | "seed" | "symptom" | "log">;

export async function followed(trial: Played): Promise<readonly PowerUp[]> {
  const [chosen] = judgedBoards(trial.board);
  if (chosen === undefined) throw new Error(`no board ${trial.board}`);
  const hidden = oracleHiddenBench(oracleBench(chosen.board, trial.cause, trial.seed));
  const session = new AssessmentSession();
  return powerUps(trial, chosen.board, hidden, (course) => {
    const believed = beliefOf(course.job, session);
    if (!believed.ok) throw new Error(believed.problem);
    return believed.value;
  });
}

/** The power-ups of a job that the engine plays to its verdict, with nobody beside it. */
export async function playedAlone(id: string, board: Board, seed: number): Promise<readonly PowerUp[]> {
  const cause = causeOf(seed);
  const bench = oracleBench(board, cause, seed);
  const hidden = oracleHiddenBench(bench);
  const { symptom } = bench.oracle;
  const course = new Course(trialJob(board, seed, symptom), hidden);
  const session = new AssessmentSession();
  // what it believed of each log as it proposed power: the same as is believed of that log anew
  const believedAt = new Map<number, Believed>();
  await enginePlayer(
    course,
    session,
    () => 0,
    (_, assessed) => {
      if (assessed.proposal.action.do === "power") believedAt.set(course.log.length, assessed);
    },
  );
  return powerUps({ board: id, cause, seed, symptom, log: course.log }, board, hidden, ({ log, job }) => {
    const known = believedAt.get(log.length);
    if (known !== undefined) return known;
    const believed = beliefOf(job, session);
    if (!believed.ok) throw new Error(believed.problem);
    return believed.value;
  });
}

/** @param believed - of a course as it stands */
async function powerUps(
  { board: id, seed, symptom, log }: Played,
  board: Board,
  hidden: HiddenBench,
  believed: (course: Course) => Believed,
): Promise<readonly PowerUp[]> {
  const ups: PowerUp[] = [];
  for (const [at, event] of log.entries()) {
    if (event.do !== "power") continue;
    const course = new Course(trialJob(board, seed, symptom), hidden);
    course.log.push(...log.slice(0, at));
    const { observed: _, signs: __, ...asked } = event;
    ups.push(await powerUp(id, seed, course, asked, believed(course)));
  }
  return ups;
}
