/** Boards of one's own over HTTP: kept with every version, refused where they are no boards. */
import { beforeEach, describe, expect, it } from "vitest";
import { SHIPPED } from "../shipped/shipped.ts";
import { MemoryJobStore } from "../store/memory/memory-job-store.ts";
import { makeApp } from "./app.ts";

const BOARD = SHIPPED[0]?.board as Record<string, unknown>;
let app: ReturnType<typeof makeApp>;

beforeEach(() => {
  let seconds = 0;
  app = makeApp({
    store: new MemoryJobStore(() => new Date(1000 * seconds++).toISOString()),
    acceptLog: () => null,
    newId: () => "x",
    boards: [],
    webRoot: "/nowhere",
    report: () => undefined,
  });
});

const post = (path: string, body: unknown) =>
  app.request(path, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });

describe("boards of one's own", () => {
  it("are kept, listed, deleted and brought back, every version still there", async () => {
    const version = { id: "v1", title: "pump", content: BOARD };
    expect((await post("/api/own-boards/b1/versions", version)).status).toBe(201);
    expect((await post("/api/own-boards/b1/versions", version)).status).toBe(200);
    await post("/api/own-boards/b1/versions", { id: "v2", title: "pump", content: null });
    const listed = await (await app.request("/api/own-boards")).json();
    expect(listed).toMatchObject({ boards: [{ id: "b1", deleted: true, versions: 2 }] });
    await post("/api/own-boards/b1/versions", { ...version, id: "v3" });
    const read = (await (await app.request("/api/own-boards/b1")).json()) as {
      versions: { content: unknown }[];
    };
    expect(read.versions.map(({ content }) => content)).toEqual([BOARD, null, BOARD]);
    expect((await app.request("/api/own-boards/none")).status).toBe(404);
  });

  it("are refused in one line where they are none", async () => {
    const refused = async (path: string, body: unknown) => {
      const answer = await post(path, body);
      return [answer.status, ((await answer.json()) as { error: string }).error];
    };
    const { zero: _, ...noZero } = BOARD;
    expect(await refused("/api/own-boards/b1/versions", { id: "v1", title: "x", content: noZero })).toEqual([
      422,
      expect.stringMatching(/^board: zero/),
    ]);
    expect(await refused("/api/own-boards/b1/versions", { id: "v 1", title: "x", content: null })).toEqual([
      400,
      expect.stringMatching(/^id:/),
    ]);
    expect((await refused("/api/own-boards/b 1/versions", { id: "v1", title: "x", content: null }))[0]).toBe(
      400,
    );
  });
});
