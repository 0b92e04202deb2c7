/** Capacitors of one value came from one reel and have aged together: a bank of three is as uncertain as one of them (common practice, no source). */
import { expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "outdoor-unit-inverter")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

function share(red: string, lifted: readonly string[]): number {
  const bench = { lifted: new Set(lifted), off: new Set<string>(), clips: [], powered: false };
  const reading = makePredictor(board, bench, DEFAULT_METER).predict(
    { mode: "farads", red, black: "NBUS" },
    [],
  );
  if (!reading.solved) throw new Error(reading.why);
  return reading.alike / reading.raw;
}

it("three like capacitors across the bus are off by nearly the share that one of them is, not by its third", () => {
  const one = share("C8.plus", ["C8.plus"]);
  const bank = share("PBUS", []);
  expect(one).toBeGreaterThan(0.05);
  expect(bank / one).toBeGreaterThan(0.85);
  expect(bank / one).toBeLessThanOrEqual(1);
});
