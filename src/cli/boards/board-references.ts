/** `board good-readings`: what boards that are known to be good read, put into the board file. */
import { realpathSync } from "node:fs";
import type { Command } from "commander";
import type { Board } from "../../board/board.ts";
import { parseBoard } from "../../board/parse-board.ts";
import { goodReadings, oddReferences, oddReferencesInWords, referenceWords } from "../../job/good-board.ts";
import { pooledWith } from "../../job/pooled-board.ts";
import type { GoodReading } from "../../learning/references.ts";
import { answerText } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadBoard, loadJob } from "../load-job.ts";
import { readJson } from "../read-file.ts";
import { replaceFile } from "../replace-file.ts";

export function addGoodReadings(board: Command, io: Io, finish: Finish): void {
  board
    .command("good-readings")
    .description(
      "what good boards of this number read: taken from jobs on boards known to be good, kept in the board file with count and spread",
    )
    .argument("<file>", "a board file; it is changed in place where jobs are named")
    .argument("[jobs...]", "job files whose cold readings were taken on a good board")
    .option("--json", "one JSON object for a script")
    .addHelpText("after", "\nExample:\n  $ faultwright board good-readings own.json good-1.json good-2.json")
    .action((file: string, jobs: string[], options: { json?: true }) =>
      finish(() => referencesOf(file, jobs, options.json === true, io)),
    );
}

function referencesOf(file: string, jobs: readonly string[], json: boolean, io: Io): number {
  const loaded = loadBoard(file);
  const content = readJson(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  if (!content.ok) return refuse(io, content.problem);
  const readings: GoodReading[] = [];
  for (const path of jobs) {
    const job = loadJob(path);
    if (!job.ok) return refuse(io, job.problem);
    const { board } = job.value.job;
    if (board.name !== loaded.value.name)
      return refuse(
        io,
        `${path}: board: is "${board.name}", not "${loaded.value.name}"; nothing was written`,
      );
    const read = goodReadings(job.value.job);
    if (!read.ok) return refuse(io, `${path}: ${read.problem}`);
    readings.push(...read.value);
  }
  const references = pooledWith(loaded.value, [], readings);
  const raw = { ...(content.value as Record<string, unknown>), references };
  const board = parseBoard(raw);
  if (!board.ok) return refuse(io, `${file}: ${board.problem}`);
  if (jobs.length > 0) replaceFile(realpathSync(file), `${JSON.stringify(raw, null, 2)}\n`);
  const odd = oddReferences(board.value);
  io.out(json ? answerText({ references, cannotBe: odd }) : referencesText(board.value));
  return DONE;
}

function referencesText(board: Board): string {
  const lines = (board.references ?? []).map(
    (one) => `  ${one.mode} red ${one.red}, black ${one.black}: ${referenceWords(one)}`,
  );
  const wrong = oddReferencesInWords(board);
  const head = lines.length === 0 ? "No good board was read yet.\n" : `${lines.join("\n")}\n`;
  if (wrong.lines.length === 0) return head;
  return `${head}${wrong.title}:\n${wrong.lines.map((line) => `  ${line}\n`).join("")}`;
}
