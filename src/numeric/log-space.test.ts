import { expect, test } from "vitest";
import { logAdd, logFailed, logSumExp } from "./log-space.ts";
import { normalTail } from "./normal.ts";

test("sums of logs survive values no plain exponential could hold", () => {
  expect(logSumExp([-1000, -1000])).toBeCloseTo(-1000 + Math.log(2), 12);
  expect(logAdd(-2000, -1000)).toBeCloseTo(-1000, 12);
  expect(logSumExp([])).toBe(Number.NEGATIVE_INFINITY);
  expect(logFailed(1e-12)).toBeCloseTo(Math.log(1e-12), 9);
});

test("the normal tail agrees with the tabulated values (Abramowitz & Stegun table 26.1 and 26.2)", () => {
  expect(normalTail(0)).toBeCloseTo(0.5, 14);
  expect(normalTail(1)).toBeCloseTo(0.15865525393145707, 12);
  expect(normalTail(3)).toBeCloseTo(1.3498980316301e-3, 14);
  expect(normalTail(10) / 7.61985302416e-24).toBeCloseTo(1, 9);
  expect(normalTail(-2)).toBeCloseTo(0.9772498680518208, 12);
});
