import { describe, expect, it } from "vitest";
import type { Fault } from "../board/fault.ts";
import { parseFault } from "../board/parse-fault.ts";
import { CAUSES } from "./cause.ts";
import { fixtureBoard } from "./drives.fixture.ts";
import { FINDING_ROWS, findingChances, findingLikelihood, HEALTHY_FINDINGS } from "./look-findings.ts";
import { priorTable } from "./prior-table.ts";

const board = fixtureBoard("module");
const partOf = (ref: string) => {
  const part = board.parts.get(ref);
  if (part === undefined) throw new Error(`no part ${ref}`);
  return part;
};
const fault = (text: string): Fault => {
  const parsed = parseFault(text, board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
};

describe("what the eye finds", () => {
  it("chances sum to one for every fault and cause, and none is nought", () => {
    for (const cause of CAUSES)
      for (const row of priorTable(board, cause, "dead").faults) {
        const ref = row.fault.of === "part" ? row.fault.part : "M1";
        const chances = [...findingChances(partOf(ref), [row.fault], cause).values()];
        expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
        expect(Math.min(...chances)).toBeGreaterThan(0);
      }
  });

  it("a split varistor speaks for its short, a clean one mildly against", () => {
    const ratio = (finding: "cracked" | "clean"): number =>
      findingLikelihood(finding, partOf("RV1"), [fault("RV1:short")], "surge") /
      findingLikelihood(finding, partOf("RV1"), [], "surge");
    expect(ratio("cracked")).toBeGreaterThan(20);
    expect(ratio("clean")).toBeLessThan(0.6);
    expect(ratio("clean")).toBeGreaterThan(0.1);
  });

  it("a bulged electrolytic speaks for lost capacity", () => {
    const bulged = (text: string): number =>
      findingLikelihood("bulged", partOf("C12"), text === "" ? [] : [fault(text)], "age");
    expect(bulged("C12:drift")).toBeGreaterThan(10 * bulged(""));
  });

  it("a whole part looks corroded more often after water", () => {
    const corroded = (cause: "water" | "surge"): number =>
      findingLikelihood("corroded", partOf("R21"), [], cause);
    expect(corroded("water")).toBeGreaterThan(10 * corroded("surge"));
  });

  it("names where every row comes from", () => {
    expect(new Set(FINDING_ROWS.map((row) => row.id)).size).toBe(FINDING_ROWS.length);
    for (const row of FINDING_ROWS) expect(row.words.length).toBeGreaterThan(4);
    for (const cause of CAUSES) expect(Object.keys(HEALTHY_FINDINGS[cause])).not.toContain("clean");
  });
});
