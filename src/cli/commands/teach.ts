/** `teach`: a closed job as a case to practise on. `compare`: an apprentice's way beside the recorded and the proposed one. */
import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import type { Command } from "commander";
import { faultNameWords } from "../../board/fault-words.ts";
import { boardPathOf, parseJob } from "../../job/parse-job.ts";
import { foundInCase } from "../../job/practice-case.ts";
import { drawnBoard } from "../../shipped/drawing/drawn-board.ts";
import { casePage } from "../../teaching/case-page.ts";
import { costWords, type NamedWay, namedWays } from "../../teaching/side-by-side.ts";
import { casePreview, caseText, type TeachingCase, teachingCase } from "../../teaching/teaching-case.ts";
import { wayOf } from "../../teaching/ways.ts";
import type { Parsed } from "../../units/outcome.ts";
import { loadCase } from "../case-file.ts";
import { DONE, type Finish, type Io, oneLine, refuse, whileTold } from "../io.ts";
import { loadJob } from "../load-job.ts";
import { readJson } from "../read-file.ts";
import { replaceFile } from "../replace-file.ts";

export function addTeach(program: Command, io: Io, finish: Finish): void {
  program
    .command("teach")
    .description("make a case to practise on of a closed job: nobody's name, note or reason is in it")
    .argument("<job>", "a closed job file")
    .argument("[out]", "where to write the case; left out: only show what would be in it")
    .option("--title <words>", "what an apprentice reads above it (left out: the board's family)")
    .addHelpText(
      "after",
      "\nExample:\n  $ faultwright teach closed.json case.json --title 'A pump that was hit by lightning'\n  $ faultwright bench mine.json --case case.json\n  $ faultwright compare case.json mine.json --print case.html",
    )
    .action((file: string, out: string | undefined, options: { title?: string }) =>
      finish(() => teach(file, out, options.title, io)),
    );
  program
    .command("compare")
    .description("the recorded and the proposed way through a case, and with a job your own, step by step")
    .argument("<case>", "a case file of `teach`")
    .argument("[job]", "the job file in which it was worked")
    .option("--print <file>", "write it as a page for the printer")
    .action((file: string, job: string | undefined, options: { print?: string }) =>
      finish(() => compare(file, job, options.print, io)),
    );
}

function teach(file: string, out: string | undefined, title: string | undefined, io: Io): number {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job, content } = loaded.value;
  const boardPath = boardPathOf(content);
  const board = boardPath === null ? null : readJson(resolve(dirname(file), boardPath));
  if (board !== null && !board.ok) return refuse(io, board.problem);
  const whole = board === null ? content : { ...content, board: board.value };
  const made = whileTold(io, () => teachingCase(job, whole, title ?? `A case of ${job.board.family}`));
  if (!made.ok) return refuse(io, `${file}: ${made.problem}`);
  io.out(
    casePreview(made.value, job.log.length)
      .map((line) => `${line}\n`)
      .join(""),
  );
  if (out === undefined) return DONE;
  if (existsSync(out)) return refuse(io, `${out}: not written: there is such a file already; name another`);
  return written(out, caseText(made.value), io);
}

function compare(file: string, jobFile: string | undefined, print: string | undefined, io: Io): number {
  const given = loadCase(file);
  if (!given.ok) return refuse(io, given.problem);
  const ways = whileTold(io, () => threeWays(given.value, jobFile));
  if (!ways.ok) return refuse(io, ways.problem);
  const blind = parseJob(given.value.header, null);
  if (!blind.ok) return refuse(io, `${file}: ${blind.problem}`);
  const { board } = blind.value;
  const found = foundInCase(given.value);
  const { currency } = blind.value.terms;
  io.out(
    `${oneLine(given.value.title)}\nFound: ${found.map((fault) => faultNameWords(fault, board)).join("; ")}\n${rows(ways.value, currency)}`,
  );
  if (print === undefined) return DONE;
  return written(
    print,
    casePage({
      title: given.value.title,
      board,
      picture: drawnBoard(board),
      found,
      ways: ways.value,
      currency,
    }),
    io,
  );
}

function threeWays(given: TeachingCase, jobFile: string | undefined): Parsed<readonly NamedWay[]> {
  const recorded = parseJob({ ...given.header, log: given.recorded }, null);
  if (!recorded.ok) return recorded;
  const recordedWay = wayOf(recorded.value, foundInCase(given));
  if (!recordedWay.ok) return recordedWay;
  const own = jobFile === undefined ? null : loadJob(jobFile);
  if (own !== null && !own.ok) return own;
  const ownWay = own === null ? null : wayOf(own.value.job, foundInCase(given));
  if (ownWay !== null && !ownWay.ok) return { ok: false, problem: `${jobFile}: ${ownWay.problem}` };
  return {
    ok: true,
    value: namedWays([
      ["yours", ownWay?.value ?? []],
      ["recorded", recordedWay.value],
      ["proposed", given.proposed],
    ]),
  };
}

function rows(ways: readonly NamedWay[], currency: string): string {
  const wide = Math.max(...ways.map(({ name }) => name.length));
  const lines: string[] = [];
  const most = Math.max(...ways.map(({ steps }) => steps.length));
  for (let row = 0; row < most; row++)
    for (const { name, steps } of ways) {
      const step = steps[row];
      if (step === undefined) continue;
      const why = step.why === "" ? "" : `; ${oneLine(step.why)}`;
      lines.push(
        `${String(row + 1).padStart(3)} ${name.padEnd(wide)}  ${oneLine(step.words)} (${costWords(step, currency)})${why}`,
      );
    }
  for (const { name, sum } of ways)
    lines.push(`sum ${name.padEnd(wide)}  ${sum.steps} steps, ${costWords(sum, currency)}`);
  return `${lines.join("\n")}\n`;
}

function written(path: string, text: string, io: Io): number {
  try {
    replaceFile(path, text);
    return DONE;
  } catch (error) {
    return refuse(io, `${path}: not written: ${error instanceof Error ? error.message : String(error)}`);
  }
}
