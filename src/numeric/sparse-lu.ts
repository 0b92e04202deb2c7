/**
 * Sparse LU with diagonal pivots on a fixed elimination plan. Right for the matrices of a passive circuit, which are
 * diagonally dominant or nearly so; where it is not, the caller sees a bad residual and goes to `dense-lu.ts`.
 */
import type { EliminationPlan } from "./elimination-plan.ts";

/** Factors `values` in place, each pivot as its inverse. False where one is zero or not finite; the values are then spoilt. */
export function factor(plan: EliminationPlan, values: Float64Array): boolean {
  const { size, program } = plan;
  let at = 0;
  for (let k = 0; k < size; k++) {
    const count = program[at];
    const lower = at + 1 + count;
    const upper = lower + count;
    let target = upper + count;
    const inverse = 1 / values[k];
    values[k] = inverse;
    // Catches zero (its inverse is infinite), infinity and what is no number in one comparison.
    if (!(Math.abs(inverse) < Number.POSITIVE_INFINITY) || inverse === 0) return false;
    for (let r = lower; r < upper; r++) {
      const slot = program[r];
      const ratio = values[slot] * inverse;
      values[slot] = ratio;
      for (let c = upper; c < upper + count; c++) values[program[target++]] -= ratio * values[program[c]];
    }
    at = target;
  }
  return true;
}

/** Solves A x = rhs for factored values; `rhs` becomes x. */
export function solve(plan: EliminationPlan, values: Float64Array, rhs: Float64Array): void {
  const { size, program, begin } = plan;
  for (let k = 0; k < size; k++) {
    const at = begin[k] + 1;
    const count = program[at - 1];
    const known = rhs[k];
    if (known === 0) continue;
    for (let r = at; r < at + count; r++) rhs[program[r]] -= values[program[r + count]] * known;
  }
  for (let k = size - 1; k >= 0; k--) {
    const at = begin[k] + 1;
    const count = program[at - 1];
    const upper = at + 2 * count;
    let sum = rhs[k];
    for (let c = 0; c < count; c++) sum -= values[program[upper + c]] * rhs[program[at + c]];
    rhs[k] = sum * values[k];
  }
}

/** Solves (A transposed) x = rhs for factored values; `rhs` becomes x. What an adjoint needs. */
export function solveTransposed(plan: EliminationPlan, values: Float64Array, rhs: Float64Array): void {
  const { size, program, begin } = plan;
  for (let k = 0; k < size; k++) {
    const at = begin[k] + 1;
    const count = program[at - 1];
    const known = rhs[k] * values[k];
    rhs[k] = known;
    if (known === 0) continue;
    const upper = at + 2 * count;
    for (let c = 0; c < count; c++) rhs[program[at + c]] -= values[program[upper + c]] * known;
  }
  for (let k = size - 1; k >= 0; k--) {
    const at = begin[k] + 1;
    const count = program[at - 1];
    let sum = rhs[k];
    for (let r = at; r < at + count; r++) sum -= values[program[r + count]] * rhs[program[r]];
    rhs[k] = sum;
  }
}
