import { describe, expect, it, test } from "vitest";
import type { ColdMode } from "../bench/event.ts";
import type { Fault } from "../board/fault.ts";
import { faultName } from "../board/fault.ts";
import { faultSites } from "../board/fault-sites.ts";
import { parseBoard } from "../board/parse-board.ts";
import { coldCircuit } from "../cold/cold-circuit.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { boostDrive } from "./boost-drive.fixture.ts";
import { BARE, faultsOf } from "./on-the-bench.fixture.ts";
import { makePredictor } from "./predictor.ts";
import { Probing } from "./probing.ts";
import { DEFAULT_METER } from "./settings.ts";

const board = boostDrive();
const every: Fault[] = [...board.parts.values()].flatMap((part) =>
  faultSites(part).flatMap((site) =>
    site.modes.map(
      (mode): Fault => ({ of: "part", part: part.ref, junction: site.junction, mode, value: null }),
    ),
  ),
);
const CHECKS: readonly (readonly [ColdMode, string, string])[] = [
  ["diode", "P", "N"],
  ["diode", "N", "P"],
  ["diode", "V5", "N"],
  ["diode", "U", "P"],
  ["diode", "L", "N_IN"],
  ["ohms", "G1", "N"],
  ["continuity", "V15", "N"],
];
const SETS = ["", "Q1.ce:short", "C1:short,M1.un:open", "U3.supply:short"];

test("what all readings share has one sign: a meter that reads high reads high everywhere", () => {
  const predictor = makePredictor(board, BARE, DEFAULT_METER);
  for (const [mode, red, black] of CHECKS)
    for (const text of SETS) {
      const read = predictor.predict({ mode, red, black }, faultsOf(text, board));
      expect(read.solved && read.common).toBeGreaterThan(0);
    }
});

test("a shorted shunt reference is heard on the rail: the opto's LED takes the meter's current", () => {
  const parsed = parseBoard(SHIPPED.find(({ id }) => id === "small-frequency-drive-3ph")?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  const predictor = makePredictor(parsed.value, BARE, DEFAULT_METER);
  const check = { mode: "diode", red: "V15", black: "NBUS" } as const;
  const short = faultsOf("U3.ka:short", parsed.value);
  const [whole, shorted] = [predictor.predict(check, []), predictor.predict(check, short)];
  expect(whole.solved && shorted.solved && whole.raw - shorted.raw).toBeGreaterThan(0.1);
  expect(predictor.audible(check, [], short)).toEqual([true]);
});

describe("a fault called silent", () => {
  it("moves the reading by no more than a tenth of its spread, or leaves an OL far above the range", () => {
    const predictor = makePredictor(board, BARE, DEFAULT_METER);
    const probing = new Probing(coldCircuit(board, BARE), DEFAULT_METER);
    let silent = 0;
    const misses: string[] = [];
    for (const [mode, red, black] of CHECKS)
      for (const text of SETS) {
        const check = { mode, red, black };
        const set = faultsOf(text, board);
        const before = predictor.predict(check, set);
        if (!before.solved) throw new Error(before.why);
        const heard = predictor.audible(check, set, every);
        for (const [i, fault] of every.entries()) {
          if (
            heard[i] ||
            set.some((one) => one.of === "part" && fault.of === "part" && one.part === fault.part)
          )
            continue;
          silent++;
          const after = probing.settle(check, probing.circuit.withFaults([...set, fault]));
          if (!after.solved) throw new Error(`${faultName(fault)} did not solve`);
          const stillOpen = before.shown === "OL" && after.raw > after.range.limit;
          if (!stillOpen && Math.abs(after.raw - before.raw) > 0.1 * before.spread)
            misses.push(`${mode} ${red} ${black} with ${text}: ${faultName(fault)}`);
        }
      }
    expect(misses).toEqual([]);
    expect(silent).toBeGreaterThan(0.6 * CHECKS.length * SETS.length * every.length);
  });

  it("does not move a capacitance either", () => {
    const predictor = makePredictor(board, BARE, DEFAULT_METER);
    for (const [red, black] of [
      ["P", "N"],
      ["V5", "N"],
      ["VBU", "U"],
    ]) {
      const check = { mode: "farads", red, black } as const;
      const before = predictor.predict(check, []);
      const heard = predictor.audible(check, [], every);
      const moved = every.filter((fault, i) => {
        const after = predictor.predict(check, [fault]);
        if (heard[i] || !after.solved || !before.solved) return false;
        return (
          Math.abs(after.raw - before.raw) > 0.1 * before.spread ||
          (after.shown === "OL") !== (before.shown === "OL")
        );
      });
      expect(moved.map(faultName)).toEqual([]);
      expect(heard.filter((one) => one).length).toBeGreaterThan(0);
      expect(heard.filter((one) => !one).length).toBeGreaterThan(0.5 * every.length);
    }
  });

  it("changes no prediction when it is added to a set, whatever the order of the set", () => {
    const predictor = makePredictor(board, BARE, DEFAULT_METER);
    const probing = new Probing(coldCircuit(board, BARE), DEFAULT_METER);
    const check = { mode: "diode", red: "N", black: "P" } as const;
    const loud = faultsOf("U1.ds:short,D1:open,R16:open,C20:short", board);
    const there = predictor.predict(check, loud);
    const back = predictor.predict(check, [...loud].reverse());
    const whole = probing.settle(check, probing.circuit.withFaults(loud));
    expect(there).toEqual(back);
    expect(there.solved && whole.solved && Math.abs(there.raw - whole.raw)).toBeLessThan(1e-6);
  });
});
