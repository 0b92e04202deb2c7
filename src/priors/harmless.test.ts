import { expect, it } from "vitest";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { viewOf } from "./circuit-view.ts";
import { isHarmless } from "./harmless.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

const leak = (part: string, junction: string | null, value: number): boolean => {
  const fault: Fault = { of: "part", part, junction, mode: "leaky", value };
  return isHarmless(board, { fault, reportAs: "", part, site: part, rate: 0, spreadLn: 0 });
};

it("a varistor across the mains that leaks tens or hundreds of ohms has to go, one of megohms may stay", () => {
  expect(leak("RV1", null, 33)).toBe(false);
  expect(leak("RV1", null, 1000)).toBe(false);
  expect(leak("RV1", null, 1e6)).toBe(true);
});

it("a motor switch that leaks kilohms at the volts of the bus cooks, one of a hundred kilohms only warms", () => {
  expect(leak("Q1", "ce", 4300)).toBe(false);
  expect(leak("Q2", "ce", 4300)).toBe(false);
  expect(leak("Q2", "ce", 100_000)).toBe(true);
});

it("a gate clamp or a filter capacitor that is open is let be; a bootstrap capacitor, a bridge leg and a fuse are not", () => {
  const open = (part: string, junction: string | null = null): boolean => {
    const fault: Fault = { of: "part", part, junction, mode: "open", value: null };
    return isHarmless(board, { fault, reportAs: "", part, site: part, rate: 0, spreadLn: 0 });
  };
  expect(open("ZD1")).toBe(true);
  expect(open("C5")).toBe(false);
  expect(open("BR1", "ac1plus")).toBe(false);
  expect(open("F1")).toBe(false);
});

it("what empties a store of charge is cured, though the board runs without it: the next hand on the plug would feel it", () => {
  const gone = (part: string): boolean => {
    const fault: Fault = { of: "part", part, junction: null, mode: "open", value: null };
    return isHarmless(board, { fault, reportAs: "", part, site: part, rate: 0, spreadLn: 0 });
  };
  const bleeders = viewOf(board).roles.bleeders;
  expect(bleeders.length).toBeGreaterThan(0);
  for (const ref of ["R1", "R2", ...bleeders]) expect(gone(ref), ref).toBe(false);
});
