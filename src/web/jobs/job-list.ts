/** The jobs of this bench: the server's, and those that only this browser has. */
import type { JobList } from "../../wire/job-api.ts";
import { lineOfKept } from "../../wire/job-line.ts";
import { Away, api } from "../api.ts";
import { freshOrKept } from "../fresh-or-kept.ts";
import { unsentJobs } from "../keeper.ts";

export type JobLine = JobList["jobs"][number];

export interface Listed {
  readonly jobs: readonly JobLine[];
  /** the server is away: the list is the one seen last */
  readonly away: boolean;
}

/** Latest change first. Where the server is away, as it was seen last. */
export async function listJobs(): Promise<Listed> {
  const unsent = (await unsentJobs()).map(lineOfKept);
  let away = false;
  const fresh = () =>
    api.jobs().catch((problem: unknown) => {
      away = problem instanceof Away;
      throw problem;
    });
  const { jobs } = await freshOrKept<JobList>("job-list", fresh, { jobs: [] });
  const known = new Set(jobs.map(({ id }) => id));
  return { jobs: [...unsent.filter(({ id }) => !known.has(id)), ...jobs], away };
}
