import { describe, expect, it } from "vitest";
import { makePredictor } from "../../src/meter/predictor.ts";
import { DEFAULT_METER } from "../../src/meter/settings.ts";
import { priorTable } from "../../src/priors/prior-table.ts";
import { BARE_BENCH } from "../agreement.ts";
import { bandOf, rowsFor } from "./engine-band.ts";
import { kindOf } from "./predict-board.ts";
import { wilson } from "./prediction-report.ts";
import { shippedBoards } from "./shipped-boards.ts";

const fan = shippedBoards()[0]?.board;
if (fan === undefined) throw new Error("the shipped boards are not in boards/");
const board = fan;
const priors = priorTable(board, "surge", "dead").faults;
const predictor = makePredictor(board, BARE_BENCH, DEFAULT_METER);

describe("the interval of a share", () => {
  it("holds the share, narrows with the count and stays within nothing and all", () => {
    const [low, high] = wilson(95, 100);
    expect(low).toBeLessThan(0.95);
    expect(high).toBeGreaterThan(0.95);
    const [near, far] = wilson(950, 1000);
    expect(far - near).toBeLessThan(high - low);
    expect(wilson(0, 20)[0]).toBe(0);
    expect(wilson(20, 20)[1]).toBe(1);
    expect(wilson(0, 0)).toEqual([0, 1]);
  });
});

describe("the engine's band for a true fault", () => {
  it("stands on the level of the prior table that lies nearest to the true ohms", () => {
    const level = (value: number) =>
      rowsFor(board, priors, [{ of: "part", part: "Q1", junction: "ce", mode: "leaky", value }])[0]?.fault
        .value;
    expect(level(80)).toBe(100);
    expect(level(1500)).toBe(null);
    expect(level(90_000)).toBe(100_000);
  });

  it("centres on the prediction and is at least as wide as the engine's own spread of it", () => {
    const check = { mode: "diode", red: "U", black: "PBUS" } as const;
    const band = bandOf(check, [], predictor);
    const prediction = predictor.predict(check, []);
    if (band === null || !prediction.solved) throw new Error("the healthy board has a prediction");
    expect(band.mean).toBeCloseTo(prediction.raw, 9);
    expect(band.deviation).toBeGreaterThan(0.9 * prediction.spread);
    expect(band.deviation).toBeLessThan(2 * prediction.spread);
    expect(band.chance).toBeLessThan(0.01);
  });

  it("widens where a leak of unknown ohms carries the reading", () => {
    const check = { mode: "ohms", red: "PBUS", black: "NBUS" } as const;
    const leak = rowsFor(board, priors, [
      { of: "part", part: "C5", junction: null, mode: "leaky", value: 900 },
    ]);
    const [healthy, leaky] = [bandOf(check, [], predictor), bandOf(check, leak, predictor)];
    expect(leaky?.byFaults ?? 0).toBeGreaterThan(0.5);
    expect(leaky?.deviation ?? 0).toBeGreaterThan(healthy?.deviation ?? 1);
  });

  it("knows a chance of OL and of a beep", () => {
    expect(bandOf({ mode: "diode", red: "PBUS", black: "U" }, [], predictor)?.chance).toBeGreaterThan(0.99);
    expect(bandOf({ mode: "continuity", red: "U", black: "V" }, [], predictor)?.chance).toBeGreaterThan(0.99);
    expect(bandOf({ mode: "continuity", red: "PBUS", black: "NBUS" }, [], predictor)?.chance).toBeLessThan(
      0.01,
    );
  });
});

describe("a reading", () => {
  it("counts under the kind of check that its number belongs to", () => {
    expect(kindOf({ mode: "diode", red: "A", black: "B" }, 0.45)).toBe("diode junction");
    expect(kindOf({ mode: "diode", red: "A", black: "B" }, 0.003)).toBe("diode low");
    expect(kindOf({ mode: "ohms", red: "A", black: "B" }, 0.4)).toBe("ohms low");
    expect(kindOf({ mode: "ohms", red: "A", black: "B" }, 240_000)).toBe("ohms high");
    expect(kindOf({ mode: "ohms", red: "A", black: "B" }, "OL")).toBe(null);
  });
});
