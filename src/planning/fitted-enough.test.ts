import { expect, it } from "vitest";
import type { JobEvent, Reading } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { makePredictor } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { fittedEnough } from "./fitted-enough.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const board = smallDriveBoard();
const [red, black] = [...(board.parts.get("F1")?.pins.values() ?? [])];

const enoughAfter = (...log: readonly JobEvent[]): readonly string[] => {
  const folded = foldLog(board, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  const { now } = folded.value;
  return [...fittedEnough(board, folded.value, makePredictor(board, now, DEFAULT_METER))];
};
const reads = (reading: Reading): JobEvent => ({ do: "measure", mode: "ohms", red, black, reading });
const fit: JobEvent = { do: "replace", part: "F1" };

it("a new fuse across which it still reads open, as across the old one, is measured by itself, and then not fitted once more", () => {
  expect(enoughAfter(reads("OL"), fit)).toEqual([]);
  expect(enoughAfter(reads("OL"), fit, reads("OL"))).toEqual([]);
  const lifted: JobEvent = { do: "lift", place: "F1.1" };
  const alone: JobEvent = { do: "measure", mode: "ohms", red: "F1.1", black, reading: 0.2 };
  expect(enoughAfter(reads("OL"), fit, reads("OL"), lifted)).toEqual([]);
  const back: JobEvent = { do: "refit", place: "F1.1" };
  expect(enoughAfter(reads("OL"), fit, reads("OL"), lifted, back)).toEqual([]);
  expect(enoughAfter(reads("OL"), fit, reads("OL"), lifted, alone, back)).toEqual(["F1"]);
});

it("a new part that reads wrong in a way of its own may be bad, and one that reads good is no question", () => {
  expect(enoughAfter(reads(300), fit, reads("OL"))).toEqual([]);
  expect(enoughAfter(reads(0.1), fit, reads(0.1))).toEqual([]);
});

it("a third new one is never fitted", () => {
  expect(enoughAfter(fit, reads("OL"), fit)).toEqual(["F1"]);
});
