/** The picture of the open job's board: photos of it where somebody took some, else the drawing where the board is one that we drew. */
import { useCallback, useEffect, useMemo, useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import type { BoardAlbum, BoardFace, BoardPin } from "../../wire/job-api.ts";
import { boardFacts, netsOfPins, pointsOnPicture } from "../board-facts.ts";
import type { Drawing } from "../engine-messages.ts";
import type { OpenJob } from "../use-job.ts";
import { albumPicture, changeAlbum, openAlbum } from "./album-keeper.ts";
import type { PictureToSend } from "./kept-picture.ts";
import type { BoardNow } from "./spots.ts";

/** A side of the board as it is shown: `picture` is the address. */
export type ShownFace = BoardFace;

export interface BoardPicture {
  readonly board: string;
  /** empty where there is neither photo nor drawing, or not yet */
  readonly faces: readonly ShownFace[];
  readonly pins: readonly BoardPin[];
  /** our own drawing: nothing to pin, nothing to turn */
  readonly drawn: boolean;
  readonly now: BoardNow;
  /** changes pictures or pins of the album */
  change(change: (album: BoardAlbum) => BoardAlbum, pictures?: readonly PictureToSend[]): void;
}

/** Pixels of the drawing for each millimetre. */
const PIXELS_PER_MM = 10;

export function useBoardPicture(open: OpenJob, view: BenchView): BoardPicture {
  const content = open.job === null || open.job === "loading" ? null : open.job.header.board;
  const board = boardFacts(content).name;
  const [album, setAlbum] = useState<BoardAlbum | null>(null);
  useEffect(() => {
    let wanted = true;
    openAlbum(board).then(
      (found) => wanted && setAlbum(found),
      // refused or unreadable: the board is worked on without its picture
      () => wanted && setAlbum({ faces: [], pins: [] }),
    );
    return () => {
      wanted = false;
    };
  }, [board]);
  const photos = useFaces(album);
  const drawing = useDrawing(open.drawing);
  const nets = useMemo(() => netsOfPins(content), [content]);
  const named = useMemo(() => pointsOnPicture(content), [content]);
  const now = useMemo(
    () => ({ nets, lifted: new Set(view.lifted), off: new Set(view.off) }),
    [nets, view.lifted, view.off],
  );
  const change = useCallback<BoardPicture["change"]>(
    (step, pictures) => void changeAlbum(board, step, pictures).then(setAlbum),
    [board],
  );
  return useMemo(() => {
    const drawn = album?.faces.length === 0 && drawing !== null && drawing !== "asked";
    // What the file says of its own picture holds for a photo too, unless the file means the drawing.
    const pins = drawn ? drawing.pads : (album?.pins ?? []);
    const faces = drawn ? drawing.faces : photos;
    const points = drawing !== null || faces.length === 0 ? [] : named;
    return { board, faces, pins: [...pins, ...points], drawn, now, change };
  }, [board, photos, drawing, album, named, now, change]);
}

/** The photos with addresses of this page's own, let go of when they change. */
function useFaces(album: BoardAlbum | null): readonly ShownFace[] {
  const [faces, setFaces] = useState<readonly ShownFace[]>([]);
  useEffect(() => {
    let addresses: readonly string[] = [];
    let wanted = true;
    const load = async (face: BoardFace): Promise<readonly ShownFace[]> => {
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

interface DrawnFaces extends Pick<Drawing, "pads"> {
  readonly faces: readonly ShownFace[];
}

function useDrawing(ask: OpenJob["drawing"]): DrawnFaces | null | "asked" {
  const [drawing, setDrawing] = useState<DrawnFaces | null | "asked">("asked");
  useEffect(() => {
    let current = true;
    ask().then(
      (found) => current && setDrawing(found === null ? null : drawnFaces(found)),
      // the engine says what is wrong with the board where it is asked for the bench
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [ask]);
  return drawing;
}

function drawnFaces({ width, height, faces, pads }: Drawing): DrawnFaces {
  return {
    pads,
    faces: faces.map(({ side, svg }) => ({
      side,
      picture: `data:image/svg+xml,${encodeURIComponent(svg)}`,
      width: width * PIXELS_PER_MM,
      height: height * PIXELS_PER_MM,
      turn: 0,
    })),
  };
}
