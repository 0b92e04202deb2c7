/** The album of a board, as it is now and as others change it, with its photos to be shown. */
import { useCallback, useEffect, useMemo, useState } from "react";
import { type BoardAlbum, type BoardFace, EMPTY_ALBUM } from "../../wire/job-api.ts";
import { albumPicture, changeAlbum, openAlbum, sendAlbums, watchAlbum } from "./album-keeper.ts";
import type { PictureToSend } from "./kept-picture.ts";

/** What waits is sent again so often (milliseconds). */
const RETRY_MS = 4_000;

export type ChangeAlbum = (
  change: (album: BoardAlbum) => BoardAlbum,
  pictures?: readonly PictureToSend[],
) => void;

/** By the board's name; null while it is not open yet. */
export function useAlbum(board: string): readonly [BoardAlbum | null, ChangeAlbum] {
  const [album, setAlbum] = useState<BoardAlbum | null>(null);
  useEffect(() => {
    setAlbum(null);
    const leave = watchAlbum(board, setAlbum);
    let wanted = true;
    openAlbum(board).then(
      (found) => wanted && setAlbum(found),
      // refused or unreadable: the board is worked on without its picture
      () => wanted && setAlbum(EMPTY_ALBUM),
    );
    const again = () => void sendAlbums();
    const timer = setInterval(again, RETRY_MS);
    addEventListener("online", again);
    return () => {
      wanted = false;
      leave();
      clearInterval(timer);
      removeEventListener("online", again);
    };
  }, [board]);
  const change = useCallback<ChangeAlbum>(
    (step, pictures) => void changeAlbum(board, step, pictures),
    [board],
  );
  return [album, change];
}

/** The photos with addresses of this page's own; one keeps its address while it is shown, whatever is pinned or turned. */
export function useFaces(album: BoardAlbum | null): readonly BoardFace[] {
  const [addresses, setAddresses] = useState<ReadonlyMap<string, string>>(new Map());
  const faces = album?.faces;
  const ids = (faces ?? []).map(({ picture }) => picture).join(" ");
  useEffect(() => {
    const made = new Map<string, string>();
    let wanted = true;
    const load = async (id: string) => {
      const data = await albumPicture(id);
      if (data !== null && wanted) made.set(id, URL.createObjectURL(data));
    };
    const all = ids === "" ? [] : ids.split(" ").map(load);
    void Promise.all(all).then(() => wanted && setAddresses(new Map(made)));
    return () => {
      wanted = false;
      for (const address of made.values()) URL.revokeObjectURL(address);
    };
  }, [ids]);
  return useMemo(
    () =>
      (faces ?? []).flatMap((face) => {
        const picture = addresses.get(face.picture);
        return picture === undefined ? [] : [{ ...face, picture }];
      }),
    [faces, addresses],
  );
}
