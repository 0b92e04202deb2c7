/** On a board of many axes the checks weighed stay few, and still reach the rails and whatever is suspected. */
import { expect, test } from "vitest";
import { foldLog } from "../../src/bench/fold.ts";
import type { Belief } from "../../src/diagnosis/belief.ts";
import { candidateChecks } from "../../src/planning/candidate-checks.ts";
import { sizeSeries } from "./evaluation-boards.ts";

const WHY = { speaksFor: [], speaksAgainst: [], maskedBy: [], untested: true };

function doubting(parts: readonly string[]): Belief {
  const suspects = parts.map((part) => ({ part, probability: 0.2, modes: [], because: () => WHY }));
  return {
    priors: [],
    suspects,
    healthyProbability: 0,
    explanations: [],
    remainder: 0,
    unexplained: [],
    notSolved: [],
  };
}

test("a suspected part of the last axis has its checks, and so do the rails and the bridge", () => {
  const board = sizeSeries().find(({ size }) => size === 600)?.board;
  if (board === undefined) throw new Error("no board of 600 parts");
  const timeline = foldLog(board, [], []);
  if (!timeline.ok) throw new Error(timeline.problem);
  const lastSwitch = [...board.parts.values()].filter((part) => part.kind === "igbt").at(-1);
  if (lastSwitch === undefined) throw new Error("no switch");
  const { now } = timeline.value;
  const checks = candidateChecks(board, now, timeline.value, doubting([lastSwitch.ref]));
  expect(checks.length).toBeLessThanOrEqual(110);
  const setUps = new Set(checks.map(({ setUp }) => setUp));
  expect([...setUps]).toEqual(expect.arrayContaining(["the bus", "the low rails", "BR1, diode way"]));
  const gate = lastSwitch.pins.get("g");
  expect(checks.some(({ check }) => check.red === gate || check.black === gate)).toBe(true);
  // behind the windings of a motor all three legs read zero in diode mode: ohms tell the near one
  const own = [lastSwitch.pins.get("c"), lastSwitch.pins.get("e")];
  const across = checks.filter(({ check }) => own.includes(check.red) && own.includes(check.black));
  expect(new Set(across.map(({ check }) => check.mode))).toEqual(new Set(["diode", "ohms"]));
});
