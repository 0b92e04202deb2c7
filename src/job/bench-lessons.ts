/** The jobs of a bench taken together: which teach, how they hang together, and what they teach. */
import { figuresFor, type JobFigures } from "../learning/job-figures.ts";
import type { Learnt } from "../learning/learnt.ts";
import { type LearntView, learntView } from "../learning/learnt-view.ts";
import { ruleWords } from "../priors/knock-on-rules.ts";
import type { Job } from "./job.ts";
import { type Chained, EXTRA_SORTS, jobKindOf } from "./lesson-of-job.ts";

/** One job of the bench among the others. */
export interface Linked {
  readonly id: string;
  /** the job whose come-back it is */
  readonly comebackOf: string | null;
}

/** How each job hangs together with the rest, by id. A come-back of a job that is not here is counted as a board of its own. */
export function chainsOf(jobs: readonly Linked[]): ReadonlyMap<string, Chained> {
  const ids = new Set(jobs.map(({ id }) => id));
  const cameBack = new Set(jobs.flatMap(({ comebackOf }) => (comebackOf === null ? [] : [comebackOf])));
  return new Map(
    jobs.map(({ id, comebackOf }) => [
      id,
      { cameBack: cameBack.has(id), again: comebackOf !== null && ids.has(comebackOf) },
    ]),
  );
}

/** The figures that a job on this board after this cause is begun with. */
export function figuresOfJob(learnt: Learnt, job: Pick<Job, "board" | "cause">): JobFigures | null {
  return figuresFor(learnt, jobKindOf(job), EXTRA_SORTS);
}

export function benchLearntView(learnt: Learnt): LearntView {
  return learntView(learnt, ruleWords);
}
