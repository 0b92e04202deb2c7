import { expect, it } from "vitest";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFault } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { FULL_RUN_SECONDS, LOAD_ENDS, loadEndChances, loadEndShares } from "./load-outcomes.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "outdoor-unit-inverter")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const faults = (...names: readonly string[]): readonly Fault[] =>
  names.map((name) => {
    const fault = parseFault(name, board);
    if (!fault.ok) throw new Error(fault.problem);
    return fault.value;
  });
const runs = (seconds: number, ...names: readonly string[]): number =>
  loadEndChances(board, faults(...names), new Set(), seconds).get("runs") ?? 0;

it("every row of ends sums to one, and so do the chances of a run", () => {
  for (const row of Object.values(LOAD_ENDS))
    expect(Object.values(row).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
  const chances = [...loadEndChances(board, faults("C8:drift"), new Set(), 300).values()];
  expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
});

it("a good board runs through; a weak one rarely does, and a kilohm leak across the bus smokes", () => {
  expect(runs(FULL_RUN_SECONDS)).toBeGreaterThan(0.97);
  expect(runs(FULL_RUN_SECONDS, "R28:drift")).toBeLessThan(0.4);
  const leak = loadEndChances(board, faults("PBUS~NBUS:leaky@4700"), new Set(), FULL_RUN_SECONDS);
  expect(leak.get("smoke")).toBeGreaterThan(0.5);
  expect(leak.get("runs")).toBeLessThan(0.1);
});

it("a run that was broken off soon tells little", () => {
  expect(runs(60, "R28:drift")).toBeGreaterThan(0.85);
  expect(runs(600, "R28:drift")).toBeLessThan(runs(60, "R28:drift"));
});

it("what needs no warmth shows at once", () => {
  const shorted = loadEndShares(board, faults("C8:short"), new Set(), 1);
  expect(shorted.get("runs")).toBe(0);
});
