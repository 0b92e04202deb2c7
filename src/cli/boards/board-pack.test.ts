/** Boards given and taken at the prompt: a preview first, the old version kept, the same file again in the end. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { capturedIo, type Folder, freshFolder } from "../small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

const at = (name: string) => join(folder.path, name);
const read = (name: string) => readFileSync(at(name), "utf8");
async function ran(...argv: string[]): Promise<{ code: number; out: string; err: string }> {
  const io = capturedIo([]);
  const code = await run(["board", ...argv], io);
  return { code, ...io.said };
}

const BOARD = {
  format: "faultwright-board/1",
  name: "pump",
  family: "pump",
  supply: { kind: "dc", volts: 24, at: ["A", "B"] },
  zero: "B",
  parts: {
    R1: { kind: "resistor", pins: { "1": "A", "2": "B" }, value: { ohms: 100 } },
    R2: { kind: "resistor", pins: { "1": "A", "2": "B" } },
  },
};

describe("board pack and unpack", () => {
  it("give a board with its counts, show what it brings, keep the old version, and come out the same again", async () => {
    const own = folder.file("own.json", BOARD);
    const job = folder.file("job.json", {
      format: "faultwright-job/1",
      board: "own.json",
      cause: "surge",
      symptom: "dead",
      log: [
        { do: "beside", mode: "ohms", red: "A", black: "R1.2", reading: 52 },
        { do: "replace", part: "R1" },
        { do: "close", verdict: "repaired" },
      ],
    });
    expect(await ran("pack", own, at("give.json"), "--jobs", job, "--shop", "north")).toMatchObject({
      code: 0,
    });
    const theirs = folder.file("theirs.json", {
      ...BOARD,
      parts: { R1: { ...BOARD.parts.R1, value: { ohms: 120 } }, R9: BOARD.parts.R2 },
    });
    const preview = await ran("unpack", at("give.json"));
    expect(preview).toEqual({ code: 0, out: "pump\n  new parts: R1 R2\n", err: "" });
    const before = read("theirs.json");
    const taken = await ran("unpack", at("give.json"), theirs);
    expect(taken.out).toBe(
      `pump\n  new parts: R2\n  parts that go: R9\n  R1: value {"ohms":120} -> {"ohms":100}\n  of the board itself: what good ones read\nThe version that was there is kept as ${at("theirs.1.json")}.\n`,
    );
    expect(read("theirs.1.json")).toBe(before);
    expect(JSON.parse(read("theirs.outcomes.json")).north).toMatchObject({ jobs: 1, replaced: { R1: 1 } });
    expect(JSON.parse(read("theirs.json")).references).toEqual([
      { mode: "ohms", red: "A", black: "B", reading: 52, spread: 0, count: 1 },
    ]);
    await ran("pack", theirs, at("again.json"));
    expect(read("again.json")).toBe(read("give.json"));
  });

  it("refuse what is no board, or a job of another, in one line, and write nothing", async () => {
    const own = folder.file("own.json", BOARD);
    const wrong = folder.file("wrong.json", { format: "faultwright-pack/1", board: BOARD });
    const refused = await ran("unpack", wrong, at("new.json"));
    expect([refused.code, refused.out, refused.err]).toEqual([
      2,
      "",
      expect.stringMatching(/^.*wrong\.json: outcomes/),
    ]);
    expect(existsSync(at("new.json"))).toBe(false);
    folder.file("other.json", { ...BOARD, family: "oven" });
    const job = folder.file("job.json", {
      format: "faultwright-job/1",
      board: "other.json",
      cause: "surge",
      symptom: "dead",
    });
    const mixed = await ran("pack", own, at("give.json"), "--jobs", job);
    expect([mixed.code, mixed.err]).toEqual([2, expect.stringMatching(/is on a board of the family "oven"/)]);
    expect(existsSync(at("give.json"))).toBe(false);
  });
});
