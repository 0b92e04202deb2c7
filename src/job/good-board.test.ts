import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { pooledReferences } from "../learning/references.ts";
import { LEAST_REFERENCE_SPREAD, withReferences } from "../meter/good-readings.ts";
import { sharingPredictors } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { AssessmentSession, beliefOf } from "./assess.ts";
import { cannotBe, goodReadings, referenceWords } from "./good-board.ts";
import { parseJob } from "./parse-job.ts";

/** A 15 V rail whose load resistor nobody has seen: drawn as 22 k, in truth 1.5 k. */
const RAIL = {
  format: "faultwright-board/1",
  name: "rail",
  family: "rail",
  supply: { kind: "dc", volts: 24, at: ["VIN", "GND"] },
  zero: "GND",
  parts: {
    F1: { kind: "fuse", pins: { "1": "VIN", "2": "V15" }, value: { amps: 1 }, stage: "input" },
    R1: {
      kind: "resistor",
      pins: { "1": "V15", "2": "GND" },
      value: { ohms: 22_000 },
      assumed: true,
      stage: "standby",
    },
    C1: {
      kind: "capacitor",
      pins: { plus: "V15", minus: "GND" },
      value: { farads: 47e-6, volts: 25, type: "electrolytic" },
      stage: "standby",
    },
  },
  rails: { V15: { net: "V15", volts: 15 } },
};
const READ = { do: "measure", mode: "ohms", red: "V15", black: "GND" } as const;

function jobOn(board: object, readings: readonly number[]) {
  const log = readings.map((reading) => ({ ...READ, reading }));
  const job = parseJob({ format: "faultwright-job/1", board, cause: "unknown", symptom: "dead", log }, null);
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

/** That it shorts or leaks: an open or dried one shows in no ohms. */
function suspicionOfCapacitor(board: object, reading: number): number {
  const believed = beliefOf(jobOn(board, [reading]), new AssessmentSession());
  if (!believed.ok) throw new Error(believed.problem);
  const modes = believed.value.belief.suspects.find(({ part }) => part === "C1")?.modes ?? [];
  return modes
    .filter(({ fault }) => fault === "C1:short" || fault === "C1:leaky")
    .reduce((sum, { probability }) => sum + probability, 0);
}

/** As `board good-readings` writes it, from good boards that read so. */
function taught(...readings: readonly number[]) {
  const read = goodReadings(jobOn(RAIL, readings));
  if (!read.ok) throw new Error(read.problem);
  return { ...RAIL, references: pooledReferences([], read.value) };
}

const GOOD = [1510, 1480, 1495];

describe("readings of a good board", () => {
  it("clear the capacitor beside an assumed resistor that is another than drawn", () => {
    const [before, after] = [suspicionOfCapacitor(RAIL, 1500), suspicionOfCapacitor(taught(...GOOD), 1500)];
    expect(before).toBeGreaterThan(0.5);
    expect(after).toBeLessThan(0.05);
  });

  it("accuse it where it leaks: a good one read six times as much", () => {
    expect(suspicionOfCapacitor(taught(...GOOD), 250)).toBeGreaterThan(0.8);
  });

  it("are kept as mean, spread and count, in one step or in several", () => {
    const [reference] = taught(...GOOD).references;
    const logs = GOOD.map(Math.log);
    const mean = (logs[0] + logs[1] + logs[2]) / 3;
    const deviation = Math.sqrt(logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 2);
    expect(reference).toMatchObject({ mode: "ohms", red: "V15", black: "GND", count: 3 });
    expect(reference?.reading).toBeCloseTo(Math.exp(mean), 1);
    expect(reference?.spread).toBeCloseTo(deviation, 4);
    const first = pooledReferences([], [{ mode: "ohms", red: "V15", black: "GND", reading: 1510 }]);
    const rest = GOOD.slice(1).map((reading) => ({
      mode: "ohms" as const,
      red: "V15",
      black: "GND",
      reading,
    }));
    expect(pooledReferences(first, rest)[0]?.reading).toBeCloseTo(Math.exp(mean), 0);
    expect(
      referenceWords({ mode: "ohms", red: "a", black: "b", reading: 1495, spread: 0.041, count: 3 }),
    ).toBe("what a good one read here: 1.50 kohm, 3 readings, +- 4 %");
  });

  it("move a prediction as a normal mean with n readings moves a normal one", () => {
    const board = parseBoard(taught(1500));
    const bare = parseBoard(RAIL);
    if (!board.ok || !bare.ok) throw new Error("no board");
    const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
    const plain = sharingPredictors(undefined);
    const check = { mode: "ohms", red: "V15", black: "GND" } as const;
    const before = plain(bare.value, bench, DEFAULT_METER).predict(check, []);
    const after = withReferences(plain)(board.value, bench, DEFAULT_METER).predict(check, []);
    if (!before.solved || !after.solved) throw new Error("not solved");
    const [model, single] = [before.spread / before.raw, LEAST_REFERENCE_SPREAD.ohms];
    // precisions add; the mean is weighed by them
    const weight = 1 / single ** 2 / (1 / single ** 2 + 1 / model ** 2);
    const mean = (1 - weight) * Math.log(before.centre) + weight * Math.log(1500);
    expect(Math.log(after.centre)).toBeCloseTo(mean, 2);
    const left = Math.sqrt(1 / (1 / single ** 2 + 1 / model ** 2) + single ** 2);
    expect(after.spread / after.raw).toBeCloseTo(left, 2);
  });

  it("name the part whose assumed value cannot give them", () => {
    const board = parseBoard(taught(...GOOD));
    if (!board.ok) throw new Error(board.problem);
    const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
    const predictor = sharingPredictors(undefined)(board.value, bench, DEFAULT_METER);
    expect(cannotBe(board.value, predictor).map(({ parts }) => parts)).toEqual([["R1"]]);
  });

  it("are refused by name where the board has no such place", () => {
    const references = [{ mode: "ohms", red: "V16", black: "GND", reading: 1500, count: 1 }];
    const board = parseBoard({ ...RAIL, references });
    expect(board.ok ? "" : board.problem).toBe('references[0].red: there is no place "V16"');
  });
});
