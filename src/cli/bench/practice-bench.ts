import type { JobEvent } from "../../bench/event.ts";
import { foldLog } from "../../bench/fold.ts";
import { faultName } from "../../board/fault.ts";
import type { Assessment } from "../../job/assess.ts";
import type { PracticeCase } from "../../job/practice-case.ts";
import { predictorsAfter } from "../../job/predictor-of-job.ts";
import type { Action } from "../../planning/proposal.ts";
import { answer } from "../../practice/answer.ts";
import { faultsOnArrival, type PracticeJob, practiceJobOf } from "../../practice/hidden-course.ts";
import { caseAnswer, caseJob } from "../../teaching/case-bench.ts";
import type { Parsed } from "../../units/outcome.ts";

/** A bench without a board: what is asked for is answered from hidden faults that the seed drew, or from a recorded case. */
export class PracticeBench {
  /** the number that hides the faults */
  readonly seed: number;
  readonly #case: PracticeCase | null;

  constructor(seed: number, recorded: PracticeCase | null = null) {
    this.seed = seed;
    this.#case = recorded;
  }

  /** The step proposed and its row, done on the hidden board; stops before the first that it has no answer to. */
  ask(
    assessment: Assessment,
    stamp: () => { readonly id: string; readonly at: string },
  ): Parsed<readonly JobEvent[]> {
    const { job, proposal } = assessment;
    const hidden = this.#practice(assessment);
    if (!hidden.ok) return hidden;
    const practice = hidden.value;
    const events: JobEvent[] = [];
    for (const action of [proposal.action, ...proposal.row]) {
      const timeline = foldLog(job.board, job.absent, [...job.log, ...events]);
      if (!timeline.ok) return timeline;
      const make = predictorsAfter(job.cause);
      const answered =
        this.#case === null
          ? answer(practice, timeline.value, action, make)
          : caseAnswer(practice, this.#case, timeline.value, action, make);
      if (!answered.ok && events.length === 0) return answered;
      if (!answered.ok) break;
      events.push(stamped(answered.event, action, stamp()));
    }
    return { ok: true, value: events };
  }

  /** The faults the board came in with, for whoever has finished or given up. */
  hidden(assessment: Assessment): readonly string[] {
    const practice = this.#practice(assessment);
    return (practice.ok ? faultsOnArrival(practice.value) : []).map(({ fault }) => faultName(fault));
  }

  #practice({ job, priors }: Assessment): Parsed<PracticeJob> {
    if (this.#case !== null) return caseJob(job, priors, this.seed, this.#case);
    return { ok: true, value: practiceJobOf(job, priors, this.seed) };
  }
}

/** The time goes where `at` does not mean two places. */
function stamped(
  event: JobEvent,
  action: Action,
  { id, at }: { readonly id: string; readonly at: string },
): JobEvent {
  return "at" in action ? { ...event, id } : ({ ...event, id, at } as JobEvent);
}
