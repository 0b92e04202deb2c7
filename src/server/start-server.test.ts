import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { JobStore } from "../job/job-store.ts";
import { openSqliteStore } from "../store/sqlite/open-store.ts";
import { defaultDataDir } from "./data-dir.ts";
import { type ListeningServer, startServer } from "./start-server.ts";

const BOARD = {
  format: "faultwright-board/1",
  name: "small rectifier",
  family: "fan-drive",
  supply: { kind: "ac", volts: 230, hz: 50, at: ["L", "N"] },
  zero: "NBUS",
  parts: {
    BR1: { kind: "bridge", pins: { ac1: "L", ac2: "N", plus: "PBUS", minus: "NBUS" } },
    C1: { kind: "capacitor", pins: { plus: "PBUS", minus: "NBUS" } },
  },
};
const BOARDS = [{ id: "fan", title: "Fan drive", board: BOARD }];

let folder: string;
let running: ListeningServer[];
let stores: JobStore[];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "faultwright-server-"));
  mkdirSync(join(folder, "web"));
  writeFileSync(join(folder, "web", "index.html"), "<title>bench</title>");
  running = [];
  stores = [];
});
afterEach(async () => {
  for (const server of running) await server.stop();
  for (const store of stores) await store.close();
  rmSync(folder, { recursive: true, force: true });
});

async function startHere(options: { port?: number } = { port: 0 }): Promise<ListeningServer> {
  const store = openSqliteStore(join(folder, "data"), () => new Date().toISOString());
  stores.push(store);
  const server = await startServer({ store, boards: BOARDS, webRoot: join(folder, "web"), ...options });
  running.push(server);
  return server;
}

function post(url: string, body: unknown): Promise<Response> {
  return fetch(url, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });
}

describe("the server on its socket", () => {
  it("serves the page and keeps what was posted over a restart", async () => {
    const server = await startHere();
    expect(await (await fetch(server.url)).text()).toContain("bench");
    const check = { do: "measure", id: "m1", mode: "diode", red: "PBUS", black: "NBUS", reading: 0.9 };
    const posted = await post(`${server.url}api/jobs/demo/events`, { events: [check] });
    expect([posted.status, await posted.json()]).toEqual([200, { added: 1, length: 1 }]);
    await server.stop();
    running = [];
    const again = await startHere();
    const job = (await (await fetch(`${again.url}api/jobs/demo`)).json()) as { events: unknown[] };
    expect(job.events).toEqual([check]);
  });

  it("judges events with the job's own parser and fold", async () => {
    const { url } = await startHere();
    const refusals = [
      [
        { do: "measure", id: "m1", mode: "diode", red: "NOWHERE", black: "NBUS", reading: 0.9 },
        /log\[0\]\.red: .*NOWHERE/,
      ],
      [{ do: "refit", id: "m1", place: "C1.plus" }, /log\[0\]\.place: .*not lifted/],
      [
        { do: "measure", id: "m1", mode: "diode", red: "PBUS", black: "NBUS", reading: null },
        /log\[0\]\.reading/,
      ],
      [{ do: "note", id: "m1", text: "x", colour: 1 }, /log\[0\]\.colour: unknown field/],
    ] as const;
    for (const [event, why] of refusals) {
      const answer = await post(`${url}api/jobs/demo/events`, { events: [event] });
      expect([answer.status, ((await answer.json()) as { error: string }).error]).toEqual([
        422,
        expect.stringMatching(why),
      ]);
    }
    const raw =
      '{"events":[{"do":"measure","id":"m1","mode":"ohms","red":"PBUS","black":"NBUS","reading":1e999}]}';
    const answer = await fetch(`${url}api/jobs/demo/events`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: raw,
    });
    expect(answer.status).toBe(422);
    const job = (await (await fetch(`${url}api/jobs/demo`)).json()) as { events: unknown[] };
    expect(job.events).toEqual([]);
  });

  it("offers a practice job in an empty shop, and no second one later", async () => {
    const first = await startHere();
    const list = (await (await fetch(`${first.url}api/jobs`)).json()) as { jobs: object[] };
    expect(list.jobs).toMatchObject([{ id: "demo", practice: { seed: expect.any(Number) }, eventCount: 0 }]);
    await first.stop();
    running = [];
    const second = await startHere();
    expect(((await (await fetch(`${second.url}api/jobs`)).json()) as { jobs: object[] }).jobs).toHaveLength(
      1,
    );
  });

  it("says that the port asked for is taken, and looks for a free one where none was asked for", async () => {
    const first = await startHere();
    const port = Number(new URL(first.url).port);
    await expect(startHere({ port })).rejects.toMatchObject({ code: "EADDRINUSE" });
    const { port: _none, ...free } = { port };
    const [one, two] = [await startHere(free), await startHere(free)];
    expect(new Set([one.url, two.url, first.url]).size).toBe(3);
  });

  it("is not to be reached from the network, nor by a foreign name", async () => {
    const server = await startHere();
    const port = Number(new URL(server.url).port);
    const outside = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .filter((address) => !address.internal && address.family === "IPv4");
    for (const { address } of outside) {
      await expect(
        fetch(`http://${address}:${port}/`, { signal: AbortSignal.timeout(2000) }),
      ).rejects.toThrow();
    }
    const status = await new Promise<number | undefined>((resolve, reject) => {
      const call = request(
        { host: "127.0.0.1", port, path: "/api/jobs", headers: { host: "evil.example" } },
        (answer) => {
          answer.resume();
          resolve(answer.statusCode);
        },
      );
      call.once("error", reject);
      call.end();
    });
    expect(status).toBe(403);
  });
});

describe("where jobs are kept", () => {
  it("is the folder asked for, else the user's data folder", () => {
    expect(defaultDataDir({ FAULTWRIGHT_DATA: "/a/b" })).toBe("/a/b");
    expect(defaultDataDir({ XDG_DATA_HOME: "/x" })).toBe("/x/faultwright");
    expect(defaultDataDir({ XDG_DATA_HOME: "relative" })).toMatch(/\.local.share.faultwright$/);
    expect(defaultDataDir({})).toMatch(/\.local.share.faultwright$/);
  });
});
