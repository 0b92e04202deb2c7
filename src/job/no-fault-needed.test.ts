import { expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { assess } from "./assess.ts";
import { benchView } from "./bench-view.ts";
import { FUSE_LOG, rectifierJob } from "./rectifier-job.fixture.ts";

it("once what was found is cured, the explanation without a fault says that the readings need none, not that nothing is wrong", () => {
  const assessment = assess(rectifierJob(FUSE_LOG.slice(0, -1)));
  if (!assessment.ok) throw new Error(assessment.problem);
  const view = benchView(assessment.value);
  const none = view.explanations.find(({ faults }) => faults.length === 0);
  expect(plain(none?.words ?? "")).toBe("no fault: nothing read so far needs one");
  // the two figures stand side by side, and the second counts what was not looked for as well
  expect(view.healthyProbability).toBeLessThanOrEqual((none?.probability ?? 0) + 1e-9);
});
