/** Where a resistance stands beside a capacitance one meter shows it and another OL: the line is the meter's own, somewhere from 300 ohm to 3 kohm (from memory). */
import { describe, expect, it } from "vitest";
import { faradsHiddenBy } from "../meter/ranges.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { COMMON_POINTS } from "./evidence.ts";
import { readingLogLikelihood } from "./reading-model.ts";

const middle = COMMON_POINTS.indexOf(0);

function likelihood(reading: number | "OL", ohms: number): number {
  const raw = 47e-6;
  const seen = { raw, shown: ohms < 1000 ? ("OL" as const) : raw, centre: raw };
  const prediction = { solved: true as const, ...seen, spread: 4e-6, common: 0, alike: 4e-6, restsOn: [] };
  const hidden = { ...prediction, hiddenChance: faradsHiddenBy(ohms) };
  return Math.exp(readingLogLikelihood("farads", [reading], hidden, DEFAULT_METER)[middle]);
}

describe("OL on a rail in farads", () => {
  it("is no proof of a short where 1.6 kohm stand beside the capacitor anyway", () => {
    expect(likelihood("OL", 1600)).toBeGreaterThan(0.2);
    expect(likelihood("OL", 500) / likelihood("OL", 1600)).toBeLessThan(4);
  });

  it("is one where nothing stands beside it", () => {
    expect(likelihood("OL", 100e3)).toBeLessThan(0.01);
    expect(likelihood("OL", 100)).toBeGreaterThan(0.95);
  });

  it("a capacitance that shows clears a hard short, not a kilo-ohm", () => {
    expect(likelihood(47e-6, 100)).toBeLessThan(0.05 * likelihood(47e-6, 100e3));
    expect(likelihood(47e-6, 1000)).toBeGreaterThan(0.3 * likelihood(47e-6, 100e3));
  });

  it("the chance falls from one to none between the lines, and never leaves them", () => {
    expect([10, 300, 3000, 1e6].map(faradsHiddenBy)).toEqual([1, 1, 0, 0]);
    expect(faradsHiddenBy(948.7)).toBeCloseTo(0.5, 3);
  });
});
