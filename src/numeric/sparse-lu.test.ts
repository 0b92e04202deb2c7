/** The sparse factorization against the dense one with pivoting, on matrices as a circuit with transistors has them. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveDense } from "./dense-lu.ts";
import { planElimination, slotOf } from "./elimination-plan.ts";
import {
  factor,
  keepFactors,
  MATRIX,
  putMatrix,
  solve,
  solveTransposed,
  takeFactors,
  VECTOR,
} from "./sparse-lu.ts";

const SIZE = 10;
const unknown = fc.integer({ min: 0, max: SIZE - 1 });
/** Row, column, and what stands there and opposite: not the same. */
const entries = fc.array(
  fc.tuple(
    unknown,
    unknown,
    fc.double({ min: -2, max: 2, noNaN: true }),
    fc.double({ min: -2, max: 2, noNaN: true }),
  ),
  { maxLength: 25 },
);
const FIXED = { seed: 7, numRuns: 200 } as const;

function matrices(list: readonly (readonly [number, number, number, number])[]) {
  const pairs: number[] = [];
  for (const [i, j] of list) pairs.push(i, j);
  const plan = planElimination(SIZE, pairs);
  const values = new Float64Array(plan.entries + 1);
  const dense = new Float64Array(SIZE * SIZE);
  const add = (i: number, j: number, value: number): void => {
    values[slotOf(plan, i, j)] += value;
    dense[i * SIZE + j] += value;
  };
  for (let i = 0; i < SIZE; i++) add(i, i, 1);
  for (const [i, j, here, opposite] of list) {
    if (i === j) continue;
    add(i, j, here);
    add(j, i, opposite);
    add(i, i, 5);
    add(j, j, 5);
  }
  return { plan, values, dense };
}

const wanted = () => Float64Array.from({ length: SIZE }, (_, i) => 1 + i);
const transposed = (dense: Float64Array) =>
  dense.map((_, at) => dense[(at % SIZE) * SIZE + Math.floor(at / SIZE)]);

describe("a sparse factorization", () => {
  it("solves what the dense one solves, and its transpose", () => {
    fc.assert(
      fc.property(entries, (list) => {
        const { plan, values, dense } = matrices(list);
        putMatrix(plan, values);
        expect(factor(plan)).toBe(true);
        for (const [run, matrix] of [
          [solve, dense.slice()],
          [solveTransposed, transposed(dense)],
        ] as const) {
          const expected = wanted();
          expect(solveDense(SIZE, matrix, expected)).toBe(true);
          VECTOR.set(wanted());
          run(plan);
          for (let i = 0; i < SIZE; i++) expect(VECTOR[i]).toBeCloseTo(expected[i], 9);
        }
      }),
      FIXED,
    );
  });

  it("can be kept while another is in hand", () => {
    const one = matrices([[0, 1, -1, -1]]);
    putMatrix(one.plan, one.values);
    factor(one.plan);
    const kept = keepFactors(one.plan);
    const other = matrices([[2, 7, 1, -1]]);
    putMatrix(other.plan, other.values);
    factor(other.plan);
    takeFactors(kept);
    const expected = wanted();
    solveDense(SIZE, one.dense, expected);
    VECTOR.set(wanted());
    solve(one.plan);
    for (let i = 0; i < SIZE; i++) expect(VECTOR[i]).toBeCloseTo(expected[i], 12);
  });

  it("says so where a pivot is zero or no number", () => {
    const { plan, values } = matrices([]);
    for (const bad of [0, Number.NaN, Number.POSITIVE_INFINITY]) {
      putMatrix(plan, values);
      MATRIX[3] = bad;
      expect(factor(plan)).toBe(false);
    }
  });
});
