import { expect, it } from "vitest";
import { silentBeside } from "./silent-beside.ts";
import { makeUniverse } from "./universe.ts";

const PARTS = 60;
const each = <T>(value: (i: number) => T): T[] => Array.from({ length: PARTS }, (_, i) => value(i));

/** Sixty parts, one fault each, none of which knocks another on. */
const universe = makeUniverse({
  fault: each((i) => i),
  site: each((i) => i),
  rate: each((i) => 0.001 * (1 + (i % 5))),
  from: each(() => -1),
  until: each(() => 1000),
  knockOns: [],
});

it("sixty parts that could each have kept the board quiet are one another's alternatives: two are hardly ever there", () => {
  // three quiet power-ups are so much likelier with any of them, and no likelier with two
  const ratio = 90_000;
  const accounts = Float64Array.from({ length: PARTS }, () => 1);
  const beside = silentBeside(universe, [], new Float64Array(PARTS).fill(ratio), accounts, 999);
  const odds = each((i) => Math.expm1(0.001 * (1 + (i % 5))));
  const someSet = odds.reduce((product, one) => product * (1 + one), 1);
  const all = 1 + ratio * (someSet - 1);
  // a pair counts for each of its members: a tenth too much at these rates, where a plain product says 10 to the 138
  expect(Math.exp(beside.logWeight) / all).toBeGreaterThan(0.99);
  expect(Math.exp(beside.logWeight) / all).toBeLessThan(1.12);
  const exact = each((i) => (ratio * (odds[i] / (1 + odds[i])) * someSet) / all);
  exact.forEach((chance, i) => {
    expect(Math.abs(beside.each[i] - chance)).toBeLessThan(0.01);
  });
  expect(beside.noneNow).toBeLessThan(0.001);
});
