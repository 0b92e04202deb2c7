/**
 * What is kept in this browser: every job seen, and an outbox of what the server has not acknowledged. An event goes into
 * the outbox first and to the server second, so that nothing entered is lost when the server is away.
 */
import { get, set, update } from "idb-keyval";
import type { TypedFit } from "../wire/fit-view.ts";
import type { CreateJobRequest } from "../wire/job-api.ts";
import type { StockAnswer } from "../wire/stock-api.ts";
import type { LogNews } from "../wire/stream-api.ts";
import { Away, api, Refused } from "./api.ts";
import { noteConflicts } from "./conflict-keeper.ts";
import { freshOrKept } from "./fresh-or-kept.ts";
import type { KeptEvent, KeptJob } from "./job-event.ts";
import type { PictureToSend } from "./picture/kept-picture.ts";
import { say } from "./say.ts";

interface Outbox {
  /** a job that the server has not seen yet */
  readonly create: CreateJobRequest | null;
  readonly events: readonly KeptEvent[];
  readonly pictures: readonly PictureToSend[];
}

/** How the log stands with the bench computer; `waiting` are the ids of what it does not have yet, oldest first. */
export type Sync =
  | { readonly state: "kept" }
  | { readonly state: "waiting"; readonly waiting: readonly string[] }
  /** the first that waits is refused; the others wait behind it */
  | { readonly state: "refused"; readonly problem: string; readonly waiting: readonly string[] };

/** What came of one attempt to send. */
export interface Sent {
  readonly sync: Sync;
  /** ids that the bench computer has acknowledged */
  readonly acknowledged: readonly string[];
  /** somebody else had added to the job as well */
  readonly others: boolean;
}

export interface Opened {
  /** with what waits in the outbox at the end of its log */
  readonly job: KeptJob;
  readonly waiting: readonly string[];
}

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
    title: request.title ?? say`A board`,
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
export async function openJob(id: string): Promise<Opened | null> {
  let job: KeptJob | null = null;
  try {
    job = await takeIn(id, await api.job(id), (await outboxOf(id)).events);
  } catch (problem) {
    if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
    job = (await get<KeptJob>(jobKey(id))) ?? null;
  }
  if (job === null) return null;
  const known = idsOf(job.events);
  const waiting = (await outboxOf(id)).events.filter((event) => !known.has(event.id));
  return { job: { ...job, events: [...job.events, ...waiting] }, waiting: waiting.map((event) => event.id) };
}

function idsOf(events: readonly KeptEvent[]): ReadonlySet<string> {
  return new Set(events.map((event) => event.id));
}

/** Keeps a job as the server has it. What others added since it was last seen here is held against what this bench had entered meanwhile. */
async function takeIn(id: string, job: KeptJob, mine: readonly KeptEvent[]): Promise<KeptJob> {
  const before = await get<KeptJob>(jobKey(id));
  if (before !== undefined) {
    const known = idsOf([...before.events, ...mine]);
    await noteConflicts(
      id,
      mine,
      job.events.filter((event) => !known.has(event.id)),
    );
  }
  await set(jobKey(id), job);
  return job;
}

/** Keeps what the server says was added. False where something before it was missed: then the job is to be opened again. */
export async function keepNews({ job: id, events, length }: LogNews): Promise<boolean> {
  const added = idsOf(events);
  const { events: outbox } = await outboxOf(id);
  const own = idsOf(outbox);
  const theirs = events.filter((event) => !own.has(event.id));
  await noteConflicts(
    id,
    outbox.filter((event) => !added.has(event.id)),
    theirs,
  );
  return join(id, events, length);
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

export interface JobPicture {
  readonly id: string;
  readonly address: string;
}

/** The job's pictures: those the server has, then those that still wait here, whose addresses the caller lets go of again. */
export async function picturesOf(
  id: string,
): Promise<{ readonly kept: readonly JobPicture[]; readonly waiting: readonly Blob[] }> {
  const waiting = (await outboxOf(id)).pictures.map(({ data }) => data);
  try {
    const job = await api.job(id);
    const kept = job.pictures.map((one) => ({ id: one.id, address: `/api/jobs/${id}/pictures/${one.id}` }));
    return { kept, waiting };
  } catch (problem) {
    if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
    return { kept: [], waiting };
  }
}

/** Takes the refused event, the first that waits, back out of the outbox. */
export function dropRefused(id: string): Promise<void> {
  return changeOutbox(id, (outbox) => ({ ...outbox, events: outbox.events.slice(1) }));
}

const sending = new Map<string, Promise<Sent>>();

/** Sends what waits, one sender at a time for each job; says how the job stands afterwards. */
export function send(id: string): Promise<Sent> {
  const turn = (sending.get(id) ?? Promise.resolve())
    .then(() => sendNow(id))
    .finally(() => {
      if (sending.get(id) === turn) sending.delete(id);
    });
  sending.set(id, turn);
  return turn;
}

async function sendNow(id: string): Promise<Sent> {
  const outbox = await outboxOf(id);
  const sent = { acknowledged: [] as string[], others: false };
  try {
    if (outbox.create !== null) {
      await api.create(outbox.create);
      await changeOutbox(id, (now) => ({ ...now, create: null }));
    }
    if (outbox.events.length > 0) await sendEvents(id, outbox.events, sent);
    for (const picture of outbox.pictures) {
      await api.picture(id, picture.id, picture.data);
      await changeOutbox(id, (now) => ({
        ...now,
        pictures: now.pictures.filter((other) => other.id !== picture.id),
      }));
    }
    return { ...sent, sync: { state: "kept" } };
  } catch (problem) {
    const waiting = (await outboxOf(id)).events.map((event) => event.id);
    if (problem instanceof Refused)
      return { ...sent, sync: { state: "refused", problem: problem.message, waiting } };
    if (problem instanceof Away) return { ...sent, sync: { state: "waiting", waiting } };
    throw problem;
  }
}

interface Progress {
  acknowledged: string[];
  others: boolean;
}

async function sendEvents(id: string, events: readonly KeptEvent[], sent: Progress): Promise<void> {
  try {
    return await sendTogether(id, events, sent);
  } catch (problem) {
    if (!(problem instanceof Refused) || events.length === 1) throw problem;
  }
  // One of them is refused, and all with it: those before it are taken one by one, in order.
  for (const event of events) await sendTogether(id, [event], sent);
}

/** Acknowledged events leave the outbox and join the job as kept here. */
async function sendTogether(id: string, events: readonly KeptEvent[], sent: Progress): Promise<void> {
  const { length } = await api.append(id, events);
  if (!(await join(id, events, length))) {
    sent.others = true;
    await takeIn(id, await api.job(id), events);
  }
  const done = idsOf(events);
  await changeOutbox(id, (outbox) => ({
    ...outbox,
    events: outbox.events.filter((event) => !done.has(event.id)),
  }));
  sent.acknowledged.push(...done);
}

/** Joins events to the job as kept here, where that makes the log that the server has; false where it does not. */
async function join(id: string, events: readonly KeptEvent[], length: number): Promise<boolean> {
  let whole = true;
  await update<KeptJob | undefined>(jobKey(id), (job) => {
    if (job === undefined) return job;
    const known = idsOf(job.events);
    const now = { ...job, events: [...job.events, ...events.filter((event) => !known.has(event.id))] };
    whole = now.events.length === length;
    return whole ? now : job;
  });
  return whole;
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
