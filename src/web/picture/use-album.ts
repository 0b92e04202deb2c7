/** The album of a board, as it is now and as others change it, with its photos to be shown. */
import { useCallback, useEffect, useState } from "react";
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

/** The photos with addresses of this page's own, let go of when they change. */
export function useFaces(album: BoardAlbum | null): readonly BoardFace[] {
  const [faces, setFaces] = useState<readonly BoardFace[]>([]);
  useEffect(() => {
    let addresses: readonly string[] = [];
    let wanted = true;
    const load = async (face: BoardFace): Promise<readonly BoardFace[]> => {
      const data = await albumPicture(face.picture);
      return data === null ? [] : [{ ...face, picture: URL.createObjectURL(data) }];
    };
    void Promise.all((album?.faces ?? []).map(load)).then((loaded) => {
      addresses = loaded.flat().map(({ picture }) => picture);
      if (wanted) setFaces(loaded.flat());
      else for (const address of addresses) URL.revokeObjectURL(address);
    });
    return () => {
      wanted = false;
      for (const address of addresses) URL.revokeObjectURL(address);
    };
  }, [album]);
  return faces;
}
