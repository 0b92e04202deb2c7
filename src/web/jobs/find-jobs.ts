/** Finds jobs by anything that stands on them: unit, customer, board, label number, part, what they wait for, verdict. */
import { jobNumber } from "../../wire/job-number.ts";
import { say } from "../say.ts";
import { verdictWords } from "../words.ts";
import { WAITS_FOR_WORDS } from "./job-groups.ts";
import type { JobLine } from "./job-list.ts";

/** Jobs that hold every word typed, whatever its capitals, in the order given. Nothing typed: all of them. */
export function findJobs(jobs: readonly JobLine[], typed: string): readonly JobLine[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return jobs.filter((job) => {
    const text = textOf(job).toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

function textOf(job: JobLine): string {
  const { waiting, verdict } = job;
  return [
    job.title,
    job.boardName,
    job.customer,
    job.unit,
    jobNumber(job.id),
    ...job.fitted,
    waiting === null ? null : `${say(WAITS_FOR_WORDS[waiting.for])} ${waiting.what ?? ""}`,
    verdict === null ? null : say(verdictWords(verdict)),
    job.practice === null ? null : say`Practice`,
  ].join("\n");
}
