import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { deriveRoles } from "../board/roles.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { CAUSES } from "./cause.ts";
import { ROOT_FAULTS } from "./kind-rates.ts";
import { KNOCK_ON_RULES } from "./knock-on-rules.ts";
import { priorTable } from "./prior-table.ts";
import { type StageGroup, stageGroups } from "./stage-groups.ts";

const boards = SHIPPED.map(({ id, board }): [string, Board] => {
  const parsed = parseBoard(board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return [id, parsed.value];
});

/** All boards feed their small supply through a fuse resistor; this rule is shown on a sample of its own (knock-ons.test.ts). */
const NOT_ON_SHIPPED: readonly string[] = ["supply-switch-opens-line-fuse"];

describe.each(boards)("the priors of %s", (_, board) => {
  it("stay under seven rows a part and expect 1.3 root faults for every cause", () => {
    for (const cause of CAUSES) {
      const { faults } = priorTable(board, cause, "dead");
      expect(faults.length / board.parts.size).toBeLessThan(7);
      expect(faults.reduce((sum, row) => sum + row.rate, 0)).toBeCloseTo(ROOT_FAULTS, 9);
    }
  });

  it("name only faults of the file format, each once", () => {
    const { faults } = priorTable(board, "water", "dead");
    const names = faults.map((row) => faultName(row.fault));
    expect(new Set(names).size).toBe(names.length);
    for (const row of faults)
      expect(parseFault(faultName(row.fault), board)).toEqual({ ok: true, value: row.fault });
  });

  const groups = stageGroups(board);
  const rate = (...wanted: readonly StageGroup[]): number =>
    priorTable(board, "unknown", "other")
      .faults.filter((row) => wanted.includes(groups.get(row.part) ?? "other"))
      .reduce((sum, row) => sum + row.rate, 0);
  const drives = deriveRoles(board).phases.length > 0;

  if (drives)
    it("expect first faults in the order of drive service: inverter, bus, driver or rectifier, the rest", () => {
      expect(rate("inverter")).toBeGreaterThan(rate("bus"));
      expect(rate("bus")).toBeGreaterThan(rate("drive"));
      expect(rate("bus")).toBeGreaterThan(rate("rectifier"));
      expect(rate("rectifier")).toBeGreaterThan(rate("sensor"));
    });

  if (!drives)
    it("expect the first fault of a single-switch board at its switch and tank, then at the bridge and the small supply", () => {
      for (const rest of ["supply", "rectifier", "bus", "drive"] as const) {
        expect(rate("inverter")).toBeGreaterThan(rate(rest));
        if (rest !== "drive" && rest !== "bus") expect(rate(rest)).toBeGreaterThan(rate("sensor"));
      }
    });
});

describe("knock-on rules", () => {
  it("all fire on one shipped board or another", () => {
    const fired = new Set(
      boards.flatMap(([, board]) => priorTable(board, "water", "dead").knockOns.map((one) => one.rule)),
    );
    const silent = KNOCK_ON_RULES.map((rule) => rule.id).filter((id) => !fired.has(id));
    expect(silent).toEqual(NOT_ON_SHIPPED);
  });
});
