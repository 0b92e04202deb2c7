/** The log folded into the bench: what is lifted, off, clipped on and powered after each event, and the spans of time. */

import type { Board } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { FrozenMap } from "../units/frozen.ts";
import { quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type { BenchState } from "./bench-state.ts";
import type { JobEvent } from "./event.ts";
import { isInjection } from "./injection.ts";
import { partProblem } from "./place.ts";
import { step } from "./step.ts";
import type { Span, Timeline, TimelineEntry } from "./timeline.ts";
import { Undoing } from "./undoing.ts";

/**
 * Events that open a span: power may break parts, and what is fitted may be bad or put in wrong. A low voltage into a dead rail is no such
 * power.
 */
const OPENS_SPAN: ReadonlySet<JobEvent["do"]> = new Set(["power", "replace", "refit", "restore"]);

/** The events that count, in order, with the state after the last; grows by one event at a time. */
interface Course {
  readonly entries: TimelineEntry[];
  readonly spans: Span[];
  now: BenchState;
  closed: boolean;
}

function startOf(absent: readonly string[]): Course {
  const now = { lifted: new Set<string>(), off: new Set(absent), clips: [], powered: false };
  return { entries: [], spans: [{ index: 0, openedBy: -1, event: null }], now, closed: false };
}

/** Puts one event at the end of the course, or says `field: why` it cannot happen there. */
function advance(
  course: Course,
  board: Board,
  absent: ReadonlySet<string>,
  event: JobEvent,
  logIndex: number,
): string | null {
  if (course.closed && event.do !== "note") return `do: ${said`the job is closed; undo the close first`}`;
  const stepped = step(board, absent, course.now, event);
  if (!stepped.ok) return stepped.problem;
  if (OPENS_SPAN.has(event.do) && !isInjection(event))
    course.spans.push({ index: course.spans.length, openedBy: logIndex, event });
  course.entries.push({
    logIndex,
    event,
    before: course.now,
    after: stepped.value,
    span: course.spans.length - 1,
  });
  course.now = stepped.value;
  course.closed ||= event.do === "close";
  return null;
}

/** The course of the first `length` events without those undone; the first problem where one of them cannot happen. */
function courseOf(
  board: Board,
  absent: readonly string[],
  log: readonly JobEvent[],
  length: number,
  undone: (index: number) => boolean,
): Parsed<Course> {
  const course = startOf(absent);
  const away = new Set(absent);
  for (let index = 0; index < length; index++) {
    const event = log[index];
    if (event === undefined || event.do === "undo" || undone(index)) continue;
    const problem = advance(course, board, away, event, index);
    if (problem !== null) return { ok: false, problem: `log[${index}].${problem}` };
  }
  return { ok: true, value: course };
}

function timelineOf(course: Course): Timeline {
  const replacedIn = new Map<string, number[]>();
  for (const { event, span } of course.entries) {
    if (event.do === "replace") replacedIn.set(event.part, [...(replacedIn.get(event.part) ?? []), span]);
  }
  return {
    entries: course.entries,
    spans: course.spans,
    now: course.now,
    replacedIn: new FrozenMap(replacedIn),
    closed: course.closed,
  };
}

function absentProblem(board: Board, absent: readonly string[]): string | null {
  for (const [index, ref] of absent.entries()) {
    const problem = partProblem(board, ref);
    if (problem !== null) return `absent[${index}]: ${problem}`;
  }
  return null;
}

/**
 * Folds a job's log over its board. Every event must be possible at its place in the log as it then stood, so that any phone or page
 * that holds a beginning of the log holds a possible one. A problem is one line that starts with the event's index and field
 * (`log[7].place: ...`).
 */
export function foldLog(board: Board, absent: readonly string[], log: readonly JobEvent[]): Parsed<Timeline> {
  const strange = absentProblem(board, absent);
  if (strange !== null) return { ok: false, problem: strange };
  const away = new Set(absent);
  const undoing = new Undoing();
  let course = startOf(absent);
  for (const [index, event] of log.entries()) {
    const problem = undoing.note(event, index);
    if (problem !== null) return { ok: false, problem: `log[${index}].${problem}` };
    if (event.do === "undo") {
      const again = courseOf(board, absent, log, index, (earlier) => undoing.isUndone(earlier));
      if (!again.ok) {
        const why = said`undoing ${quoted(event.of)} would make a later event impossible: ${again.problem}`;
        return { ok: false, problem: `log[${index}].of: ${why}` };
      }
      course = again.value;
    } else {
      const refused = advance(course, board, away, event, index);
      if (refused !== null) return { ok: false, problem: `log[${index}].${refused}` };
    }
  }
  return { ok: true, value: timelineOf(course) };
}

/** Why this event cannot come next, as one line that names the field; null where it can. */
export function canAppend(
  board: Board,
  absent: readonly string[],
  log: readonly JobEvent[],
  event: JobEvent,
): string | null {
  const folded = foldLog(board, absent, [...log, event]);
  return folded.ok ? null : folded.problem;
}

/** For each event of the log, whether it counts as never done (undo events themselves too). The log must fold. */
export function undoneEvents(log: readonly JobEvent[]): readonly boolean[] {
  const undoing = new Undoing();
  for (const [index, event] of log.entries()) undoing.note(event, index);
  return log.map((_, index) => undoing.isUndone(index));
}
