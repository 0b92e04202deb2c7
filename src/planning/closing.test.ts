import { expect, it } from "vitest";
import type { Feed, JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { closingStep } from "./closing.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const closedAfter = (accused: number, ...log: readonly JobEvent[]): string | null => {
  const folded = foldLog(smallDriveBoard(), [], log);
  if (!folded.ok) throw new Error(folded.problem);
  const action = closingStep(folded.value, accused)?.action;
  return action?.do === "close" ? action.verdict : null;
};
const fit: JobEvent = { do: "replace", part: "F1" };
const ran = (feed: Feed): readonly JobEvent[] => [
  { do: "power", feed, ...(feed === "lamp" ? { watts: 100 } : {}), observed: "runs" },
  { do: "unpower" },
];

it("a board that runs on the mains is repaired, and one that ran as it came has no fault", () => {
  expect(closedAfter(0.1, fit, ...ran("mains"))).toBe("repaired");
  expect(closedAfter(0.1, ...ran("mains"))).toBe("no-fault");
});

it("a board that has run through a lamp alone proves nothing yet", () => {
  expect(closedAfter(0.1, fit, ...ran("lamp"))).toBeNull();
  expect(closedAfter(0.1, fit, ...ran("lamp"), ...ran("mains"))).toBe("repaired");
});

it("a board that runs with a part still accused is not handed back, until it has run too often for that", () => {
  expect(closedAfter(0.9, fit, ...ran("mains"))).toBeNull();
  expect(closedAfter(0.9, fit, ...ran("mains"), ...ran("mains"), ...ran("mains"))).toBe("repaired");
});
