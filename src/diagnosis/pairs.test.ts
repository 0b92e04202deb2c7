import { expect, test } from "vitest";
import { pairsBeside } from "./pairs.ts";
import { makeUniverse } from "./universe.ts";

/** A clamp (0) that kills both junctions of a bridge leg (1, 2) and, seldom, a resistor (3); a switch (4) and its twin (5). */
const universe = makeUniverse({
  fault: [0, 1, 2, 3, 4, 5],
  site: [0, 1, 2, 3, 4, 5],
  rate: [0.05, 0.02, 0.02, 0.001, 0.01, 0.01],
  from: [-1, -1, -1, -1, -1, -1],
  until: [9, 9, 9, 9, 9, 9],
  knockOns: [
    { from: 0, to: 1, rate: 0.12 },
    { from: 0, to: 2, rate: 0.12 },
    { from: 0, to: 3, rate: 0.12 },
    { from: 4, to: 5, rate: 0.9 },
    { from: 5, to: 4, rate: 0.9 },
    { from: 4, to: 1, rate: 0.04 },
  ],
});

test("both junctions of a bridge leg are tried together, though neither kills the other", () => {
  expect(pairsBeside(universe, [], 0)).toContainEqual([1, 2]);
});

test("a leg's two switches are one pair, whichever went first; weak knock-ons and rare twins are left alone", () => {
  expect(pairsBeside(universe, [], 0)).toEqual([
    [0, 1],
    [0, 2],
    [0, 3],
    [1, 2],
    [4, 5],
  ]);
});

test("what is in the set already pairs with nothing, but what it caused still comes in twos", () => {
  expect(pairsBeside(universe, [0, 4], 0)).toEqual([[1, 2]]);
});
