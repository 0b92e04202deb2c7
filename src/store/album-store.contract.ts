/** What `job/board-album.ts` promises, asked of every store alike. */
import { describe, expect, it } from "vitest";
import type { AlbumStore, BoardAlbum } from "../job/board-album.ts";
import type { Clock, Picture } from "../job/job-store.ts";

const PIXELS: Picture = { id: "p1", type: "image/png", data: Uint8Array.of(0x89, 0x50, 0, 255) };
const album = (places: readonly string[]): BoardAlbum => ({
  faces: [{ side: "top", picture: "p1", width: 4, height: 3, turn: 90 }],
  pins: places.map((place) => ({ place, side: "top", x: 0.5, y: 0.25 })),
});

export function albumStoreContract(
  name: string,
  make: (clock: Clock) => { readonly albums: AlbumStore; close(): Promise<void> },
): void {
  describe(`${name} and pictures of boards`, () => {
    let seconds = 0;
    const open = () => make(() => new Date(1000 * seconds++).toISOString());

    it("keeps a picture byte for byte under every id it is given, and no other under one that is taken", async () => {
      const store = open();
      const { albums } = store;
      expect(await albums.readPicture("p1")).toBeNull();
      expect(await albums.keepPicture(PIXELS)).toEqual({ ok: true, added: 1, length: 1 });
      expect(await albums.keepPicture(PIXELS)).toEqual({ ok: true, added: 0, length: 1 });
      expect(await albums.keepPicture({ ...PIXELS, id: "p2" })).toEqual({ ok: true, added: 1, length: 2 });
      const other = { ...PIXELS, data: Uint8Array.of(0x89) };
      expect(await albums.keepPicture(other)).toMatchObject({ ok: false, kind: "conflict" });
      expect(await albums.readPicture("p2")).toEqual({ ...PIXELS, id: "p2" });
      await store.close();
    });

    it("answers with the last version of a board's pins, by the board's name", async () => {
      const store = open();
      const { albums } = store;
      await albums.keepPicture(PIXELS);
      expect(await albums.readAlbum("pump drive")).toBeNull();
      await albums.keepAlbum("pump drive", { id: "v1", album: album(["PBUS"]) });
      expect(
        await albums.keepAlbum("pump drive", { id: "v2", album: album(["PBUS", "PBUS", "Q1.c"]) }),
      ).toEqual({ ok: true, added: 1, length: 2 });
      expect(await albums.readAlbum("pump drive")).toEqual({
        id: "v2",
        album: album(["PBUS", "PBUS", "Q1.c"]),
      });
      expect(await albums.readAlbum("fan drive")).toBeNull();
      const again = { id: "v1", album: album(["PBUS"]) };
      expect(await albums.keepAlbum("pump drive", again)).toEqual({ ok: true, added: 0, length: 2 });
      expect(await albums.keepAlbum("pump drive", { ...again, album: album([]) })).toMatchObject({
        kind: "conflict",
      });
      await store.close();
    });

    it("takes no version that was made from another than the last, and one that is there already at any time", async () => {
      const store = open();
      const { albums } = store;
      await albums.keepPicture(PIXELS);
      const first = { id: "v1", album: album(["PBUS"]), after: null };
      expect(await albums.keepAlbum("pump drive", first)).toMatchObject({ added: 1 });
      const second = { id: "v2", album: album(["PBUS", "GND"]), after: "v1" };
      expect(await albums.keepAlbum("pump drive", second)).toMatchObject({ added: 1 });
      const late = { id: "v3", album: album(["V15"]), after: "v1" };
      expect(await albums.keepAlbum("pump drive", late)).toMatchObject({ ok: false, kind: "moved-on" });
      expect(await albums.keepAlbum("pump drive", { ...late, after: null })).toMatchObject({
        kind: "moved-on",
      });
      expect(await albums.keepAlbum("pump drive", first)).toMatchObject({ added: 0 });
      expect((await albums.readAlbum("pump drive"))?.id).toBe("v2");
      await store.close();
    });
  });
}
