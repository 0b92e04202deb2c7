/**
 * The port through which jobs are kept. `store/` fills it (memory, SQLite); one suite, `store/job-store.contract.ts`,
 * holds every filling to what is written here. A job's log only grows: nothing here changes or removes an event.
 */
import type { JobEvent } from "../bench/event.ts";
import type { AskedBoard, EarlierJob } from "./earlier-jobs.ts";
import type { JobLine } from "./job-line.ts";
import type { PracticeCase } from "./practice-case.ts";

/** A job file without its log and with its board inline: parsed JSON that `parseJob` accepts. */
export type JobHeader = Readonly<Record<string, unknown>>;

/** An event as kept: its id, made by the client, is what makes a repeated post add nothing. */
export type KeptEvent = JobEvent & { readonly id: string };

/** Practice: readings are answered by the solver from hidden faults drawn with this seed, or from a recorded case. */
export interface PracticeInfo {
  readonly seed: number;
  readonly recorded?: PracticeCase;
}

export interface NewJob {
  /** made by the client or by `NewId`; the same id again with the same content adds nothing */
  readonly id: string;
  readonly title: string;
  readonly practice: PracticeInfo | null;
  readonly header: JobHeader;
  /** events an imported file brought with it; usually empty */
  readonly events: readonly KeptEvent[];
}

export interface JobSummary extends JobLine {
  readonly id: string;
  readonly title: string;
  readonly practice: PracticeInfo | null;
  readonly boardName: string;
  /** RFC 3339 */
  readonly createdAt: string;
  /** when the last event arrived; `createdAt` where there is none */
  readonly changedAt: string;
  readonly eventCount: number;
}

export type PictureType = "image/jpeg" | "image/png";

export interface PictureInfo {
  readonly id: string;
  readonly type: PictureType;
  readonly bytes: number;
}

export interface KeptJob {
  readonly id: string;
  readonly title: string;
  readonly practice: PracticeInfo | null;
  readonly header: JobHeader;
  readonly createdAt: string;
  /** in order of arrival */
  readonly events: readonly KeptEvent[];
  readonly pictures: readonly PictureInfo[];
}

export interface Picture {
  readonly id: string;
  readonly type: PictureType;
  readonly data: Uint8Array;
}

/** Why nothing was written. `problem` is one line for a person. */
export interface Refusal {
  readonly ok: false;
  readonly kind: "no-such-job" | "conflict" | "not-accepted" | "moved-on";
  readonly problem: string;
}

/** What was written. `added` leaves out what was there already; `length` is the log's (or album's) length now. */
export interface Written {
  readonly ok: true;
  readonly added: number;
  readonly length: number;
}

/**
 * Judges the whole log as it would stand after an append: null to accept, else one line saying what is wrong. `kept` events stand in it
 * already (left out: all do, as in a file that is brought).
 * Runs inside the write, so that two benches posting at once cannot together build a log neither would have.
 */
export type AcceptLog = (header: JobHeader, log: readonly KeptEvent[], kept?: number) => string | null;

export interface JobStore {
  /** Keeps a new job. A different job under the same id is a conflict. Once this resolves the job survives a crash. */
  createJob(job: NewJob): Promise<Written | Refusal>;
  /** Latest change first. */
  listJobs(): Promise<readonly JobSummary[]>;
  /** Jobs on boards of this number or family, practice left out, latest change first within each. */
  earlierJobs(board: AskedBoard): Promise<readonly EarlierJob[]>;
  readJob(id: string): Promise<KeptJob | null>;
  /**
   * Appends the events that are not there yet, all or none, in the order given. An id that is there with the same content
   * counts as done; with different content it is a conflict. Once this resolves the events survive a crash.
   */
  appendEvents(job: string, events: readonly KeptEvent[], accept: AcceptLog): Promise<Written | Refusal>;
  /** As `appendEvents`, for one picture. */
  addPicture(job: string, picture: Picture): Promise<Written | Refusal>;
  readPicture(job: string, id: string): Promise<Picture | null>;
  close(): Promise<void>;
}

/** The time now, RFC 3339 with milliseconds, in UTC. */
export type Clock = () => string;

/** A fresh id that no other call, on this machine or another, returns. */
export type NewId = () => string;
