import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Folder, freshFolder, SMALL_JOB } from "./small-job.fixture.ts";

const MAIN = fileURLToPath(new URL("./main.ts", import.meta.url));
let folder: Folder;
beforeAll(() => {
  folder = freshFolder();
});
afterAll(() => folder.remove());

function spawned(argv: readonly string[], input = "") {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", MAIN, ...argv], {
    encoding: "utf8",
    input,
  });
  return { status, stdout, stderr };
}

describe("the program in a process of its own", () => {
  it("answers on standard output and exits 0", () => {
    const job = folder.file("job.json", SMALL_JOB);
    const { status, stdout, stderr } = spawned(["suspects", job, "--json"]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(JSON.parse(stdout).suspects).toHaveLength(4);
  }, 60_000);

  it("complains on standard error and exits 2", () => {
    const job = folder.file("bad.json", {
      ...SMALL_JOB,
      log: [
        { do: "lift", place: "C1.plus" },
        { do: "lift", place: "C1.plus" },
      ],
    });
    const { status, stdout, stderr } = spawned(["suspects", job, "--json"]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(/^[^\n]*bad\.json: log\[1\]\.place: [^\n]*lifted already[^\n]*\n$/);
  }, 60_000);
});
