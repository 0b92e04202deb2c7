/** Pictures of boards over HTTP: checked, kept once, and the places pinned on them. */
import { beforeEach, describe, expect, it } from "vitest";
import { MemoryJobStore } from "../store/memory/memory-job-store.ts";
import { makeApp } from "./app.ts";

let app: ReturnType<typeof makeApp>;

beforeEach(() => {
  app = makeApp({
    store: new MemoryJobStore(() => "2026-01-01T00:00:00.000Z"),
    acceptLog: () => null,
    newId: () => "x",
    boards: [],
    webRoot: "/nowhere",
    report: () => undefined,
  });
});

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const segment = (marker: number, text: string) => [0xff, marker, 0, text.length + 2, ...bytes(text)];
const jpeg = (...segments: readonly number[][]) =>
  Uint8Array.from([0xff, 0xd8, ...segments.flat(), 0xff, 0xda, 0, 2, 1, 2, 3, 0xff, 0xd9]);
const PLAIN = jpeg(segment(0xe0, "JFIF\0"));

const send = (id: string, data: Uint8Array) =>
  app.request(`/api/board-pictures/${id}`, { method: "POST", body: new Uint8Array(data) });
const pin = (album: unknown, id = "v1", after?: string | null) =>
  app.request("/api/albums?board=pump%20drive", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ id, album, after }),
  });

describe("a picture of a board", () => {
  it("comes back byte for byte, and is there once however often it is sent", async () => {
    expect((await send("p1", PLAIN)).status).toBe(201);
    expect((await send("p1", PLAIN)).status).toBe(200);
    const back = await app.request("/api/board-pictures/p1");
    expect(back.headers.get("content-type")).toBe("image/jpeg");
    expect(new Uint8Array(await back.arrayBuffer())).toEqual(PLAIN);
    expect((await app.request("/api/board-pictures/p2")).status).toBe(404);
  });

  it("is refused where it tells where and with what it was taken", async () => {
    const located = jpeg(segment(0xe0, "JFIF\0"), segment(0xe1, "Exif\0\0place"));
    const answer = await send("p1", located);
    expect(answer.status).toBe(415);
    expect(await answer.json()).toEqual({
      error: "picture: it carries Exif or XMP; choose it on the page, which draws it anew without",
    });
    const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 4, ...bytes("tEXt"), 1, 2, 3, 4];
    expect((await send("p1", Uint8Array.from(png))).status).toBe(415);
    expect((await send("p1", bytes("<script>"))).status).toBe(415);
  });
});

describe("the places pinned on it", () => {
  const face = { side: "top", picture: "p1", width: 40, height: 30, turn: 0 };

  it("belong to the board by its name, several for one net", async () => {
    await send("p1", PLAIN);
    const pins = [0.1, 0.9].map((x) => ({ place: "PBUS", side: "top", x, y: 0.5 }));
    expect((await pin({ faces: [face], pins })).status).toBe(201);
    const read = await app.request("/api/albums?board=pump%20drive");
    expect(await read.json()).toEqual({ album: { faces: [face], pins }, version: "v1" });
    expect(await (await app.request("/api/albums?board=other")).json()).toEqual({
      album: null,
      version: null,
    });
  });

  it("are refused off the picture, on a side twice, or on a picture that nobody sent", async () => {
    expect((await pin({ faces: [face], pins: [] })).status).toBe(422);
    await send("p1", PLAIN);
    expect((await pin({ faces: [face, face], pins: [] })).status).toBe(400);
    const off = { place: "PBUS", side: "top", x: 1.2, y: 0.5 };
    expect((await pin({ faces: [face], pins: [off] })).status).toBe(400);
  });

  it("bear the revision of the board they were pinned on, and are refused where another pinned meanwhile", async () => {
    await send("p1", PLAIN);
    const pins = [{ place: "PBUS", side: "top", x: 0.1, y: 0.5, revision: "rev C" }];
    expect((await pin({ faces: [{ ...face, revision: "rev C" }], pins }, "v1", null)).status).toBe(201);
    expect((await pin({ faces: [face], pins: [] }, "v2", null)).status).toBe(412);
    expect((await pin({ faces: [face], pins: [] }, "v2", "v1")).status).toBe(201);
    const long = [{ place: "PBUS", side: "top", x: 0.1, y: 0.5, revision: "C".repeat(41) }];
    expect((await pin({ faces: [face], pins: long }, "v3", "v2")).status).toBe(400);
  });

  it("may wait for somebody to say which holds, each photo in question there", async () => {
    await send("p1", PLAIN);
    const conflict = (picture: string) => ({
      side: "top",
      place: null,
      ways: [
        { face, pins: [] },
        { face: { ...face, picture }, pins: [] },
      ],
    });
    const album = (picture: string) => ({ faces: [face], pins: [], conflicts: [conflict(picture)] });
    expect((await pin(album("p2"))).status).toBe(422);
    await send("p2", PLAIN);
    expect((await pin(album("p2"))).status).toBe(201);
  });
});
