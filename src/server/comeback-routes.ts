/** What came back: the jobs linked to one, and what comebacks cost this shop on the average. */
import { Hono } from "hono";
import { comebackCostText, correctedVerdict, ownWarrantyCost } from "../job/comebacks.ts";
import type { Job } from "../job/job.ts";
import type { JobStore, KeptJob } from "../job/job-store.ts";
import { parseJob } from "../job/parse-job.ts";
import { said } from "../messages/said.ts";
import type { ComebacksAnswer, WarrantyAnswer } from "../wire/job-api.ts";
import { problem } from "./answers.ts";

export function comebackRoutes(store: JobStore): Hono {
  const routes = new Hono();
  routes.get("/jobs/:id/comebacks", async (context) => {
    const id = context.req.param("id");
    const kept = await store.readJob(id);
    if (kept === null) return problem(context, said`there is no job "${id}"`, 404);
    const job = parsed(kept);
    const all = await comebacksIn(store);
    const back = all.filter(
      (one) => one.job.comebackOf?.job === id && one.job.terms.currency === job.terms.currency,
    );
    const links = back.flatMap(({ job: { comebackOf } }) => (comebackOf === null ? [] : [comebackOf]));
    return context.json<ComebacksAnswer>({
      comebacks: back.map(({ kept: { id: by, title }, job: { comebackOf } }) => ({
        id: by,
        title,
        reason: comebackOf?.reason ?? "other",
      })),
      cost: comebackCostText(
        back.map((one) => one.job),
        job.terms.currency,
      ),
      currency: job.terms.currency,
      held: correctedVerdict(job.log, links).held,
    });
  });
  routes.get("/warranty", async (context) => {
    const inTerms = Number(context.req.query("inTerms") ?? "0");
    if (!(Number.isFinite(inTerms) && inTerms >= 0))
      return problem(context, "inTerms: must be an amount of 0 or more", 400);
    const currency = context.req.query("currency") ?? "EUR";
    const done = (await store.listJobs()).filter(
      ({ verdict, practice }) => verdict === "repaired" && practice === null,
    );
    const back = (await comebacksIn(store))
      .map(({ job }) => job)
      .filter(({ terms }) => terms.currency === currency);
    return context.json<WarrantyAnswer>({
      repaired: done.length,
      comebacks: back.length,
      costOfOne: ownWarrantyCost(inTerms, done.length, back),
    });
  });
  return routes;
}

/** Every job of the store whose board was here before; practice counts for nothing. */
async function comebacksIn(
  store: JobStore,
): Promise<readonly { readonly kept: KeptJob; readonly job: Job }[]> {
  const found: { kept: KeptJob; job: Job }[] = [];
  for (const { id, practice } of await store.listJobs()) {
    if (practice !== null) continue;
    const kept = await store.readJob(id);
    if (kept?.header.comebackOf === undefined) continue;
    found.push({ kept, job: parsed(kept) });
  }
  return found;
}

/** A job that the store took was read then by the same parser. */
function parsed(kept: KeptJob): Job {
  const job = parseJob({ ...kept.header, log: kept.events }, null);
  if (!job.ok) throw new Error(`job ${kept.id} is kept and cannot be read: ${job.problem}`);
  return job.value;
}
