/** Prints the figures of some trials and writes `reports/jobs.html` with the job files of its worst cases. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { evaluationBoards } from "./boards/evaluation-boards.ts";
import { caseFile, jobsPage, worstOf } from "./jobs-html.ts";
import { jobsText } from "./jobs-text.ts";
import { shippedBoards } from "./oracle/shipped-boards.ts";
import { timeText } from "./time-spent.ts";
import type { Trial } from "./trial.ts";

const FOLDER = "reports";

/**
 * The engine's job of a trial in the job file's format, its board named by path from `reports/cases/`. It is left open: the
 * next step is then the verdict, with its reasons.
 */
export function caseJob({ board, cause, symptom, log }: Trial): object {
  return {
    format: "faultwright-job/1",
    board: `../../boards/${board}.json`,
    cause,
    symptom,
    equipment: ["lamp-100"],
    log: log.filter((event) => event.do !== "close"),
  };
}

export function reportJobs(trials: readonly Trial[], title: string): void {
  const boards = new Map([...shippedBoards(), ...evaluationBoards()].map(({ id, board }) => [id, board]));
  console.log(jobsText(trials));
  console.log(timeText(trials, boards));
  mkdirSync(join(FOLDER, "cases"), { recursive: true });
  for (const trial of worstOf(trials))
    writeFileSync(join(FOLDER, caseFile(trial)), `${JSON.stringify(caseJob(trial), null, 1)}\n`);
  writeFileSync(join(FOLDER, "jobs.html"), jobsPage(trials, boards, `Whole jobs: ${title}`));
  console.log(`${FOLDER}/jobs.html written`);
}
