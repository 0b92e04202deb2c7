import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { smallDriveBoard } from "./scene.fixture.ts";
import { repeatWords } from "./why.ts";

const RAIL = { do: "measure", mode: "diode", red: "V5", black: "NBUS" } as const;

function timelineOf(log: readonly JobEvent[]) {
  const folded = foldLog(smallDriveBoard(), [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

test("a reading asked for a second time on the same bench says that it is a repeat", () => {
  const once = timelineOf([{ ...RAIL, reading: 0.1 }]);
  expect(repeatWords(once, RAIL)).toContain("once more");
  expect(repeatWords(once, { ...RAIL, mode: "ohms" })).toBe("");
  expect(repeatWords(timelineOf([]), RAIL)).toBe("");
});

test("after a pin was lifted the same places are another reading", () => {
  const lifted = timelineOf([
    { ...RAIL, reading: 0.1 },
    { do: "lift", place: "U3.vdd" },
  ]);
  expect(repeatWords(lifted, RAIL)).toBe("");
});
