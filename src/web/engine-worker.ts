/** The page's only door to the engine: runs in a worker, so that the page never freezes. */

import { foldLog } from "../bench/fold.ts";
import { MEASURE_MODES } from "../bench/words.ts";
import type { Board, ReferenceReading } from "../board/board.ts";
import { identityOf } from "../board/board-identity.ts";
import { faultName } from "../board/fault.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { parseBoard } from "../board/parse-board.ts";
import { type BoardChange, changedBoard, ownBoardView } from "../compose/board-change.ts";
import { composerView } from "../compose/composer-view.ts";
import type { BoardContent } from "../compose/edit-board.ts";
import { type Assessment, AssessmentSession, assess, beliefOf } from "../job/assess.ts";
import { benchLearntView, chainsOf, figuresOfJob } from "../job/bench-lessons.ts";
import { becauseView, benchView, goodHere } from "../job/bench-view.ts";
import { coursePoint, railBands } from "../job/course.ts";
import { comebackOf } from "../job/earlier-jobs.ts";
import { oddReferencesInWords, referenceWords } from "../job/good-board.ts";
import type { Job } from "../job/job.ts";
import { leftOutBy, lessonOf } from "../job/lesson-of-job.ts";
import { parseJob } from "../job/parse-job.ts";
import { foundInCase } from "../job/practice-case.ts";
import { stripView } from "../job/reading-strip.ts";
import { changedReferences, type ReferenceChange } from "../job/reference-change.ts";
import { stageViews } from "../job/stage-view.ts";
import { likelyNext, warmUp, workAhead } from "../job/work-ahead.ts";
import { learn } from "../learning/learnt.ts";
import type { Lesson } from "../learning/lesson.ts";
import type { MakePredictor } from "../meter/prediction.ts";
import { sharingPredictors } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { makePaper } from "../papers/make-paper.ts";
import { fitView } from "../parts/fit-view.ts";
import { atHandFor } from "../parts/stock/at-hand.ts";
import { importView } from "../parts/stock/import-view.ts";
import { type KeptLine, stockLine } from "../parts/stock/stock.ts";
import { type Asked, answer as practiceAnswer } from "../practice/answer.ts";
import { faultsAfter, faultsOnArrival, type PracticeJob, practiceJobOf } from "../practice/hidden-course.ts";
import { boardOddities, reviewBoard } from "../review/board-review.ts";
import { ambiguityInWords, odditiesInWords } from "../review/review-in-words.ts";
import { boardVersions } from "../sharing/board-versions.ts";
import { bring } from "../sharing/bring.ts";
import { withGoodRead } from "../sharing/good-read.ts";
import { outcomesOf, type PooledOutcomes, pooled } from "../sharing/outcomes.ts";
import { packText } from "../sharing/pack.ts";
import { drawnBoard, ownDrawing } from "../shipped/drawing/drawn-board.ts";
import { caseAnswer, caseJob } from "../teaching/case-bench.ts";
import { casePage } from "../teaching/case-page.ts";
import { costWords, namedWays } from "../teaching/side-by-side.ts";
import { casePreview, caseText, teachingCase } from "../teaching/teaching-case.ts";
import { wayOf } from "../teaching/ways.ts";
import { traceFile } from "../traced/trace-file.ts";
import type { Parsed } from "../units/outcome.ts";
import type { ActionView, BenchView, GoodHere, RailBandView, StripView } from "../wire/bench-view.ts";
import type { FitView, TypedFit } from "../wire/fit-view.ts";
import type {
  BringRequest,
  BroughtBoard,
  EngineAnswer,
  EngineProgress,
  EngineRequest,
  HiddenFaults,
  JobSoFar,
  LessonFacts,
  OwnBoardAnswer,
  PackRequest,
  PracticeInfo,
  PracticeOutcome,
  Reading,
  ReviewList,
  TaughtCase,
  WaysThrough,
} from "./engine-messages.ts";

/** The board of the open job, parsed once: caches behind it are told apart by the object. */
let known: { readonly text: string; readonly board: Board } | null = null;
const session = new AssessmentSession();

function taken<T>(parsed: Parsed<T>): T {
  if (parsed.ok) return parsed.value;
  throw new Error(parsed.problem);
}

/** The shop's stock, and what of it lies at hand for the open job's board: worked out once for both. */
let drawer: readonly KeptLine[] = [];
let atHand: { readonly board: Board; readonly of: readonly KeptLine[]; readonly stock: object } | null = null;

function stockFor(board: Board, own: unknown): object {
  if (drawer.length === 0) return own === undefined ? {} : { stock: own };
  if (atHand?.board !== board || atHand.of !== drawer)
    atHand = { board, of: drawer, stock: atHandFor(board, drawer) };
  return { stock: { ...atHand.stock, ...(own as object | undefined) } };
}

function jobOf({ header, events }: JobSoFar): Job {
  const text = JSON.stringify(header.board);
  const board =
    known?.text === text ? known.board : taken(parseJob({ ...header, log: [] }, null)).asBrought.board;
  known = { text, board };
  return taken(parseJob({ ...header, ...stockFor(board, header.stock), log: events }, board));
}

function view(soFar: JobSoFar): BenchView {
  const assessment = taken(assess(jobOf(soFar), session));
  workAheadOf(assessment);
  return benchView(assessment);
}

/** The page's check as one of the engine's; null where it is none between two places. */
function checkOf({ mode: named, red, black, settling: typed }: ActionView) {
  const mode = MEASURE_MODES.find((known) => known === named);
  if (mode === undefined || typeof red !== "string" || typeof black !== "string") return null;
  const settling = typed === "climbing" ? ({ settling: "climbing" } as const) : {};
  return { do: "measure", mode, red, black, ...settling } as const;
}

function strip(soFar: JobSoFar, check: ActionView, reading: Reading | undefined): StripView | null {
  const asked = checkOf(check);
  return asked === null ? null : stripView(taken(beliefOf(jobOf(soFar), session)), asked, reading);
}

function good(soFar: JobSoFar, check: ActionView): GoodHere {
  const asked = checkOf(check);
  if (asked === null) return { good: null, restsOn: [] };
  return goodHere(taken(beliefOf(jobOf(soFar), session)), asked);
}

function rails(soFar: JobSoFar): readonly RailBandView[] {
  const { board, absent, log } = jobOf(soFar);
  return railBands(board, taken(foldLog(board, absent, log)));
}

function practiceJob(job: Job, { seed, recorded }: PracticeInfo): PracticeJob {
  const priors = session.priors(job);
  return recorded === undefined
    ? practiceJobOf(job, priors, seed)
    : taken(caseJob(job, priors, seed, recorded));
}

function practice(soFar: JobSoFar, info: PracticeInfo, action: Asked): PracticeOutcome {
  const job = jobOf(soFar);
  const timeline = taken(foldLog(job.board, job.absent, job.log));
  const predictorOf: MakePredictor = (_board, bench) => session.predictor(job, bench);
  const hiding = practiceJob(job, info);
  const answered =
    info.recorded === undefined
      ? practiceAnswer(hiding, timeline, action, predictorOf)
      : caseAnswer(hiding, info.recorded, timeline, action, predictorOf);
  if (!answered.ok) throw new Error(answered.problem);
  return { ...answered.event };
}

function hidden(soFar: JobSoFar, info: PracticeInfo): HiddenFaults {
  const job = jobOf(soFar);
  const hiding = practiceJob(job, info);
  const left = faultsAfter(hiding, taken(foldLog(job.board, job.absent, job.log)));
  const words = (fault: string) => ({ fault, words: faultNameWords(fault, job.board) });
  return {
    arrived: faultsOnArrival(hiding).map(({ fault }) => words(faultName(fault))),
    left: left.map(({ fault }) => words(faultName(fault))),
  };
}

function partFit(soFar: JobSoFar, ref: string, typed: TypedFit): FitView {
  const { board } = jobOf(soFar).asBrought;
  const part = board.parts.get(ref);
  if (part === undefined) throw new Error(`this board has no part ${ref}`);
  return fitView(board, part, typed, drawer.map(stockLine));
}

function lessonFacts({ header, events }: JobSoFar): LessonFacts {
  return { comebackOf: comebackOf(header), leftOutBy: leftOutBy(events)?.id ?? null };
}

function taught(soFar: JobSoFar, title: string): TaughtCase {
  const made = taken(teachingCase(jobOf(soFar), soFar.header, title));
  const { title: named, header, ...recorded } = made;
  const info = { seed: 1, recorded };
  const preview = casePreview(made, soFar.events.length);
  return { title: named, header, practice: info, preview, text: caseText(made) };
}

function waysThrough(soFar: JobSoFar, { recorded: given }: PracticeInfo): WaysThrough {
  const job = jobOf(soFar);
  if (given === undefined) throw new Error("nobody has recorded this practice");
  const { currency } = job.terms;
  const recorded = taken(parseJob({ ...soFar.header, log: given.recorded }, job.asBrought.board));
  const ways = namedWays([
    ["yours", taken(wayOf(job, foundInCase(given)))],
    ["recorded", taken(wayOf(recorded, foundInCase(given)))],
    ["proposed", given.proposed],
  ]);
  return {
    ways: ways.map(({ name, steps, sum }) => ({
      name,
      sum: `${sum.steps} steps, ${costWords(sum, currency)}`,
      steps: steps.map((step) => ({ words: step.words, cost: costWords(step, currency), why: step.why })),
    })),
    page: casePage({
      title: job.board.name,
      board: job.board,
      picture: drawnBoard(job.board),
      found: foundInCase(given),
      ways,
      currency,
    }),
  };
}

function changed(content: BoardContent, change: BoardChange | ReferenceChange): BoardContent {
  return change.do === "good-read" || change.do === "good-forgotten"
    ? taken(changedReferences(content, change))
    : taken(changedBoard(content, change));
}

function ownBoard(
  before: BoardContent,
  change: BoardChange | ReferenceChange | null,
  lessons: readonly Lesson[],
): OwnBoardAnswer {
  const content = change === null ? before : changed(before, change);
  const view = taken(ownBoardView(content));
  const board = taken(parseBoard(content));
  const line = (one: ReferenceReading) => ({ ...one, words: referenceWords(one) });
  const good = {
    kept: (board.references ?? []).map(line),
    fromJobs: (learn(lessons).references.get(identityOf(board)) ?? []).map(line),
    odd: oddReferencesInWords(board),
  };
  return { content, view, odd: odditiesInWords(boardOddities(board)), good };
}

function packed({ content, outcomes, shop, jobs, pictures }: PackRequest): string {
  const board = taken(parseBoard(content));
  const read = jobs.map(jobOf);
  const own = outcomesOf(board, read);
  // Both were read as what they are before they were kept.
  const pooledOnes = pooled(outcomes as PooledOutcomes, shop, own);
  const chosen = pictures === null ? {} : { pictures };
  const given = withGoodRead(content as BoardContent, board, read);
  return packText({ board: given, outcomes: pooledOnes, ...chosen });
}

function brought({ name, text, before }: BringRequest): BroughtBoard {
  const {
    title,
    board,
    outcomes,
    changes,
    pictures = null,
  } = taken(bring(text, name, before as BoardContent | null));
  return { title, content: board, outcomes, changes, pictures };
}

function alike(content: unknown): readonly ReviewList[] {
  const board = taken(parseBoard(content));
  const bench = taken(foldLog(board, [], [])).now;
  return ambiguityInWords(reviewBoard(board, bench, DEFAULT_METER, sharingPredictors(undefined)), board);
}

function answer(request: EngineRequest): unknown {
  switch (request.ask) {
    case "view":
      return view(request);
    case "practice":
      // The page hands back an action of the engine's own, or one of the same shape; the fold judges it again.
      return practice(request, request.practice, request.action as unknown as Asked);
    case "why":
      return taken(becauseView(taken(beliefOf(jobOf(request), session)), request.part));
    case "stages":
      return stageViews(taken(beliefOf(jobOf(request), session)));
    case "strip":
      return strip(request, request.check, request.reading);
    case "good":
      return good(request, request.check);
    case "course":
      return coursePoint(taken(assess(jobOf(request), session)));
    case "rails":
      return rails(request);
    case "drawing":
      return ownDrawing(taken(parseBoard(request.content)));
    case "fit":
      return partFit(request, request.part, request.typed);
    case "paper":
      return taken(makePaper(request.kind, jobOf(request), request.head, request.catalogue, session));
    case "hidden":
      return hidden(request, request.practice);
    case "lesson-facts":
      return lessonFacts(request);
    case "lesson":
      return taken(lessonOf(jobOf(request), request.chained));
    case "chains":
      return Object.fromEntries(chainsOf(request.jobs));
    case "learnt":
      return benchLearntView(learn(request.lessons));
    case "figures":
      return figuresOfJob(learn(request.lessons), taken(parseJob(request.header, null)));
    case "drawer":
      drawer = request.lines;
      return null;
    case "import":
      return taken(
        importView(request.text, request.stock, (done, of) => {
          const progress: EngineProgress = { askId: request.askId, done, of };
          postMessage(progress);
        }),
      );
    case "compose":
      return taken(
        composerView(request.answers, request.name.trim() === "" ? {} : { name: request.name.trim() }),
      );
    case "board":
      return ownBoard(request.content as BoardContent, request.change, request.lessons);
    case "trace":
      return taken(traceFile(request.text, request.answers));
    case "versions":
      return boardVersions(request.kept, request.jobs);
    case "teach":
      return taught(request, request.title);
    case "ways":
      return waysThrough(request, request.practice);
    case "pack":
      return packed(request);
    case "bring":
      return brought(request);
    case "alike":
      return alike(request.content);
  }
}

/** The board whose first cold checks have been worked out ahead. */
let warmed: Board | null = null;
/** What waits to be worked out ahead; the next question takes its place. */
let waiting: (() => void)[] = [];
/** Hands need this long for the quickest reading; until then the next question may come at once (milliseconds). */
const HANDS_BUSY = 150;

/** While hands are busy the worker has nothing to do: it works out what they are likely to bring, an outcome at a time. */
function workAheadOf({ job, proposal }: Assessment): void {
  waiting = likelyNext(proposal).map((next) => () => workAhead(job, next, session));
  const cold = job.log.some((event) => event.do === "measure" && event.mode !== "dcv");
  if (warmed !== job.board && !cold) {
    warmed = job.board;
    waiting = [() => warmUp(job, session)];
  }
  const mine = waiting;
  const next = (): void => {
    if (waiting !== mine) return;
    mine.shift()?.();
    if (mine.length > 0) setTimeout(next);
  };
  setTimeout(next, HANDS_BUSY);
}

addEventListener("message", (message: MessageEvent<EngineRequest>) => {
  const { askId } = message.data;
  let reply: EngineAnswer;
  try {
    reply = { askId, ok: true, answer: answer(message.data) };
  } catch (problem) {
    reply = { askId, ok: false, problem: problem instanceof Error ? problem.message : String(problem) };
  }
  postMessage(reply);
});
