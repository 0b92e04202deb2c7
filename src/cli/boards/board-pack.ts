/** `board pack` and `board unpack`: a board with what jobs on it came to, as one file to give away and to take in. */
import { existsSync } from "node:fs";
import type { Command } from "commander";
import type { Job } from "../../job/job.ts";
import { bring } from "../../sharing/bring.ts";
import { withGoodRead } from "../../sharing/good-read.ts";
import { outcomesOf, pooled } from "../../sharing/outcomes.ts";
import { type Pack, packText, readPack } from "../../sharing/pack.ts";
import type { Parsed } from "../../units/outcome.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadBoard, loadJob } from "../load-job.ts";
import { readJson, readText } from "../read-file.ts";
import { replaceFile } from "../replace-file.ts";

interface PackOptions {
  readonly jobs?: readonly string[];
  readonly shop: string;
}

export function addPack(board: Command, io: Io, finish: Finish): void {
  board
    .command("pack")
    .description("a board as one file to give away, with counts of what closed jobs on it came to")
    .argument("<file>", "a board file")
    .argument("<out>", "where to write the packed board")
    .option(
      "--jobs <files...>",
      "closed jobs on it; nothing of them but counts, and what good boards beside theirs read, goes into the file",
    )
    .option("--shop <word>", "the word that these counts go by", "shop")
    .addHelpText(
      "after",
      "\nExample:\n  $ faultwright board pack own.json give.json --jobs job1.json job2.json",
    )
    .action((file: string, out: string, options: PackOptions) => finish(() => pack(file, out, options, io)));
  board
    .command("unpack")
    .description("show what a packed board would bring, and with a board file to write to, bring it")
    .argument("<file>", "a packed board, or a board file")
    .argument(
      "[board]",
      "the board file to make or to change; one that is there is kept beside it as a numbered version",
    )
    .action((file: string, target: string | undefined) => finish(() => unpack(file, target, io)));
}

/** Counts that came with a board lie beside it. */
const countsBeside = (board: string) => `${board.replace(/\.json$/, "")}.outcomes.json`;

function pack(file: string, out: string, { jobs = [], shop }: PackOptions, io: Io): number {
  const board = loadBoard(file);
  if (!board.ok) return refuse(io, board.problem);
  const content = readJson(file);
  if (!content.ok) return refuse(io, content.problem);
  const before = packBeside(file, content.value as Pack["board"]);
  if (!before.ok) return refuse(io, before.problem);
  const loaded: Job[] = [];
  for (const name of jobs) {
    const job = loadJob(name);
    if (!job.ok) return refuse(io, job.problem);
    if (job.value.job.board.family !== board.value.family)
      return refuse(
        io,
        `${name}: is on a board of the family "${job.value.job.board.family}", not "${board.value.family}"`,
      );
    loaded.push(job.value.job);
  }
  const outcomes = pooled(before.value.outcomes, shop, outcomesOf(board.value, loaded));
  const packed = { board: withGoodRead(before.value.board, board.value, loaded), outcomes };
  const sound = readPack(JSON.parse(packText(packed)));
  if (!sound.ok) return refuse(io, `not packed: ${sound.problem}`);
  return written(out, packText(packed), io);
}

function packBeside(file: string, board: Pack["board"]): Parsed<Pack> {
  const beside = countsBeside(file);
  if (!existsSync(beside)) return { ok: true, value: { board, outcomes: {} } };
  const counts = readJson(beside);
  if (!counts.ok) return counts;
  const read = readPack({ format: "faultwright-pack/1", board, outcomes: counts.value });
  return read.ok ? read : { ok: false, problem: `${beside}: ${read.problem}` };
}

function unpack(file: string, target: string | undefined, io: Io): number {
  const text = readText(file);
  if (!text.ok) return refuse(io, text.problem);
  const there = target !== undefined && existsSync(target) ? loadBoard(target) : null;
  if (there !== null && !there.ok) return refuse(io, there.problem);
  const before = there === null || target === undefined ? null : readJson(target);
  if (before !== null && !before.ok) return refuse(io, before.problem);
  const brought = bring(text.value, file, before === null ? null : (before.value as Pack["board"]));
  if (!brought.ok) return refuse(io, brought.problem);
  const { title, board, outcomes, changes, pictures } = brought.value;
  io.out(`${title}\n${changes.map((line) => `  ${line}\n`).join("")}`);
  if (pictures !== undefined) io.out("Its pictures are kept by the page: bring the file there.\n");
  if (target === undefined) return DONE;
  if (before !== null) {
    const old = readText(target);
    if (!old.ok) return refuse(io, old.problem);
    const kept = numbered(target);
    if (written(kept, old.value, io) !== DONE) return refuse(io, `${target}: not changed`);
    io.out(`The version that was there is kept as ${kept}.\n`);
  }
  const code = written(target, `${JSON.stringify(board, null, 2)}\n`, io);
  if (code !== DONE || (Object.keys(outcomes).length === 0 && !existsSync(countsBeside(target)))) return code;
  return written(countsBeside(target), `${JSON.stringify(outcomes, null, 2)}\n`, io);
}

/** The first number that is free: `own.1.json`, `own.2.json`. */
function numbered(target: string): string {
  for (let n = 1; ; n++) {
    const name = `${target.replace(/\.json$/, "")}.${n}.json`;
    if (!existsSync(name)) return name;
  }
}

function written(path: string, text: string, io: Io): number {
  try {
    replaceFile(path, text);
    return DONE;
  } catch (error) {
    return refuse(io, `${path}: not written: ${error instanceof Error ? error.message : String(error)}`);
  }
}
