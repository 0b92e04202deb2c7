import { expect, it } from "vitest";
import { COMMON_POINTS, COMMON_WEIGHTS, type Evidence } from "./evidence.ts";
import { scoreSet } from "./scored-set.ts";
import { slipMenders } from "./slip-menders.ts";
import { makeUniverse } from "./universe.ts";

const FOREVER = 2 ** 31 - 1;
const LOG_WEIGHTS = Float64Array.from(COMMON_WEIGHTS, Math.log);
const [LOUD, LIKE, BESIDE] = [0, 1, 2];
const universe = makeUniverse({
  fault: [LOUD, LIKE, BESIDE],
  site: [0, 1, 2],
  rate: [0.05, 0.05, 0.05],
  from: [-1, -1, -1],
  until: [FOREVER, FOREVER, FOREVER],
  knockOns: [],
});

function piece(
  logIndex: number,
  log: (has: (fault: number) => boolean) => number,
  heard: (has: (fault: number) => boolean) => readonly number[],
): Evidence {
  const asked = (faults: readonly number[]) => (fault: number) => faults.includes(fault);
  return {
    logIndex,
    best: 0,
    slip: -8,
    logLikelihood: (faults) => new Float64Array(COMMON_POINTS.length).fill(log(asked(faults))),
    audible: (faults) => {
      const mask = new Uint8Array(3);
      for (const fault of heard(asked(faults))) mask[fault] = 1;
      return mask;
    },
    hears: (faults, fault) => heard(asked(faults)).includes(fault),
    wouldShow: () => "",
  };
}

/** Two switches read alike; the loud one says it a little better, and hides the open shunt that the other lets show. */
const evidence = [
  piece(
    0,
    (has) => (has(LOUD) ? 0 : has(LIKE) ? -2 : -9),
    () => [LOUD, LIKE],
  ),
  piece(
    1,
    (has) => (has(BESIDE) && !has(LOUD) ? 0 : -8),
    (has) => (has(LOUD) ? [] : [BESIDE]),
  ),
];

it("a reading left to a slip is explained by the like of a member and a fault that shows only beside it", () => {
  const ranked = [[LOUD], [LIKE]].map((set) => scoreSet(universe, evidence, LOG_WEIGHTS, set));
  expect(ranked[0].score).toBeGreaterThan(ranked[1].score);
  const sets = slipMenders(universe, evidence, LOG_WEIGHTS, 1, ranked);
  expect(sets).toEqual([[LIKE, BESIDE]]);
  const [mended] = sets.map((set) => scoreSet(universe, evidence, LOG_WEIGHTS, set));
  expect(mended.score).toBeGreaterThan(ranked[0].score);
});
