/** What the list tells of a job, worked out on the page for those that only the page has. */
import { jobLine } from "../job/job-line.ts";
import type { KeptJob } from "../job/job-store.ts";

export type { Waiting } from "../bench/waiting.ts";

/** The line of a job that the server has not seen yet. */
export function lineOfKept(job: KeptJob) {
  const { id, title, practice, createdAt, header, events } = job;
  return {
    id,
    title,
    practice,
    boardName: "kept in this browser",
    createdAt,
    changedAt: createdAt,
    eventCount: events.length,
    ...jobLine(header, events),
  };
}
