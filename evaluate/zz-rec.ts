/**
 * A cold session with the engine on an oracle board: its proposals are followed for as long as they are cold; where it would
 * repair, power or stop, the session goes on with the checks that tell most until none tells anything.
 */
import type { JobEvent } from "../src/bench/event.ts";
import { isColdMode } from "../src/bench/words.ts";
import type { Board } from "../src/board/board.ts";
import { type Assessment, AssessmentSession, assess, beliefOf } from "../src/job/assess.ts";
import type { Action } from "../src/planning/proposal.ts";
import type { Cause } from "../src/priors/cause.ts";
import { tellable } from "./oracle/can-tell.ts";
import { oracleBench } from "./oracle/oracle-bench.ts";
import { Course } from "./players/course.ts";
import { oracleHiddenBench } from "./players/oracle-hidden-bench.ts";
import { tellingCheck } from "./telling-check.ts";
import { causeOf, trialJob } from "./trial.ts";

/** Readings after which the belief is written down, and the most that are taken. */
export const MARKS = [0, 5, 10, 20, 40] as const;
const MOST_READINGS = 80;
const MOST_STEPS = 120;

/** What follows a cold proposal changes no fault. */
const COLD: ReadonlySet<string> = new Set([
  "measure",
  "look",
  "calibrate",
  "lift",
  "refit",
  "remove",
  "restore",
  "clip",
  "unclip",
]);

/** Probability of each part, and of each leak with any weight, after so many readings. */
interface Snapshot {
  readonly readings: number;
  readonly probabilities: readonly (readonly [string, number])[];
}

export interface ColdSession {
  readonly board: string;
  readonly cause: Cause;
  readonly seed: number;
  readonly differences: readonly string[];
  /** the true faults, as the file format spells them and by name, and the names of those that a cold check can tell */
  readonly faults: readonly string[];
  readonly dead: readonly string[];
  readonly tellable: readonly string[];
  /** in the order of their readings, the last at the end */
  readonly snapshots: readonly Snapshot[];
  /** the first proposal that was not followed */
  readonly ended: string;
}

const isReading = (event: JobEvent): boolean => event.do === "measure" && isColdMode(event.mode);
const asksReading = (action: Action): boolean => action.do === "measure" && isColdMode(action.mode);

class Session {
  readonly course: Course;
  readonly snapshots: Snapshot[] = [];
  readonly #session = new AssessmentSession();
  #readings = 0;

  constructor(course: Course) {
    this.course = course;
  }

  get full(): boolean {
    return this.#readings >= MOST_READINGS;
  }

  assessed(): Assessment {
    const assessed = assess(this.course.job, this.#session);
    if (!assessed.ok) throw new Error(assessed.problem);
    return assessed.value;
  }

  snapshot(): void {
    const believed = beliefOf(this.course.job, this.#session);
    if (!believed.ok) throw new Error(believed.problem);
    const probabilities = believed.value.belief.suspects.map(
      ({ part, probability }) => [part, Number(probability.toPrecision(3))] as const,
    );
    this.snapshots.push({ readings: this.#readings, probabilities });
  }

  /** Takes a row piece by piece, so that the belief is seen at each mark. */
  async take(row: readonly Action[]): Promise<readonly JobEvent[]> {
    const events: JobEvent[] = [];
    let left = row;
    while (left.length > 0 && !this.full) {
      const next = MARKS.find((mark) => mark > this.#readings) ?? MOST_READINGS;
      let piece = 0;
      for (let room = next - this.#readings; piece < left.length && room > 0; piece++)
        if (asksReading(left[piece])) room--;
      const taken = await this.course.takeRow(left.slice(0, piece));
      events.push(...taken);
      this.#readings += taken.filter(isReading).length;
      left = left.slice(piece);
      if (this.#readings === next && next < MOST_READINGS) this.snapshot();
    }
    return events;
  }
}

/** Plays the session of one seed; the same seed gives the same session. */
export async function coldSessionZ(id: string, board: Board, seed: number): Promise<ColdSession> {
  const cause = causeOf(seed);
  const bench = oracleBench(board, cause, seed);
  const { oracle } = bench;
  const hidden = oracleHiddenBench(bench);
  const course = new Course(trialJob(board, seed, oracle.symptom), hidden);
  const session = new Session(course);
  session.snapshot();
  const refused = new Set<string>();
  let ended = "enough readings";
  for (let step = 0; step < MOST_STEPS && !session.full; step++) {
    const { action, row } = session.assessed().proposal;
    const wanted = [action, ...row].filter((one) => !refused.has(JSON.stringify(one)));
    if (!COLD.has(action.do) || wanted.length === 0) {
      ended = wanted.length === 0 ? "no answer" : action.do;
      break;
    }
    const events = await session.take(wanted);
    for (const [at, event] of events.entries())
      if (event.do === "note") refused.add(JSON.stringify(wanted[at]));
  }
  while (!session.full) {
    const action = tellingCheck(session.assessed(), refused);
    if (action === null) break;
    // what has been read once in this state of the bench would say the same again
    refused.add(JSON.stringify(action));
    await session.take([action]);
  }
  session.snapshot();
  logs = { log: course.log, symptom: oracle.symptom };
  const start = new Course(course.asBrought, hidden);
  return {
    board: id,
    cause,
    seed,
    differences: oracle.differences,
    faults: hidden.faults(start.timeline),
    dead: hidden.dead(start.timeline),
    tellable: await tellable(oracle),
    snapshots: session.snapshots,
    ended,
  };
}

import { appendFileSync } from "node:fs";
import { judgedBoards } from "./boards/judged-boards.ts";

let logs: any = null;
const [from, to, out] = process.argv.slice(2);
for (let seed = +from!; seed < +to!; seed++) {
  const bs = judgedBoards(undefined as any);
  const c = bs[seed % bs.length]!;
  try {
    const r = await coldSessionZ(c.id, c.board, seed);
    appendFileSync(out!, JSON.stringify({ ...r, snapshots: r.snapshots.length, ...logs }) + "\n");
  } catch (e) {
    console.log(seed, String(e));
  }
}
