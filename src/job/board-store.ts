/**
 * The port through which boards of one's own are kept. Every change is a version that stays: a deletion is one without content, and
 * undoing it is another with what was there before. Jobs hold their board themselves, so no version is ever missed by one.
 */
import type { Refusal, Written } from "./job-store.ts";

/** A board file's content, parsed JSON that `parseBoard` accepts. */
export type OwnBoardContent = Readonly<Record<string, unknown>>;

export interface NewBoardVersion {
  /** made by the client; the same again with the same content adds nothing */
  readonly id: string;
  readonly title: string;
  /** null: the board is deleted */
  readonly content: OwnBoardContent | null;
  /** counts of other shops that came with the board; left out: none */
  readonly outcomes?: Readonly<Record<string, unknown>>;
}

export interface OwnBoardSummary {
  readonly id: string;
  readonly title: string;
  /** RFC 3339, of the latest version */
  readonly changedAt: string;
  readonly versions: number;
  readonly parts: number;
  /** of the parts, how many nobody has seen */
  readonly assumed: number;
  readonly deleted: boolean;
}

export interface OwnBoard {
  readonly id: string;
  /** oldest first; the last is the board as it is */
  readonly versions: readonly (NewBoardVersion & { readonly receivedAt: string })[];
}

/** Judges a board's content: null to accept, else one line saying what is wrong. */
export type AcceptBoard = (content: OwnBoardContent) => string | null;

export interface BoardStore {
  /** Latest change first; deleted ones too, for they can be brought back. */
  listBoards(): Promise<readonly OwnBoardSummary[]>;
  readBoard(id: string): Promise<OwnBoard | null>;
  /** Adds a version. Another version of the board under the same id is a conflict. Once this resolves it survives a crash. */
  keepVersion(board: string, version: NewBoardVersion): Promise<Written | Refusal>;
}

/** A store of jobs that keeps boards beside them. */
export interface KeepsBoards {
  readonly boards: BoardStore;
}

/** What a list says of a board, from its versions. */
export function ownBoardSummary({ id, versions }: OwnBoard): OwnBoardSummary | null {
  const last = versions.at(-1);
  if (last === undefined) return null;
  const content = last.content ?? versions.findLast((version) => version.content !== null)?.content ?? {};
  const parts = Object.values(
    (content.parts ?? {}) as Readonly<Record<string, { readonly assumed?: unknown }>>,
  );
  return {
    id,
    title: last.title,
    changedAt: last.receivedAt,
    versions: versions.length,
    parts: parts.length,
    assumed: parts.filter(({ assumed }) => assumed === true).length,
    deleted: last.content === null,
  };
}
