/** `board good-readings`: what boards that are known to be good read, put into the board file. */
import { createHash } from "node:crypto";
import { realpathSync } from "node:fs";
import type { Command } from "commander";
import type { Board, CountedLog } from "../../board/board.ts";
import { identityOf } from "../../board/board-identity.ts";
import { parseBoard } from "../../board/parse-board.ts";
import { goodReadings, oddReferences, oddReferencesInWords, referenceWords } from "../../job/good-board.ts";
import { pooledWith } from "../../job/pooled-board.ts";
import { canonicalJson } from "../../job/same-content.ts";
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
  let counted = loaded.value.referencesFrom ?? [];
  const before: string[] = [];
  for (const path of jobs) {
    const job = loadJob(path);
    if (!job.ok) return refuse(io, job.problem);
    const { board } = job.value.job;
    if (identityOf(board) !== identityOf(loaded.value))
      return refuse(
        io,
        `${path}: board: is "${board.name}", not "${loaded.value.name}"; nothing was written`,
      );
    const log = logIn(path);
    const known = countedBefore(counted, log);
    if (known !== null && known.entries === log.length) before.push(path);
    const read = goodReadings(job.value.job, known?.entries ?? 0);
    if (!read.ok) return refuse(io, `${path}: ${read.problem}`);
    readings.push(...read.value);
    if (log.length > (known?.entries ?? 0)) counted = [...counted, countedLog(log)];
  }
  const references = pooledWith(loaded.value, [], readings);
  const from = counted.length === 0 ? {} : { referencesFrom: counted };
  const raw = { ...(content.value as Record<string, unknown>), references, ...from };
  const board = parseBoard(raw);
  if (!board.ok) return refuse(io, `${file}: ${board.problem}`);
  if (jobs.length > 0) replaceFile(realpathSync(file), `${JSON.stringify(raw, null, 2)}\n`);
  const odd = oddReferences(board.value);
  const again = before.map((path) => `${path}: counted before; nothing was added\n`);
  io.out(
    json
      ? answerText({ references, cannotBe: odd, countedBefore: before })
      : `${referencesText(board.value)}${again.join("")}`,
  );
  return DONE;
}

/** The entries of a job file's log as they stand in it, so that another program's reading of them counts as the same. */
function logIn(path: string): readonly unknown[] {
  const file = readJson(path);
  const log = file.ok ? (file.value as { readonly log?: unknown }).log : [];
  return Array.isArray(log) ? log : [];
}

function countedLog(entries: readonly unknown[]): CountedLog {
  const log = createHash("sha256").update(canonicalJson(entries)).digest("hex");
  return { entries: entries.length, log };
}

/** The longest beginning of this log that is counted already: a log only grows at its end. */
function countedBefore(counted: readonly CountedLog[], log: readonly unknown[]): CountedLog | null {
  const known = counted.filter(
    ({ entries, log: print }) => entries <= log.length && countedLog(log.slice(0, entries)).log === print,
  );
  return known.sort((a, b) => b.entries - a.entries)[0] ?? null;
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
