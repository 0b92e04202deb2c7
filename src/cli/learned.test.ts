import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FUSE_LOG, RECTIFIER } from "../job/rectifier-job.fixture.ts";
import { ran, refusal } from "./ran.fixture.ts";
import { type Folder, freshFolder } from "./small-job.fixture.ts";

let folder: Folder;
let jobs: readonly string[];
const file = (log: readonly object[], changes: object = {}) => ({
  format: "faultwright-job/1",
  board: RECTIFIER,
  cause: "surge",
  symptom: "dead",
  ...changes,
  log,
});

beforeAll(() => {
  folder = freshFolder();
  jobs = [
    ...Array.from({ length: 6 }, (_, at) => folder.file(`fuse-${at}.json`, file(FUSE_LOG))),
    folder.file("played.json", file(FUSE_LOG, { practice: 3 })),
    folder.file("open.json", file([])),
  ];
});

afterAll(() => folder.remove());

describe("what six boards with an open fuse teach", () => {
  it("is shown beside what stood before, with its counts, and from which jobs not", async () => {
    const { code, out } = await ran("learned", ...jobs);
    expect(code).toBe(0);
    expect(out).toContain("From 6 jobs (not from: 1 practice, 1 open)");
    const fuse = out.split("\n").find((line) => line.startsWith("  fuse ")) ?? "";
    expect(fuse).toMatch(/expected {2}x [1-9].* to .* found on 6 parts$/);
  });

  it("makes what has always been whole less likely in the next job, the fuse no less, which keeps its figures whatever is learnt after it", async () => {
    const next = folder.file("next.json", file([]));
    const suspicion = async (path: string, part = "BR1"): Promise<number> => {
      const { suspects } = JSON.parse((await ran("suspects", path, "--json")).out);
      return suspects.find((one: { part: string }) => one.part === part).probability;
    };
    const [before, fuse] = [await suspicion(next), await suspicion(next, "F1")];
    expect((await ran("learned", ...jobs, "--into", next)).code).toBe(0);
    const after = await suspicion(next);
    expect(after).toBeLessThan(0.8 * before);
    expect(await suspicion(next, "F1")).toBeGreaterThanOrEqual(fuse);
    const kept = JSON.parse(readFileSync(next, "utf8")).learned;
    expect(kept.jobs).toBe(6);
    expect(kept.sorts.fuse).toBeGreaterThan(1);
    await ran("learned", ...jobs.slice(0, 1));
    expect(await suspicion(next)).toBe(after);
  });

  it("goes into no job that was begun, and into none that is practice", async () => {
    const begun = folder.file("begun.json", file(FUSE_LOG.slice(0, 1)));
    expect(await refusal("learned", ...jobs, "--into", begun)).toContain("has been begun");
    const played = folder.file("play.json", file([], { practice: 5 }));
    expect(await refusal("learned", ...jobs, "--into", played)).toContain("practice");
  });

  it("is what the board's number had before, each job with its work and its end", async () => {
    const { out } = await ran("earlier", jobs[7] ?? "", ...jobs.slice(0, 7));
    const lines = out.trim().split("\n");
    expect(lines).toHaveLength(6);
    expect(lines[0]).toMatch(/^fuse-0 {2}this board {2}surge, dead {2}replace F1 {2}/);
  });

  it("of a good board are kept in the board file, pooled with those that came later", async () => {
    const board = folder.file("board.json", RECTIFIER);
    const good = folder.file("good.json", file(FUSE_LOG.slice(2, 5)));
    expect(await refusal("board", "good-readings", board, folder.file("bad.json", "{}"))).toContain(
      "bad.json",
    );
    expect((await ran("board", "good-readings", board, good)).out).toContain(
      "what a good one read here: 0.900 V, 1 reading",
    );
    const again = await ran("board", "good-readings", board, good, good);
    expect(again.out.match(/good\.json: counted before; nothing was added/g)).toHaveLength(2);
    // the same job, worked on: its later readings alone are new
    const grown = folder.file("grown.json", file([...FUSE_LOG.slice(2, 5), FUSE_LOG[2] ?? {}]));
    await ran("board", "good-readings", board, grown, good);
    const { references } = JSON.parse((await ran("board", "good-readings", board, "--json")).out);
    expect(references).toHaveLength(3);
    expect(references[0]).toMatchObject({
      mode: "diode",
      red: "NBUS",
      black: "PBUS",
      reading: 0.9,
      count: 2,
    });
    expect(JSON.parse(readFileSync(board, "utf8")).references).toEqual(references);
  });
});
