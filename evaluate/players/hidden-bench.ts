/** A board with faults that only the bench knows: what players are tried on. */
import type { JobEvent } from "../../src/bench/event.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import type { Job } from "../../src/job/job.ts";
import type { MakePredictor } from "../../src/meter/prediction.ts";
import { type Asked, answer } from "../../src/practice/answer.ts";
import { faultsAfter, type PracticeJob } from "../../src/practice/hidden-course.ts";
import type { PriorTable } from "../../src/priors/fault-prior.ts";

export interface HiddenBench {
  /** the event with what came of it; rejects where the bench has no answer to it */
  answer(timeline: Timeline, asked: Asked): Promise<JobEvent>;
  /** names of what is faulty after the log: a part's reference, or `NET1~NET2` */
  faulty(timeline: Timeline): readonly string[];
  /** the faults as the file format spells them, for the tables */
  faults(timeline: Timeline): readonly string[];
}

/** The practice bench: readings from our own solver with noise and hidden values. It proves nothing about real boards. */
export function practiceBench(
  job: Job,
  table: PriorTable,
  seed: number,
  predictors: MakePredictor,
): HiddenBench {
  const practice: PracticeJob = { job, table, seed };
  const present = (timeline: Timeline) => faultsAfter(practice, timeline);
  return {
    answer: async (timeline, asked) => {
      const done = answer(practice, timeline, asked, predictors);
      if (!done.ok) throw new Error(`seed ${seed}, ${JSON.stringify(asked)}: ${done.problem}`);
      return done.event;
    },
    faulty: (timeline) => [...new Set(present(timeline).map(({ row }) => table.faults[row].part))],
    faults: (timeline) => present(timeline).map(({ row }) => table.faults[row].reportAs),
  };
}
