import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { minutesBeforePower } from "./before-power.ts";
import { freedBefore } from "./hands-on-steps.ts";
import { scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const inputOf = (log: readonly JobEvent[]) => scene(BOARD, log).input;
const freed = (...log: readonly JobEvent[]) => [...freedBefore(inputOf(log).timeline)];
const FREED: readonly JobEvent[] = [
  { do: "lift", place: "Q1.c" },
  { do: "refit", place: "Q1.c" },
];

it("a part freed and put back is not freed again after a power-up that broke nothing; after smoke, or fitted anew, it is", () => {
  expect(freed(...FREED, { do: "power", feed: "mains", observed: "quiet" })).toEqual(["Q1"]);
  expect(freed(...FREED, { do: "power", feed: "mains", observed: "smoke" })).toEqual([]);
  expect(freed(...FREED, { do: "replace", part: "Q1" })).toEqual([]);
});

it("before power come the minutes of putting back what is lifted or off, and of reading it again", () => {
  expect(minutesBeforePower(inputOf([]))).toBe(0);
  expect(minutesBeforePower(inputOf([{ do: "lift", place: "Q1.c" }]))).toBe(2);
  // two readings each way across the part that was soldered
  expect(minutesBeforePower(inputOf(FREED))).toBeGreaterThan(0.7);
  expect(minutesBeforePower(inputOf([{ do: "remove", part: "Q1" }]))).toBe(5);
});
