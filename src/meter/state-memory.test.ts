import { expect, test } from "vitest";
import { boostDrive } from "./boost-drive.fixture.ts";
import { BARE, faultsOf } from "./on-the-bench.fixture.ts";
import type { ColdCheck } from "./prediction.ts";
import { makePredictor, sharingPredictors } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";
import type { State } from "./settled-state.ts";
import { StateMemory } from "./state-memory.ts";

const board = boostDrive();
const CHECKS: readonly ColdCheck[] = [
  { mode: "diode", red: "P", black: "N" },
  { mode: "ohms", red: "V5", black: "N" },
  { mode: "diode", red: "L", black: "N_IN" },
];
const SETS = ["", "Q1.ce:short", "C1:short,M1.un:open", "U3.supply:short"];

test("readings do not depend on how much room there is to remember them", () => {
  const tight = new StateMemory(5_000);
  const [lean, roomy] = [
    sharingPredictors(undefined, tight)(board, BARE, DEFAULT_METER),
    makePredictor(board, BARE, DEFAULT_METER),
  ];
  for (let round = 0; round < 2; round++)
    for (const check of CHECKS)
      for (const text of SETS) {
        const [a, b] = [
          lean.predict(check, faultsOf(text, board)),
          roomy.predict(check, faultsOf(text, board)),
        ];
        expect(a.solved && b.solved).toBe(true);
        if (!a.solved || !b.solved) continue;
        expect(Math.abs(a.raw - b.raw)).toBeLessThan(1e-6 * Math.max(1, b.raw));
        expect(a.shown === b.shown || typeof a.shown === "number").toBe(true);
      }
});

const state = (): State => ({
  prediction: () => ({ solved: false, why: "" }),
  settled: null,
  alternating: null,
  heard: new Map(),
  beside: new Map(),
  askedAgain: false,
});

test("what was kept first makes place first, and the newest always stays", () => {
  const memory = new StateMemory(4_000);
  const home = new Map<string, State>();
  for (const key of ["a", "b", "c", "d"]) memory.keep(home, key, state());
  expect([...home.keys()]).toEqual(["c", "d"]);
});

test("what has been asked for again outlives what has not, and where all have, room is made all the same", () => {
  const memory = new StateMemory(4_000);
  const home = new Map<string, State>();
  const first = state();
  memory.keep(home, "a", first);
  first.askedAgain = true;
  for (const key of ["b", "c"]) memory.keep(home, key, state());
  expect([...home.keys()]).toEqual(["a", "c"]);
  for (const kept of home.values()) kept.askedAgain = true;
  memory.keep(home, "d", state());
  expect([...home.keys()]).toHaveLength(2);
  expect(home.has("d")).toBe(true);
});
