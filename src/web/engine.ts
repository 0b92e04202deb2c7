/** The worker behind promises. Views that nobody waits for any more are dropped, not computed. */
import type { PaperCatalogue } from "../messages/paper-catalogue.ts";
import { said } from "../messages/said.ts";
import type {
  ActionView,
  BecauseView,
  BenchView,
  CoursePoint,
  GoodHere,
  RailBandView,
  StageView,
  StripView,
} from "../wire/bench-view.ts";
import type { BoardChange, ComposerView } from "../wire/composer-view.ts";
import type { FitView, TypedFit } from "../wire/fit-view.ts";
import type { Chained, JobFigures, LearntView, Lesson, Linked } from "../wire/learnt-view.ts";
import type { ReferenceChange, TraceAnswers, TracedFile } from "../wire/own-board.ts";
import type { Paper, PaperHead, PaperKind } from "../wire/paper-api.ts";
import type { ImportView, KeptLine } from "../wire/stock-api.ts";
import type {
  BringRequest,
  BroughtBoard,
  Description,
  Drawing,
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
  VersionsAnswer,
  VersionsRequest,
  WaysThrough,
} from "./engine-messages.ts";
import type { JobHeader } from "./job-event.ts";

type Question = EngineRequest extends infer R ? (R extends EngineRequest ? Omit<R, "askId"> : never) : never;

interface Waiting {
  readonly told: (done: number, of: number) => void;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (problem: Error) => void;
}

export class Engine {
  readonly #worker = new Worker(new URL("./engine-worker.ts", import.meta.url), { type: "module" });
  readonly #waiting = new Map<number, Waiting>();
  #asked = 0;
  #viewRunning = false;
  /** the one view asked for while another was being computed; a newer one takes its place */
  #nextTurn: ((mine: boolean) => void) | null = null;

  constructor() {
    this.#worker.addEventListener("message", (message: MessageEvent<EngineAnswer | EngineProgress>) => {
      const answer = message.data;
      if ("of" in answer) {
        this.#waiting.get(answer.askId)?.told(answer.done, answer.of);
        return;
      }
      const waiting = this.#waiting.get(answer.askId);
      this.#waiting.delete(answer.askId);
      if (answer.ok) waiting?.resolve(answer.answer);
      else waiting?.reject(new Error(answer.problem));
    });
    this.#worker.addEventListener("error", (event) => {
      for (const { reject } of this.#waiting.values())
        reject(new Error(event.message || said`the engine stopped`));
      this.#waiting.clear();
    });
  }

  /** The bench for this log; null where a later log has been asked about meanwhile. Throws what the engine says. */
  async view(job: JobSoFar): Promise<BenchView | null> {
    if (this.#viewRunning) {
      this.#nextTurn?.(false);
      const mine = await new Promise<boolean>((settle) => {
        this.#nextTurn = settle;
      });
      if (!mine) return null;
    }
    this.#viewRunning = true;
    try {
      const view = (await this.#ask({ ask: "view", ...job })) as BenchView;
      return this.#nextTurn === null ? view : null;
    } finally {
      this.#viewRunning = false;
      const next = this.#nextTurn;
      this.#nextTurn = null;
      next?.(true);
    }
  }

  /** What the practice board answers to an action: the fields that the event gets beside the action's own. */
  async practice(job: JobSoFar, practice: PracticeInfo, action: ActionView): Promise<PracticeOutcome> {
    return (await this.#ask({ ask: "practice", practice, action, ...job })) as PracticeOutcome;
  }

  /** Why a part is suspected or cleared. */
  async why(job: JobSoFar, part: string): Promise<BecauseView> {
    return (await this.#ask({ ask: "why", part, ...job })) as BecauseView;
  }

  /** The stages of the board, mains to motor, and what the readings have said of each. */
  async stages(job: JobSoFar): Promise<readonly StageView[]> {
    return (await this.#ask({ ask: "stages", ...job })) as readonly StageView[];
  }

  /** What a check would read, before its reading or with it; null where there is nothing to plot. */
  async strip(job: JobSoFar, check: ActionView, reading?: Reading): Promise<StripView | null> {
    return (await this.#ask({ ask: "strip", check, reading, ...job })) as StripView | null;
  }

  /** What a good board shows at a check of one's own. */
  async good(job: JobSoFar, check: ActionView): Promise<GoodHere> {
    return (await this.#ask({ ask: "good", check, ...job })) as GoodHere;
  }

  /** How the job stood with this log; takes as long as a view. */
  async course(job: JobSoFar): Promise<CoursePoint> {
    return (await this.#ask({ ask: "course", ...job })) as CoursePoint;
  }

  /** The rails, and what was read of them since power came on. */
  async rails(job: JobSoFar): Promise<readonly RailBandView[]> {
    return (await this.#ask({ ask: "rails", ...job })) as readonly RailBandView[];
  }

  /** The picture drawn from a board file that means it; null where only a photo could tell. */
  async drawing(content: unknown): Promise<Drawing | null> {
    return (await this.#ask({ ask: "drawing", content })) as Drawing | null;
  }

  /** Which part will do in a place, beside what was typed of one; `drawerSeen` tells one state of the drawer from the next. */
  async partFit(job: JobSoFar, part: string, typed: TypedFit, drawerSeen: number): Promise<FitView> {
    return (await this.#ask({ ask: "fit", part, typed, drawerSeen, ...job })) as FitView;
  }

  /** A paper's content. Throws what the engine says. */
  async paper(job: JobSoFar, kind: PaperKind, head: PaperHead, catalogue: PaperCatalogue): Promise<Paper> {
    return (await this.#ask({ ask: "paper", kind, head, catalogue, ...job })) as Paper;
  }

  async hidden(job: JobSoFar, practice: PracticeInfo): Promise<HiddenFaults> {
    return (await this.#ask({ ask: "hidden", practice, ...job })) as HiddenFaults;
  }

  /** The case of a closed job; takes as long as working the job again does. Throws why there is none. */
  async teach(job: JobSoFar, title: string): Promise<TaughtCase> {
    return (await this.#ask({ ask: "teach", title, ...job })) as TaughtCase;
  }

  /** The way of a log beside the recorded and the proposed one. */
  async ways(job: JobSoFar, practice: PracticeInfo): Promise<WaysThrough> {
    return (await this.#ask({ ask: "ways", practice, ...job })) as WaysThrough;
  }

  /** The board described so far, and the questions about it. Throws what is wrong with an answer. */
  async compose(description: Description): Promise<ComposerView> {
    return (await this.#ask({ ask: "compose", ...description })) as ComposerView;
  }

  async lessonFacts(job: JobSoFar): Promise<LessonFacts> {
    return (await this.#ask({ ask: "lesson-facts", ...job })) as LessonFacts;
  }

  /** What a closed job teaches; throws where it teaches nothing. */
  async lesson(job: JobSoFar, chained: Chained): Promise<Lesson> {
    return (await this.#ask({ ask: "lesson", chained, ...job })) as Lesson;
  }

  /** How each job hangs together with the others, by its id. */
  async chains(jobs: readonly Linked[]): Promise<Readonly<Record<string, Chained>>> {
    return (await this.#ask({ ask: "chains", jobs })) as Readonly<Record<string, Chained>>;
  }

  async learnt(lessons: readonly Lesson[]): Promise<LearntView> {
    return (await this.#ask({ ask: "learnt", lessons })) as LearntView;
  }

  /** The figures that a new job is worked with; null where nothing was learnt. */
  async figures(lessons: readonly Lesson[], header: JobHeader): Promise<JobFigures | null> {
    return (await this.#ask({ ask: "figures", lessons, header })) as JobFigures | null;
  }

  /** A board of one's own with a change, or as it is. Throws why the change cannot be. */
  async ownBoard(
    content: unknown,
    change: BoardChange | ReferenceChange | null,
    lessons: readonly Lesson[],
  ): Promise<OwnBoardAnswer> {
    return (await this.#ask({ ask: "board", content, change, lessons })) as OwnBoardAnswer;
  }

  /** A traced circuit with the answers given so far. Throws one line where the file is none. */
  async trace(text: string, answers: TraceAnswers): Promise<TracedFile> {
    return (await this.#ask({ ask: "trace", text, answers })) as TracedFile;
  }

  /** Which job was worked on which version of a board. */
  async versions(request: VersionsRequest): Promise<VersionsAnswer> {
    return (await this.#ask({ ask: "versions", ...request })) as VersionsAnswer;
  }

  /** What no cold check tells apart on a board; takes seconds. */
  async alike(content: unknown): Promise<readonly ReviewList[]> {
    return (await this.#ask({ ask: "alike", content })) as readonly ReviewList[];
  }

  /** The file of a board to give away. */
  async pack(request: PackRequest): Promise<string> {
    return (await this.#ask({ ask: "pack", ...request })) as string;
  }

  /** What a file of a board would bring. Throws one line where it is none. */
  async bring(request: BringRequest): Promise<BroughtBoard> {
    return (await this.#ask({ ask: "bring", ...request })) as BroughtBoard;
  }

  /** From now on these lines lie in the drawer. */
  async drawer(lines: readonly KeptLine[]): Promise<void> {
    await this.#ask({ ask: "drawer", lines });
  }

  /** What would become of every row of a catalogue file. Throws what leaves no row to read. */
  async importView(
    text: string,
    stock: readonly KeptLine[],
    told: (done: number, of: number) => void,
  ): Promise<ImportView> {
    return (await this.#ask({ ask: "import", text, stock }, told)) as ImportView;
  }

  stop(): void {
    this.#worker.terminate();
  }

  #ask(question: Question, told: Waiting["told"] = () => undefined): Promise<unknown> {
    const askId = ++this.#asked;
    return new Promise((resolve, reject) => {
      this.#waiting.set(askId, { resolve, reject, told });
      this.#worker.postMessage({ ...question, askId });
    });
  }
}
