/** Ways through one board side by side: each step in words, with its minutes, what was bought, and why. */

import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import { parseFault } from "../board/parse-fault.ts";
import { AssessmentSession, assess, beliefOf } from "../job/assess.ts";
import { eventWords } from "../job/event-words.ts";
import type { Job } from "../job/job.ts";
import type { PracticeCase, WayStep } from "../job/practice-case.ts";
import { said } from "../messages/said.ts";
import { actionMinutes } from "../money/minutes.ts";
import { partPrice } from "../money/prices.ts";
import type { Asked } from "../practice/answer.ts";
import type { Parsed } from "../units/outcome.ts";
import { caseAnswer, caseJob } from "./case-bench.ts";

/** A way longer than this is no lesson. From memory. */
const MOST_STEPS = 150;
const SEED = 1;

function priceOf(job: Job, event: JobEvent): number {
  if (event.do !== "replace") return 0;
  const part = job.board.parts.get(event.part);
  return event.price ?? (part === undefined ? 0 : partPrice(part, job.terms.newBoardPrice));
}

/** Where an event was done: pins, nets or a part. */
function placesOf(event: JobEvent): Pick<WayStep, "places"> {
  const places: string[] = [];
  if ((event.do === "measure" || event.do === "beside") && event.red !== undefined)
    places.push(event.red, ...(event.black === undefined ? [] : [event.black]));
  else if (event.do === "clip" || event.do === "unclip") places.push(...event.at);
  else if (event.do === "lift" || event.do === "refit") places.push(event.place);
  else if ("part" in event && typeof event.part === "string") places.push(event.part);
  return places.length === 0 ? {} : { places };
}

/** The way of a log: what was believed of the faulty parts once each step was done is its reason. */
export function wayOf(job: Job, faults: readonly string[]): Parsed<readonly WayStep[]> {
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return timeline;
  const session = new AssessmentSession();
  let told = "";
  const steps = timeline.value.entries.map(({ event, before, logIndex }): WayStep => {
    const now = chances({ ...job, log: job.log.slice(0, logIndex + 1) }, faults, session);
    const why = now === told ? "" : now;
    told = now;
    return {
      words: eventWords(job.board, event),
      minutes: actionMinutes(job.board, before, event),
      money: priceOf(job, event),
      why,
      ...placesOf(event),
    };
  });
  return { ok: true, value: steps };
}

/** `Q1 34 %, R5 2 %`: how likely each faulty part is held to be the faulty one. */
function chances(job: Job, faults: readonly string[], session: AssessmentSession): string {
  const believed = beliefOf(job, session);
  if (!believed.ok) return "";
  const parts = faults.flatMap((name) => {
    const fault = parseFault(name, job.board);
    return fault.ok && fault.value.of === "part" ? [fault.value.part] : [];
  });
  const of = (part: string) =>
    believed.value.belief.suspects.find((suspect) => suspect.part === part)?.probability ?? 0;
  return parts.map((part) => `${part} ${Math.round(100 * of(part))} %`).join(", ");
}

/** The way that would have been proposed, worked on the board of the case until it closes; a problem where it does not. */
export function proposedWay(
  job: Job,
  given: Pick<PracticeCase, "faults" | "broke" | "recorded">,
): Parsed<readonly WayStep[]> {
  const session = new AssessmentSession();
  const full = { ...given, proposed: [] };
  const steps: WayStep[] = [];
  let log: readonly JobEvent[] = [];
  while (steps.length < MOST_STEPS) {
    const assessed = assess({ ...job, log }, session);
    if (!assessed.ok) return assessed;
    const { proposal, timeline, priors } = assessed.value;
    if (timeline.closed) return { ok: true, value: steps };
    const practice = caseJob(job, priors, SEED, full);
    if (!practice.ok) return practice;
    let at: Timeline = timeline;
    for (const [index, action] of [proposal.action, ...proposal.row].entries()) {
      const answered = caseAnswer(practice.value, full, at, action as Asked, (_, bench) =>
        session.predictor(job, bench),
      );
      if (!answered.ok && index === 0) return answered;
      if (!answered.ok) break;
      steps.push({
        words: eventWords(job.board, answered.event),
        minutes: actionMinutes(job.board, at.now, answered.event),
        money: priceOf(job, answered.event),
        why: index === 0 ? proposal.why : "",
        ...placesOf(answered.event),
      });
      log = [...log, answered.event];
      const folded = foldLog(job.board, job.absent, log);
      if (!folded.ok) return folded;
      at = folded.value;
    }
  }
  return { ok: false, problem: said`the proposed way did not end within ${MOST_STEPS} steps` };
}

export interface WaySum {
  readonly steps: number;
  readonly minutes: number;
  readonly money: number;
}

export function waySum(way: readonly WayStep[]): WaySum {
  const total = (of: (step: WayStep) => number) => way.reduce((sum, step) => sum + of(step), 0);
  return {
    steps: way.length,
    minutes: Math.round(10 * total(({ minutes }) => minutes)) / 10,
    money: Math.round(100 * total(({ money }) => money)) / 100,
  };
}
