/** Pictures of boards kept as long as the process runs. */
import type { AlbumStore, AlbumVersion, NewAlbumVersion } from "../../job/board-album.ts";
import type { Picture, Refusal, Written } from "../../job/job-store.ts";
import { albumConflict, albumMovedOn, boardPictureConflict, sameAlbum, samePicture } from "../outcomes.ts";

export class MemoryAlbumStore implements AlbumStore {
  readonly #albums = new Map<string, readonly AlbumVersion[]>();
  readonly #pictures = new Map<string, Picture>();

  async readAlbum(board: string): Promise<AlbumVersion | null> {
    return structuredClone(this.#albums.get(board)?.at(-1) ?? null);
  }

  async keepAlbum(board: string, { after, ...version }: NewAlbumVersion): Promise<Written | Refusal> {
    const versions = this.#albums.get(board) ?? [];
    const there = versions.find(({ id }) => id === version.id);
    if (there !== undefined && !sameAlbum(there.album, version.album)) return albumConflict(version.id);
    if (there !== undefined) return { ok: true, added: 0, length: versions.length };
    if (after !== undefined && after !== (versions.at(-1)?.id ?? null)) return albumMovedOn();
    this.#albums.set(board, [...versions, structuredClone(version)]);
    return { ok: true, added: 1, length: versions.length + 1 };
  }

  async keepPicture(picture: Picture): Promise<Written | Refusal> {
    const there = this.#pictures.get(picture.id);
    if (there !== undefined && !samePicture(there, picture)) return boardPictureConflict(picture.id);
    if (there === undefined) this.#pictures.set(picture.id, structuredClone(picture));
    return { ok: true, added: there === undefined ? 1 : 0, length: this.#pictures.size };
  }

  async readPicture(id: string): Promise<Picture | null> {
    return structuredClone(this.#pictures.get(id) ?? null);
  }
}
