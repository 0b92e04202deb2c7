/**
 * The pictures of boards and the pins on them, kept in this browser and on the bench computer. A change goes into the outbox first and to
 * the server second; pictures go before the pins that stand on them.
 */
import { get, set, update } from "idb-keyval";
import type { BoardAlbum, NewAlbumVersion } from "../../wire/job-api.ts";
import { Away, api } from "../api.ts";
import { newId } from "../job-event.ts";
import { oneSender } from "../one-sender.ts";
import type { PictureToSend } from "./kept-picture.ts";

interface Waiting {
  readonly board: string;
  readonly version: NewAlbumVersion;
}

const OUTBOX = "album-outbox";
/** ids of pictures that the bench computer has not taken yet */
const UNSENT = "board-pictures-unsent";
const EMPTY: BoardAlbum = { faces: [], pins: [] };
const albumKey = (board: string) => `album:${board}`;
const pictureKey = (id: string) => `board-picture:${id}`;

/** The pictures of a board, by its name: what waits here, else the bench computer's, else as last seen. */
export async function openAlbum(board: string): Promise<BoardAlbum> {
  await sendAlbums();
  const waits = ((await get<readonly Waiting[]>(OUTBOX)) ?? []).some((one) => one.board === board);
  if (!waits) {
    try {
      const { album } = await api.album(board);
      await set(albumKey(board), album ?? EMPTY);
    } catch (problem) {
      if (!(problem instanceof Away)) throw problem;
    }
  }
  return (await get<BoardAlbum>(albumKey(board))) ?? EMPTY;
}

let changing: Promise<unknown> = Promise.resolve();

/**
 * Changes the album as it is now, with pictures that came new; it is safe in this browser once this resolves. One change after another:
 * of two quick taps the second starts from what the first has made.
 */
export function changeAlbum(
  board: string,
  change: (album: BoardAlbum) => BoardAlbum,
  pictures: readonly PictureToSend[] = [],
): Promise<BoardAlbum> {
  const changed = changing.then(
    () => changeNow(board, change, pictures),
    () => changeNow(board, change, pictures),
  );
  changing = changed;
  return changed;
}

async function changeNow(
  board: string,
  change: (album: BoardAlbum) => BoardAlbum,
  pictures: readonly PictureToSend[],
): Promise<BoardAlbum> {
  const album = change(await openAlbum(board));
  for (const { id, data } of pictures) await set(pictureKey(id), data);
  await update<readonly string[]>(UNSENT, (ids) => [...(ids ?? []), ...pictures.map(({ id }) => id)]);
  await set(albumKey(board), album);
  await update<readonly Waiting[]>(OUTBOX, (waiting) => [
    ...(waiting ?? []),
    { board, version: { id: newId(), album } },
  ]);
  void sendAlbums();
  return album;
}

/** The picture itself; null where neither this browser nor the bench computer has it, or the latter is away. */
export async function albumPicture(id: string): Promise<Blob | null> {
  const here = await get<Blob>(pictureKey(id));
  if (here !== undefined) return here;
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
  for (const { board, version } of (await get<readonly Waiting[]>(OUTBOX)) ?? []) {
    await api.keepAlbum(board, version);
    await update<readonly Waiting[]>(OUTBOX, (waiting) =>
      (waiting ?? []).filter((one) => one.version.id !== version.id),
    );
  }
});
