import { describe, expect, it } from "vitest";
import { GAPS, pacesOf } from "./pace.ts";

/** Quantiles of the normal distribution at 1/12, 3/12 ... 11/12 (Abramowitz & Stegun table 26.1). */
const NORMAL = [-1.383, -0.6745, -0.2104, 0.2104, 0.6745, 1.383];
const worked = (factor: number) => NORMAL.map((z) => Math.log(factor) + GAPS.workSpreadLn * z);
const paceOf = (logRatios: readonly number[]) => pacesOf([{ action: "lift", logRatios }]).get("lift");

describe("how long a bench takes", () => {
  it("is what it took, once there is enough of it", () => {
    const often = Array.from({ length: 40 }, () => worked(1.6)).flat();
    const pace = paceOf(often);
    expect(pace?.factor).toBeGreaterThan(1.45);
    expect(pace?.factor).toBeLessThan(1.65);
  });

  it("is the format's minutes where little was timed", () => {
    expect(paceOf([Math.log(3)])?.factor).toBeLessThan(1.25);
    expect(pacesOf([]).size).toBe(0);
  });

  it("is not moved by the kettle, the telephone, or a night", () => {
    const often = Array.from({ length: 20 }, () => worked(0.8)).flat();
    const pauses = [8, 20, 60, 200, 400, 900].map(Math.log);
    const [without, paused] = [paceOf(often), paceOf([...often, ...pauses, ...pauses])];
    expect(Math.abs((paused?.factor ?? 0) / (without?.factor ?? 1) - 1)).toBeLessThan(0.1);
    expect(paused?.leftOut ?? 0).toBeGreaterThan(11);
  });
});
