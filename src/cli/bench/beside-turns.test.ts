import { readFileSync } from "node:fs";
import { afterEach, beforeEach, expect, it } from "vitest";
import { refusal } from "../ran.fixture.ts";
import { run } from "../run.ts";
import { capturedIo, type Folder, freshFolder, SMALL_JOB } from "../small-job.fixture.ts";

let folder: Folder;
beforeEach(() => {
  folder = freshFolder();
});
afterEach(() => folder.remove());

async function worked(file: string, ...lines: readonly string[]) {
  const io = capturedIo(lines);
  const code = await run(["bench", file], io);
  const { log } = JSON.parse(readFileSync(file, "utf8")) as { log: { do: string; reading?: unknown }[] };
  return { code, ...io.said, log: log.map((event) => [event.do, event.reading]) };
}

it("with a good board beside it each reading is asked of that one next, and what differs is said", async () => {
  const file = folder.file("job.json", SMALL_JOB);
  const { code, err, out, log } = await worked(
    file,
    "beside on",
    "measure ohms PBUS NBUS 210",
    "47k",
    "measure diode NBUS PBUS 0.9",
    "0.92",
    "measure diode PBUS NBUS OL",
    "skip",
    "measure dcv PBUS NBUS 0.2",
    "lift C1.plus",
    "measure ohms PBUS NBUS 48k",
    "beside off",
    "compared",
  );
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(log).toEqual([
    ["measure", 210],
    ["beside", 47_000],
    ["measure", 0.9],
    ["beside", 0.92],
    ["measure", "OL"],
    ["measure", 0.2],
    ["lift", undefined],
    ["measure", 48_000],
  ]);
  expect(out.match(/what it reads, or: skip/g)).toHaveLength(3);
  expect(out).toMatch(/\* ohms: red on C1 pin plus.* +here 210 ohm +good 47\.0 kohm +220 times lower/);
  expect(out).toMatch(/ {2}diode mode: red on C1 pin minus.* +here 0\.900 V +good 0\.920 V +alike/);
  expect(out).toMatch(/proven empty/);
});

it("of the good one digits are wanted, and what was read beside a faulty board is no reading of a good board by itself", async () => {
  const file = folder.file("job.json", SMALL_JOB);
  const { code, err } = await worked(file, "beside on", "measure ohms PBUS NBUS 210", "high", "47k");
  expect(code).toBe(2);
  expect(err).toMatch(/"high": of the good one write the digits, settled, or OL/);
  const board = folder.file("board.json", SMALL_JOB.board);
  expect(await refusal("board", "good-readings", board, file)).toMatch(
    /job\.json: is of a board that a good one lay beside; "learned JOBS --into NEW" counts with that/,
  );
});
