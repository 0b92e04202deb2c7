/** A dried-out electrolytic is heard in farads, whatever is left of it. */
import { expect, it } from "vitest";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { provenEmpty } from "../planning/scene.fixture.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

const BUS = 220e-6;
const session = new AssessmentSession();

function afterReading(farads: number): { readonly suspected: number; readonly unexplained: number } {
  const raw = smallDrive();
  raw.parts.C2 = {
    kind: "capacitor",
    pins: { plus: "PBUS", minus: "NBUS" },
    value: { farads: BUS, volts: 450, type: "electrolytic" },
    stage: "bus",
  };
  const read = { do: "measure", mode: "farads", red: "PBUS", black: "NBUS", reading: farads };
  const header = {
    format: "faultwright-job/1",
    board: raw,
    cause: "age",
    symptom: "starts-then-stops",
    terms: {},
  };
  const parsed = parseJob({ ...header, log: [] }, null);
  if (!parsed.ok) throw new Error(parsed.problem);
  const job = parseJob({ ...header, log: [...provenEmpty(parsed.value.board), read, read] }, null);
  if (!job.ok) throw new Error(job.problem);
  const believed = beliefOf(job.value, session);
  if (!believed.ok) throw new Error(believed.problem);
  const { belief } = believed.value;
  return {
    suspected: belief.suspects.find(({ part }) => part === "C2")?.probability ?? 0,
    unexplained: belief.unexplained.length,
  };
}

it.each([0.6, 0.5, 0.3, 0.2, 0.12])(
  "a bus capacitor that keeps %d of its farads is dried out, and nothing is left unexplained",
  (kept) => {
    const { suspected, unexplained } = afterReading(kept * BUS);
    expect(suspected).toBeGreaterThan(0.9);
    expect(unexplained).toBe(0);
  },
);

it("one within its tolerance is not", () => {
  expect(afterReading(0.93 * BUS).suspected).toBeLessThan(0.1);
});
