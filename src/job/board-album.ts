/**
 * The pictures of a board and the places pinned on them. They belong to the board, by its number (the name in its file), and not to a job:
 * what was pinned once is there for every board of that number. Each change is a version that stays; the last one counts.
 */
import type { Picture, Refusal, Written } from "./job-store.ts";

/** The side that carries the large parts, and the one that carries their solder. */
export type BoardSide = "top" | "bottom";

export interface BoardFace {
  readonly side: BoardSide;
  /** id of the picture */
  readonly picture: string;
  /** pixels of the picture as it is kept */
  readonly width: number;
  readonly height: number;
  /** degrees clockwise by which it is shown turned */
  readonly turn: 0 | 90 | 180 | 270;
}

/** Where a place is on a picture, by fractions of the picture as it is kept; a net may have several. */
export interface BoardPin {
  /** `Q1.c` or `PBUS` */
  readonly place: string;
  readonly side: BoardSide;
  readonly x: number;
  readonly y: number;
}

export interface BoardAlbum {
  /** at most one a side */
  readonly faces: readonly BoardFace[];
  readonly pins: readonly BoardPin[];
}

export interface NewAlbumVersion {
  /** made by the client; the same again with the same content adds nothing */
  readonly id: string;
  readonly album: BoardAlbum;
}

export interface AlbumStore {
  /** the last version; null where the board has none */
  readAlbum(board: string): Promise<BoardAlbum | null>;
  /** Adds a version. Another version of the board's album under the same id is a conflict. */
  keepAlbum(board: string, version: NewAlbumVersion): Promise<Written | Refusal>;
  /** Keeps a picture; the same bytes are on the disk once, under however many ids. Another picture under the same id is a conflict. */
  keepPicture(picture: Picture): Promise<Written | Refusal>;
  readPicture(id: string): Promise<Picture | null>;
}

/** A store of jobs that keeps the boards' pictures beside them. */
export interface KeepsAlbums {
  readonly albums: AlbumStore;
}
