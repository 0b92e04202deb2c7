/**
 * The pictures of a board and the places pinned on them. They belong to the board, by its number (the name in its file), and not to a job:
 * what was pinned once is there for every board of that number. Each change is a version that stays; the last one counts.
 */
import type { Picture, Refusal, Written } from "./job-store.ts";

/** Most letters of a hardware revision. */
export const REVISION_LENGTH = 40;

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
  /** hardware revision as it is printed on the board of the photo, `rev C`; left out: nobody has said */
  readonly revision?: string;
}

/** Where a place is on a picture, by fractions of the picture as it is kept; a net may have several. */
export interface BoardPin {
  /** `Q1.c` or `PBUS` */
  readonly place: string;
  readonly side: BoardSide;
  readonly x: number;
  readonly y: number;
  /** of the board that lay there when it was pinned; left out: nobody has said */
  readonly revision?: string;
}

/** One of two ways in which something was left: a place's pins on a side, or a side's photo with all its pins. */
export interface AlbumWay {
  /** the side's photo, null for none; left out where only a place is in question */
  readonly face?: BoardFace | null;
  readonly pins: readonly BoardPin[];
}

/** What two screens changed, each without knowing of the other: a person says which holds. */
export interface AlbumConflict {
  readonly side: BoardSide;
  /** null: the photo of the side itself */
  readonly place: string | null;
  /** as the bench computer had it first, and as it came later */
  readonly ways: readonly [AlbumWay, AlbumWay];
}

export interface BoardAlbum {
  /** at most one a side */
  readonly faces: readonly BoardFace[];
  readonly pins: readonly BoardPin[];
  /** left out: none */
  readonly conflicts?: readonly AlbumConflict[];
}

export const EMPTY_ALBUM: BoardAlbum = { faces: [], pins: [] };

export interface AlbumVersion {
  readonly id: string;
  readonly album: BoardAlbum;
}

export interface NewAlbumVersion extends AlbumVersion {
  /** made by the client; the same again with the same content adds nothing */
  readonly id: string;
  /** the version that it was made from, null for none; left out: whichever is the last */
  readonly after?: string | null;
}

export interface AlbumStore {
  /** the last version; null where the board has none */
  readAlbum(board: string): Promise<AlbumVersion | null>;
  /** Adds a version. Another version of the board's album under the same id is a conflict; one made from another than the last is refused as moved on. */
  keepAlbum(board: string, version: NewAlbumVersion): Promise<Written | Refusal>;
  /** Keeps a picture; the same bytes are on the disk once, under however many ids. Another picture under the same id is a conflict. */
  keepPicture(picture: Picture): Promise<Written | Refusal>;
  readPicture(id: string): Promise<Picture | null>;
}

/** A store of jobs that keeps the boards' pictures beside them. */
export interface KeepsAlbums {
  readonly albums: AlbumStore;
}
