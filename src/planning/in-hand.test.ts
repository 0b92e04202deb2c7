import { expect, test } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { measuredInHandSince } from "./in-hand.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const LIFT: JobEvent = { do: "lift", place: "U3.vdd" };
const READ: JobEvent = { do: "measure", mode: "diode", red: "NBUS", black: "U3.vdd", reading: 0.5 };
const BESIDE: JobEvent = { do: "measure", mode: "ohms", red: "V5", black: "NBUS", reading: 4000 };

function readings(...log: JobEvent[]): number | null {
  const folded = foldLog(smallDriveBoard(), [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return measuredInHandSince(folded.value, "U3");
}

test("a part is measured by itself by readings on its own lifted pins, not by those on the board beside it", () => {
  expect(readings()).toBeNull();
  expect(readings(BESIDE)).toBeNull();
  expect(readings(LIFT, BESIDE)).toBe(0);
  expect(readings(LIFT, READ, BESIDE)).toBe(1);
});

test("what was measured stays known when the pin is back, and is forgotten with the part", () => {
  const back: JobEvent = { do: "refit", place: "U3.vdd" };
  expect(readings(LIFT, READ, back, BESIDE)).toBe(1);
  expect(readings(LIFT, READ, back, { do: "replace", part: "U3", price: 1 })).toBeNull();
});
