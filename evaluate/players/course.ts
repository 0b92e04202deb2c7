/** One player's job as it goes: the log grows by what the bench answers, and minutes and money are counted alike for all. */
import type { JobEvent, Verdict } from "../../src/bench/event.ts";
import { foldLog } from "../../src/bench/fold.ts";
import type { Timeline } from "../../src/bench/timeline.ts";
import type { Job } from "../../src/job/job.ts";
import { asMarked } from "../../src/job/marked.ts";
import { actionMinutes } from "../../src/money/minutes.ts";
import { partPrice } from "../../src/money/prices.ts";
import { makeSafe } from "../../src/planning/make-safe.ts";
import type { Action } from "../../src/planning/proposal.ts";
import type { Asked } from "../../src/practice/answer.ts";
import type { BenchAnswer, BoardState, HiddenBench } from "./hidden-bench.ts";

/** How a job ended, for the tables. */
export interface Outcome {
  /** `ran out`: no verdict within the steps allowed; `broken`: the bench had no answer and the player no other step */
  readonly verdict: Verdict | "ran out" | "broken";
  readonly minutes: number;
  readonly partsMoney: number;
  readonly income: number;
  readonly profit: number;
  /** what the board is as it is handed back */
  readonly state: BoardState;
  /** closed as repaired, or as sound, but it does not do its work or would come back */
  readonly falselyRepaired: boolean;
  readonly lifts: number;
  readonly powerUps: number;
  /** repairs begun after one that did not help */
  readonly secondTries: number;
  /** parts replaced that had no fault */
  readonly goodReplaced: readonly string[];
  readonly slips: number;
  /** what the bench had no answer to */
  readonly unanswered: readonly string[];
  readonly left: readonly string[];
}

const MOST_SAFETY_STEPS = 40;
const CURES: ReadonlySet<string> = new Set(["replace", "clean", "resolder"]);

export class Course {
  /** the job as it came in, its log empty */
  readonly asBrought: Job;
  readonly bench: HiddenBench;
  readonly log: JobEvent[] = [];
  readonly unanswered: string[] = [];
  slips = 0;
  verdict: Verdict | "broken" | null = null;
  #folded: { readonly length: number; readonly job: Job; readonly timeline: Timeline } | null = null;

  constructor(job: Job, bench: HiddenBench) {
    this.asBrought = job;
    this.bench = bench;
  }

  /** The job with its log so far, and what was marked on the way put into board and absent parts. */
  get job(): Job {
    return this.#fold().job;
  }

  get timeline(): Timeline {
    return this.#fold().timeline;
  }

  #fold(): { readonly job: Job; readonly timeline: Timeline } {
    if (this.#folded?.length === this.log.length) return this.#folded;
    const log = [...this.log];
    const { board, absent } = this.asBrought;
    const job = { ...this.asBrought, ...asMarked(board, absent, log), log };
    const folded = foldLog(job.board, job.absent, log);
    if (!folded.ok) throw new Error(folded.problem);
    this.#folded = { length: log.length, job, timeline: folded.value };
    return this.#folded;
  }

  /** Does one thing and gives what happened: the event with its outcome, a `mark` in its place, or a `note` that there is no answer. */
  async take(action: Action): Promise<JobEvent> {
    const [event] = await this.takeRow([action]);
    if (event === undefined) throw new Error("an action was given no event");
    return event;
  }

  /**
   * Does one thing after another; readings in a row are asked for together. Where one is answered by a mark (the part is not there)
   * the rest of the row is left: it was about that part.
   */
  async takeRow(actions: readonly Action[]): Promise<readonly JobEvent[]> {
    const events: JobEvent[] = [];
    while (events.length < actions.length) {
      const left = actions.slice(events.length);
      const others = left.findIndex((action) => action.do !== "measure");
      const piece = left.slice(0, others < 0 ? left.length : Math.max(1, others));
      const answers = await this.bench.answerRow(this.timeline, piece as readonly Asked[]);
      for (const [at, answer] of answers.entries()) {
        const event = this.#keep(answer, piece[at]);
        events.push(event);
        if (event.do === "mark") return events;
      }
    }
    return events;
  }

  /** An event that makes the log impossible is withdrawn, and counts as one that the bench has no answer to. */
  #keep(answer: BenchAnswer, asked: Action | undefined): JobEvent {
    const id = `e${this.log.length}`;
    let problem = answer.ok ? null : answer.problem;
    if (answer.ok) {
      const kept: JobEvent = { ...answer.event, id };
      this.log.push(kept);
      problem = this.#impossible();
      if (problem === null) {
        if (answer.slipped) this.slips++;
        if (kept.do === "close") this.verdict = kept.verdict;
        return kept;
      }
      this.log.pop();
    }
    this.unanswered.push(`${JSON.stringify(asked)}: ${problem}`);
    const note: JobEvent = { do: "note", text: `unanswered: ${JSON.stringify(asked)}`, id };
    this.log.push(note);
    return note;
  }

  /** Why the log as it stands cannot be, or null. */
  #impossible(): string | null {
    const { board, absent } = asMarked(this.asBrought.board, this.asBrought.absent, this.log);
    const folded = foldLog(board, absent, this.log);
    return folded.ok ? null : folded.problem;
  }

  /** Asks for readings that are about to be taken one by one, so that the bench works them out together. Nothing is logged. */
  async prepare(actions: readonly Action[]): Promise<void> {
    await this.bench.answerRow(this.timeline, actions as readonly Asked[]);
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
      await this.takeRow([due.action, ...due.row]);
    }
  }

  get minutes(): number {
    const { board } = this.job;
    return this.timeline.entries.reduce(
      (sum, { event, before }) => sum + actionMinutes(board, before, event),
      0,
    );
  }

  get partsMoney(): number {
    const { board, terms } = this.job;
    return this.timeline.entries.reduce((sum, { event }) => {
      const part = event.do === "replace" ? board.parts.get(event.part) : undefined;
      return part === undefined ? sum : sum + partPrice(part, terms.newBoardPrice);
    }, 0);
  }

  /** Money put in so far: time and parts. */
  get spent(): number {
    return this.partsMoney + (this.minutes * this.asBrought.terms.ratePerHour) / 60;
  }

  outcome(): Outcome {
    const { timeline, verdict } = this;
    const { terms } = this.asBrought;
    const state = this.bench.state(timeline);
    const mended = verdict === "repaired" || verdict === "no-fault";
    const falselyRepaired = mended && state !== "works";
    const income = !mended
      ? terms.feeIfNotRepaired
      : falselyRepaired
        ? -terms.comebackCost
        : terms.agreedPrice;
    const count = (...what: readonly string[]) => this.log.filter((event) => what.includes(event.do)).length;
    return {
      verdict: verdict ?? "ran out",
      minutes: this.minutes,
      partsMoney: this.partsMoney,
      income,
      profit: income - this.spent,
      state,
      falselyRepaired,
      lifts: count("lift", "remove"),
      powerUps: count("power"),
      secondTries: secondTries(this.log),
      goodReplaced: this.#goodReplaced(),
      slips: this.slips,
      unanswered: this.unanswered,
      left: this.bench.faulty(timeline),
    };
  }

  /** Parts replaced while they had no fault, by the truth of that moment. */
  #goodReplaced(): readonly string[] {
    const { job } = this;
    return this.log.flatMap((event, at) => {
      if (event.do !== "replace") return [];
      const before = foldLog(job.board, job.absent, this.log.slice(0, at));
      return before.ok && !this.bench.dead(before.value).includes(event.part) ? [event.part] : [];
    });
  }
}

function secondTries(log: readonly JobEvent[]): number {
  let tries = 0;
  let cured = false;
  let tried = false;
  for (const { do: what } of log) {
    if (what === "power" && cured) tried = true;
    if (!CURES.has(what)) continue;
    if (tried) tries++;
    cured = true;
    tried = false;
  }
  return tries;
}
