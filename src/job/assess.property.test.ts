import fc from "fast-check";
import { expect, it } from "vitest";
import { anyLog, readToTheEnd, whyNot } from "../planning/any-log.fixture.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession, assess } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

it("whole assessments of a shipped board ask for no hand in a board that is live or not proven dead", () => {
  const content = SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board;
  const file = { format: "faultwright-job/1", board: content, cause: "surge", symptom: "dead" };
  const bare = parseJob(file, null);
  if (!bare.ok) throw new Error(bare.problem);
  const { board } = bare.value;
  const session = new AssessmentSession();
  const property = fc.property(anyLog(board, 12), (log) => {
    const job = parseJob({ ...file, log }, board);
    if (!job.ok) throw new Error(job.problem);
    const assessed = assess(job.value, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    const { action, row, others } = assessed.value.proposal;
    const end = readToTheEnd(board, log);
    for (const step of [action, ...row, ...others.map((other) => other.action)])
      expect(whyNot(board, end, step)).toBeNull();
  });
  fc.assert(property, { seed: 99, numRuns: 8 });
});
