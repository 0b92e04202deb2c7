/** What a repaired board costs this shop on the average in coming back: from the jobs that it keeps, practice left out. */
import { ownWarrantyCost } from "./comebacks.ts";
import type { Job } from "./job.ts";
import type { JobStore, KeptJob } from "./job-store.ts";
import { parseJob } from "./parse-job.ts";

/** Share of repaired boards that a good shop sees again within its warranty: 5 to 10 % (from memory). */
const USUAL_SHARE = 0.075;

export interface OwnWarranty {
  readonly repaired: number;
  readonly comebacks: number;
  readonly costOfOne: number;
}

export interface CameBack {
  readonly kept: KeptJob;
  readonly job: Job;
}

/**
 * Jobs in one currency. What stands in the terms for it plays no part: set there, the figure stays what it is until another job is closed.
 * @param comebackCost - what one comeback is taken to cost until the shop's own tell
 */
export async function ownWarranty(
  store: JobStore,
  currency: string,
  comebackCost: number,
): Promise<OwnWarranty> {
  let repaired = 0;
  const comebacks: Job[] = [];
  for (const { id, practice, verdict } of await store.listJobs()) {
    if (practice !== null) continue;
    const kept = await store.readJob(id);
    if (kept === null || (verdict !== "repaired" && kept.header.comebackOf === undefined)) continue;
    const job = keptAsJob(kept);
    if (job.terms.currency !== currency) continue;
    if (verdict === "repaired") repaired++;
    if (job.comebackOf !== null) comebacks.push(job);
  }
  return {
    repaired,
    comebacks: comebacks.length,
    costOfOne: ownWarrantyCost(USUAL_SHARE * comebackCost, repaired, comebacks),
  };
}

/** Every job of the store whose board was here before; practice counts for nothing. */
export async function comebacksIn(store: JobStore): Promise<readonly CameBack[]> {
  const found: CameBack[] = [];
  for (const { id, practice } of await store.listJobs()) {
    if (practice !== null) continue;
    const kept = await store.readJob(id);
    if (kept?.header.comebackOf === undefined) continue;
    found.push({ kept, job: keptAsJob(kept) });
  }
  return found;
}

/** A job that the store took was read then by the same parser. */
export function keptAsJob(kept: KeptJob): Job {
  const job = parseJob({ ...kept.header, log: kept.events }, null);
  if (!job.ok) throw new Error(`job ${kept.id} is kept and cannot be read: ${job.problem}`);
  return job.value;
}
