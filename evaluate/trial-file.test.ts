import { appendFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { joined, keepTrial, readTrials } from "./trial-file.ts";
import { trialOf } from "./trials.fixture.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "faultwright-trials-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

it("trials are kept one a line and read back as they were", () => {
  const path = join(folder, "new", "run.jsonl");
  expect(readTrials(path)).toEqual([]);
  const trials = [trialOf(1, {}), trialOf(2, { engine: { verdict: "not-economic" } })];
  for (const trial of trials) keepTrial(path, trial);
  expect(readTrials(path)).toEqual(trials);
});

it("a line that was cut off is named", () => {
  const path = join(folder, "run.jsonl");
  keepTrial(path, trialOf(1, {}));
  appendFileSync(path, '{"board":');
  expect(() => readTrials(path)).toThrow("run.jsonl:2");
});

it("the same board and seed of two runs counts once, readings of the own solver apart", () => {
  const own = trialOf(1, {}, { readings: "own solver" });
  expect(
    joined([
      [trialOf(1, {}), trialOf(2, {})],
      [trialOf(2, {}), own],
    ]),
  ).toHaveLength(3);
});
