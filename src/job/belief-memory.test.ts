/** What was believed is remembered by everything it followed from: the readings and the board they were taken on. */
import { expect, it } from "vitest";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { provenEmpty } from "../planning/scene.fixture.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import type { Job } from "./job.ts";
import { parseJob } from "./parse-job.ts";

const HEADER = {
  format: "faultwright-job/1",
  board: smallDrive(),
  cause: "surge",
  symptom: "dead",
  terms: {},
};

/** A dead short across one high switch, read with one pin lifted. */
function jobWithLifted(part: string, pin: string): Job {
  const empty = parseJob({ ...HEADER, log: [] }, null);
  if (!empty.ok) throw new Error(empty.problem);
  const job = parseJob(
    {
      ...HEADER,
      log: [
        ...provenEmpty(empty.value.board),
        { do: "lift", place: `${part}.${pin}` },
        { do: "measure", mode: "ohms", red: "PBUS", black: "U", reading: 0.2 },
      ],
    },
    empty.value.board,
  );
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

function shorted(job: Job, session: AssessmentSession): number {
  const believed = beliefOf(job, session);
  if (!believed.ok) throw new Error(believed.problem);
  return believed.value.belief.suspects.find(({ part }) => part === "Q1")?.probability ?? 0;
}

it("the same reading with another part lifted is another reading", () => {
  const inPlace = jobWithLifted("F1", "1");
  const lifted = { ...inPlace, log: jobWithLifted("Q1", "c").log };
  const session = new AssessmentSession();
  expect(shorted(inPlace, session)).toBeGreaterThan(0.9);
  const after = shorted(lifted, session);
  expect(after).toBe(shorted(lifted, new AssessmentSession()));
  expect(after).toBeLessThan(0.9);
});
