import { expect, test } from "vitest";
import type { BenchState } from "../bench/bench-state.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { faradsBetween } from "./capacitance-between.ts";

const board = (() => {
  const raw = smallDrive();
  raw.parts.LF = { kind: "inductor", pins: { "1": "PBUS", "2": "AFTER" } };
  raw.parts.C9 = {
    kind: "capacitor",
    pins: { plus: "AFTER", minus: "NBUS" },
    value: { farads: 10e-6, volts: 400 },
  };
  raw.parts.DB = { kind: "diode", pins: { a: "SW", k: "PBUS" } };
  raw.parts.C10 = {
    kind: "capacitor",
    pins: { plus: "SW", minus: "NBUS" },
    value: { farads: 1e-6, volts: 400 },
  };
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();
const BARE: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: false };
/** behind a coil 10 uF, behind a diode 1 uF, soldered to it 0.22 uF */
const BESIDE = 11.22e-6;

test("two 680 uF in series empty as 340 uF through a resistor across both, with what stands beside them", () => {
  expect(faradsBetween(board, BARE, ["PBUS", "NBUS"])).toBeCloseTo(340e-6 + BESIDE, 12);
});

test("across one of the pair: itself, and the other in series with what stands across both", () => {
  const through = 1 / (1 / 680e-6 + 1 / BESIDE);
  expect(faradsBetween(board, BARE, ["C1.plus", "C1.minus"])).toBeCloseTo(680e-6 + through, 12);
});

test("with a pin lifted the pair is no pair any more, and the loose capacitor is itself alone", () => {
  const bench = { ...BARE, lifted: new Set(["C1.plus"]) };
  expect(faradsBetween(board, bench, ["PBUS", "NBUS"])).toBeCloseTo(BESIDE, 12);
  expect(faradsBetween(board, bench, ["C1.plus", "C1.minus"])).toBeCloseTo(680e-6, 12);
});

test("in the hand, off the board, a capacitor is itself; on the board it is missing", () => {
  const bench = { ...BARE, off: new Set(["C2"]) };
  expect(faradsBetween(board, bench, ["C2.plus", "C2.minus"])).toBeCloseTo(680e-6, 12);
  expect(faradsBetween(board, bench, ["PBUS", "NBUS"])).toBeCloseTo(BESIDE, 12);
});

test("a diode straight across the two places joins nothing, and between two places of one net there is nothing", () => {
  expect(faradsBetween(board, BARE, ["SW", "PBUS"])).toBeCloseTo(1 / (1 / 1e-6 + 1 / 350.22e-6), 12);
  expect(faradsBetween(board, BARE, ["PBUS", "C1.plus"])).toBe(0);
});
