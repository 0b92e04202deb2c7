import { chmodSync, readdirSync, readFileSync, statSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Folder, freshFolder, SMALL_JOB } from "../small-job.fixture.ts";
import { JobFile } from "./job-file.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

function opened(file: string): JobFile {
  const jobFile = JobFile.open(file);
  if (!jobFile.ok) throw new Error(jobFile.problem);
  return jobFile.value;
}

describe("the job file under work", () => {
  it("gains events at the end of its log and keeps the rest as it stood", () => {
    const file = folder.file("job.json", {
      ...SMALL_JOB,
      terms: { currency: "CHF" },
      log: [{ do: "note", text: "old" }],
    });
    chmodSync(file, 0o640);
    const jobFile = opened(file);
    expect(jobFile.append([{ do: "note", id: "a", text: "new" }]).ok).toBe(true);
    const content = JSON.parse(readFileSync(file, "utf8"));
    expect(content).toEqual({
      ...SMALL_JOB,
      terms: { currency: "CHF" },
      log: [
        { do: "note", text: "old" },
        { do: "note", id: "a", text: "new" },
      ],
    });
    expect(Object.keys(content)).toEqual(["format", "board", "cause", "symptom", "log", "terms"]);
    expect(statSync(file).mode & 0o777).toBe(0o640);
    expect(readdirSync(folder.path)).toEqual(["job.json"]);
    expect(jobFile.job.log).toHaveLength(2);
  });

  it("keeps the path of a board that stands in another file", () => {
    folder.file("board.json", SMALL_JOB.board);
    const file = folder.file("job.json", { ...SMALL_JOB, board: "board.json" });
    const jobFile = opened(file);
    jobFile.append([{ do: "note", text: "one" }]);
    expect(JSON.parse(readFileSync(file, "utf8")).board).toBe("board.json");
    expect(opened(file).job.log).toHaveLength(1);
  });

  it("refuses an event that cannot happen and leaves the file alone", () => {
    const file = folder.file("job.json", SMALL_JOB);
    const before = readFileSync(file, "utf8");
    const refused = opened(file).append([{ do: "refit", place: "C1.plus" }]);
    expect(refused).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/^log\[0\]\.place: .*not lifted/),
    });
    expect(readFileSync(file, "utf8")).toBe(before);
  });

  it("does not write over what another program wrote meanwhile", () => {
    const file = folder.file("job.json", SMALL_JOB);
    const jobFile = opened(file);
    folder.file("job.json", { ...SMALL_JOB, cause: "water" });
    expect(jobFile.append([{ do: "note", text: "one" }])).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/another program/),
    });
    expect(JSON.parse(readFileSync(file, "utf8"))).toMatchObject({ cause: "water", log: [] });
  });

  it("writes through a link to the file itself", () => {
    const file = folder.file("job.json", SMALL_JOB);
    const link = join(folder.path, "link.json");
    symlinkSync(file, link);
    expect(opened(link).append([{ do: "note", text: "one" }]).ok).toBe(true);
    expect(JSON.parse(readFileSync(file, "utf8")).log).toHaveLength(1);
  });
});
