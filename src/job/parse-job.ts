import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { parseEvent } from "../bench/parse-event.ts";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { said } from "../messages/said.ts";
import { DEFAULT_METER, type MeterSettings } from "../meter/settings.ts";
import { CAUSES, SYMPTOMS } from "../priors/cause.ts";
import { NOTHING_TOLD } from "../priors/told.ts";
import { Fields, found, Problems } from "../units/fields.ts";
import { deepFreeze } from "../units/frozen.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import { readAtHand } from "./at-hand.ts";
import { readComeback } from "./comeback-of.ts";
import { equipmentProblem } from "./equipment.ts";
import { withReadBeside } from "./good-beside.ts";
import type { Job } from "./job.ts";
import { asMarked } from "./marked.ts";
import { readLearned } from "./parse-learned.ts";
import { quotedTerms } from "./quoted-terms.ts";
import { readTerms } from "./read-terms.ts";
import { readWordList } from "./read-word-list.ts";
import { toldIn } from "./told-in.ts";
import { asWorkedHere } from "./worked-here.ts";

export const JOB_FORMAT = "faultwright-job/1";
/** A log longer than this is no bench job; folding one that long, undone all the way, takes about a second. */
export const MOST_EVENTS = 5000;
const JOB_FIELDS = [
  "format",
  "board",
  "cause",
  "symptom",
  "absent",
  "equipment",
  "terms",
  "stock",
  "meter",
  "learned",
  "practice",
  "comebackOf",
  "customer",
  "unit",
  "log",
] as const;
const METER_FIELDS = [
  "diodeOpenVolts",
  "diodeShortAmps",
  "diodeMaxVolts",
  "ohmsOpenVolts",
  "beepOhms",
] as const;
const MOST_WHOSE = 200;

/** The path a job file names its board by, or null where the board stands in the job itself (or is missing). */
export function boardPathOf(input: unknown): string | null {
  if (typeof input !== "object" || input === null || Array.isArray(input)) return null;
  const board = new Map<string, unknown>(Object.entries(input)).get("board");
  return typeof board === "string" ? board : null;
}

function readMeter(job: Fields): MeterSettings {
  if (!job.has("meter")) return DEFAULT_METER;
  const meter = job.object("meter");
  meter.only(METER_FIELDS, said`the meter`);
  const positive = (key: (typeof METER_FIELDS)[number]) =>
    meter.number(key, { above: 0 }) ?? DEFAULT_METER[key];
  return {
    diodeOpenVolts: positive("diodeOpenVolts"),
    diodeShortAmps: positive("diodeShortAmps"),
    diodeMaxVolts: positive("diodeMaxVolts"),
    ohmsOpenVolts: positive("ohmsOpenVolts"),
    beepOhms: positive("beepOhms"),
  };
}

/** Whose the board is and what it came out of: for lists and papers. Nothing is worked out from them, so a job does not carry them. */
function checkWhose(job: Fields): void {
  for (const key of ["customer", "unit"]) {
    const text = job.text(key);
    if (text !== undefined && text.length > MOST_WHOSE)
      job.complain(key, said`must be at most ${MOST_WHOSE} characters long, is ${text.length}`);
  }
}

function readBoard(problems: Problems, job: Fields, given: Board | null): Board | null {
  if (given !== null) return given;
  const inside = job.raw("board");
  if (typeof inside === "string") {
    job.complain("board", said`names the board file ${quoted(inside)}, which was not read`);
    return null;
  }
  const board = parseBoard(inside);
  if (board.ok) return board.value;
  // `parts.BR1.kind: ...` inside the board is `board.parts.BR1.kind: ...` in the job.
  problems.add(
    "",
    /^[\w[\].+-]+: /.test(board.problem) ? `board.${board.problem}` : `board: ${board.problem}`,
  );
  return null;
}

function readLog(problems: Problems, job: Fields): readonly JobEvent[] {
  if (!job.has("log")) return [];
  const items = job.list("log");
  if (items.length > MOST_EVENTS)
    job.complain("log", said`${items.length} events are too many; the most is ${MOST_EVENTS}`);
  const log: JobEvent[] = [];
  for (const [index, item] of items.entries()) {
    if (problems.first !== null) break;
    const event = parseEvent(item, `log[${index}]`);
    if (event.ok) log.push(event.value);
    else problems.add("", event.problem);
  }
  return log;
}

/**
 * A job file's value (already JSON) as a job, deep-frozen, its log known to be possible. `given` is the board whose path the job
 * gives (see `boardPathOf`), or null where the job carries its own. A problem is one line that begins with the field's path.
 */
export function parseJob(input: unknown, given: Board | null): Parsed<Job> {
  const problems = new Problems();
  const file = new Fields(problems, "", input);
  if (problems.first === null && file.raw("format") !== JOB_FORMAT)
    file.complain("format", said`expected ${quoted(JOB_FORMAT)}, found ${found(file.raw("format"))}`);
  file.only(JOB_FIELDS, said`a job`);
  file.require("board", "cause", "symptom");
  if (problems.first !== null) return { ok: false, problem: problems.first };
  const known = readBoard(problems, file, given);
  if (known === null) return { ok: false, problem: problems.first ?? `board: ${said`is missing`}` };
  const refs = [...known.parts.keys()];
  const absent = readWordList(problems, file, "absent", (ref) =>
    known.parts.has(ref) ? null : `${said`there is no part ${quoted(ref)}`}${suggestion(ref, refs)}`,
  );
  checkWhose(file);
  const job: Job = {
    board: known,
    asBrought: { board: known, absent },
    cause: file.word("cause", CAUSES) ?? "unknown",
    symptom: file.word("symptom", SYMPTOMS) ?? "other",
    told: NOTHING_TOLD,
    unpriced: known,
    learned: readLearned(problems, file, known),
    practice: file.number("practice", { least: 0 }) ?? null,
    absent,
    equipment: readWordList(problems, file, "equipment", equipmentProblem),
    terms: { ...readTerms(file), atHand: readAtHand(file, refs) },
    comebackOf: readComeback(file),
    meter: readMeter(file),
    log: readLog(problems, file),
  };
  if (problems.first !== null) return problems.outcome(job);
  const asItCame = asMarked(job.board, job.absent, job.log);
  const asFound = { ...asItCame, board: withReadBeside(asItCame.board, job.log) };
  const board = asWorkedHere(asFound.board, job.learned);
  const marked = {
    ...job,
    ...asFound,
    board,
    unpriced: asFound.board,
    told: toldIn(job.log),
    terms: quotedTerms(job.terms, job.log),
  };
  const folded = foldLog(marked.board, marked.absent, marked.log);
  if (!folded.ok) problems.add("", folded.problem);
  return problems.outcome(deepFreeze(marked));
}
