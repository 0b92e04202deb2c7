import { expect, it } from "vitest";
import { readingRatios } from "./beside-likelihood.ts";
import { ElementHearing } from "./element-hearing.ts";
import { COMMON_POINTS, COMMON_WEIGHTS, type Evidence } from "./evidence.ts";
import { scoreSet } from "./scored-set.ts";
import { makeUniverse } from "./universe.ts";

const FOREVER = 2 ** 31 - 1;
const LOG_WEIGHTS = Float64Array.from(COMMON_WEIGHTS, Math.log);

/** Four faults; the one reading there is does not hear the first, hardly minds the second, and rules the third out. */
const universe = makeUniverse({
  fault: [0, 1, 2, 3],
  site: [0, 1, 2, 3],
  rate: [0.05, 0.05, 0.05, 0.05],
  from: [-1, -1, -1, -1],
  until: [FOREVER, FOREVER, FOREVER, FOREVER],
  knockOns: [],
});
const COST = [0, 0.7, 40, 0.7];
const reading: Evidence = {
  logIndex: 0,
  best: 0,
  slip: -50,
  logLikelihood: (faults) =>
    new Float64Array(COMMON_POINTS.length).fill(-faults.reduce((sum, fault) => sum + (COST[fault] ?? 0), 0)),
  audible: () => Uint8Array.from(COST, (cost) => (cost > 0 ? 1 : 0)),
  hears: (_, fault) => (COST[fault] ?? 0) > 0,
  wouldShow: () => "",
};

it("a fault that a reading sees a little stands beside a set by what the reading says of it", () => {
  const nothing = scoreSet(universe, [reading], LOG_WEIGHTS, []);
  const hearing = ElementHearing.of(universe, [reading], [reading.audible([])]);
  const ratios = readingRatios(universe, LOG_WEIGHTS, nothing, hearing, (set) => set.includes(3));
  expect(ratios[0]).toBe(1);
  expect(ratios[1]).toBeCloseTo(Math.exp(-0.7), 9);
  expect(ratios[2]).toBe(0);
  // the fourth is an explanation of its own already: it counts there
  expect(ratios[3]).toBe(0);
});
