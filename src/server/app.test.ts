import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { AcceptLog } from "../job/job-store.ts";
import { MemoryJobStore } from "../store/memory/memory-job-store.ts";
import { PICTURE_BYTES } from "../wire/job-api.ts";
import { makeApp } from "./app.ts";

const BOARD = { format: "faultwright-board/1", name: "fan drive", family: "fan-drive" };
const JOB = { format: "faultwright-job/1", board: BOARD, cause: "surge", symptom: "dead" };
const PNG = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3);

let folder: string;
let webRoot: string;
let store: MemoryJobStore;
let app: ReturnType<typeof makeApp>;
let reported: unknown[];

/** Stands in for the job's parser: it refuses a log in which something is called impossible. */
const acceptLog: AcceptLog = (_header, log) => {
  const at = log.findIndex((event) => event.do === "note" && event.text === "impossible");
  return at === -1 ? null : `log[${at}].text: impossible`;
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "faultwright-web-"));
  writeFileSync(join(folder, "secret.txt"), "secret");
  webRoot = join(folder, "web");
  mkdirSync(join(webRoot, "assets"), { recursive: true });
  writeFileSync(join(webRoot, "index.html"), "<!doctype html><title>bench</title>");
  writeFileSync(join(webRoot, "assets", "page-1a2b.js"), "export {};");
  writeFileSync(join(webRoot, "sw.js"), "self;");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeEach(() => {
  let seconds = 0;
  reported = [];
  store = new MemoryJobStore(() => new Date(1000 * seconds++).toISOString());
  app = makeApp({
    store,
    acceptLog,
    newId: () => "made-here",
    boards: [{ id: "fan", title: "Greenhouse fan drive", board: BOARD }],
    webRoot,
    report: (error) => reported.push(error),
  });
});

function post(path: string, body: unknown, headers: Record<string, string> = {}) {
  return app.request(path, {
    method: "POST",
    headers: { "Content-Type": "application/json", ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
}

async function errorOf(response: Response | Promise<Response>): Promise<[number, string]> {
  const answer = await response;
  const { error } = (await answer.json()) as { error: string };
  expect(error).not.toMatch(/\n/);
  return [answer.status, error];
}

describe("taking a job in", () => {
  it("keeps it and gives it back with its log and its name", async () => {
    const created = await post("/api/jobs", { title: "fan", practice: { seed: 3 }, job: JOB });
    expect(created.status).toBe(201);
    expect(await created.json()).toEqual({ id: "made-here", added: 1 });
    const read = await app.request("/api/jobs/made-here");
    expect(await read.json()).toMatchObject({ title: "fan", practice: { seed: 3 }, header: JOB, events: [] });
    const list = await app.request("/api/jobs");
    expect(await list.json()).toMatchObject({
      jobs: [{ id: "made-here", boardName: "fan drive", eventCount: 0 }],
    });
  });

  it("takes the board's name for a title where none is given", async () => {
    await post("/api/jobs", { id: "a", job: JOB });
    expect((await store.readJob("a"))?.title).toBe("fan drive");
  });

  it("takes an imported log along, and importing again adds nothing", async () => {
    const file = {
      ...JOB,
      log: [
        { do: "note", text: "one" },
        { do: "note", id: "n2", text: "two" },
      ],
    };
    expect((await post("/api/jobs", { id: "a", job: file })).status).toBe(201);
    expect((await post("/api/jobs", { id: "a", job: file })).status).toBe(200);
    expect((await store.readJob("a"))?.events.map((event) => event.id)).toEqual(["log-0", "n2"]);
  });

  it("gives the job file back with its log", async () => {
    const file = { ...JOB, log: [{ do: "note", id: "n1", text: "one" }] };
    await post("/api/jobs", { id: "a", job: file });
    const answer = await app.request("/api/jobs/a/file");
    expect(answer.headers.get("content-disposition")).toContain("a.json");
    expect(await answer.json()).toEqual(file);
  });

  it("refuses what is no job, in one line that names the field", async () => {
    expect(await errorOf(post("/api/jobs", { job: JOB, colour: 1 }))).toEqual([
      400,
      expect.stringContaining("colour"),
    ]);
    expect(await errorOf(post("/api/jobs", { id: "a b", job: JOB }))).toEqual([
      400,
      expect.stringMatching(/^id:/),
    ]);
    expect(await errorOf(post("/api/jobs", { job: JOB, practice: { seed: 1.5 } }))).toEqual([
      400,
      expect.stringMatching(/^practice\.seed:/),
    ]);
    expect(await errorOf(post("/api/jobs", "{not json"))).toEqual([
      400,
      expect.stringMatching(/^body: not JSON/),
    ]);
    expect(await errorOf(post("/api/jobs", { job: { ...JOB, board: "/etc/passwd" } }))).toEqual([
      422,
      expect.stringContaining("board"),
    ]);
    const log = [{ do: "note", text: "impossible" }];
    expect(await errorOf(post("/api/jobs", { job: { ...JOB, log } }))).toEqual([
      422,
      "job: log[0].text: impossible",
    ]);
    expect(await store.listJobs()).toEqual([]);
  });
});

describe("writing the log", () => {
  const event = { do: "note", id: "n1", text: "one" };
  beforeEach(async () => {
    await post("/api/jobs", { id: "a", job: JOB });
  });

  it("adds an event once, however often it is posted", async () => {
    const first = await post("/api/jobs/a/events", { events: [event] });
    expect(await first.json()).toEqual({ added: 1, length: 1 });
    const again = await post("/api/jobs/a/events", { events: [event] });
    expect([again.status, await again.json()]).toEqual([200, { added: 0, length: 1 }]);
  });

  it("refuses other content under a known id, an impossible log, an unknown job, an event without an id", async () => {
    await post("/api/jobs/a/events", { events: [event] });
    expect(await errorOf(post("/api/jobs/a/events", { events: [{ ...event, text: "two" }] }))).toEqual([
      409,
      expect.stringContaining('"n1"'),
    ]);
    const impossible = { do: "note", id: "n2", text: "impossible" };
    expect(await errorOf(post("/api/jobs/a/events", { events: [impossible] }))).toEqual([
      422,
      "log[1].text: impossible",
    ]);
    expect((await post("/api/jobs/b/events", { events: [event] })).status).toBe(404);
    expect(await errorOf(post("/api/jobs/a/events", { events: [{ do: "note", text: "x" }] }))).toEqual([
      400,
      expect.stringMatching(/^events\[0\]\.id:/),
    ]);
    expect((await store.readJob("a"))?.events).toEqual([event]);
  });

  it("shows the parser the fields as they came, `__proto__` among them", async () => {
    const seen: string[][] = [];
    const watching = makeApp({
      store,
      acceptLog: (_header, log) => {
        seen.push(...log.map((kept) => Object.keys(kept)));
        return "no";
      },
      newId: () => "x",
      boards: [],
      webRoot,
      report: () => undefined,
    });
    await watching.request("/api/jobs/a/events", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: '{"events":[{"id":"n3","do":"note","__proto__":{"text":"x"}}]}',
    });
    expect(seen).toEqual([["id", "do", "__proto__"]]);
  });
});

describe("pictures", () => {
  beforeEach(async () => {
    await post("/api/jobs", { id: "a", job: JOB });
  });
  const send = (path: string, data: Uint8Array<ArrayBuffer>, type = "image/png") =>
    app.request(path, { method: "POST", headers: { "Content-Type": type }, body: data });

  it("are kept and given back with the type of their bytes, not of their label", async () => {
    const answer = await send("/api/jobs/a/pictures/front", PNG, "text/html");
    expect([answer.status, await answer.json()]).toEqual([
      201,
      { id: "front", type: "image/png", bytes: 11 },
    ]);
    expect((await send("/api/jobs/a/pictures/front", PNG)).status).toBe(200);
    const back = await app.request("/api/jobs/a/pictures/front");
    expect(back.headers.get("content-type")).toBe("image/png");
    expect(back.headers.get("x-content-type-options")).toBe("nosniff");
    expect(new Uint8Array(await back.arrayBuffer())).toEqual(PNG);
  });

  it("are refused where they are no pictures, too large, badly named or of no job", async () => {
    const script = new TextEncoder().encode("<svg onload=alert(1)>");
    expect((await send("/api/jobs/a/pictures/x", script)).status).toBe(415);
    const large = new Uint8Array(PICTURE_BYTES + 1);
    large.set(PNG);
    expect(await errorOf(send("/api/jobs/a/pictures/x", large))).toEqual([
      413,
      expect.stringContaining("5 MB"),
    ]);
    expect((await send("/api/jobs/a/pictures/..%2Fx", PNG)).status).toBe(400);
    expect((await send("/api/jobs/b/pictures/x", PNG)).status).toBe(404);
    expect((await app.request("/api/jobs/a/pictures/none")).status).toBe(404);
  });
});

describe("who may talk to the server", () => {
  it("refuses a foreign name that was pointed at this machine", async () => {
    const answer = await app.request("/api/jobs", { headers: { Host: "evil.example:4517" } });
    expect(await errorOf(answer)).toEqual([403, expect.stringContaining("evil.example")]);
    for (const host of ["127.0.0.1:4517", "localhost:9", "[::1]:80", "LOCALHOST"]) {
      expect((await app.request("/api/jobs", { headers: { Host: host } })).status, host).toBe(200);
    }
    for (const host of ["127.0.0.1.evil.example", "localhost.evil.example:4517", "127.0.0.2", ""]) {
      expect((await app.request("/api/jobs", { headers: { Host: host } })).status, host).toBe(403);
    }
  });

  it("refuses writes from pages of other origins, also of another port of this machine", async () => {
    const body = { id: "a", job: JOB };
    const host = "127.0.0.1:4517";
    for (const origin of ["http://evil.example", "http://127.0.0.1:9999", "https://127.0.0.1:4517", "null"]) {
      expect((await post("/api/jobs", body, { Host: host, Origin: origin })).status, origin).toBe(403);
    }
    expect((await post("/api/jobs", body, { Host: host, "Sec-Fetch-Site": "cross-site" })).status).toBe(403);
    expect((await post("/api/jobs", body, { Host: host, "Content-Type": "text/plain" })).status).toBe(400);
    expect(await store.listJobs()).toEqual([]);
    expect((await post("/api/jobs", body, { Host: host, Origin: `http://${host}` })).status).toBe(201);
  });

  it("takes no body larger than an outbox or a job file can be", async () => {
    const answer = await post("/api/jobs/a/events", { events: [], filler: "x".repeat(1_000_001) });
    expect(await errorOf(answer)).toEqual([413, expect.stringContaining("1 MB")]);
  });

  it("says nothing of its inside when something breaks there, but reports it", async () => {
    store.listJobs = () => Promise.reject(new Error("disk I/O error in /home/someone"));
    const [status, error] = await errorOf(app.request("/api/jobs"));
    expect(status).toBe(500);
    expect(error).not.toContain("someone");
    expect(reported).toHaveLength(1);
  });
});

describe("the page and the boards", () => {
  it("serves files with their types and the page for every other path", async () => {
    const page = await app.request("/");
    expect(page.headers.get("content-type")).toBe("text/html; charset=utf-8");
    expect(page.headers.get("content-security-policy")).toContain("default-src 'self'");
    expect(page.headers.get("content-security-policy")).not.toMatch(/script-src|unsafe-eval/);
    expect(page.headers.get("cache-control")).toBe("no-cache");
    const script = await app.request("/assets/page-1a2b.js");
    expect(script.headers.get("content-type")).toBe("text/javascript; charset=utf-8");
    expect(script.headers.get("cache-control")).toContain("immutable");
    expect((await app.request("/sw.js")).headers.get("cache-control")).toBe("no-cache");
    expect(await (await app.request("/job/a/bench")).text()).toContain("<title>bench</title>");
    expect((await app.request("/assets/gone.js")).status).toBe(404);
  });

  it("gives no file outside the page's folder", async () => {
    for (const path of ["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/%00", "/%ff"]) {
      const answer = await app.request(`http://localhost${path}`);
      expect(await answer.text(), path).not.toBe("secret");
      expect([200, 404], path).toContain(answer.status);
      if (answer.status === 200) expect(answer.headers.get("content-type")).toContain("text/html");
    }
  });

  it("offers the boards that come with the program", async () => {
    const list = await app.request("/api/boards");
    expect(await list.json()).toEqual({ boards: [{ id: "fan", title: "Greenhouse fan drive" }] });
    expect(await (await app.request("/api/boards/fan")).json()).toMatchObject({ board: BOARD });
    expect((await app.request("/api/boards/other")).status).toBe(404);
    expect((await app.request("/api/nothing")).status).toBe(404);
  });
});
