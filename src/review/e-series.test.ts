/** Values that are sold: the numbers of IEC 60063, and what the trade keeps to. */
import { describe, expect, it } from "vitest";
import { barePart } from "../board/bare-part.ts";
import type { PartKind, PartValue } from "../board/board.ts";
import { offSeries } from "./e-series.ts";

const judged = (kind: PartKind, value: PartValue) => offSeries({ ...barePart("X1", kind, new Map()), value });

describe("a value that is sold", () => {
  it.each<[PartKind, PartValue]>([
    ["resistor", { ohms: 47_000, tolerance: 0.05 }],
    ["resistor", { ohms: 49_900, tolerance: 0.01 }],
    ["resistor", { ohms: 50_000, tolerance: 0.01 }], // 49.9 kohm, as people write it
    ["resistor", { ohms: 97_600, tolerance: 0.01 }],
    ["resistor", { ohms: 0.0075 }],
    ["capacitor", { farads: 470e-6 }],
    ["capacitor", { farads: 2.2e-9 }],
    ["zener", { volts: 5.1 }],
    ["zener", { volts: 18 }],
    ["ntc", { ohms: 11_850 }],
    ["resistor", {}],
  ])("%s %o passes", (kind, value) => {
    expect(judged(kind, value)).toBeNull();
  });
});

describe("a value that nobody sells", () => {
  it.each<[PartKind, PartValue, number]>([
    ["resistor", { ohms: 50_000, tolerance: 0.05 }, 51_000],
    ["resistor", { ohms: 50_500, tolerance: 0.01 }, 51_000],
    ["resistor", { ohms: 49_900, tolerance: 0.05 }, 51_000],
    ["resistor", { ohms: 9_700 }, 10_000],
    ["capacitor", { farads: 500e-6 }, 470e-6],
    ["zener", { volts: 17 }, 18],
  ])("%s %o is named with the nearest: %d", (kind, value, nearest) => {
    expect(judged(kind, value)?.nearest).toBeCloseTo(nearest, 9);
  });
});
