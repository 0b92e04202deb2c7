/** What came back: the jobs linked to one, and what comebacks cost this shop on the average. */
import { Hono } from "hono";
import { comebackCostText, correctedVerdict } from "../job/comebacks.ts";
import type { JobStore } from "../job/job-store.ts";
import { comebacksIn, keptAsJob, ownWarranty } from "../job/own-warranty.ts";
import { said } from "../messages/said.ts";
import type { ComebacksAnswer, WarrantyAnswer } from "../wire/job-api.ts";
import { problem } from "./answers.ts";

export function comebackRoutes(store: JobStore): Hono {
  const routes = new Hono();
  routes.get("/jobs/:id/comebacks", async (context) => {
    const id = context.req.param("id");
    const kept = await store.readJob(id);
    if (kept === null) return problem(context, said`there is no job "${id}"`, 404);
    const job = keptAsJob(kept);
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
    const comebackCost = Number(context.req.query("comebackCost") ?? "0");
    if (!(Number.isFinite(comebackCost) && comebackCost >= 0))
      return problem(context, "comebackCost: must be an amount of 0 or more", 400);
    const currency = context.req.query("currency") ?? "EUR";
    return context.json<WarrantyAnswer>(await ownWarranty(store, currency, comebackCost));
  });
  return routes;
}
