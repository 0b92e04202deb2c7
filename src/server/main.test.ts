import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { start } from "./main.ts";

it("the program's own server offers the practice job on a board that comes with it, ready to be worked", async () => {
  const folder = mkdtempSync(join(tmpdir(), "faultwright-main-"));
  const server = await start({ port: 0, dataDir: folder });
  try {
    const { boards } = (await (await fetch(`${server.url}api/boards`)).json()) as {
      boards: { id: string }[];
    };
    expect(boards.length).toBeGreaterThanOrEqual(2);
    for (const { id } of boards) {
      const { board } = (await (await fetch(`${server.url}api/boards/${id}`)).json()) as { board: object };
      const taken = await fetch(`${server.url}api/jobs`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify({
          id: `on-${id}`,
          job: { format: "faultwright-job/1", board, cause: "water", symptom: "dead" },
        }),
      });
      expect([id, taken.status, await taken.json()]).toEqual([id, 201, { id: `on-${id}`, added: 1 }]);
    }
    const demo = (await (await fetch(`${server.url}api/jobs/demo`)).json()) as Record<string, unknown>;
    expect(demo).toMatchObject({
      practice: { seed: expect.any(Number) },
      header: { cause: "surge" },
      events: [],
    });
    const noted = await fetch(`${server.url}api/jobs/demo/events`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ events: [{ do: "note", id: "n1", text: "on the bench" }] }),
    });
    expect(noted.status).toBe(200);
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
});
