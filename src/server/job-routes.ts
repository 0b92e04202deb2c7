import { type Context, Hono } from "hono";
import type { AcceptLog, JobHeader, JobStore, KeptEvent, NewId, NewJob } from "../job/job-store.ts";
import { said } from "../messages/said.ts";
import {
  type AppendAnswer,
  type CreateJobAnswer,
  type CreateJobRequest,
  EVENTS_BYTES,
  JOB_BYTES,
  type JobAnswer,
  type JobList,
} from "../wire/job-api.ts";
import { problem, refusal } from "./answers.ts";
import type { JobNews } from "./job-news.ts";
import { limitBody, readJson } from "./read-body.ts";
import { isId, parseAppend, parseCreateJob } from "./request-shapes.ts";

export function jobRoutes(store: JobStore, acceptLog: AcceptLog, newId: NewId, news: JobNews): Hono {
  const routes = new Hono();
  routes.get("/", async (context) => context.json<JobList>({ jobs: [...(await store.listJobs())] }));
  routes.post("/", limitBody(JOB_BYTES), (context) => createJob(context, store, acceptLog, newId));
  routes.get("/:id", async (context) => {
    const job = await store.readJob(context.req.param("id"));
    if (job === null) return problem(context, said`there is no job "${context.req.param("id")}"`, 404);
    return context.json<JobAnswer>(job);
  });
  routes.get("/:id/file", async (context) => {
    const id = context.req.param("id");
    const job = isId(id) ? await store.readJob(id) : null;
    if (job === null) return problem(context, said`there is no job "${id}"`, 404);
    // A practice board taken along stays one: nobody is to learn from faults that were drawn.
    const practice = job.practice === null ? {} : { practice: job.practice.seed };
    const file = `${JSON.stringify({ ...job.header, ...practice, log: job.events }, null, 2)}\n`;
    return context.body(file, 200, {
      "Content-Type": "application/json; charset=utf-8",
      "Content-Disposition": `attachment; filename="${id}.json"`,
    });
  });
  routes.post("/:id/events", limitBody(EVENTS_BYTES), (context) =>
    appendEvents(context, store, acceptLog, news),
  );
  return routes;
}

async function createJob(
  context: Context,
  store: JobStore,
  acceptLog: AcceptLog,
  newId: NewId,
): Promise<Response> {
  const body = await readJson(context);
  if (!body.ok) return problem(context, body.problem, 400);
  const request = parseCreateJob(body.value);
  if (!request.ok) return problem(context, request.problem, 400);
  const job = newJobOf(request.value, newId);
  if (typeof job === "string") return problem(context, job, 422);
  const refused = acceptLog(job.header, job.events);
  if (refused !== null) return problem(context, said`job: ${refused}`, 422);
  const written = await store.createJob(job);
  if (!written.ok) return refusal(context, written);
  const answer: CreateJobAnswer = { id: job.id, added: written.added };
  return context.json(answer, written.added === 1 ? 201 : 200);
}

/** A job file taken apart into what is kept; a line of words where it cannot be. */
function newJobOf(request: CreateJobRequest, newId: NewId): NewJob | string {
  const { log = [], practice, ...header } = request.job;
  if (typeof header.board === "string") {
    return `job: board: "${header.board}" is a path, which a server cannot follow; put the board itself there`;
  }
  if (!Array.isArray(log)) return "job: log: must be a list of events";
  return {
    id: request.id ?? newId(),
    title: request.title?.trim() ?? boardName(header) ?? "job",
    practice: request.practice ?? (typeof practice === "number" ? { seed: practice } : null),
    header,
    events: log.map(withId),
  };
}

/** An imported event without an id gets one from its place in the log, so that importing again makes the same ids. */
function withId(event: unknown, index: number): KeptEvent {
  if (typeof event !== "object" || event === null || "id" in event) return event as KeptEvent;
  return { id: `log-${index}`, ...event } as KeptEvent;
}

function boardName(header: JobHeader): string | null {
  const name = (header.board as { readonly name?: unknown } | undefined)?.name;
  return typeof name === "string" && name.trim() !== "" ? name.trim() : null;
}

async function appendEvents(
  context: Context,
  store: JobStore,
  acceptLog: AcceptLog,
  news: JobNews,
): Promise<Response> {
  const body = await readJson(context);
  if (!body.ok) return problem(context, body.problem, 400);
  const request = parseAppend(body.value);
  if (!request.ok) return problem(context, request.problem, 400);
  const job = context.req.param("id") ?? "";
  const written = await store.appendEvents(job, request.value.events, acceptLog);
  if (!written.ok) return refusal(context, written);
  // Of a post that was sent again, the store has taken the last ones alone.
  const events = request.value.events.slice(request.value.events.length - written.added);
  if (written.added > 0) news.tell({ job, events, length: written.length });
  return context.json<AppendAnswer>({ added: written.added, length: written.length });
}
