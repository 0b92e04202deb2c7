/**
 * A cold session with the engine on an oracle board: its proposals are followed for as long as they are cold; where it would
 * repair, power or stop, the session goes on with what tells most for its minutes, a lift among it, until nothing tells anything.
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
import { tellingStep } from "./telling-step.ts";
import { causeOf, trialJob } from "./trial.ts";

/** Readings after which the belief is written down, and the most that are taken. */
export const MARKS = [0, 5, 10, 20, 40] as const;
const MOST_READINGS = 80;
const MOST_STEPS = 200;

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
export async function coldSession(id: string, board: Board, seed: number): Promise<ColdSession> {
  const cause = causeOf(seed);
  const bench = oracleBench(board, cause, seed);
  const { oracle } = bench;
  const hidden = oracleHiddenBench(bench);
  const course = new Course(trialJob(board, seed, oracle.symptom), hidden);
  const session = new Session(course);
  session.snapshot();
  const refused = new Set<string>();
  let ended: string | null = null;
  for (let step = 0; step < MOST_STEPS && !session.full; step++) {
    const assessed = session.assessed();
    const { action, row } = assessed.proposal;
    const open = [action, ...row].filter((one) => !refused.has(JSON.stringify(one)));
    const follows = COLD.has(action.do) && open.length > 0;
    if (!follows) ended ??= open.length === 0 ? "no answer" : action.do;
    const telling = follows ? null : tellingStep(assessed, refused);
    const wanted = telling === null ? open : [telling];
    if (!follows && telling === null) break;
    const events = await session.take(wanted);
    for (const [at, event] of events.entries())
      if (event.do === "note") refused.add(JSON.stringify(wanted[at]));
    // what has been read once would say the same again, until hands have changed the board
    if (telling?.do === "lift" || telling?.do === "remove") refused.clear();
    if (telling !== null) refused.add(JSON.stringify(telling));
  }
  session.snapshot();
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
    ended: ended ?? "enough readings",
  };
}
