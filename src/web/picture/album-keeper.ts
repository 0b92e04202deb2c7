/**
 * The pictures of boards and the pins on them, kept in this browser and on the bench computer. A change is safe here first and goes to the
 * server second; pictures go before the pins that stand on them. Where another screen has pinned meanwhile, both are put together by place.
 */
import { get, set, update } from "idb-keyval";
import { type AlbumVersion, type BoardAlbum, EMPTY_ALBUM, mergeAlbums } from "../../wire/job-api.ts";
import { Away, api, Refused } from "../api.ts";
import { newId } from "../job-event.ts";
import { oneSender } from "../one-sender.ts";
import type { PictureToSend } from "./kept-picture.ts";

interface AlbumHere {
  readonly album: BoardAlbum;
  /** the bench computer's version that it was made from; null: there was none */
  readonly base: AlbumVersion | null;
  /** what was sent, perhaps in vain: the same is sent again, so that it is not taken for another's */
  readonly sending: AlbumVersion | null;
}

/** names of boards whose album has changes that the bench computer has not taken */
const CHANGED = "albums-changed";
/** ids of pictures that the bench computer has not taken yet */
const UNSENT = "board-pictures-unsent";
const NOTHING: AlbumHere = { album: EMPTY_ALBUM, base: null, sending: null };
/** The bench computer's answer where the album was changed by another meanwhile. */
const MOVED_ON = 412;
const albumKey = (board: string) => `album-here:${board}`;
const pictureKey = (id: string) => `board-picture:${id}`;

const here = async (board: string): Promise<AlbumHere> => (await get<AlbumHere>(albumKey(board))) ?? NOTHING;
const changed = async (): Promise<readonly string[]> => (await get<readonly string[]>(CHANGED)) ?? [];

const markChanged = (board: string): Promise<void> =>
  update<readonly string[]>(CHANGED, (boards) => [...new Set([...(boards ?? []), board])]);

type Told = (album: BoardAlbum) => void;
const watching = new Map<string, Set<Told>>();

/** Tells of every change of a board's album from now on, whoever made it; returns what ends that. */
export function watchAlbum(board: string, told: Told): () => void {
  const all = watching.get(board) ?? new Set<Told>();
  watching.set(board, all);
  all.add(told);
  return () => all.delete(told);
}

/** As one step, so that neither a tap nor another tab is lost between reading and writing. */
async function change(board: string, step: (before: AlbumHere) => AlbumHere): Promise<AlbumHere> {
  let made = NOTHING;
  let before = NOTHING;
  await update<AlbumHere>(albumKey(board), (kept) => {
    before = kept ?? NOTHING;
    made = step(before);
    return made;
  });
  if (made.album !== before.album) for (const told of watching.get(board) ?? []) told(made.album);
  return made;
}

/** The bench computer has all of it. */
const isSettled = ({ album, base, sending }: AlbumHere): boolean =>
  sending === null && sameText(album, base?.album ?? EMPTY_ALBUM);

/** The pictures of a board, by its name: with what waits here, else the bench computer's, else as last seen. */
export async function openAlbum(board: string): Promise<BoardAlbum> {
  await sendAlbums();
  try {
    const last = await lastOf(board);
    const fresh = { album: last?.album ?? EMPTY_ALBUM, base: last, sending: null };
    // where something waits here still, what came is put together with it when that is sent
    await change(board, (before) => (isSettled(before) ? fresh : before));
  } catch (problem) {
    if (!(problem instanceof Away)) throw problem;
  }
  return (await here(board)).album;
}

async function lastOf(board: string): Promise<AlbumVersion | null> {
  const { album, version } = await api.album(board);
  return album === null || version === null ? null : { id: version, album };
}

/** Changes the album as it is now, with pictures that came new; it is safe in this browser once this resolves. */
export async function changeAlbum(
  board: string,
  step: (album: BoardAlbum) => BoardAlbum,
  pictures: readonly PictureToSend[] = [],
): Promise<void> {
  for (const { id, data } of pictures) await set(pictureKey(id), data);
  if (pictures.length > 0)
    await update<readonly string[]>(UNSENT, (ids) => [...(ids ?? []), ...pictures.map(({ id }) => id)]);
  await markChanged(board);
  await change(board, (before) => ({ ...before, album: step(before.album) }));
  void sendAlbums();
}

/** The picture itself; null where neither this browser nor the bench computer has it, or the latter is away. */
export async function albumPicture(id: string): Promise<Blob | null> {
  const kept = await get<Blob>(pictureKey(id));
  if (kept !== undefined) return kept;
  try {
    const answer = await fetch(`/api/board-pictures/${id}`);
    if (!answer.ok) return null;
    const data = await answer.blob();
    await set(pictureKey(id), data);
    return data;
  } catch {
    // the bench computer is away: the board is shown without its picture
    return null;
  }
}

/** Sends what waits, one sender at a time; says what the bench computer refused, if it did. */
export const sendAlbums = oneSender(async () => {
  for (const id of (await get<readonly string[]>(UNSENT)) ?? []) {
    const data = await get<Blob>(pictureKey(id));
    if (data !== undefined) await api.boardPicture(id, data);
    await update<readonly string[]>(UNSENT, (ids) => (ids ?? []).filter((other) => other !== id));
  }
  for (const board of await changed()) await sendAlbum(board);
});

/** Sends until the bench computer has the album as it is here. */
async function sendAlbum(board: string): Promise<void> {
  for (;;) {
    const { base, sending } = await change(board, (before) => ({
      ...before,
      sending: before.sending ?? { id: newId(), album: before.album },
    }));
    if (sending === null) return;
    try {
      await api.keepAlbum(board, { ...sending, after: base?.id ?? null });
      await change(board, (before) => ({ ...before, base: sending, sending: null }));
    } catch (problem) {
      if (!(problem instanceof Refused) || problem.status !== MOVED_ON) throw problem;
      const last = await lastOf(board);
      await change(board, (before) => ({
        album: mergeAlbums(before.base?.album ?? null, last?.album ?? EMPTY_ALBUM, before.album),
        base: last,
        sending: null,
      }));
    }
    if (!isSettled(await here(board))) continue;
    await update<readonly string[]>(CHANGED, (boards) => (boards ?? []).filter((other) => other !== board));
    // a tap between the two is sent too
    if (isSettled(await here(board))) return;
    await markChanged(board);
  }
}

const sameText = (one: BoardAlbum, other: BoardAlbum): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
