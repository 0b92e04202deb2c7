import type { Command } from "commander";
import type { Board } from "../../board/board.ts";
import { type EarlierJob, earlierJobs } from "../../job/earlier-jobs.ts";
import { VERDICT_WORDS } from "../../job/words.ts";
import type { Parsed } from "../../units/outcome.ts";
import { answerText, table } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { jobsHere } from "../kept-jobs.ts";
import { loadBoard, loadJob } from "../load-job.ts";
import { readJson } from "../read-file.ts";

interface EarlierOptions {
  readonly data?: string;
  readonly json?: true;
}

export function addEarlier(program: Command, io: Io, finish: Finish): void {
  program
    .command("earlier")
    .description("what boards of this number or family had before, what was done, and how it ended")
    .argument("<board>", "a board file or a job file")
    .argument("[jobs...]", "job files to look through; left out: the jobs kept by `serve`")
    .option(
      "--data <folder>",
      "where those are kept (default: FAULTWRIGHT_DATA, else ~/.local/share/faultwright)",
    )
    .option("--json", "one JSON object for a script")
    .addHelpText("after", "\nExample:\n  $ faultwright earlier boards/greenhouse-fan-drive.json jobs/*.json")
    .action((file: string, files: string[], options: EarlierOptions) =>
      finish(() => earlier(file, files, options, io)),
    );
}

async function earlier(
  file: string,
  files: readonly string[],
  options: EarlierOptions,
  io: Io,
): Promise<number> {
  const board = boardOf(file);
  if (!board.ok) return refuse(io, board.problem);
  const found = await jobsHere(
    files.filter((other) => other !== file),
    options.data,
  );
  if (!found.ok) return refuse(io, found.problem);
  const real = found.value.filter(({ practice }) => !practice);
  const jobs = earlierJobs(board.value, real);
  io.out(options.json === true ? answerText({ jobs }) : earlierText(jobs));
  return DONE;
}

/** The board that a board file describes or a job file is about. */
function boardOf(file: string): Parsed<Board> {
  const content = readJson(file);
  if (!content.ok) return content;
  const isJob = typeof content.value === "object" && content.value !== null && "log" in content.value;
  if (!isJob) return loadBoard(file);
  const loaded = loadJob(file);
  return loaded.ok ? { ok: true, value: loaded.value.job.asBrought.board } : loaded;
}

function earlierText(jobs: readonly EarlierJob[]): string {
  if (jobs.length === 0) return "None like it was here before.\n";
  return table(
    jobs.map(({ id, changedAt, boardName, sameBoard, cause, symptom, done, verdict, cameBack }) => [
      changedAt?.slice(0, 10) ?? id,
      sameBoard ? "this board" : boardName,
      `${cause}, ${symptom}`,
      done.length === 0 ? "nothing replaced" : done.join(", "),
      `${verdict === null ? "still open" : (VERDICT_WORDS[verdict] ?? verdict)}${cameBack ? ", came back" : ""}`,
    ]),
  );
}
