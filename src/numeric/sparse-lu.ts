/**
 * Sparse LU with diagonal pivots on a fixed elimination plan. Right for the matrices of a passive circuit, which are
 * diagonally dominant or nearly so; where it is not, the caller sees a bad residual and goes to `dense-lu.ts`.
 */
import type { EliminationPlan } from "./elimination-plan.ts";

/** Factors `values` in place. False where a pivot is zero or not finite; the values are then spoilt. */
export function factor(plan: EliminationPlan, values: Float64Array): boolean {
  const { size, order, diagonal, program } = plan;
  let at = 0;
  for (let k = 0; k < size; k++) {
    const count = program[at];
    const lower = at + 1 + count;
    const upper = lower + count;
    let target = upper + count;
    const pivot = values[diagonal[order[k]]];
    if (!(Math.abs(pivot) > 0) || !Number.isFinite(pivot)) return false;
    for (let r = 0; r < count; r++) {
      const slot = program[lower + r];
      const ratio = values[slot] / pivot;
      values[slot] = ratio;
      if (ratio === 0) target += count;
      else for (let c = 0; c < count; c++) values[program[target++]] -= ratio * values[program[upper + c]];
    }
    at = target;
  }
  return true;
}

/** Solves A x = rhs for factored values; `rhs` becomes x. */
export function solve(plan: EliminationPlan, values: Float64Array, rhs: Float64Array): void {
  const { size, order, diagonal, program, begin } = plan;
  for (let k = 0; k < size; k++) {
    const at = begin[k];
    const count = program[at];
    const known = rhs[order[k]];
    if (known === 0) continue;
    for (let r = 1; r <= count; r++) rhs[program[at + r]] -= values[program[at + count + r]] * known;
  }
  for (let k = size - 1; k >= 0; k--) {
    const at = begin[k];
    const count = program[at];
    let sum = rhs[order[k]];
    for (let c = 1; c <= count; c++) sum -= values[program[at + 2 * count + c]] * rhs[program[at + c]];
    rhs[order[k]] = sum / values[diagonal[order[k]]];
  }
}

/** Solves (A transposed) x = rhs for factored values; `rhs` becomes x. What an adjoint needs. */
export function solveTransposed(plan: EliminationPlan, values: Float64Array, rhs: Float64Array): void {
  const { size, order, diagonal, program, begin } = plan;
  for (let k = 0; k < size; k++) {
    const at = begin[k];
    const count = program[at];
    const known = rhs[order[k]] / values[diagonal[order[k]]];
    rhs[order[k]] = known;
    if (known === 0) continue;
    for (let c = 1; c <= count; c++) rhs[program[at + c]] -= values[program[at + 2 * count + c]] * known;
  }
  for (let k = size - 1; k >= 0; k--) {
    const at = begin[k];
    const count = program[at];
    let sum = rhs[order[k]];
    for (let r = 1; r <= count; r++) sum -= values[program[at + count + r]] * rhs[program[at + r]];
    rhs[order[k]] = sum;
  }
}
