import { truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { parseChecks } from "./checks.ts";
import { parseFaultsOption } from "./faults-option.ts";
import { loadJob } from "./load-job.ts";
import { type Folder, freshFolder, SMALL_BOARD, SMALL_JOB } from "./small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

function problemOf(file: string): string {
  const loaded = loadJob(file);
  return loaded.ok ? "" : plain(loaded.problem);
}

describe("reading a job file", () => {
  it("follows the path of a board from where the job lies", () => {
    folder.file("board.json", SMALL_BOARD);
    const loaded = loadJob(folder.file("job.json", { ...SMALL_JOB, board: "./board.json" }));
    expect(loaded.ok && loaded.value.job.board.name).toBe("small rectifier");
  });

  it("names the file, the field and what is wrong", () => {
    expect(problemOf(folder.file("a.json", { ...SMALL_JOB, cause: "lightning" }))).toMatch(
      /a\.json: cause: /,
    );
    expect(problemOf(folder.file("b.json", { ...SMALL_JOB, colour: 1 }))).toMatch(
      /b\.json: colour: unknown field/,
    );
    expect(problemOf(folder.file("c.json", "{"))).toMatch(/c\.json: line 1: not JSON/);
    expect(problemOf(join(folder.path, "none.json"))).toMatch(/none\.json: there is no such file/);
    expect(problemOf(folder.path)).toMatch(/this is a folder/);
    expect(problemOf(folder.file("d.json", { ...SMALL_JOB, board: "gone.json" }))).toMatch(
      /d\.json: board: .*gone\.json: there is no such file/,
    );
    folder.file("bad-board.json", { ...SMALL_BOARD, zero: "NOWHERE" });
    expect(problemOf(folder.file("e.json", { ...SMALL_JOB, board: "bad-board.json" }))).toMatch(
      /bad-board\.json: zero: .*NOWHERE/,
    );
  });

  it("refuses 50 MB without reading them, and what is no text", () => {
    const large = folder.file("large.json", "{");
    truncateSync(large, 50_000_000);
    expect(problemOf(large)).toMatch(/large\.json: 50\.0 MB is too large/);
    const binary = join(folder.path, "binary.json");
    writeFileSync(binary, Uint8Array.of(0x7b, 0xff, 0xfe, 0x7d));
    expect(problemOf(binary)).toMatch(/binary\.json: this is not text/);
  });
});

describe("checks and faults on the command line", () => {
  const loaded = () => {
    const job = loadJob(folder.file("job.json", { ...SMALL_JOB, absent: ["R1"] }));
    if (!job.ok) throw new Error(job.problem);
    const timeline = foldLog(job.value.job.board, job.value.job.absent, []);
    if (!timeline.ok) throw new Error(timeline.problem);
    return { job: job.value.job, timeline: timeline.value };
  };
  const checks = (input: unknown) => {
    const { job, timeline } = loaded();
    const parsed = parseChecks(input, job, timeline);
    return parsed.ok ? parsed.value : plain(parsed.problem);
  };
  const check = { do: "measure", mode: "diode", red: "PBUS", black: "C1.minus" };

  it("are measure events without a reading, settled or at a moment", () => {
    expect(checks([check, { ...check, seconds: 0.5 }, { ...check, settling: "climbing" }])).toEqual([
      { mode: "diode", red: "PBUS", black: "C1.minus" },
      { mode: "diode", red: "PBUS", black: "C1.minus", seconds: 0.5 },
      { mode: "diode", red: "PBUS", black: "C1.minus", seconds: 2 },
    ]);
  });

  it("are refused with the field that is wrong", () => {
    expect(checks({})).toMatch(/^checks: expected a list/);
    expect(checks([3])).toMatch(/^checks\[0\]: /);
    expect(checks([check, { ...check, mode: "dcv" }])).toMatch(/^checks\[1\]\.mode: .*needs power/);
    expect(checks([{ ...check, red: "PBUZ" }])).toMatch(/^checks\[0\]\.red: .*PBUS/);
    expect(checks([{ ...check, red: "R1.1" }])).toMatch(/^checks\[0\]\.red: R1 did not come/);
    expect(checks([{ ...check, colour: 1 }])).toMatch(/^checks\[0\]\.colour: unknown/);
    expect(checks([{ ...check, seconds: -1 }])).toMatch(/^checks\[0\]\.seconds: /);
    expect(checks([{ ...check, seconds: "soon" }])).toMatch(/^checks\[0\]\.seconds: /);
    expect(checks([{ do: "note", text: "x" }])).toMatch(/^checks\[0\]/);
  });

  it("takes faults with commas between or as a JSON array", () => {
    const { job } = loaded();
    const names = (text: string) => {
      const parsed = parseFaultsOption(text, job.board);
      return parsed.ok ? parsed.value.length : plain(parsed.problem);
    };
    expect(names("")).toBe(0);
    expect(names("C1:short,F1:open")).toBe(2);
    expect(names('["C1:short@1.5", "BR1.ac1plus:open"]')).toBe(2);
    expect(names("C9:short")).toMatch(/^--faults: .*C9/);
    expect(names("C1:short,C1:open")).toMatch(/^--faults: .*excludes/);
    expect(names("[1]")).toMatch(/^--faults: /);
    expect(names("[")).toMatch(/^--faults: .*not JSON/);
  });
});
