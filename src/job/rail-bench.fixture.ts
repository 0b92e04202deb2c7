/**
 * A bench for the tests of a shorted rail: a shipped board with one hidden short, a meter that reads the solver's circuit, tracks of fixed
 * milliohms from the rail to each part, and a camera that sees the live board. It plays what is proposed and keeps the log.
 */
import type { JobEvent, MeasureEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Board } from "../board/board.ts";
import type { PartFault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { LiveBoard } from "../live/live-board.ts";
import { liveOfLog } from "../live/live-of-log.ts";
import { feedOf } from "../live/power-feed.ts";
import type { Action, Proposal } from "../planning/proposal.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { type Assessment, AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";
import { predictorsAfter } from "./predictor-of-job.ts";
import { provenEmpty } from "./warm-up.ts";

export type RawParts = Record<
  string,
  { kind: string; pins: Record<string, string>; [more: string]: unknown }
>;

interface RailCase {
  readonly board: string;
  /** changes the raw parts before they are read */
  readonly spoil?: (parts: RawParts) => void;
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

/** Plays from the readings across the rail on, until a part is to be replaced or the job closed, at most `most` steps. */
export function playRail(
  { board: id, spoil, hidden, rail, equipment, cause = "unknown", first }: RailCase,
  most: number,
): Played {
  const content = structuredClone(SHIPPED.find((one) => one.id === id)?.board) as Record<string, unknown>;
  spoil?.(content.parts as RawParts);
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
  return bench.play(most);
}

class RailBench {
  readonly log: JobEvent[] = [];
  readonly #board: Board;
  readonly #fault: PartFault;
  /** the job file without its log */
  readonly #told: object;
  readonly #session = new AssessmentSession();
  readonly #make = predictorsAfter("unknown");

  constructor(board: Board, fault: PartFault, told: object) {
    this.#board = board;
    this.#fault = fault;
    this.#told = told;
  }

  play(most: number): Played {
    const proposals: Proposal[] = [];
    for (;;) {
      const last = this.#assess();
      const { proposal } = last;
      proposals.push(proposal);
      const ends = proposal.action.do === "replace" || proposal.action.do === "close";
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
    else if (action.do === "power") {
      const fed = new LiveBoard(this.#board, this.#now().now, feedOf(action, this.#board));
      this.log.push({ ...action, observed: fed.state([this.#fault]).observed });
    } else this.log.push(action);
  }

  #reading(asked: Omit<MeasureEvent, "reading">): MeasureEvent["reading"] {
    if (asked.mode === "dcv") return 0.2;
    if (asked.mode === "temperature") {
      const warm = liveOfLog(this.#board, this.#now(), [this.#fault])?.temperature(asked.part ?? "", {
        by: asked.by,
        afterPower: asked.afterPower,
        ambient: 21,
      });
      return Number((warm?.celsius ?? 21).toFixed(1));
    }
    const { mode, red = "", black = "" } = asked;
    if (mode !== "diode" && mode !== "ohms" && mode !== "continuity" && mode !== "farads")
      throw new Error(`nobody asks for ${mode} here`);
    if (asked.wires === 4) return this.#milliohms(red.slice(0, red.indexOf(".")));
    const job = this.#job();
    const shown = this.#make(this.#board, this.#now().now, job.meter).predict({ mode, red, black }, [
      this.#fault,
    ]);
    if (!shown.solved) throw new Error(shown.why);
    return typeof shown.shown === "number" ? Number(shown.shown.toPrecision(4)) : shown.shown;
  }

  #milliohms(ref: string): number {
    const { part, value } = this.#fault;
    const way = ref === part ? 0 : trackOhms(ref) + trackOhms(part);
    return Number(((value ?? 0.2) + way).toFixed(4));
  }
}
