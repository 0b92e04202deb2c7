/** What every store answers alike: refusals in words, and when two posts count as the same. */

import type { PartKind } from "../board/board.ts";
import { KIND_NAMES } from "../board/kinds.ts";
import type { BoardAlbum } from "../job/board-album.ts";
import type { NewBoardVersion } from "../job/board-store.ts";
import type { JobHeader, NewJob, Picture, Refusal } from "../job/job-store.ts";
import { canonicalJson } from "../job/same-content.ts";
import { said } from "../messages/said.ts";
import { sortNewEvents } from "./new-events.ts";

export function noSuchJob(id: string): Refusal {
  return { ok: false, kind: "no-such-job", problem: said`there is no job "${id}"` };
}

export function createConflict(id: string): Refusal {
  return {
    ok: false,
    kind: "conflict",
    problem: said`another job has the id "${id}"; give the new one an id of its own`,
  };
}

export function pictureConflict(id: string): Refusal {
  return { ok: false, kind: "conflict", problem: said`another picture of this job has the id "${id}"` };
}

export function boardPictureConflict(id: string): Refusal {
  return { ok: false, kind: "conflict", problem: said`another picture of a board has the id "${id}"` };
}

export function albumConflict(id: string): Refusal {
  return {
    ok: false,
    kind: "conflict",
    problem: said`another version of this board's pictures has the id "${id}"`,
  };
}

export function albumMovedOn(): Refusal {
  return {
    ok: false,
    kind: "moved-on",
    problem: "this board's pictures were changed meanwhile; read them again and put both together",
  };
}

export function sameAlbum(a: BoardAlbum, b: BoardAlbum): boolean {
  return canonicalJson(a) === canonicalJson(b);
}

export function versionConflict(id: string): Refusal {
  return { ok: false, kind: "conflict", problem: said`another version of this board has the id "${id}"` };
}

export function sameVersion(a: NewBoardVersion, b: NewBoardVersion): boolean {
  const face = ({ title, content, outcomes = {} }: NewBoardVersion) =>
    canonicalJson([title, content, outcomes]);
  return face(a) === face(b);
}

/** Whether a job posted again is the one that was created (and has kept every event posted), whatever its log gained since. */
export function isSameJob(there: Omit<NewJob, "id">, posted: NewJob): boolean {
  if (canonicalJson(face(there)) !== canonicalJson(face(posted))) return false;
  const sorted = sortNewEvents(there.events, posted.events);
  return sorted.ok && sorted.added.length === 0;
}

function face(job: Omit<NewJob, "id">): unknown {
  return [job.title, job.practice, job.header];
}

export function samePicture(a: Picture, b: Picture): boolean {
  return (
    a.type === b.type && a.data.length === b.data.length && a.data.every((byte, at) => byte === b.data[at])
  );
}

/** The board's name, for lists. */
export function boardNameOf(header: JobHeader): string {
  const board = header.board;
  if (typeof board !== "object" || board === null) return "";
  const name = (board as { readonly name?: unknown }).name;
  return typeof name === "string" ? name : "";
}

/** The kind of each part of the job's board, for what goes back into stock without having come out of it. */
export function kindOnBoard(header: JobHeader): (ref: string) => PartKind | null {
  const board = header.board as
    | { readonly parts?: Readonly<Record<string, { readonly kind?: unknown }>> }
    | undefined;
  return (ref) => {
    const parts = board?.parts;
    const kind = parts !== undefined && Object.hasOwn(parts, ref) ? parts[ref]?.kind : undefined;
    return KIND_NAMES.find((known) => known === kind) ?? null;
  };
}
