import { expect, it } from "vitest";
import { seeded } from "../samples.ts";
import { forecastFigures } from "./forecast-figures.ts";
import type { PowerUp } from "./power-up.ts";

const random = seeded(7);
const up = (anyBreaks: number, breaks: boolean, brought = true): PowerUp => ({
  board: "b",
  seed: 0,
  feed: "mains",
  readings: 0,
  anyBreaks,
  parts: [],
  broke: breaks ? ["Q1"] : [],
  brought: breaks && brought ? ["Q1"] : [],
});
const chances = Array.from({ length: 1000 }, (_, i) => (i % 100) / 100);

it("boards that break as often as foretold lie inside the range and by decile, and those that break twice as often do not", () => {
  const right = forecastFigures(chances.map((p) => up(p, random() < p)));
  expect(right.inside).toBe(true);
  expect(right.deciles).toHaveLength(10);
  const within = right.deciles.filter(
    ({ foretold, broke }) => foretold >= broke.low && foretold <= broke.high,
  );
  expect(within.length).toBeGreaterThanOrEqual(8);
  expect(right.brier).toBeLessThan(right.brierOfShare);
  const twice = forecastFigures(chances.map((p) => up(p / 2, random() < p)));
  expect(twice.inside).toBe(false);
  expect(twice.broke).toBeGreaterThan(twice.range[1]);
});

it("few power-ups have as many bins as they fill", () => {
  const { deciles, foretold, broke } = forecastFigures([up(0.1, false), up(0.9, true), up(0.2, false)]);
  expect(deciles.reduce((sum, { count }) => sum + count, 0)).toBe(3);
  expect(foretold).toBeCloseTo(1.2, 9);
  expect(broke).toBe(1);
});

it("what a fault that was there broke is counted apart from what died of itself", () => {
  const { broke, brought } = forecastFigures([up(0.1, true), up(0.1, true, false), up(0.1, false)]);
  expect([broke, brought]).toEqual([2, 1]);
});
