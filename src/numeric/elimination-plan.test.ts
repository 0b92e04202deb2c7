/** A plan grown by a few entries solves the same systems as one made anew, with every old slot where it was. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type EliminationPlan, extendPlan, planElimination, slotOf } from "./elimination-plan.ts";
import { factor, putMatrix, solve, VECTOR } from "./sparse-lu.ts";

const SIZE = 12;
const pair = fc.tuple(fc.integer({ min: -1, max: SIZE - 1 }), fc.integer({ min: -1, max: SIZE - 1 }));
const pairsOf = (most: number) => fc.array(pair, { maxLength: most }).map((list) => list.flat());

/** Conductances of 1, 2, 3 ... between the pairs, and one from every unknown to the reference. */
function answer(plan: EliminationPlan, pairs: readonly number[]): Float64Array {
  const values = new Float64Array(plan.entries + 1);
  for (let i = 0; i < SIZE; i++) values[slotOf(plan, i, i)] += 0.1;
  for (let p = 0; p + 1 < pairs.length; p += 2) {
    const [a, b] = [pairs[p], pairs[p + 1]];
    const siemens = 1 + p / 2;
    values[slotOf(plan, a, a)] += siemens;
    values[slotOf(plan, b, b)] += siemens;
    values[slotOf(plan, a, b)] -= siemens;
    values[slotOf(plan, b, a)] -= siemens;
  }
  putMatrix(plan, values);
  for (let i = 0; i < SIZE; i++) VECTOR[i] = i + 1;
  expect(factor(plan)).toBe(true);
  solve(plan);
  return VECTOR.slice(0, SIZE);
}

describe("a plan grown from another", () => {
  it("gives the answer of a plan made anew", () => {
    fc.assert(
      fc.property(pairsOf(20), pairsOf(4), (base, more) => {
        const all = [...base, ...more];
        const grown = answer(extendPlan(planElimination(SIZE, base), more), all);
        const anew = answer(planElimination(SIZE, all), all);
        for (let i = 0; i < SIZE; i++) expect(grown[i]).toBeCloseTo(anew[i], 8);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it("leaves every slot of the other where it was", () => {
    const base = planElimination(4, [0, 1, 1, 2, 2, 3]);
    const grown = extendPlan(base, [0, 3]);
    for (let i = -1; i < 4; i++)
      for (let j = -1; j < 4; j++) if (base.find(i, j) >= 0) expect(grown.find(i, j)).toBe(base.find(i, j));
    expect(grown.find(0, 3)).toBeGreaterThan(base.entries);
    expect(() => slotOf(base, 0, 3)).toThrow("row 0, column 3");
  });
});
