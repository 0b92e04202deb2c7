/** Plays one practice job from the empty log to its verdict, following every proposal. */

import type { JobEvent, Verdict } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import { type Assessment, AssessmentSession, assess } from "../src/job/assess.ts";
import type { Job } from "../src/job/job.ts";
import type { makePredictor } from "../src/meter/predictor.ts";
import { actionMinutes } from "../src/money/minutes.ts";
import { isObtainable, partPrice } from "../src/money/prices.ts";
import { type Asked, answer } from "../src/practice/answer.ts";
import { faultsAfter, faultsOnArrival, type PracticeJob } from "../src/practice/hidden-course.ts";

export interface PlayedJob {
  readonly seed: number;
  readonly verdict: Verdict | "ran out";
  /** the verdict fits what was really on the board at the end */
  readonly right: boolean;
  readonly minutes: number;
  readonly partsMoney: number;
  readonly profit: number;
  readonly steps: number;
  readonly powerUps: number;
  readonly hidden: readonly string[];
  readonly left: readonly string[];
  readonly log: readonly JobEvent[];
  /** milliseconds from each event to the next proposal */
  readonly waits: readonly number[];
  /** rank of the worst placed hidden part among the suspects just before the first spending, and its probability */
  readonly rankAtFirstRepair: number | null;
}

const MOST_STEPS = 150;

export function playJob(base: Job, seed: number, clock: () => number): PlayedJob {
  const session = new AssessmentSession();
  const practice: PracticeJob = { job: base, table: session.priors(base), seed };
  const log: JobEvent[] = [];
  const waits: number[] = [];
  let rankAtFirstRepair: number | null = null;
  let verdict: PlayedJob["verdict"] = "ran out";
  for (let step = 0; step < MOST_STEPS && verdict === "ran out"; step++) {
    const started = clock();
    const assessed = assess({ ...base, log }, session);
    if (!assessed.ok) throw new Error(`seed ${seed}: ${assessed.problem}`);
    waits.push(clock() - started);
    const { proposal } = assessed.value;
    if (proposal.action.do === "close") verdict = proposal.action.verdict;
    if (proposal.action.do === "replace" && rankAtFirstRepair === null)
      rankAtFirstRepair = worstRank(assessed.value, practice);
    for (const asked of [proposal.action, ...proposal.row]) {
      const folded = foldLog(base.board, base.absent, log);
      if (!folded.ok) throw new Error(`seed ${seed}: ${folded.problem}`);
      const done = answer(practice, folded.value, asked as Asked, makePredictorOf(session, base));
      if (!done.ok) throw new Error(`seed ${seed}, step ${step}, ${JSON.stringify(asked)}: ${done.problem}`);
      log.push({ ...done.event, id: `e${log.length}` } as JobEvent);
    }
  }
  return summary(base, practice, log, verdict, waits, rankAtFirstRepair);
}

function makePredictorOf(session: AssessmentSession, job: Job): typeof makePredictor {
  return (_board, bench) => session.predictor(job, bench);
}

function worstRank(assessment: Assessment, practice: PracticeJob): number {
  const hidden = faultsAfter(practice, assessment.timeline).flatMap(({ fault }) =>
    fault.of === "part" ? [fault.part] : [],
  );
  return hidden.reduce(
    (worst, part) =>
      Math.max(worst, 1 + assessment.belief.suspects.findIndex((suspect) => suspect.part === part)),
    0,
  );
}

function summary(
  base: Job,
  practice: PracticeJob,
  log: readonly JobEvent[],
  verdict: PlayedJob["verdict"],
  waits: readonly number[],
  rankAtFirstRepair: number | null,
): PlayedJob {
  const folded = foldLog(base.board, base.absent, log);
  if (!folded.ok) throw new Error(folded.problem);
  let minutes = 0;
  let partsMoney = 0;
  for (const { event, before } of folded.value.entries) {
    minutes += actionMinutes(base.board, before, event);
    const part = event.do === "replace" ? base.board.parts.get(event.part) : undefined;
    if (part !== undefined) partsMoney += partPrice(part, base.terms.newBoardPrice);
  }
  const left = faultsAfter(practice, folded.value);
  const arrived = faultsOnArrival(practice);
  const curable = arrived.every(({ fault }) => {
    const part = fault.of === "part" ? base.board.parts.get(fault.part) : undefined;
    return part === undefined || isObtainable(part);
  });
  const last = [...folded.value.entries].reverse().find(({ event }) => event.do === "power")?.event;
  const ran = last?.do === "power" && [last.observed].flat().includes("runs");
  const right = verdict === "repaired" || verdict === "no-fault" ? ran && left.length === 0 : !curable;
  const income =
    verdict === "repaired"
      ? left.length === 0 || ran
        ? base.terms.agreedPrice
        : -base.terms.comebackCost
      : base.terms.feeIfNotRepaired;
  return {
    seed: practice.seed,
    ...{ verdict, right, minutes, partsMoney, waits, rankAtFirstRepair, log },
    profit: income - partsMoney - (minutes * base.terms.ratePerHour) / 60,
    steps: waits.length,
    powerUps: log.filter((event) => event.do === "power").length,
    hidden: arrived.map(({ row }) => practice.table.faults[row].reportAs),
    left: left.map(({ row }) => practice.table.faults[row].reportAs),
  };
}
