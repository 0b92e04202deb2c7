import { describe, expect, it } from "vitest";
import { plain } from "../../messages/said.ts";
import { jobNumber, scannedId } from "../../wire/job-number.ts";
import { findJobs } from "./find-jobs.ts";
import { jobGroups, waitedWords } from "./job-groups.ts";
import type { JobLine } from "./job-list.ts";

const ID = "3f9a1c7e-0b1d-4c55-9b5e-6a7d8e9f0a1b";

function job(id: string, more: Partial<JobLine> = {}): JobLine {
  return {
    id,
    title: "A board",
    practice: null,
    boardName: "greenhouse fan drive",
    createdAt: "2026-03-01T08:00:00Z",
    changedAt: "2026-03-02T08:00:00Z",
    eventCount: 3,
    customer: null,
    unit: null,
    waiting: null,
    fitted: [],
    verdict: null,
    ...more,
  };
}

const JOBS = [
  job(ID, { customer: "Lower greenhouse", unit: "vent fan 3", fitted: ["Q1 IKW40", "F1"] }),
  job("b", { waiting: { for: "part", what: "IPM1", since: "2026-03-02T08:00:00Z" } }),
  job("c", { waiting: { for: "part", what: null, since: "2026-02-20T08:00:00Z" } }),
  job("d", { verdict: "not-economic", boardName: "pump" }),
  job("e", { waiting: { for: "answer", what: null, since: null } }),
  job("f", { waiting: { for: "drying", what: null, since: "2026-03-02T07:00:00Z" } }),
];
const found = (typed: string) => findJobs(JOBS, typed).map(({ id }) => id);

describe("looking for a job", () => {
  it("finds it by unit, customer, number on the label, part, what it waits for and verdict", () => {
    for (const typed of ["fan 3", "GREENHOUSE lower", "3f9a1c", jobNumber(ID), "q1", "ikw40"])
      expect(found(typed), typed).toEqual([ID]);
    expect(found("ipm1")).toEqual(["b"]);
    expect(found("waiting for a part")).toEqual(["b", "c"]);
    expect(found("not worth")).toEqual(["d"]);
    expect(found("")).toHaveLength(JOBS.length);
    expect(found("no such thing")).toEqual([]);
  });

  it("takes what a scanner types for a label's code as the job itself", () => {
    expect(scannedId(`http://bench.local:4517/#/job/${ID}`)).toBe(ID);
    expect(scannedId(`  ${ID.toUpperCase()}\n`)).toBe(ID);
    expect(scannedId("Q1")).toBeNull();
    expect(jobNumber("demo")).toBe("DEMO");
  });

  it("stands by what it waits for, longest first, closed ones last", () => {
    expect(jobGroups(JOBS).map(({ title, jobs }) => [plain(title), jobs.map(({ id }) => id)])).toEqual([
      ["On the bench", [ID]],
      ["Waiting for the customer's yes", ["e"]],
      ["Waiting for a part", ["c", "b"]],
      ["Drying", ["f"]],
      ["Closed", ["d"]],
    ]);
  });

  it("says since when in minutes, hours, then days", () => {
    const now = Date.parse("2026-03-05T08:00:00Z");
    expect(waitedWords("2026-03-05T07:35:00Z", now)).toBe("for 25 min");
    expect(waitedWords("2026-03-04T20:00:00Z", now)).toBe("for 12 h");
    expect(waitedWords("2026-03-02T08:00:00Z", now)).toBe("for 3 days");
    expect(waitedWords("2026-03-06T08:00:00Z", now)).toBe("for 1 min");
  });
});
