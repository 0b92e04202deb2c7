import { describe, expect, it } from "vitest";
import { alongRailLog, lowestAtShort } from "./along-rail.ts";

/** A walk along a shorted rail, told in a repair forum (exxosforum.co.uk, post 89019): 84, 36, then 11 milliohm at the short. */
const THREAD = [
  { part: "C1", ohms: 0.084 },
  { part: "C2", ohms: 0.036 },
  { part: "C3", ohms: 0.011 },
];

function shareAt(readings: typeof THREAD, places: readonly string[]): readonly number[] {
  const logs = places.map((place) => alongRailLog(readings, place));
  const most = Math.max(...logs);
  const total = logs.reduce((sum, log) => sum + Math.exp(log - most), 0);
  return logs.map((log) => Math.exp(log - most) / total);
}

describe("milliohms along a rail", () => {
  it("84, 36, 11: the short is where the lowest was read", () => {
    const [first, second, third] = shareAt(THREAD, ["C1", "C2", "C3"]);
    expect(third).toBeGreaterThan(0.95);
    expect(first + second).toBeLessThan(0.05);
  });

  it("with the lowest part not read yet, none of those read is sure: its own track stands between", () => {
    const readings = THREAD.slice(0, 2);
    const [, second, elsewhere] = shareAt(readings, ["C1", "C2", "C3"]);
    expect(second).toBeLessThan(0.95);
    expect(elsewhere).toBeGreaterThan(0.05);
  });

  it("does not depend on the order in which they were taken", () => {
    expect(alongRailLog(THREAD.toReversed(), "C3")).toBeCloseTo(alongRailLog(THREAD, "C3"), 12);
  });

  it("the same at every part, a short of many ohms hides its place: tracks are lost in the last digit", () => {
    expect(lowestAtShort(0.02, 8)).toBeGreaterThan(0.97);
    expect(lowestAtShort(1, 8)).toBeGreaterThan(0.9);
    expect(lowestAtShort(30, 8)).toBeLessThan(0.4);
    expect(lowestAtShort(1e6, 8)).toBeCloseTo(1 / 2 ** 7, 2);
  });

  it("one reading far too low does not clear the part at which the others are lowest for good", () => {
    const astray = [...THREAD, { part: "C4", ohms: 0.001 }];
    const [first, , third] = shareAt(astray, ["C1", "C2", "C3", "C4"]);
    expect(third).toBeGreaterThan(0.01);
    expect(first).toBeLessThan(0.5);
  });
});
