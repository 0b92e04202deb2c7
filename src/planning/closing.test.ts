import { expect, it } from "vitest";
import type { Feed, JobEvent, Observed } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import { closedStep, hasRun, isLoadTested, verdictStep } from "./closing.ts";
import { scene, smallDriveBoard } from "./scene.fixture.ts";

const BOARD = smallDriveBoard();
const after = (...log: readonly JobEvent[]): Timeline => {
  const folded = foldLog(BOARD, [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value;
};
const fit: JobEvent = { do: "replace", part: "F1" };
const ran = (feed: Feed): readonly JobEvent[] => [
  { do: "power", feed, ...(feed === "lamp" ? { watts: 100 } : {}), observed: "runs" },
  { do: "unpower" },
];
const tested = (end: Observed): readonly JobEvent[] => [
  { do: "power", feed: "mains", load: "own", observed: "runs" },
  { do: "unpower", observed: end },
];

it("a run on the mains opens the way to the end of a job, one through a lamp proves nothing yet", () => {
  expect(hasRun(after(fit, ...ran("mains")), 0.1)).toBe(true);
  expect(hasRun(after(fit, ...ran("lamp")), 0.1)).toBe(false);
  expect(hasRun(after(fit, ...ran("lamp"), ...ran("mains")), 0.1)).toBe(true);
});

it("what is changed after a run has to run again", () => {
  expect(hasRun(after(...ran("mains"), fit), 0.1)).toBe(false);
});

it("a board that runs with a part still accused is not handed back, until it has run too often for that", () => {
  expect(hasRun(after(fit, ...ran("mains")), 0.9)).toBe(false);
  expect(hasRun(after(fit, ...ran("mains"), ...ran("mains"), ...ran("mains")), 0.9)).toBe(true);
});

it("a minute at idle is no test: the board has to be told to drive its load", () => {
  expect(isLoadTested(after(fit, ...ran("mains")))).toBe(false);
  expect(isLoadTested(after(fit, ...ran("mains"), ...tested("runs")))).toBe(true);
});

it("a board that stopped, tripped or smoked under load has not run", () => {
  expect(hasRun(after(fit, ...ran("mains"), ...tested("runs")), 0.1)).toBe(true);
  for (const end of ["quiet", "trip", "smoke"] as const)
    expect(hasRun(after(fit, ...ran("mains"), ...tested(end)), 0.1)).toBe(false);
});

it("the verdict is repaired where something was cured, no fault where it ran as it came, and says what is doubted", () => {
  const { belief } = scene(BOARD, []);
  const drift = belief.priors.findIndex(({ fault }) => fault.mode === "drift");
  const sure = { all: 0.001, faults: [] };
  const unsure = { all: 0.08, faults: [[drift, 0.05]] } as const;
  const log = after(fit, ...tested("runs"));
  expect(verdictStep(log, sure, belief, BOARD).action).toEqual({ do: "close", verdict: "repaired" });
  expect(verdictStep(after(...tested("runs")), sure, belief, BOARD).action).toEqual({
    do: "close",
    verdict: "no-fault",
  });
  expect(verdictStep(log, unsure, belief, BOARD).why).toMatch(
    /comes back: 8 %, first of all .*off its value.*5 %/,
  );
});

it("a closed job stays closed", () => {
  expect(closedStep(after({ do: "close", verdict: "declined" }))?.action).toEqual({
    do: "close",
    verdict: "declined",
  });
  expect(closedStep(after(fit))).toBeNull();
});
