import { expect, test } from "vitest";
import { bootstrap, meanOf, shareInterval } from "./intervals.ts";

test("the interval of a share covers 8 of 10 as published for Wilson's (90 %: 0.54 to 0.93)", () => {
  const { value, low, high } = shareInterval(8, 10);
  expect(value).toBe(0.8);
  expect(low).toBeCloseTo(0.541, 2);
  expect(high).toBeCloseTo(0.931, 2);
});

test("the interval of a mean is as wide as the theory of large samples says, and the same for the same seed", () => {
  const values = Array.from({ length: 400 }, (_, i) => (i % 20) - 9.5);
  const { value, low, high } = bootstrap(400, (which) => meanOf(values, which));
  expect(value).toBeCloseTo(0, 12);
  const half = (1.645 * Math.sqrt(33.25)) / 20;
  expect(high).toBeGreaterThan(0.8 * half);
  expect(high).toBeLessThan(1.2 * half);
  expect(low).toBeCloseTo(-high, 0);
  expect(bootstrap(400, (which) => meanOf(values, which))).toEqual({ value, low, high });
});
