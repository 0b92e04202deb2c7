import { expect, it } from "vitest";
import type { Feed, JobEvent, Observed } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { closingStep, hasRun, outvoted } from "./closing.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();

function timelineOf(...log: readonly JobEvent[]) {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
}
const fit: JobEvent = { do: "replace", part: "F1" };
const ran = (feed: Feed): readonly JobEvent[] => [
  { do: "power", feed, ...(feed === "lamp" ? { watts: 100 } : {}), observed: "runs" },
  { do: "unpower" },
];

it("a board that runs on the mains is repaired, and one that ran as it came has no fault; what is left unproven is said", () => {
  const repaired = closingStep(timelineOf(fit, ...ran("mains")), 0.04);
  expect(repaired.action).toEqual({ do: "close", verdict: "repaired" });
  expect(plain(repaired.why)).toContain("4 %");
  expect(closingStep(timelineOf(...ran("mains")), 0).action).toEqual({ do: "close", verdict: "no-fault" });
});

it("a board that has run through a lamp alone proves nothing yet, and one worked on since it ran neither", () => {
  expect(hasRun(BOARD, timelineOf(fit, ...ran("lamp")))).toBe(false);
  expect(hasRun(BOARD, timelineOf(fit, ...ran("lamp"), ...ran("mains")))).toBe(true);
  expect(hasRun(BOARD, timelineOf(...ran("mains"), fit))).toBe(false);
});

it("plugging its motor back is no work on a board that has run", () => {
  expect(
    hasRun(BOARD, timelineOf({ do: "remove", part: "M1" }, ...ran("mains"), { do: "restore", part: "M1" })),
  ).toBe(true);
});

const loaded = (end: Observed): readonly JobEvent[] => [
  { do: "power", feed: "mains", load: "own", observed: "runs" },
  { do: "unpower", observed: end, afterPower: 120 },
];

it("a board that stopped, tripped or smoked under load has not run", () => {
  expect(hasRun(BOARD, timelineOf(fit, ...ran("mains"), ...loaded("runs")))).toBe(true);
  for (const end of ["quiet", "trip", "smoke"] as const)
    expect(hasRun(BOARD, timelineOf(fit, ...ran("mains"), ...loaded(end)))).toBe(false);
});

it("the verdict says whether the board held under load, or that it has still to be loaded", () => {
  const held = closingStep(timelineOf(fit, ...ran("mains"), ...loaded("runs")), 0.02);
  expect(plain(held.why)).toContain("under load as well");
  expect(plain(closingStep(timelineOf(fit, ...ran("mains")), 0.02).why)).toContain(
    "Load it until it is warm through",
  );
});

it("the run under load is no vote of its own", () => {
  expect(outvoted(timelineOf(...ran("mains"), ...ran("mains"), ...loaded("runs")))).toBe(false);
});

it("after three good runs the readings that still accuse a part are outvoted", () => {
  expect(outvoted(timelineOf(...ran("mains"), ...ran("mains")))).toBe(false);
  expect(outvoted(timelineOf(...ran("mains"), ...ran("mains"), ...ran("mains")))).toBe(true);
});
