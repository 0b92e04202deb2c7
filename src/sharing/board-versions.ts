/** Every version of a board that is kept: what changed in each, and which jobs were worked on it. */

import { canonicalJson } from "../job/same-content.ts";
import { said } from "../messages/said.ts";
import { boardChanges, changesInWords } from "./board-changes.ts";

type Content = Readonly<Record<string, unknown>>;

export interface KeptVersion {
  readonly id: string;
  /** RFC 3339 */
  readonly receivedAt: string;
  /** null: the board was deleted */
  readonly content: Content | null;
}

/** A job on a board of the name, with the board that it holds. */
export interface JobOnBoard {
  readonly id: string;
  readonly title: string;
  readonly createdAt: string;
  readonly board: Content;
}

export interface VersionLine {
  readonly id: string;
  /** 1 is the oldest */
  readonly number: number;
  readonly receivedAt: string;
  readonly parts: number;
  /** against the version before it; of the first: nothing */
  readonly changes: readonly string[];
  readonly jobs: readonly { readonly id: string; readonly title: string }[];
}

export interface BoardVersions {
  /** latest first */
  readonly versions: readonly VersionLine[];
  /** jobs on a board of that name which is none of the versions: of another bench, or changed since by hand */
  readonly otherJobs: readonly { readonly id: string; readonly title: string }[];
}

/** @param kept - oldest first, as the store has them */
export function boardVersions(kept: readonly KeptVersion[], jobs: readonly JobOnBoard[]): BoardVersions {
  const versionOf = new Map(jobs.map((job) => [job.id, versionWorkedOn(kept, job)]));
  const named = (of: KeptVersion | null) =>
    jobs.filter(({ id }) => versionOf.get(id) === of).map(({ id, title }) => ({ id, title }));
  const lines = kept.map((version, at): VersionLine => {
    const before = at === 0 ? null : (kept.slice(0, at).findLast(({ content }) => content !== null) ?? null);
    return {
      id: version.id,
      number: at + 1,
      receivedAt: version.receivedAt,
      parts: Object.keys((version.content?.parts ?? {}) as object).length,
      changes: changesOf(before?.content ?? null, version.content),
      jobs: named(version),
    };
  });
  return { versions: lines.reverse(), otherJobs: named(null) };
}

function changesOf(before: Content | null, content: Content | null): readonly string[] {
  if (content === null) return [said`deleted`];
  return before === null ? [] : changesInWords(boardChanges(before, content));
}

/** The version whose content the job holds, the latest of those that were there when it was begun; null where none is. */
function versionWorkedOn(kept: readonly KeptVersion[], { board, createdAt }: JobOnBoard): KeptVersion | null {
  const own = asDrawn(board);
  const same = kept.filter(({ content }) => content !== null && asDrawn(content) === own);
  return same.findLast(({ receivedAt }) => receivedAt <= createdAt) ?? same[0] ?? null;
}

/** What was marked at intake, that a part was not seen, is the job's and no other version. */
function asDrawn(content: Content): string {
  const parts = Object.entries((content.parts ?? {}) as Readonly<Record<string, Content>>);
  const drawn = parts.map(([ref, { assumed: _, ...part }]) => [ref, part]);
  return canonicalJson({ ...content, parts: Object.fromEntries(drawn) });
}
