/** A bench that answers as the recorded board did where the log has it, and as the found faults would where it has not. */
import { benchKey } from "../bench/bench-state.ts";
import type { JobEvent, MeasureEvent, PowerEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Fault } from "../board/fault.ts";
import { parseFault, parseFaultList } from "../board/parse-fault.ts";
import type { Job } from "../job/job.ts";
import type { PracticeCase } from "../job/practice-case.ts";
import type { MakePredictor } from "../meter/prediction.ts";
import { type Answer, type Asked, answer } from "../practice/answer.ts";
import { type PracticeJob, practiceJobOf } from "../practice/hidden-course.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import type { Parsed } from "../units/outcome.ts";

/** What a recorded event has that one who does the same again is told. */
const TOLD = ["reading", "finding", "observed", "signs"] as const;
/** Either way round these read alike. */
const EITHER_WAY: readonly string[] = ["ohms", "farads", "continuity"];

/** The practice job of a case: the faults that its board came in with are the found ones. */
export function caseJob(
  job: Job,
  priors: PriorTable,
  seed: number,
  given: Pick<PracticeCase, "faults" | "broke" | "recorded">,
): Parsed<PracticeJob> {
  const { board } = job.asBrought;
  const faults = parseFaultList(given.faults, board);
  if (!faults.ok) return faults;
  const broke: { entry: number; fault: Fault }[] = [];
  for (const { fault, entry } of given.broke ?? []) {
    const read = parseFault(fault, board);
    if (!read.ok) return read;
    broke.push({ entry, fault: read.value });
  }
  const practice = practiceJobOf(job, priors, seed);
  const recorded = foldLog(practice.job.board, practice.job.absent, given.recorded);
  if (!recorded.ok) return recorded;
  const brokenBy: PracticeJob["brokenBy"] = (entries, { event, before }) => {
    const same = sameAsked(recorded.value, entries, before, event);
    // the recorded log is whole: its entries are numbered as it is
    return same === null
      ? null
      : broke.filter(({ entry }) => entry === same.logIndex).map(({ fault }) => fault);
  };
  return { ok: true, value: { ...practice, arrived: faults.value, brokenBy } };
}

/** What the board of the case shows for an event that would be appended to the log of `timeline`. */
export function caseAnswer(
  practice: PracticeJob,
  given: PracticeCase,
  timeline: Timeline,
  asked: Asked,
  make: MakePredictor,
): Answer {
  const recorded = foldLog(practice.job.board, practice.job.absent, given.recorded);
  const entry = recorded.ok ? sameAsked(recorded.value, timeline.entries, timeline.now, asked) : null;
  if (entry === null) return answer(practice, timeline, asked, make);
  const told = Object.entries(entry.event).filter(([field]) => TOLD.some((name) => name === field));
  // The asked event with the recorded outcome; the fold judges it again.
  return { ok: true, event: { ...asked, ...Object.fromEntries(told) } as unknown as JobEvent };
}

/** The recorded entry that asked the same of a board in the same state, the latest before anything else was cured. */
function sameAsked(
  recorded: Timeline,
  entries: readonly TimelineEntry[],
  bench: Timeline["now"],
  asked: Asked,
): TimelineEntry | null {
  const state = stateKey(entries, bench);
  return (
    recorded.entries.find(
      (entry, index) =>
        isSame(entry.event, asked) && stateKey(recorded.entries.slice(0, index), entry.before) === state,
    ) ?? null
  );
}

/** Everything that a reading can depend on beside the faults: what is lifted, clipped on and cured, and the power that is or was on. */
function stateKey(entries: readonly TimelineEntry[], bench: Timeline["now"]): string {
  const cures = entries.flatMap(({ event }) => {
    if (event.do === "replace") return [`replace ${event.part}`];
    if (event.do === "clean" || event.do === "resolder")
      return [`${event.do} ${event.part ?? event.stage ?? ""}`];
    return [];
  });
  const power = entries.findLast(({ event }) => event.do === "power")?.event;
  const fed = power?.do === "power" ? powerKey(power) : "never powered";
  return [benchKey(bench), [...new Set(cures)].sort().join(","), fed].join("\n");
}

function powerKey({ feed, watts, volts, limitAmps, ohms, load, at }: Omit<PowerEvent, "observed">): string {
  return JSON.stringify([feed, watts, volts, limitAmps, ohms, load, Array.isArray(at) ? at : null]);
}

function isSame(event: JobEvent, asked: Asked): boolean {
  if (event.do === "measure" && asked.do === "measure") return isSameReading(event, asked);
  if (event.do === "look" && asked.do === "look") return event.part === asked.part;
  if (event.do === "power" && asked.do === "power")
    return event.observed !== undefined && powerKey(event) === powerKey(asked);
  if (event.do === "unpower" && asked.do === "unpower") return event.observed !== undefined;
  return false;
}

function isSameReading(event: MeasureEvent, asked: Omit<MeasureEvent, "reading">): boolean {
  const fields = ["mode", "part", "settling", "wires", "by"] as const;
  if (fields.some((field) => event[field] !== asked[field])) return false;
  if (event.red === asked.red && event.black === asked.black) return true;
  return EITHER_WAY.includes(event.mode) && event.red === asked.black && event.black === asked.red;
}
