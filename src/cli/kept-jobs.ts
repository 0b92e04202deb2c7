/** The jobs that a command looks over: files named, or what `serve` keeps. */
import { basename } from "node:path";
import { comebackOf, type StoredJob } from "../job/earlier-jobs.ts";
import type { Job } from "../job/job.ts";
import { parseJob } from "../job/parse-job.ts";
import type { Parsed } from "../units/outcome.ts";
import { loadJob } from "./load-job.ts";

export interface JobHere extends StoredJob {
  readonly comebackOf: string | null;
  readonly practice: boolean;
  /** the whole of it; parsed when asked, since a shop has hundreds */
  job(): Parsed<Job>;
}

/** Job files, by their names; without any, the jobs in `data` (left out: where `serve` keeps them), latest change first. */
export async function jobsHere(
  files: readonly string[],
  data: string | undefined,
): Promise<Parsed<readonly JobHere[]>> {
  return files.length > 0 ? fromFiles(files) : fromStore(data);
}

function fromFiles(files: readonly string[]): Parsed<readonly JobHere[]> {
  const found: JobHere[] = [];
  for (const file of files) {
    const loaded = loadJob(file);
    if (!loaded.ok) return loaded;
    const { job, content } = loaded.value;
    const { name, family } = job.asBrought.board;
    found.push({
      id: basename(file, ".json"),
      header: { ...content, board: { name, family } },
      events: job.log,
      changedAt: null,
      comebackOf: comebackOf(content),
      practice: job.practice !== null,
      job: () => ({ ok: true, value: job }),
    });
  }
  return { ok: true, value: found };
}

async function fromStore(data: string | undefined): Promise<Parsed<readonly JobHere[]>> {
  // Loaded here only: job files need neither the database nor the server.
  const { keptJobs } = await import("../server/main.ts");
  const { store, folder } = keptJobs(data);
  if (store === null)
    return { ok: false, problem: `${folder}: no jobs are kept there yet; name job files, or another --data` };
  try {
    const found: JobHere[] = [];
    for (const { id, changedAt } of await store.listJobs()) {
      const kept = await store.readJob(id);
      if (kept === null) continue;
      const { header, events, practice } = kept;
      const job = () => {
        const parsed = parseJob({ ...header, log: events }, null);
        return parsed.ok ? parsed : { ok: false as const, problem: `${id}: ${parsed.problem}` };
      };
      found.push({
        id,
        header,
        events,
        changedAt,
        comebackOf: comebackOf(header),
        practice: practice !== null,
        job,
      });
    }
    return { ok: true, value: found };
  } finally {
    await store.close();
  }
}
