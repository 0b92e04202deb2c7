/** A board with faults that only the bench knows: what players are tried on. */

import type { JobEvent } from "../../src/bench/event.ts";
import { lastPowered } from "../../src/bench/last-power.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import type { Job } from "../../src/job/job.ts";
import type { MakePredictor } from "../../src/meter/prediction.ts";
import { type Asked, answer } from "../../src/practice/answer.ts";
import { faultsAfter, type PracticeJob } from "../../src/practice/hidden-course.ts";
import type { PriorTable } from "../../src/priors/fault-prior.ts";

/** The event that happened in place of the one asked, or one sentence why there is none. */
export type BenchAnswer =
  | { readonly ok: true; readonly event: JobEvent; readonly slipped: boolean }
  | { readonly ok: false; readonly problem: string };

/** What a board is worth as it stands: it works, it runs but comes back, or it does not do its work. */
export type BoardState = "works" | "weak" | "dead";

export interface HiddenBench {
  /** answers to events that follow one another and leave the bench as it is but for the last, in their order */
  answerRow(timeline: Timeline, asked: readonly Asked[]): Promise<readonly BenchAnswer[]>;
  /** names of what is faulty after the log and has to be cured: a part's reference, or `NET1~NET2` */
  faulty(timeline: Timeline): readonly string[];
  /** names of all that is faulty, also what nobody would ever notice */
  dead(timeline: Timeline): readonly string[];
  /** of what the last entry, a power-up, broke: what would have died at any switch-on, with nothing else wrong */
  diedOfThemselves?(timeline: Timeline): ReadonlySet<string>;
  /** the faults as the file format spells them, for the tables */
  faults(timeline: Timeline): readonly string[];
  /** the truth by which a verdict is judged */
  state(timeline: Timeline): BoardState;
}

/** What was seen at the last power-up. */
export function lastSeen(timeline: Timeline): readonly string[] {
  return [lastPowered(timeline)?.power.observed ?? []].flat();
}

/**
 * The practice bench: readings from our own solver with noise and hidden values. It proves nothing about real boards. A board that
 * ran at its last power-up counts as working.
 */
export function practiceBench(
  job: Job,
  table: PriorTable,
  seed: number,
  predictors: MakePredictor,
): HiddenBench {
  const practice: PracticeJob = { job, table, seed };
  const present = (timeline: Timeline) => faultsAfter(practice, timeline);
  const names = (timeline: Timeline) => [
    ...new Set(present(timeline).map(({ row }) => table.faults[row].part)),
  ];
  return {
    answerRow: async (timeline, asked) =>
      asked.map((one) => {
        const done = answer(practice, timeline, one, predictors);
        return done.ok ? { ...done, slipped: false } : done;
      }),
    faulty: names,
    dead: names,
    faults: (timeline) => present(timeline).map(({ row }) => table.faults[row].reportAs),
    state: (timeline) => (lastSeen(timeline).includes("runs") ? "works" : "dead"),
  };
}
