/**
 * A bench for the tests of a shorted rail: a shipped board with one hidden short, a meter that reads the solver's circuit, tracks of fixed
 * milliohms from the rail to each part, and a camera that sees the live board. It plays what is proposed and keeps the log.
 */
import type { JobEvent, MeasureEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import type { PartFault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { LiveBoard } from "../live/live-board.ts";
import { liveOfLog } from "../live/live-of-log.ts";
import { liveReading } from "../live/live-reading.ts";
import { feedOf } from "../live/power-feed.ts";
import type { Action, Proposal } from "../planning/proposal.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { type Assessment, AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { predictorsAfter } from "./predictor-of-job.ts";
import { provenEmpty } from "./work-ahead.ts";

export type RawParts = Record<
  string,
  { kind: string; pins: Record<string, string>; [more: string]: unknown }
>;

interface RailCase {
  readonly board: string;
  /** changes the raw parts before they are read */
  readonly spoil?: (parts: RawParts) => void;
  /** rails beside those of the board file */
  readonly rails?: Readonly<Record<string, object>>;
  readonly hidden: string;
  readonly rail: string;
  readonly equipment: readonly string[];
  readonly cause?: string;
  /** done before anything is proposed; absent: diode both ways and ohms across the rail */
  readonly first?: readonly Action[];
}

export interface Played {
  readonly board: Board;
  readonly log: readonly JobEvent[];
  /** proposals followed, the last of them not */
  readonly proposals: readonly Proposal[];
  readonly last: Assessment;
}

/** Milliohms from the rail to each part: 6 to 34, no two alike, the same in every run. */
const trackOhms = (ref: string): number =>
  0.006 + (0.028 * ([...ref].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 97, 7) % 97)) / 97;

/**
 * Plays from the readings across the rail on, at most `most` steps.
 * @param until - the step that is not followed any more: the first replacement, or the closing of the job
 */
export function playRail(
  { board: id, spoil, rails = {}, hidden, rail, equipment, cause = "unknown", first }: RailCase,
  most: number,
  until: "replace" | "close" = "replace",
): Played {
  const content = structuredClone(SHIPPED.find((one) => one.id === id)?.board) as Record<string, unknown>;
  spoil?.(content.parts as RawParts);
  content.rails = { ...(content.rails as object), ...rails };
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(parsed.problem);
  const board = parsed.value;
  const fault = parseFault(hidden, board);
  if (!fault.ok || fault.value.of !== "part") throw new Error(`no fault ${hidden}`);
  const bench = new RailBench(board, fault.value, { equipment, cause, board: content });
  const { net, against } = board.rails.find((one) => one.name === rail) ?? { net: rail, against: null };
  const back = against ?? board.zero;
  for (const event of provenEmpty({ board, absent: [] })) bench.log.push(event);
  const bothWays: readonly Action[] = [
    { do: "measure", mode: "diode", red: net, black: back },
    { do: "measure", mode: "diode", red: back, black: net },
    { do: "measure", mode: "ohms", red: net, black: back },
  ];
  for (const action of first ?? bothWays) bench.follow(action);
  return bench.play(most, until);
}

class RailBench {
  readonly log: JobEvent[] = [];
  readonly #board: Board;
  /** what is wrong with the board now */
  #faults: readonly PartFault[];
  readonly #hidden: PartFault;
  /** the job file without its log */
  readonly #told: object;
  readonly #session = new AssessmentSession();
  readonly #make = predictorsAfter("unknown");

  constructor(board: Board, fault: PartFault, told: object) {
    this.#board = board;
    this.#faults = [fault];
    this.#hidden = fault;
    this.#told = told;
  }

  play(most: number, until: "replace" | "close"): Played {
    const proposals: Proposal[] = [];
    for (;;) {
      const last = this.#assess();
      const { proposal } = last;
      proposals.push(proposal);
      const ends = proposal.action.do === until || proposal.action.do === "close";
      if (ends || proposals.length > most) return { board: this.#board, log: this.log, proposals, last };
      for (const action of [proposal.action, ...proposal.row]) this.follow(action);
    }
  }

  #job() {
    const file = {
      format: "faultwright-job/1",
      symptom: "dead",
      log: this.log,
      ...this.#told,
    };
    const job = parseJob(file, this.#board);
    if (!job.ok) throw new Error(job.problem);
    return job.value;
  }

  #assess(): Assessment {
    const assessed = assess(this.#job(), this.#session);
    if (!assessed.ok) throw new Error(assessed.problem);
    return assessed.value;
  }

  #now() {
    const folded = foldLog(this.#board, [], this.log);
    if (!folded.ok) throw new Error(folded.problem);
    return folded.value;
  }

  follow(action: Action): void {
    if (action.do === "measure") this.log.push({ ...action, reading: this.#reading(action) });
    else if (action.do === "look") this.log.push({ ...action, finding: "clean" });
    else if (action.do === "answer" && action.question === MOTOR_INSULATION.question)
      this.log.push({ ...action, answer: MOTOR_INSULATION.good });
    else if (action.do === "power") {
      const fed = new LiveBoard(this.#board, this.#now().now, feedOf(action, this.#board));
      this.log.push({ ...action, observed: fed.state(this.#faults).observed });
    } else {
      if (action.do === "replace") this.#faults = this.#faults.filter(({ part }) => part !== action.part);
      this.log.push(action);
    }
  }

  #reading(asked: Omit<MeasureEvent, "reading">): MeasureEvent["reading"] {
    const { mode, red = "", black = "" } = asked;
    if (!isColdMode(mode)) {
      const live = liveOfLog(this.#board, this.#now(), this.#faults);
      const shown = live === null ? null : liveReading(live, { ...asked, mode, ambient: 21 });
      return Number((shown?.value ?? 0.2).toFixed(2));
    }
    if (asked.wires === 4) return this.#milliohms(red.slice(0, red.indexOf(".")));
    const job = this.#job();
    const shown = this.#make(this.#board, this.#now().now, job.meter).predict(
      { mode, red, black },
      this.#faults,
    );
    if (!shown.solved) throw new Error(shown.why);
    return typeof shown.shown === "number" ? Number(shown.shown.toPrecision(4)) : shown.shown;
  }

  #milliohms(ref: string): number {
    const { part, value } = this.#hidden;
    const way = ref === part ? 0 : trackOhms(ref) + trackOhms(part);
    return Number(((value ?? 0.2) + way).toFixed(4));
  }
}
