/** The page's only door to the engine: runs in a worker, so that the page never freezes. */

import { foldLog } from "../bench/fold.ts";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { composerView } from "../compose/composer-view.ts";
import { AssessmentSession, assess, beliefOf } from "../job/assess.ts";
import { becauseView, benchView } from "../job/bench-view.ts";
import type { Job } from "../job/job.ts";
import { parseJob } from "../job/parse-job.ts";
import { warmUp } from "../job/warm-up.ts";
import type { MakePredictor } from "../meter/prediction.ts";
import { fitView } from "../parts/fit-view.ts";
import { atHandFor } from "../parts/stock/at-hand.ts";
import { importView } from "../parts/stock/import-view.ts";
import { type KeptLine, stockLine } from "../parts/stock/stock.ts";
import { type Asked, answer as practiceAnswer } from "../practice/answer.ts";
import { faultsAfter, faultsOnArrival, type PracticeJob, practiceJobOf } from "../practice/hidden-course.ts";
import type { Parsed } from "../units/outcome.ts";
import type { BenchView } from "../wire/bench-view.ts";
import type { FitView, TypedFit } from "../wire/fit-view.ts";
import type {
  EngineAnswer,
  EngineProgress,
  EngineRequest,
  HiddenFaults,
  JobSoFar,
  PracticeOutcome,
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
  return benchView(taken(assess(jobOf(soFar), session)));
}

function practiceJob(job: Job, seed: number): PracticeJob {
  return practiceJobOf(job, session.priors(job), seed);
}

function practice(soFar: JobSoFar, seed: number, action: Asked): PracticeOutcome {
  const job = jobOf(soFar);
  const timeline = taken(foldLog(job.board, job.absent, job.log));
  const predictorOf: MakePredictor = (_board, bench) => session.predictor(job, bench);
  const answered = practiceAnswer(practiceJob(job, seed), timeline, action, predictorOf);
  if (!answered.ok) throw new Error(answered.problem);
  return { ...answered.event };
}

function hidden(soFar: JobSoFar, seed: number): HiddenFaults {
  const job = jobOf(soFar);
  const hiding = practiceJob(job, seed);
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

function answer(request: EngineRequest): unknown {
  switch (request.ask) {
    case "view":
      return view(request);
    case "practice":
      // The page hands back an action of the engine's own, or one of the same shape; the fold judges it again.
      return practice(request, request.seed, request.action as unknown as Asked);
    case "why":
      return taken(becauseView(taken(beliefOf(jobOf(request), session)), request.part));
    case "fit":
      return partFit(request, request.part, request.typed);
    case "hidden":
      return hidden(request, request.seed);
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
  }
}

/** The board whose first cold checks have been worked out ahead. */
let ahead: Board | null = null;

/** While the first volts are measured, the worker has nothing to do: it prepares the first cold checks. */
function workAhead(soFar: JobSoFar): void {
  const job = jobOf(soFar);
  if (ahead === job.board || soFar.events.some((event) => event.do === "measure" && event.mode !== "dcv"))
    return;
  ahead = job.board;
  warmUp(job, session);
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
  if (message.data.ask === "view" && reply.ok) workAhead(message.data);
});
