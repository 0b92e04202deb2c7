/** The ohms of leads and electrolyte stand in series with a capacitor: at 250 Hz a large one reads less, a small one does not notice (circuit theory: Y / (1 + R Y)). */
import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "greenhouse-fan-drive")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

function farads(red: string) {
  const reading = makePredictor(board, bench, DEFAULT_METER).predict(
    { mode: "farads", red, black: "NBUS" },
    [],
  );
  if (!reading.solved) throw new Error(reading.why);
  return reading;
}

it("a bus of a thousand microfarads may read a tenth low without a fault, and its band says so", () => {
  const { raw, centre, spread, alike } = farads("PBUS");
  expect(raw).toBeGreaterThan(600e-6);
  // by hand: 1 / (1 + (2 pi 250 Hz x 0.4 ohm x C)^2) is what another meter shows; the centre lies half-way
  const other = raw / (1 + (2 * Math.PI * 250 * 0.4 * raw) ** 2);
  expect(centre / ((raw + other) / 2)).toBeCloseTo(1, 2);
  expect(spread).toBeGreaterThan(alike);
});

it("a rail of some tens of microfarads is judged as sharply as before", () => {
  const { raw, centre } = farads("V5");
  expect(raw).toBeLessThan(150e-6);
  expect(Math.abs(centre / raw - 1)).toBeLessThan(0.02);
});
