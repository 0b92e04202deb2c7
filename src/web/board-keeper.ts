/**
 * Boards of one's own, kept in this browser and on the bench computer. Each change is a version that goes into the outbox first and to
 * the server second, so that nothing described is lost while the server is away, and a phone and a laptop see the same boards.
 */
import { get, update } from "idb-keyval";
import type { BoardAnswer, BoardList, NewBoardVersion } from "../wire/job-api.ts";
import { Away, api, Refused } from "./api.ts";
import { freshOrKept } from "./fresh-or-kept.ts";
import { newId } from "./job-event.ts";
import { oneSender } from "./one-sender.ts";

/** A board of one's own with the counts of other shops that came with it. */
export interface OwnBoardKept extends BoardAnswer {
  readonly outcomes?: NewBoardVersion["outcomes"];
}

interface BoardHere extends OwnBoardKept {
  readonly changedAt?: string;
  /** its content stays, for bringing it back */
  readonly deleted?: boolean;
}

interface Waiting {
  readonly board: string;
  readonly version: NewBoardVersion;
}

export interface OwnBoardLine {
  readonly id: string;
  readonly title: string;
  readonly parts: number;
  readonly assumed: number;
  readonly versions: number;
  /** empty: only in this browser */
  readonly changedAt: string;
}

export interface OwnBoards {
  readonly boards: readonly OwnBoardLine[];
  /** versions that the bench computer has not taken yet */
  readonly waiting: number;
}

const HERE = "own-boards";
const OUTBOX = "board-outbox";

async function boardsHere(): Promise<readonly BoardHere[]> {
  return (await get<readonly BoardHere[]>(HERE)) ?? [];
}

async function outbox(): Promise<readonly Waiting[]> {
  return (await get<readonly Waiting[]>(OUTBOX)) ?? [];
}

async function keep(board: BoardHere): Promise<void> {
  const content = board.deleted === true ? null : (board.board as NewBoardVersion["content"]);
  const version = { id: newId(), title: board.title, content, outcomes: board.outcomes ?? {} };
  const stamped = { ...board, changedAt: new Date().toISOString() };
  await update<readonly BoardHere[]>(HERE, (boards) => [
    ...(boards ?? []).filter(({ id }) => id !== board.id),
    stamped,
  ]);
  await update<readonly Waiting[]>(OUTBOX, (waiting) => [...(waiting ?? []), { board: board.id, version }]);
}

/** Keeps a board, in the place of an earlier state of it. It is safe in this browser once this resolves. */
export async function keepOwnBoard(board: OwnBoardKept): Promise<void> {
  await keep(board);
  void sendBoards();
}

/** Takes a board off the list; its versions stay. */
export async function deleteOwnBoard(board: OwnBoardKept): Promise<void> {
  await keep({ ...board, deleted: true });
  void sendBoards();
}

/** Sends what waits, oldest first, one sender at a time; says what the bench computer refused, if it did. */
export const sendBoards = oneSender(async () => {
  for (const { board, version } of await outbox()) {
    await api.keepBoard(board, version);
    await update<readonly Waiting[]>(OUTBOX, (waiting) =>
      (waiting ?? []).filter((one) => one.version.id !== version.id),
    );
  }
});

/** Boards from before there was a place for them on the bench computer go there too. */
async function sendOlder(known: ReadonlySet<string>): Promise<void> {
  const waiting = new Set((await outbox()).map(({ board }) => board));
  const older = (await boardsHere()).filter(
    ({ id, deleted }) => !known.has(id) && !waiting.has(id) && deleted !== true,
  );
  for (const board of older) await keep(board);
  if (older.length > 0) await sendBoards();
}

function countParts(board: unknown): { parts: number; assumed: number } {
  const parts = Object.values(
    ((board as { parts?: unknown } | null)?.parts ?? {}) as Record<string, { assumed?: unknown }>,
  );
  return { parts: parts.length, assumed: parts.filter(({ assumed }) => assumed === true).length };
}

/** Every board of one's own that is not deleted, latest change first. */
export async function ownBoards(): Promise<OwnBoards> {
  await sendBoards();
  try {
    await sendOlder(new Set((await api.ownBoards()).boards.map(({ id }) => id)));
    const { boards } = await api.ownBoards();
    const waiting = await outbox();
    if (waiting.length === 0) return { boards: boards.filter(({ deleted }) => !deleted), waiting: 0 };
  } catch (problem) {
    if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
  }
  const here = (await boardsHere()).filter(({ deleted }) => deleted !== true);
  const lines = here.map(({ id, title, board, changedAt = "" }) => ({
    id,
    title,
    ...countParts(board),
    versions: 1,
    changedAt,
  }));
  return { boards: lines.reverse(), waiting: (await outbox()).length };
}

/** A board as it is now: what still waits here, else the bench computer's, else the last seen; null where nobody has it. */
export async function openOwnBoard(id: string): Promise<OwnBoardKept | null> {
  const here = (await boardsHere()).find((board) => board.id === id);
  const waits = (await outbox()).some(({ board }) => board === id);
  if (!waits) {
    try {
      const { versions } = await api.ownBoard(id);
      const last = versions.at(-1);
      if (last !== undefined && last.content !== null) {
        const board = { id, title: last.title, board: last.content, outcomes: last.outcomes ?? {} };
        await update<readonly BoardHere[]>(HERE, (boards) => [
          ...(boards ?? []).filter((one) => one.id !== id),
          { ...board, changedAt: last.receivedAt },
        ]);
        return board;
      }
    } catch (problem) {
      if (!(problem instanceof Away || problem instanceof Refused)) throw problem;
    }
  }
  return here ?? null;
}

/** The boards to choose from: one's own, newest first, then the server's, as last seen where it is away. */
export async function boardList(): Promise<BoardList> {
  const list = await freshOrKept<BoardList>("boards", api.boards, { boards: [] });
  const { boards } = await ownBoards();
  return { boards: [...boards.map(({ id, title }) => ({ id, title })), ...list.boards] };
}

/** What the ids of one's own boards begin with; those that come with the program are named after what they drive. */
const OWN = "own-";

export function newBoardId(): string {
  return `${OWN}${newId()}`;
}

export async function boardFile(id: string): Promise<BoardAnswer | null> {
  const own = id.startsWith(OWN) ? await openOwnBoard(id) : null;
  return own ?? freshOrKept<BoardAnswer | null>(`board:${id}`, () => api.board(id), null);
}
