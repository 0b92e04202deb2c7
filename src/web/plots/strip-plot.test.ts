/** Where on its strip a value is drawn. */
import { describe, expect, it } from "vitest";
import { stripPlace } from "./strip-plot.tsx";

describe("a value on its strip", () => {
  it("lies by its share of the scale, of volts evenly and of ohms by decades", () => {
    expect(stripPlace({ scale: "linear", from: 0, to: 2 }, 1)).toBeCloseTo(44, 9);
    expect(stripPlace({ scale: "log", from: 0.1, to: 1000 }, 10)).toBeCloseTo(44, 9);
    expect(stripPlace({ scale: "log", from: 0.1, to: 1000 }, 0)).toBe(0);
  });

  it("beyond the limit lies apart from every figure", () => {
    const scale = { scale: "linear", from: 0, to: 2 } as const;
    expect(stripPlace(scale, null)).toBe(stripPlace(scale, 2.5));
    expect(stripPlace(scale, null)).toBeGreaterThan(stripPlace(scale, 2));
  });
});
