/** The picture of a board: photos of it where somebody took some, else the drawing where the board is one that we drew. */
import { useEffect, useMemo, useState } from "react";
import type { AlbumConflict, BoardFace, BoardPin } from "../../wire/job-api.ts";
import { boardFacts, netsOfPins, pointsOnPicture } from "../board-facts.ts";
import type { Drawing } from "../engine-messages.ts";
import type { BoardNow } from "./spots.ts";
import { type ChangeAlbum, useAlbum, useFaces } from "./use-album.ts";

/** A side of the board as it is shown: `picture` is the address. */
export type ShownFace = BoardFace;

export interface BoardPicture {
  readonly board: string;
  /** empty where there is neither photo nor drawing, or not yet */
  readonly faces: readonly ShownFace[];
  readonly pins: readonly BoardPin[];
  /** what two screens left differently */
  readonly conflicts: readonly AlbumConflict[];
  /** our own drawing: nothing to pin, nothing to turn */
  readonly drawn: boolean;
  readonly now: BoardNow;
  /** as printed on the board at hand; null where nobody has said */
  readonly revision: string | null;
  /** changes pictures or pins of the album */
  readonly change: ChangeAlbum;
}

/** The board that is to be shown, and the state it is in. */
export interface BoardToShow {
  /** a board file's content */
  readonly content: unknown;
  drawing(): Promise<Drawing | null>;
  readonly lifted: readonly string[];
  readonly off: readonly string[];
  readonly revision: string | null;
}

/** Pixels of the drawing for each millimetre. */
const PIXELS_PER_MM = 10;
const NONE: readonly AlbumConflict[] = [];

export function useBoardPicture({ content, drawing: ask, lifted, off, revision }: BoardToShow): BoardPicture {
  const board = boardFacts(content).identity;
  const [album, change] = useAlbum(board);
  const photos = useFaces(album);
  const drawing = useDrawing(ask);
  const nets = useMemo(() => netsOfPins(content), [content]);
  const named = useMemo(() => pointsOnPicture(content), [content]);
  const now = useMemo(() => ({ nets, lifted: new Set(lifted), off: new Set(off) }), [nets, lifted, off]);
  return useMemo(() => {
    const drawn = album?.faces.length === 0 && drawing !== null && drawing !== "asked";
    // What the file says of its own picture holds for a photo too, unless the file means the drawing.
    const pins = drawn ? drawing.pads : (album?.pins ?? []);
    const faces = drawn ? drawing.faces : photos;
    const points = drawing !== null || faces.length === 0 ? [] : named;
    const conflicts = album?.conflicts ?? NONE;
    return { board, faces, pins: [...pins, ...points], conflicts, drawn, now, revision, change };
  }, [board, photos, drawing, album, named, now, revision, change]);
}

interface DrawnFaces extends Pick<Drawing, "pads"> {
  readonly faces: readonly ShownFace[];
}

function useDrawing(ask: BoardToShow["drawing"]): DrawnFaces | null | "asked" {
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
