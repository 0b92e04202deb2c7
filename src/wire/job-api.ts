/**
 * What the page and the server say to each other: JSON bodies, all under `/api`. Types and limits only.
 * An error of any call is `{ error }` with one line for a person and a 4xx or 5xx status.
 *
 * GET  /api/jobs                      -> JobList
 * POST /api/jobs                      CreateJobRequest -> CreateJobAnswer (201, or 200 where it was there already)
 * GET  /api/jobs/:id                  -> JobAnswer
 * GET  /api/jobs/:id/file             -> the job file, log included, as a download
 * POST /api/jobs/:id/events           AppendRequest -> AppendAnswer; posting the same events again adds nothing
 * POST /api/jobs/:id/pictures/:pid    the JPEG or PNG itself -> PictureAnswer
 * GET  /api/jobs/:id/pictures/:pid    -> the picture
 * GET  /api/earlier?name=&family=&identity= -> EarlierList: what was done before on this board or its family
 * GET  /api/jobs/:id/comebacks        -> ComebacksAnswer
 * GET  /api/warranty?currency&comebackCost -> WarrantyAnswer
 * GET  /api/boards                    -> BoardList
 * GET  /api/boards/:id                -> BoardAnswer
 * GET  /api/own-boards                -> OwnBoardList
 * GET  /api/own-boards/:id            -> OwnBoardAnswer, every version of it
 * POST /api/board-pictures/:id        the JPEG or PNG itself, without metadata -> PictureAnswer
 * GET  /api/board-pictures/:id        -> the picture
 * GET  /api/albums?board=             -> AlbumAnswer: a board's pictures and the places pinned on them
 * POST /api/albums?board=             NewAlbumVersion -> AppendAnswer; posting the same again adds nothing; 412 where it was made from another than the last
 * POST /api/own-boards/:id/versions   NewBoardVersion -> AppendAnswer; posting the same again adds nothing
 */

import type { BoardAlbum } from "../job/board-album.ts";
import type { OwnBoard, OwnBoardSummary } from "../job/board-store.ts";
import type { EarlierJob } from "../job/earlier-jobs.ts";
import type {
  JobHeader,
  JobSummary,
  KeptEvent,
  KeptJob,
  PictureInfo,
  PracticeInfo,
} from "../job/job-store.ts";

/** Ids of jobs, events and pictures are made by the client: 1 to 64 of letters, digits, `_` and `-`. */
export const ID_PATTERN = /^[A-Za-z0-9_-]{1,64}$/;

/** Largest bodies, bytes. */
export const JOB_BYTES = 10_000_000;
export const EVENTS_BYTES = 1_000_000;
export const PICTURE_BYTES = 5_000_000;
export const ALBUM_BYTES = 1_000_000;
/** Pictures of one job at most. */
export const PICTURES_PER_JOB = 60;

export interface ErrorAnswer {
  /** one line in English, for whoever reads it as it is */
  readonly error: string;
  /** the same line with its seams, for a page that tells it in its own language; left out where it has none */
  readonly said?: string;
}

export interface JobList {
  readonly jobs: readonly JobSummary[];
}

export interface EarlierList {
  readonly jobs: readonly EarlierJob[];
}

export interface CreateJobRequest {
  /** left out: the server makes one */
  readonly id?: string;
  /** left out: the board's name */
  readonly title?: string;
  readonly practice?: PracticeInfo | null;
  /** a job file with its board inline; `log` may be left out, its events get ids where they have none */
  readonly job: JobHeader;
}

export interface CreateJobAnswer {
  readonly id: string;
  readonly added: number;
}

export type JobAnswer = KeptJob;

export interface AppendRequest {
  readonly events: readonly KeptEvent[];
}

/** `length` is the number of events in the log now: more than the client holds means another page wrote. */
export interface AppendAnswer {
  readonly added: number;
  readonly length: number;
}

/** The jobs in which this board came back, and how the verdict stands with them. */
export interface ComebacksAnswer {
  readonly comebacks: readonly { readonly id: string; readonly title: string; readonly reason: string }[];
  /** what they have cost so far, in exact decimal and the job's currency */
  readonly cost: string;
  readonly currency: string;
  readonly held: boolean;
}

/** What comebacks cost this shop on the average, for each board repaired. */
export interface WarrantyAnswer {
  readonly repaired: number;
  readonly comebacks: number;
  readonly costOfOne: number;
}

export type PictureAnswer = PictureInfo;

export interface BoardList {
  readonly boards: readonly { readonly id: string; readonly title: string }[];
}

export interface BoardAnswer {
  readonly id: string;
  readonly title: string;
  /** a board file's content */
  readonly board: unknown;
}

export {
  type AlbumConflict,
  type AlbumVersion,
  type AlbumWay,
  type BoardAlbum,
  type BoardFace,
  type BoardPin,
  type BoardSide,
  EMPTY_ALBUM,
  type NewAlbumVersion,
  REVISION_LENGTH,
} from "../job/board-album.ts";
export { mergeAlbums, settledAlbum } from "../job/merge-albums.ts";
export { BOARD_REVISION } from "../job/told-in.ts";

export interface AlbumAnswer {
  /** null: the board has no pictures yet */
  readonly album: BoardAlbum | null;
  /** id of that version; null: none yet */
  readonly version: string | null;
}

export type { NewBoardVersion } from "../job/board-store.ts";
export { type Conflict, conflictsOf } from "../job/conflicts.ts";

export interface OwnBoardList {
  readonly boards: readonly OwnBoardSummary[];
}

export type OwnBoardAnswer = OwnBoard;
