/** What a closed job teaches: read again with the tables' own figures, so that what was learnt never confirms itself. */
import type { JobEvent, NoteEvent } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import { deriveRoles } from "../board/roles.ts";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import type { JobKind } from "../learning/job-figures.ts";
import type { Lesson, ModeTally, PaceTaken, PartTally, PricePaid } from "../learning/lesson.ts";
import { CAME_BACK, OUTCOME_WEIGHTS, type OutcomeWeight } from "../learning/outcome-weights.ts";
import { GAPS } from "../learning/pace.ts";
import { type MayHaveBeen, type SoftCounts, softCounts } from "../learning/soft-counts.ts";
import { actionMinutes } from "../money/minutes.ts";
import { partPrice } from "../money/prices.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { junctionsOf } from "../priors/junctions.ts";
import { faultSorts, NET_LEAK_SORT } from "../priors/learnt-rates.ts";
import { partSort } from "../priors/prior-rows.ts";
import type { Parsed } from "../units/outcome.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { closedAs } from "./closed-as.ts";
import type { Job } from "./job.ts";

/** Why a job teaches nothing; null where it does. Practice never does: its faults are drawn from the tables themselves. */
export function whyNoLesson(job: Pick<Job, "log" | "practice">): "practice" | "open" | "left out" | null {
  if (job.practice !== null) return "practice";
  if (closedAs(job.log) === null) return "open";
  return leftOutBy(job.log) === null ? null : "left out";
}

/** The note that leaves a job out of what is learnt, the last that is not undone. */
export function leftOutBy(log: readonly JobEvent[]): NoteEvent | null {
  const undone = undoneEvents(log);
  const note = log.findLast((event, at) => event.do === "note" && event.leftOut === true && !undone[at]);
  return note?.do === "note" ? note : null;
}

/** How a job hangs together with others of the bench. */
export interface Chained {
  /** a later job is its come-back: its verdict is corrected */
  readonly cameBack: boolean;
  /** it is a come-back itself: the board was counted before */
  readonly again: boolean;
}

/** Expected counts of a closed job; refused, with one line, where it teaches nothing or its log is impossible. */
export function lessonOf(asWorked: Job, chained: Chained): Parsed<Lesson> {
  const why = whyNoLesson(asWorked);
  const verdict = closedAs(asWorked.log);
  if (why !== null || verdict === null)
    return { ok: false, problem: `nothing to learn from: ${why ?? "open"}` };
  const { board } = asWorked.asBrought;
  const job: Job = { ...asWorked, board: asWorked.unpriced, learned: null };
  const session = new AssessmentSession();
  const unread = beliefOf({ ...job, log: [] }, session);
  const read = beliefOf(job, session);
  if (!unread.ok) return unread;
  if (!read.ok) return read;
  const { priors, timeline } = read.value;
  const outcome = chained.cameBack && !gaveUp(verdict) ? CAME_BACK : OUTCOME_WEIGHTS[verdict];
  const counts = softCounts(priors, boardsOf(read.value.belief, outcome));
  const expected = softCounts(priors, boardsOf(unread.value.belief, null));
  return {
    ok: true,
    value: {
      family: board.family,
      boardName: board.name,
      cause: job.cause,
      seen: partsSeen(job),
      ...tallies(job, priors, counts, expected),
      knockOns: [...counts.rules].map(([rule, tally]) => ({ rule, ...tally })),
      paces: pacesTaken(job, timeline),
      prices: pricesPaid(job, timeline),
      again: chained.again,
    },
  };
}

const gaveUp = (verdict: keyof typeof OUTCOME_WEIGHTS): boolean =>
  OUTCOME_WEIGHTS[verdict].whole === OUTCOME_WEIGHTS[verdict].faulty;

/** Each explanation weighed by the outcome; what stands beside it unseen and uncured is weighed with the boards that it makes faulty. */
function boardsOf({ explanations }: Belief, outcome: OutcomeWeight | null): MayHaveBeen[] {
  const { whole, faulty } = outcome ?? { whole: 1, faulty: 1 };
  return explanations.map((explanation) => {
    const faults = explanation.faults.filter(({ since }) => since < 0).map(({ fault }) => fault);
    const clean = explanation.presentNow.length > 0 ? 0 : explanation.nothingBeside;
    const weight = whole * clean + faulty * (1 - clean);
    const left = explanation.presentNow.length > 0 ? 1 : weight > 0 ? faulty / weight : 1;
    return { probability: explanation.probability * weight, faults, beside: besideOf(explanation, left) };
  });
}

/** On arrival beside the core: what is there still, thinned by the outcome, and what was taken off the board meanwhile, as it was. */
function besideOf({ silent, arrivedBeside }: Explanation, left: number): Float64Array {
  const arrived = arrivedBeside?.() ?? silent;
  return arrived.map((share, fault) => {
    const there = Math.min(share, silent[fault]);
    return there * left + (share - there);
  });
}

function partsSeen(job: Job): Record<string, number> {
  const roles = deriveRoles(job.board);
  const seen: Record<string, number> = {};
  for (const part of job.board.parts.values()) {
    if (job.absent.includes(part.ref)) continue;
    const sort = partSort(part, roles);
    seen[sort] = (seen[sort] ?? 0) + 1;
  }
  return seen;
}

/** Sums smaller than this, expected and counted, are not kept: a board has hundreds of them. */
const LEAST_TALLY = 1e-4;

function tallies(
  job: Job,
  priors: PriorTable,
  counts: SoftCounts,
  expected: SoftCounts,
): Pick<Lesson, "modes" | "parts"> {
  const sorts = faultSorts(job.board, priors.faults);
  const modes = new Map<string, ModeTally>();
  const parts = new Map<string, PartTally>();
  priors.faults.forEach(({ part, fault }, index) => {
    const { sort, shape } = sorts[index];
    const key = `${sort} ${shape} ${fault.mode}`;
    const mode = modes.get(key) ?? { sort, shape, mode: fault.mode, expected: 0, count: 0 };
    const own = parts.get(part) ?? { part, sort, expected: 0, count: 0 };
    const add = { expected: expected.first[index], count: counts.first[index] };
    modes.set(key, { ...mode, expected: mode.expected + add.expected, count: mode.count + add.count });
    parts.set(part, { ...own, expected: own.expected + add.expected, count: own.count + add.count });
  });
  const worth = <T extends { expected: number; count: number }>(all: Iterable<T>): T[] =>
    [...all].filter(({ expected: due, count }) => due >= LEAST_TALLY || count >= LEAST_TALLY);
  return { modes: worth(modes.values()), parts: worth(parts.values()) };
}

/** Gaps between one timed entry and the next, where nothing lies between; each counts for what the second one did. */
function pacesTaken(job: Job, timeline: Timeline): PaceTaken[] {
  const paces = new Map<string, number[]>();
  const counting = new Map(timeline.entries.map((entry) => [entry.logIndex, entry]));
  for (const [index, event] of job.log.entries()) {
    const entry = counting.get(index);
    const earlier = job.log[index - 1];
    if (entry === undefined || earlier === undefined || !counting.has(index - 1)) continue;
    if (typeof event.at !== "string" || typeof earlier.at !== "string") continue;
    const seconds = (Date.parse(event.at) - Date.parse(earlier.at)) / 1000;
    const usual = actionMinutes(job.board, entry.before, event);
    if (usual <= 0 || !(seconds >= GAPS.bunchedSeconds)) continue;
    const logRatio = Math.log(seconds / 60 / usual);
    paces.set(event.do, [...(paces.get(event.do) ?? []), logRatio]);
  }
  return [...paces].map(([action, logRatios]) => ({ action, logRatios }));
}

function pricesPaid(job: Job, timeline: Timeline): PricePaid[] {
  return timeline.entries.flatMap(({ event }) => {
    if (event.do !== "replace" || event.price === undefined || event.used === true) return [];
    const part = job.board.parts.get(event.part);
    if (part === undefined) return [];
    const usual = partPrice(part, job.terms.newBoardPrice);
    return [{ part: part.ref, kind: part.kind, paid: event.price, usual }];
  });
}

/** What the figures for a job depend on. */
export function jobKindOf({ board, cause }: Pick<Job, "board" | "cause">): JobKind {
  const roles = deriveRoles(board);
  const parts = [...board.parts.values()];
  return {
    cause,
    family: board.family,
    boardName: board.name,
    sorts: new Map(parts.map((part) => [part.ref, partSort(part, roles)])),
    shapes: new Set(parts.flatMap((part) => junctionsOf(part).map(({ shape }) => shape))),
  };
}

/** Sorts that belong to no part. */
export const EXTRA_SORTS: readonly string[] = [NET_LEAK_SORT];
