/**
 * Power applied whatever is believed: after none, a few or all of the sweep's twelve readings, on the mains or behind a lamp, by the seed. So
 * every forecast is met, also those after which the engine would never have proposed power.
 */
import type { Board } from "../../src/board/board.ts";
import { AssessmentSession, beliefOf } from "../../src/job/assess.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { oracleBench } from "../oracle/oracle-bench.ts";
import { Course } from "../players/course.ts";
import { oracleHiddenBench } from "../players/oracle-hidden-bench.ts";
import { sweepChecks } from "../sweep-checks.ts";
import { causeOf, trialJob } from "../trial.ts";
import { type PowerUp, powerUp } from "./power-up.ts";

const READINGS = [0, 2, 5, 8, 12] as const;
/** Share of the boards that are powered behind a lamp. */
const LAMP_SHARE = 0.3;

export async function againstAdvice(id: string, board: Board, seed: number): Promise<PowerUp> {
  const bench = oracleBench(board, causeOf(seed), seed);
  const job = trialJob(board, seed, bench.oracle.symptom);
  const course = new Course(job, oracleHiddenBench(bench));
  const random = seededRandom(seed, "power against advice");
  const readings = READINGS[Math.floor(random() * READINGS.length)] ?? 0;
  await course.makeSafe();
  for (const check of sweepChecks(board).slice(0, readings)) await course.take({ do: "measure", ...check });
  const lamp = random() < LAMP_SHARE;
  const power = lamp
    ? ({ do: "power", feed: "lamp", watts: 100 } as const)
    : ({ do: "power", feed: "mains" } as const);
  const believed = beliefOf(course.job, new AssessmentSession());
  if (!believed.ok) throw new Error(believed.problem);
  return powerUp(id, seed, course, power, believed.value);
}
