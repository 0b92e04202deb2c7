import { expect, test } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { BARE, faultsOf } from "./on-the-bench.fixture.ts";
import type { ColdCheck } from "./prediction.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "induction-hob")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

/** Ohms that ngspice gives for the deck of the range that fits first (ngspice 39, one run each). */
test.each([
  ["KEY_CLK", "V18", "C16:short", 59_016],
  ["KEY_DAT", "CT_P", "U6.supply:leaky", 56_030],
] as const)(
  "ohms %s to %s with %s are read in the first range that fits, not in the one of the good board",
  (red, black, fault, ohms) => {
    const check: ColdCheck = { mode: "ohms", red, black };
    const predictor = makePredictor(board, BARE, DEFAULT_METER);
    expect(predictor.predict(check, []).solved).toBe(true);
    const read = predictor.predict(check, faultsOf(fault, board));
    expect(read.solved && Math.abs(read.raw / ohms - 1)).toBeLessThan(1e-3);
  },
);
