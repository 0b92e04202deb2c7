import { expect, test } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import type { Cause } from "../priors/cause.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { AssessmentSession } from "./assess.ts";
import { parseJob } from "./parse-job.ts";

test("of a board that was wet, ohms between bus and ground tell less than of one that burnt", () => {
  const board = parseBoard(SHIPPED.find(({ id }) => id === "small-frequency-drive")?.board);
  if (!board.ok) throw new Error(board.problem);
  const spreadAfter = (cause: Cause): number => {
    const content = { format: "faultwright-job/1", board: "a drive", cause, symptom: "dead", log: [] };
    const job = parseJob(content, board.value);
    if (!job.ok) throw new Error(job.problem);
    const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
    const predictor = new AssessmentSession().predictor(job.value, bench);
    const reading = predictor.predict({ mode: "ohms", red: "PBUS", black: "NBUS" }, []);
    if (!reading.solved) throw new Error(reading.why);
    return reading.spread / reading.raw;
  };
  expect(spreadAfter("water")).toBeGreaterThan(1.5 * spreadAfter("surge"));
});
