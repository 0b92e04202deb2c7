/**
 * What is kept in this browser: every job seen, and an outbox of what the server has not acknowledged. An event goes into
 * the outbox first and to the server second, so that nothing entered is lost when the server is away.
 */
import { get, set, update } from "idb-keyval";
import type { TypedFit } from "../wire/fit-view.ts";
import type { CreateJobRequest } from "../wire/job-api.ts";
import type { StockAnswer } from "../wire/stock-api.ts";
import { Away, api, Refused } from "./api.ts";
import { freshOrKept } from "./fresh-or-kept.ts";
import type { KeptEvent, KeptJob } from "./job-event.ts";
import type { PictureToSend } from "./picture/kept-picture.ts";

interface Outbox {
  /** a job that the server has not seen yet */
  readonly create: CreateJobRequest | null;
  readonly events: readonly KeptEvent[];
  readonly pictures: readonly PictureToSend[];
}

export type Sync =
  | { readonly state: "kept" }
  | { readonly state: "waiting"; readonly count: number }
  | { readonly state: "refused"; readonly problem: string };

const EMPTY: Outbox = { create: null, events: [], pictures: [] };
const jobKey = (id: string) => `job:${id}`;
const outboxKey = (id: string) => `outbox:${id}`;

async function outboxOf(id: string): Promise<Outbox> {
  return (await get<Outbox>(outboxKey(id))) ?? EMPTY;
}

function changeOutbox(id: string, change: (outbox: Outbox) => Outbox): Promise<void> {
  return update<Outbox>(outboxKey(id), (outbox) => change(outbox ?? EMPTY));
}

/** Keeps a new job here and tries to send it. */
export async function startJob(
  request: CreateJobRequest & { readonly id: string },
  firstEvents: readonly KeptEvent[],
  pictures: readonly PictureToSend[],
): Promise<void> {
  const now = new Date().toISOString();
  const job: KeptJob = {
    id: request.id,
    title: request.title ?? "A board",
    practice: request.practice ?? null,
    header: request.job,
    createdAt: now,
    events: [],
    pictures: [],
  };
  await set(jobKey(request.id), job);
  await set(outboxKey(request.id), { create: request, events: firstEvents, pictures });
  await update<readonly string[]>("own-jobs", (ids) => [...new Set([...(ids ?? []), request.id])]);
  await send(request.id);
}

/** The job from the server, else as last seen here, with what waits in the outbox added; null where nobody knows it. */
export async function openJob(id: string): Promise<KeptJob | null> {
  let job = (await get<KeptJob>(jobKey(id))) ?? null;
  try {
    job = await api.job(id);
    await set(jobKey(id), job);
  } catch (problem) {
    if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
  }
  if (job === null) return null;
  const known = new Set(job.events.map((event) => event.id));
  const waiting = (await outboxOf(id)).events.filter((event) => !known.has(event.id));
  return { ...job, events: [...job.events, ...waiting] };
}

/** Jobs made in this browser that the server has not taken yet. */
export async function unsentJobs(): Promise<readonly KeptJob[]> {
  const ids = (await get<readonly string[]>("own-jobs")) ?? [];
  const jobs = await Promise.all(
    ids.map(async (id) =>
      (await outboxOf(id)).create === null ? undefined : await get<KeptJob>(jobKey(id)),
    ),
  );
  return jobs.filter((job) => job !== undefined);
}

/** Puts events into the outbox. They are safe in this browser once this resolves. */
export function keepEvents(id: string, events: readonly KeptEvent[]): Promise<void> {
  return changeOutbox(id, (outbox) => ({ ...outbox, events: [...outbox.events, ...events] }));
}

/** Puts pictures into the outbox. They are safe in this browser once this resolves. */
export function keepPictures(id: string, pictures: readonly PictureToSend[]): Promise<void> {
  return changeOutbox(id, (outbox) => ({ ...outbox, pictures: [...outbox.pictures, ...pictures] }));
}

/** The job's pictures: addresses of those the server has, then those that still wait here, which the caller lets go of again. */
export async function picturesOf(
  id: string,
): Promise<{ readonly kept: readonly string[]; readonly waiting: readonly Blob[] }> {
  const waiting = (await outboxOf(id)).pictures.map(({ data }) => data);
  try {
    const job = await api.job(id);
    return { kept: job.pictures.map((picture) => `/api/jobs/${id}/pictures/${picture.id}`), waiting };
  } catch (problem) {
    if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
    return { kept: [], waiting };
  }
}

/** Takes refused events back out of the outbox. */
export function dropWaiting(id: string): Promise<void> {
  return changeOutbox(id, (outbox) => ({ ...outbox, events: [] }));
}

const sending = new Map<string, Promise<Sync>>();

/** Sends what waits, one sender at a time for each job; says how the job stands afterwards. */
export function send(id: string): Promise<Sync> {
  const turn = (sending.get(id) ?? Promise.resolve())
    .then(() => sendNow(id))
    .finally(() => {
      if (sending.get(id) === turn) sending.delete(id);
    });
  sending.set(id, turn);
  return turn;
}

async function sendNow(id: string): Promise<Sync> {
  const outbox = await outboxOf(id);
  try {
    if (outbox.create !== null) {
      await api.create(outbox.create);
      await changeOutbox(id, (now) => ({ ...now, create: null }));
    }
    if (outbox.events.length > 0) {
      await api.append(id, outbox.events);
      await settleEvents(id, outbox.events);
    }
    for (const picture of outbox.pictures) {
      await api.picture(id, picture.id, picture.data);
      await changeOutbox(id, (now) => ({
        ...now,
        pictures: now.pictures.filter((other) => other.id !== picture.id),
      }));
    }
    return { state: "kept" };
  } catch (problem) {
    if (problem instanceof Refused) return { state: "refused", problem: problem.message };
    if (problem instanceof Away) return { state: "waiting", count: (await outboxOf(id)).events.length };
    throw problem;
  }
}

/** Acknowledged events leave the outbox and join the job as kept here. */
async function settleEvents(id: string, events: readonly KeptEvent[]): Promise<void> {
  await update<KeptJob | undefined>(jobKey(id), (job) => {
    if (job === undefined) return job;
    const known = new Set(job.events.map((event) => event.id));
    return { ...job, events: [...job.events, ...events.filter((event) => !known.has(event.id))] };
  });
  const done = new Set(events.map((event) => event.id));
  await changeOutbox(id, (outbox) => ({
    ...outbox,
    events: outbox.events.filter((event) => !done.has(event.id)),
  }));
}

/** The parts drawer; as last seen where the server is away, and null where it never was. */
export function drawer(): Promise<StockAnswer | null> {
  return freshOrKept<StockAnswer | null>("stock", api.stock, null);
}

const typedKey = (job: string, part: string) => `typed:${job}:${part}`;

/** What was typed of a place's original and of a candidate for it; null where nothing was. */
export async function typedFit(job: string, part: string): Promise<TypedFit | null> {
  return (await get<TypedFit>(typedKey(job, part))) ?? null;
}

export function keepTypedFit(job: string, part: string, typed: TypedFit): Promise<void> {
  return set(typedKey(job, part), typed);
}
