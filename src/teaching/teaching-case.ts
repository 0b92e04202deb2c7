/** A closed job as a case to practise on, `faultwright-case/1`: its board, what was asked and read, what was found, and nobody's name. */

import { foldLog } from "../bench/fold.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault, parseFaultList } from "../board/parse-fault.ts";
import { closedAs } from "../job/closed-as.ts";
import { type FoundFault, foundFaults } from "../job/found-faults.ts";
import type { Job } from "../job/job.ts";
import { parseJob } from "../job/parse-job.ts";
import type { BrokeAtPower, PracticeCase, WayStep } from "../job/practice-case.ts";
import { plain, said } from "../messages/said.ts";
import { Fields, Problems } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import { bareLog, keptEntries } from "./bare-log.ts";
import { proposedWay } from "./ways.ts";

const CASE_FORMAT = "faultwright-case/1";
/** Fields of a job file's head that hold figures and words of the format alone. */
const HEAD = ["cause", "symptom", "absent", "equipment", "meter"];
/** Of the terms, what a lesson is reckoned with; what a customer agreed to is theirs. */
const TERMS = ["currency", "ratePerHour", "newBoardPrice"];

/** Of the board, what it is; not what jobs have added to it. */
const BOARD = ["format", "name", "family", "supply", "zero", "nets", "parts", "rails", "points"];

type Content = Readonly<Record<string, unknown>>;

export interface TeachingCase extends PracticeCase {
  readonly title: string;
  /** a job file's head with its board inline, and no log */
  readonly header: Content;
}

/**
 * The case of a closed job. `content` is the job file's own, its board inline; `title` is what an apprentice reads. The found faults
 * come from what was believed of each part when it was replaced or cured, and at the end.
 */
export function teachingCase(job: Job, content: Content, title: string): Parsed<TeachingCase> {
  if (closedAs(job.log) === null) return { ok: false, problem: said`the job is still open: close it first` };
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return timeline;
  const found = foundFaults(job);
  if (!found.ok) return found;
  if (found.value.length === 0)
    return {
      ok: false,
      problem: said`this job found no fault: nothing was replaced and nothing is likelier faulty than not`,
    };
  const names = found.value.map(({ fault }) => fault);
  const read = parseFaultList(names, job.board);
  if (!read.ok) return read;
  const byPower = ({ since }: FoundFault) => job.log[since]?.do === "power";
  const faults = found.value.filter((one) => !byPower(one)).map(({ fault }) => fault);
  const kept = keptEntries(timeline.value.entries);
  const broke = found.value.filter(byPower).map(({ fault, since }) => ({
    fault,
    entry: kept.findIndex((entry) => entry.logIndex === since),
  }));
  const known = { faults, ...(broke.length === 0 ? {} : { broke }) };
  const header = bareHeader(content, title);
  const recorded = bareLog(timeline.value.entries);
  const again = parseJob({ ...header, log: recorded }, null);
  if (!again.ok) return again;
  const blind = parseJob(header, null);
  if (!blind.ok) return blind;
  const proposed = proposedWay(blind.value, { ...known, recorded });
  if (!proposed.ok) return proposed;
  return { ok: true, value: { title, header, ...known, recorded, proposed: proposed.value } };
}

/** The head of a job file without what a customer said or agreed to; the board bears the title, for names of boards are often people's. */
export function bareHeader(content: Content, title: string): Content {
  const picked = (from: unknown, fields: readonly string[]) =>
    Object.fromEntries(Object.entries((from ?? {}) as Content).filter(([field]) => fields.includes(field)));
  const terms = picked(content.terms, TERMS);
  return {
    format: "faultwright-job/1",
    board: { ...picked(content.board, BOARD), name: title },
    ...picked(content, HEAD),
    ...(Object.keys(terms).length === 0 ? {} : { terms }),
  };
}

/** The file's text. */
export function caseText({ title, header, faults, broke, recorded, proposed }: TeachingCase): string {
  return plain(
    `${JSON.stringify({ format: CASE_FORMAT, title, job: header, faults, broke, recorded, proposed }, null, 1)}\n`,
  );
}

/** A file's value (already JSON) as a case; one line where it is none. */
export function readCase(input: unknown): Parsed<TeachingCase> {
  const problems = new Problems();
  const file = new Fields(problems, "", input);
  if (problems.first === null && file.raw("format") !== CASE_FORMAT)
    file.complain("format", said`expected ${quoted(CASE_FORMAT)}`);
  file.only(["format", "title", "job", "faults", "broke", "recorded", "proposed"], said`a case`);
  file.require("format", "title", "job", "faults", "recorded", "proposed");
  const title = file.text("title") ?? "";
  const proposed =
    problems.first === null ? file.list("proposed").map((step, i) => readStep(step, i, problems)) : [];
  if (problems.first !== null) return { ok: false, problem: problems.first };
  const header = file.raw("job") as Content;
  const recorded = file.raw("recorded");
  const job = parseJob({ ...header, log: recorded }, null);
  if (!job.ok) return { ok: false, problem: `job: ${job.problem}` };
  const faults = parseFaultList(file.raw("faults"), job.value.asBrought.board);
  if (!faults.ok) return { ok: false, problem: `faults: ${faults.problem}` };
  const broke = file.has("broke") ? readBroke(file, job.value, problems) : undefined;
  if (problems.first !== null) return { ok: false, problem: problems.first };
  return {
    ok: true,
    value: {
      title,
      header,
      faults: file.raw("faults") as readonly string[],
      ...(broke === undefined ? {} : { broke }),
      recorded: recorded as PracticeCase["recorded"],
      proposed,
    },
  };
}

/** Each names a fault of the board and a power-up of the recorded log. */
function readBroke(file: Fields, job: Job, problems: Problems): readonly BrokeAtPower[] {
  return file.list("broke").map((item, index) => {
    const one = new Fields(problems, `${file.at("broke")}[${index}]`, item);
    one.only(["fault", "entry"], said`a fault that power brought`);
    one.require("fault", "entry");
    const [fault, entry] = [one.text("fault") ?? "", one.number("entry", { least: 0 }) ?? 0];
    const read = parseFault(fault, job.asBrought.board);
    if (!read.ok) one.complain("fault", read.problem);
    if (job.log[entry]?.do !== "power") one.complain("entry", said`recorded[${entry}] is no power-up`);
    return { fault, entry };
  });
}

function readStep(input: unknown, index: number, problems: Problems): WayStep {
  const step = new Fields(problems, `proposed.${index}`, input);
  step.only(["words", "minutes", "money", "why", "places"], said`a step`);
  step.require("words", "minutes", "money", "why");
  return {
    words: step.text("words") ?? "",
    minutes: step.number("minutes", { least: 0 }) ?? 0,
    money: step.number("money", { least: 0 }) ?? 0,
    why: step.raw("why") === "" ? "" : (step.text("why") ?? ""),
    ...(step.has("places") ? { places: readPlaces(step) } : {}),
  };
}

function readPlaces(step: Fields): readonly string[] {
  const places = step.list("places");
  if (!places.every((place) => typeof place === "string"))
    step.complain("places", said`expected pins, nets or parts by name`);
  return places.map(String);
}

/** What somebody sees before the case is written: what stays of the job, and that nothing else does. */
export function casePreview(given: TeachingCase, wholeLog: number): readonly string[] {
  const board = parseBoard(given.header.board);
  const words = (fault: string) => (board.ok ? faultNameWords(fault, board.value) : fault);
  const { length: kept } = given.recorded;
  const terms = Object.keys((given.header.terms ?? {}) as object).join(", ");
  return [
    said`title: ${given.title}`,
    given.faults.length === 0
      ? said`found: nothing that it came in with`
      : said`found: ${given.faults.map(words).join(", ")}`,
    ...(given.broke ?? []).map(
      ({ fault, entry }) => said`broke when power came on (entry ${entry + 1}): ${words(fault)}`,
    ),
    said`entries kept: ${kept} of ${wholeLog}; notes, names, reasons, ids and what was undone are left out, times begin on 1 January 2000`,
    terms === "" ? said`terms kept: none` : said`terms kept: ${terms}`,
    said`proposed way: ${given.proposed.length} steps`,
  ];
}
