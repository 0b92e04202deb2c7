/** How far readings stand among meters, rooms and boards that nobody knows. */
import { describe, expect, it } from "vitest";
import { asking, BARE, boardOf } from "./on-the-bench.fixture.ts";
import { OTHER_METERS } from "./other-meters.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

const board = boardOf(
  {
    R1: { kind: "resistor", pins: { 1: "A", 2: "Z" }, value: { ohms: 10_000, tolerance: 0.01 } },
    D1: { kind: "diode", pins: { a: "B", k: "Z" } },
    R2: { kind: "resistor", pins: { 1: "C", 2: "Z" }, value: { ohms: 4_700_000, tolerance: 0.01 } },
  },
  ["Z", "A"],
);
const ask = asking(board);

/** Deviation of the logarithm of a reading in ohms. */
function lnDeviation(red: string): number {
  const { raw, spread } = ask.whole("ohms", red, "Z");
  return spread / raw;
}

describe("ohms on a meter that nobody knows", () => {
  it("are a resistor's own to a few percent, the leads with them", () => {
    expect(lnDeviation("A")).toBeLessThan(0.03);
    const { raw, centre } = ask.whole("ohms", "A", "Z");
    expect(centre - raw).toBeGreaterThan(-2);
    expect(centre - raw).toBeLessThan(OTHER_METERS.leadOhms + 1e-6);
  });

  it("through a junction tell no more than the decade: the open voltage decides", () => {
    expect(lnDeviation("B")).toBeGreaterThan(0.7);
  });

  it("are blurred by a wet board's insulation, the more the higher they are", () => {
    const wet = makePredictor(board, BARE, DEFAULT_METER, OTHER_METERS.wetBoardOhms);
    const high = wet.predict({ mode: "ohms", red: "C", black: "Z" }, []);
    const low = wet.predict({ mode: "ohms", red: "A", black: "Z" }, []);
    if (!high.solved || !low.solved) throw new Error("no reading");
    expect(high.spread / high.raw).toBeGreaterThan(0.8);
    expect(high.centre).toBeLessThan(OTHER_METERS.wetBoardOhms);
    expect(low.spread / low.raw).toBeLessThan(0.04);
    expect(high.raw).toBeCloseTo(4_700_000, -4);
  });
});

describe("a diode's drop", () => {
  it("differs more from type to type, meter and room than between like parts of one board", () => {
    const { spread, alike, common } = ask.whole("diode", "B", "Z");
    expect(alike).toBeLessThan(0.7 * spread);
    expect(Math.abs(common)).toBeLessThan(spread);
  });
});
