/** Pictures in the same file as the jobs: their bytes once, by what they hold, and every name that a job or a board gives them. */
import { createHash } from "node:crypto";
import type { AlbumStore, AlbumVersion, BoardAlbum, NewAlbumVersion } from "../../job/board-album.ts";
import type { Clock, Picture, PictureInfo, PictureType, Refusal, Written } from "../../job/job-store.ts";
import {
  albumConflict,
  albumMovedOn,
  boardPictureConflict,
  pictureConflict,
  sameAlbum,
  samePicture,
} from "../outcomes.ts";
import { inTransaction, type Row, type SqlConnection } from "./connection.ts";

export class PictureRows implements AlbumStore {
  readonly #connection: SqlConnection;
  readonly #clock: Clock;

  constructor(connection: SqlConnection, clock: Clock) {
    this.#connection = connection;
    this.#clock = clock;
  }

  /** The pictures of a job, in the order in which they arrived. */
  ofJob(job: string): PictureInfo[] {
    const rows = this.#connection.all(
      "SELECT id, type, length(data) AS bytes FROM picture_of_job WHERE job = ? ORDER BY later, arrival",
      [job],
    );
    return rows.map((row) => ({
      id: String(row.id),
      type: String(row.type) as PictureType,
      bytes: Number(row.bytes),
    }));
  }

  /** Inside a transaction of the caller's, who knows that the job is there. */
  addToJob(job: string, picture: Picture): Written | Refusal {
    const there = this.oneOfJob(job, picture.id);
    if (there !== null && !samePicture(there, picture)) return pictureConflict(picture.id);
    if (there === null)
      this.#connection.run("INSERT INTO job_picture (job, id, hash, received_at) VALUES (?, ?, ?, ?)", [
        job,
        picture.id,
        this.#content(picture),
        this.#clock(),
      ]);
    const count = this.#connection.all("SELECT count(*) AS kept FROM picture_of_job WHERE job = ?", [job]);
    return { ok: true, added: there === null ? 1 : 0, length: Number(count[0]?.kept ?? 0) };
  }

  oneOfJob(job: string, id: string): Picture | null {
    return pictureOf(
      id,
      this.#connection.all("SELECT type, data FROM picture_of_job WHERE job = ? AND id = ?", [job, id])[0],
    );
  }

  async keepPicture(picture: Picture): Promise<Written | Refusal> {
    return inTransaction(this.#connection, () => {
      const there = this.#ofBoard(picture.id);
      if (there !== null && !samePicture(there, picture)) return boardPictureConflict(picture.id);
      if (there === null)
        this.#connection.run("INSERT INTO board_picture (id, hash, received_at) VALUES (?, ?, ?)", [
          picture.id,
          this.#content(picture),
          this.#clock(),
        ]);
      const count = this.#connection.all("SELECT count(*) AS kept FROM board_picture", []);
      return { ok: true, added: there === null ? 1 : 0, length: Number(count[0]?.kept ?? 0) };
    });
  }

  async readPicture(id: string): Promise<Picture | null> {
    return this.#ofBoard(id);
  }

  async readAlbum(board: string): Promise<AlbumVersion | null> {
    const row = this.#connection.all(
      "SELECT id, album FROM board_album WHERE board = ? ORDER BY arrival DESC LIMIT 1",
      [board],
    )[0];
    return row === undefined ? null : { id: String(row.id), album: albumOf(row) };
  }

  async keepAlbum(board: string, { id, album, after }: NewAlbumVersion): Promise<Written | Refusal> {
    return inTransaction(this.#connection, () => {
      const rows = this.#connection.all(
        "SELECT id, album FROM board_album WHERE board = ? ORDER BY arrival",
        [board],
      );
      const there = rows.find((row) => row.id === id);
      if (there !== undefined)
        return sameAlbum(albumOf(there), album)
          ? { ok: true, added: 0, length: rows.length }
          : albumConflict(id);
      const last = rows.at(-1)?.id ?? null;
      if (after !== undefined && after !== last) return albumMovedOn();
      this.#connection.run("INSERT INTO board_album (board, id, album, received_at) VALUES (?, ?, ?, ?)", [
        board,
        id,
        JSON.stringify(album),
        this.#clock(),
      ]);
      return { ok: true, added: 1, length: rows.length + 1 };
    });
  }

  #ofBoard(id: string): Picture | null {
    const row = this.#connection.all(
      "SELECT type, data FROM board_picture JOIN picture_content USING (hash) WHERE id = ?",
      [id],
    )[0];
    return pictureOf(id, row);
  }

  /** The bytes are there once this returns, written now or by an earlier picture of the same; what names them. */
  #content({ type, data }: Picture): string {
    const hash = createHash("sha256").update(type).update("\0").update(data).digest("hex");
    this.#connection.run(
      "INSERT INTO picture_content (hash, type, data) VALUES (?, ?, ?) ON CONFLICT (hash) DO NOTHING",
      [hash, type, data],
    );
    return hash;
  }
}

function pictureOf(id: string, row: Row | undefined): Picture | null {
  if (row === undefined) return null;
  if (!(row.data instanceof Uint8Array)) throw new Error(`the data of picture "${id}" are not bytes`);
  return { id, type: String(row.type) as PictureType, data: new Uint8Array(row.data) };
}

function albumOf(row: Row): BoardAlbum {
  return JSON.parse(String(row.album)) as BoardAlbum;
}
