/** What a closed job teaches: read again with the tables' own figures, so that what was learnt never confirms itself. */

import type { JobEvent, NoteEvent } from "../bench/event.ts";
import { foldLog, undoneEvents } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import { identityOf } from "../board/board-identity.ts";
import { deriveRoles } from "../board/roles.ts";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import { DEAD_THOUGH_HEALTHY } from "../diagnosis/silent-beside.ts";
import type { JobKind } from "../learning/job-figures.ts";
import type { Lesson, ModeTally, PaceTaken, PartTally, PricePaid, Tally } from "../learning/lesson.ts";
import {
  CAME_BACK,
  EXCHANGED_AND_CURED,
  OUTCOME_WEIGHTS,
  type OutcomeWeight,
} from "../learning/outcome-weights.ts";
import { GAPS } from "../learning/pace.ts";
import { type MayHaveBeen, type SoftCounts, softCounts } from "../learning/soft-counts.ts";
import { said } from "../messages/said.ts";
import { actionMinutes } from "../money/minutes.ts";
import { partPrice } from "../money/prices.ts";
import { viewOf } from "../priors/circuit-view.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { junctionsOf } from "../priors/junctions.ts";
import { faultSorts, NET_LEAK_SORT } from "../priors/learnt-rates.ts";
import { powerEffect } from "../priors/power-effects.ts";
import { partSort } from "../priors/prior-rows.ts";
import { bringsIn } from "../priors/symptom-effects.ts";
import type { Parsed } from "../units/outcome.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { closedAs } from "./closed-as.ts";
import { readBeside } from "./good-beside.ts";
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

/**
 * Expected counts of a closed job; refused, with one line, where it teaches nothing or its log is impossible.
 * @param known - what it is known to have come in with, in place of what the log tells: for measurements of the learning itself
 */
export function lessonOf(asWorked: Job, chained: Chained, known?: readonly MayHaveBeen[]): Parsed<Lesson> {
  const why = whyNoLesson(asWorked);
  const verdict = closedAs(asWorked.log);
  if (why !== null || verdict === null)
    return { ok: false, problem: said`nothing to learn from: ${why ?? "open"}` };
  const { board } = asWorked.asBrought;
  const job: Job = { ...asWorked, board: asWorked.unpriced, learned: null };
  const session = new AssessmentSession();
  const unread = beliefOf({ ...job, log: [] }, session);
  const read = known === undefined ? beliefOf(job, session) : unread;
  if (!unread.ok) return unread;
  if (!read.ok) return read;
  const { priors } = read.value;
  const folded = foldLog(job.board, job.absent, job.log);
  if (!folded.ok) return folded;
  const timeline = folded.value;
  const outcome = chained.cameBack && !gaveUp(verdict) ? CAME_BACK : OUTCOME_WEIGHTS[verdict];
  const matters = mattering(job, priors);
  const cured = verdict === "repaired" && !chained.cameBack ? exchanged(timeline) : [];
  const boards = boardsOf(read.value.belief, matters, outcome).map((board) =>
    withExchanged(board, priors, cured),
  );
  const counts = softCounts(priors, known ?? boards);
  const expected = softCounts(priors, boardsOf(unread.value.belief, matters, null));
  const bringing = bringingRates(job, priors);
  return {
    ok: true,
    value: {
      family: board.family,
      boardName: board.name,
      identity: identityOf(board),
      cause: job.cause,
      seen: partsSeen(job),
      stayedAway: (1 - DEAD_THOUGH_HEALTHY) * Math.exp(-bringing.reduce((sum, rate) => sum + rate, 0)),
      ...tallies(job, priors, { counts, expected, bringing }),
      knockOns: [...counts.rules].map(([rule, tally]) => ({ rule, ...tally })),
      paces: pacesTaken(job, timeline),
      prices: pricesPaid(job, timeline),
      good: readBeside(board, job.log),
      again: chained.again,
    },
  };
}

const gaveUp = (verdict: keyof typeof OUTCOME_WEIGHTS): boolean =>
  OUTCOME_WEIGHTS[verdict].whole === OUTCOME_WEIGHTS[verdict].faulty;

/** For each fault whether a board with it does not do its work: only such a fault speaks for or against how a job ended. */
function mattering({ board }: Job, { faults }: PriorTable): readonly boolean[] {
  const view = viewOf(board);
  return faults.map(({ fault }) => powerEffect(view, fault) !== "none");
}

/** Each explanation weighed by the outcome; what stands beside it unseen and uncured is weighed with the boards that it makes faulty. */
function boardsOf(
  { explanations }: Belief,
  matters: readonly boolean[],
  outcome: OutcomeWeight | null,
): MayHaveBeen[] {
  const { whole, faulty } = outcome ?? { whole: 1, faulty: 1 };
  return explanations.map((explanation) => {
    const { presentNow, silent, nothingBeside } = explanation;
    const faults = explanation.faults.filter(({ since }) => since < 0).map(({ fault }) => fault);
    const stands = presentNow.some((fault) => matters[fault]);
    // Faults that make each other idle are fewer together than one by one: whichever tells of more boards that are whole.
    const none = silent.reduce(
      (product, share, fault) => (matters[fault] ? product * (1 - share) : product),
      1,
    );
    const clean = stands ? 0 : presentNow.length > 0 ? none : Math.max(none, nothingBeside);
    const weight = whole * clean + faulty * (1 - clean);
    const left = stands || weight <= 0 ? 1 : faulty / weight;
    const beside = besideOf(explanation, matters, left);
    return { probability: explanation.probability * weight, faults, beside };
  });
}

/** On arrival beside the core: what matters and is there still, thinned by the outcome; what does not, or was taken off meanwhile, as it was. */
function besideOf(
  { silent, arrivedBeside }: Explanation,
  matters: readonly boolean[],
  left: number,
): Float64Array {
  const arrived = arrivedBeside?.() ?? silent;
  return arrived.map((share, fault) => {
    const there = Math.min(share, silent[fault]);
    return there * (matters[fault] ? left : 1) + (share - there);
  });
}

/** Parts that came with the board and were exchanged. */
function exchanged({ entries }: Timeline): readonly string[] {
  return [...new Set(entries.flatMap(({ event }) => (event.do === "replace" ? [event.part] : [])))];
}

/** The same board, weighed by what was exchanged on the way to its cure. */
function withExchanged(board: MayHaveBeen, { faults }: PriorTable, cured: readonly string[]): MayHaveBeen {
  const { whole, faulty } = EXCHANGED_AND_CURED;
  const certain = new Set(board.faults.map((fault) => faults[fault].part));
  const beside = Float64Array.from(board.beside);
  let { probability } = board;
  for (const part of cured) {
    if (certain.has(part)) {
      probability *= faulty;
      continue;
    }
    const own = faults.flatMap((fault, index) => (fault.part === part ? [index] : []));
    const share = Math.min(
      1,
      own.reduce((sum, index) => sum + beside[index], 0),
    );
    const weight = faulty * share + whole * (1 - share);
    probability *= weight;
    for (const index of own) beside[index] = Math.min(1, (beside[index] * faulty) / weight);
  }
  return { ...board, probability, beside };
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

/** Per fault its rate, weighed by the chance that it, or what it knocks on, brings the board in as it came. */
function bringingRates({ board, symptom }: Job, { faults, knockOns }: PriorTable): Float64Array {
  const accounts = bringsIn(board, symptom, faults);
  const followed = new Float64Array(faults.length);
  for (const { parent, child, arrivalRate } of knockOns) followed[parent] += arrivalRate * accounts[child];
  return Float64Array.from(
    faults,
    ({ rate }, at) => rate * (1 - (1 - accounts[at]) * Math.exp(-followed[at])),
  );
}

function sumOf(there: Tally | undefined, more: Tally): Tally {
  return {
    expected: (there?.expected ?? 0) + more.expected,
    count: (there?.count ?? 0) + more.count,
    expectedSquares: (there?.expectedSquares ?? 0) + more.expectedSquares,
    unseen: (there?.unseen ?? 0) + more.unseen,
    unseenSquares: (there?.unseenSquares ?? 0) + more.unseenSquares,
    rate: (there?.rate ?? 0) + more.rate,
    bringing: (there?.bringing ?? 0) + more.bringing,
  };
}

/** Sums smaller than this, expected and counted, are not kept: a board has hundreds of them. */
const LEAST_TALLY = 1e-4;

function tallies(
  job: Job,
  priors: PriorTable,
  {
    counts,
    expected,
    bringing,
  }: {
    readonly counts: SoftCounts;
    readonly expected: SoftCounts;
    readonly bringing: Float64Array;
  },
): Pick<Lesson, "modes" | "parts"> {
  const sorts = faultSorts(job.board, priors.faults);
  const modes = new Map<string, ModeTally>();
  const parts = new Map<string, PartTally>();
  priors.faults.forEach(({ part, fault, rate }, index) => {
    const { sort, shape } = sorts[index];
    const key = `${sort} ${shape} ${fault.mode}`;
    const add = {
      expected: expected.first[index],
      expectedSquares: expected.first[index] ** 2,
      count: counts.first[index],
      unseen: counts.unseen[index],
      unseenSquares: counts.unseen[index] ** 2,
      rate,
      bringing: bringing[index],
    };
    modes.set(key, { sort, shape, mode: fault.mode, ...sumOf(modes.get(key), add) });
    parts.set(part, { part, sort, ...sumOf(parts.get(part), add) });
  });
  const worth = <T extends { expected: number; count: number }>(all: Iterable<T>): T[] =>
    [...all].filter(({ expected: due, count }) => due >= LEAST_TALLY || count >= LEAST_TALLY);
  return { modes: worth(modes.values()), parts: worth(parts.values()) };
}

/** Actions that the plan times as others, so that what was timed of either goes into the plan. */
const PACED_AS: Readonly<Partial<Record<JobEvent["do"], string>>> = {
  incoming: "measure",
  beside: "measure",
  unclip: "clip",
};

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
    // what is taken off at the close is off by then: its minutes say nothing of a pace
    if (event.do === "close" || usual <= 0 || !(seconds >= GAPS.bunchedSeconds)) continue;
    const logRatio = Math.log(seconds / 60 / usual);
    const action = PACED_AS[event.do] ?? event.do;
    paces.set(action, [...(paces.get(action) ?? []), logRatio]);
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
    nets: new Set(board.nets.keys()),
    family: board.family,
    identity: identityOf(board),
    sorts: new Map(parts.map((part) => [part.ref, partSort(part, roles)])),
    shapes: new Set(parts.flatMap((part) => junctionsOf(part).map(({ shape }) => shape))),
  };
}

/** Sorts that belong to no part. */
export const EXTRA_SORTS: readonly string[] = [NET_LEAK_SORT];
