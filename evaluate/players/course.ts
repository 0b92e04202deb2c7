/** One player's job as it goes: the log grows by what the bench answers, and minutes and money are counted alike for all. */
import type { JobEvent, Verdict } from "../../src/bench/event.ts";
import { foldLog } from "../../src/bench/fold.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import type { Job } from "../../src/job/job.ts";
import { actionMinutes } from "../../src/money/minutes.ts";
import { isObtainable, partPrice } from "../../src/money/prices.ts";
import { makeSafe } from "../../src/planning/make-safe.ts";
import type { Action } from "../../src/planning/proposal.ts";
import type { Asked } from "../../src/practice/answer.ts";
import type { HiddenBench } from "./hidden-bench.ts";

/** How a job ended, for the tables. */
export interface Outcome {
  readonly verdict: Verdict | "ran out";
  readonly minutes: number;
  readonly partsMoney: number;
  readonly profit: number;
  /** closed as repaired, but it never ran, or what is left would bring it back */
  readonly falselyRepaired: boolean;
  /** given up although every part that was faulty on arrival can be bought */
  readonly givenUpRepairable: boolean;
  readonly lifts: number;
  readonly powerUps: number;
  readonly arrived: readonly string[];
  readonly left: readonly string[];
  readonly log: readonly JobEvent[];
}

const MOST_SAFETY_STEPS = 40;

export class Course {
  readonly job: Job;
  readonly bench: HiddenBench;
  readonly log: JobEvent[] = [];
  verdict: Verdict | null = null;

  constructor(job: Job, bench: HiddenBench) {
    this.job = job;
    this.bench = bench;
  }

  get timeline(): Timeline {
    const folded = foldLog(this.job.board, this.job.absent, this.log);
    if (!folded.ok) throw new Error(folded.problem);
    return folded.value;
  }

  /** Does one thing and gives the event with what came of it. */
  async take(action: Action): Promise<JobEvent> {
    const event = await this.bench.answer(this.timeline, action as Asked);
    const kept = { ...event, id: `e${this.log.length}` } as JobEvent;
    this.log.push(kept);
    if (kept.do === "close") this.verdict = kept.verdict;
    return kept;
  }

  async close(verdict: Verdict): Promise<void> {
    await this.take({ do: "close", verdict });
  }

  /** Switches off, proves every store empty, discharges what is not: the same steps for every player. */
  async makeSafe(): Promise<void> {
    for (let step = 0; step < MOST_SAFETY_STEPS; step++) {
      const { job, timeline } = this;
      const due = makeSafe({ ...job, bench: timeline.now, timeline });
      if (due === null) return;
      for (const action of [due.action, ...due.row]) await this.take(action);
    }
  }

  get minutes(): number {
    return this.timeline.entries.reduce(
      (sum, { event, before }) => sum + actionMinutes(this.job.board, before, event),
      0,
    );
  }

  get partsMoney(): number {
    return this.timeline.entries.reduce((sum, { event }) => {
      const part = event.do === "replace" ? this.job.board.parts.get(event.part) : undefined;
      return part === undefined ? sum : sum + partPrice(part, this.job.terms.newBoardPrice);
    }, 0);
  }

  /** Money put in so far: time and parts. */
  get spent(): number {
    return this.partsMoney + (this.minutes * this.job.terms.ratePerHour) / 60;
  }

  outcome(arrived: readonly string[]): Outcome {
    const { job, timeline, verdict } = this;
    const left = this.bench.faulty(timeline);
    const ran = lastSeen(timeline).includes("runs");
    const curable = arrived.every((name) => {
      const part = job.board.parts.get(name);
      return part === undefined || isObtainable(part);
    });
    const mended = verdict === "repaired" || verdict === "no-fault";
    const falselyRepaired = mended && !ran;
    const income = mended
      ? ran
        ? job.terms.agreedPrice
        : -job.terms.comebackCost
      : job.terms.feeIfNotRepaired;
    return {
      verdict: verdict ?? "ran out",
      minutes: this.minutes,
      partsMoney: this.partsMoney,
      profit: income - this.spent,
      falselyRepaired,
      givenUpRepairable: !mended && curable,
      lifts: this.log.filter(({ do: what }) => what === "lift" || what === "remove").length,
      powerUps: this.log.filter(({ do: what }) => what === "power").length,
      arrived: this.bench.faults(emptyTimeline(job)),
      left,
      log: this.log,
    };
  }
}

function emptyTimeline(job: Job): Timeline {
  const folded = foldLog(job.board, job.absent, []);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

/** What was seen at the last power-up. */
export function lastSeen(timeline: Timeline): readonly string[] {
  const last = timeline.entries.findLast(({ event }) => event.do === "power")?.event;
  return last?.do === "power" && last.observed !== undefined ? [last.observed].flat() : [];
}
