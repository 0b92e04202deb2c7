import { expect, it } from "vitest";
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { fittedEnough } from "./fitted-enough.ts";
import { smallDriveBoard } from "./scene.fixture.ts";

const enoughAfter = (...log: readonly JobEvent[]): readonly string[] => {
  const folded = foldLog(smallDriveBoard(), [], log);
  if (!folded.ok) throw new Error(folded.problem);
  return [...fittedEnough(folded.value)];
};
const fit: JobEvent = { do: "replace", part: "F1" };
const power: readonly JobEvent[] = [{ do: "power", feed: "mains", observed: "quiet" }, { do: "unpower" }];

it("a part that is new and has not been under power is not fitted once more because it reads like the old one", () => {
  expect(enoughAfter()).toEqual([]);
  expect(enoughAfter(fit)).toEqual(["F1"]);
});

it("what power may have broken can be fitted a second time, never a third", () => {
  expect(enoughAfter(fit, ...power)).toEqual([]);
  expect(enoughAfter(fit, ...power, fit, ...power)).toEqual(["F1"]);
});
