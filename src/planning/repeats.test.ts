import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { repeatWords } from "./repeats.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const RAIL = { do: "measure", mode: "diode", red: "V5", black: "NBUS" } as const;

const told = (...given: Parameters<typeof repeatWords>) => plain(repeatWords(...given).join(" "));

function timelineOf(log: readonly JobEvent[]) {
  const folded = foldLog(smallDriveBoard(), [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}

test("a reading asked for a second time on the same bench says why: it fits badly, or much hangs on it", () => {
  const once = timelineOf([{ ...RAIL, reading: 0.1 }]);
  expect(told(once, RAIL, [0])).toContain("fits badly with the rest");
  expect(told(once, RAIL, [])).toContain("much hangs on it");
  expect(told(once, { ...RAIL, mode: "ohms" }, [])).toBe("");
  expect(told(timelineOf([]), RAIL, [])).toBe("");
});

test("after work on the board a reading is not repeated because it was doubted, but because it may have changed", () => {
  const replaced = timelineOf([
    { ...RAIL, reading: 0.1 },
    { do: "replace", part: "U3" },
  ]);
  expect(told(replaced, RAIL, [0])).toBe("Read before U3 was replaced; once more now.");
  const soldered = timelineOf([
    { ...RAIL, reading: 0.1 },
    { do: "resolder", part: "C5" },
  ]);
  expect(told(soldered, RAIL, [])).toContain("before C5 was resoldered");
});

test("after a pin was lifted the same places are another reading", () => {
  const lifted = timelineOf([
    { ...RAIL, reading: 0.1 },
    { do: "lift", place: "U3.vdd" },
  ]);
  expect(told(lifted, RAIL, [])).toBe("");
});
