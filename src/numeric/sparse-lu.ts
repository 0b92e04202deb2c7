/**
 * Sparse LU with diagonal pivots on a fixed elimination plan. Right for the matrices of a passive circuit, which are
 * diagonally dominant or nearly so; where it is not, the caller sees a bad residual and goes to `dense-lu.ts`.
 *
 * The loops work in arrays that are there as long as the program: a compiler that knows where an array stands and how long it is
 * makes an access a third as long as one that has to look (measured with V8). It knows that of a constant beside the function;
 * what stands at the top of a module is no constant any more in a bundle, hence the function around each loop. So there is one
 * matrix and one vector at a time; who wants factors again later keeps a copy.
 */
import type { EliminationPlan } from "./elimination-plan.ts";

/** More than any board needs: what is never written to takes no memory. */
const MOST_UNKNOWNS = 1 << 16;
const MOST_ENTRIES = 1 << 20;
const MOST_PLACES = 1 << 22;

/** The matrix in hand, by the slots of the plan; its factors after `factor`, each pivot as its inverse. */
export const MATRIX = new Float64Array(MOST_ENTRIES);
/** The right-hand side in hand, one place more than there are unknowns; the solution after `solve`. */
export const VECTOR = new Float64Array(MOST_UNKNOWNS);

const PROGRAM = new Int32Array(MOST_PLACES);
const BEGIN = new Int32Array(MOST_UNKNOWNS);
/** the program laid out, and the kept factors that are in the matrix */
let laidOut: Int32Array | null = null;
let inHand: Float64Array | null = null;
/** how often the matrix has been filled */
let fillings = 0;

function layOut({ size, entries, program, begin }: EliminationPlan): void {
  if (laidOut === program) return;
  if (size >= MOST_UNKNOWNS || entries >= MOST_ENTRIES || program.length > MOST_PLACES)
    throw new Error(`${size} unknowns with ${entries} entries are more than there is room for`);
  PROGRAM.set(program);
  BEGIN.set(begin);
  laidOut = program;
}

/** Puts `values` into the matrix and zero into the entries that they do not have. */
export function putMatrix({ entries }: EliminationPlan, values: Float64Array): void {
  inHand = null;
  fillings++;
  MATRIX.set(values);
  MATRIX.fill(0, values.length, entries + 1);
}

/** Factors the matrix. False where a pivot is zero or not finite; it is then spoilt. */
export const factor = (() => {
  const matrix = MATRIX;
  const steps = PROGRAM;
  return (plan: EliminationPlan): boolean => {
    layOut(plan);
    inHand = null;
    const { size } = plan;
    let at = 0;
    for (let k = 0; k < size; k++) {
      const count = steps[at];
      const lower = at + 1 + count;
      const upper = lower + count;
      let target = upper + count;
      const inverse = 1 / matrix[k];
      matrix[k] = inverse;
      // Catches zero (its inverse is infinite), infinity and what is no number.
      if (!(Math.abs(inverse) < Number.POSITIVE_INFINITY) || inverse === 0) return false;
      for (let r = lower; r < upper; r++) {
        const slot = steps[r];
        const ratio = matrix[slot] * inverse;
        matrix[slot] = ratio;
        for (let c = upper; c < upper + count; c++) matrix[steps[target++]] -= ratio * matrix[steps[c]];
      }
      at = target;
    }
    return true;
  };
})();

/** Solves A x = vector for a factored matrix; the vector becomes x. */
export const solve = (() => {
  const matrix = MATRIX;
  const vector = VECTOR;
  const steps = PROGRAM;
  const begin = BEGIN;
  return (plan: EliminationPlan): void => {
    layOut(plan);
    const { size } = plan;
    for (let k = 0; k < size; k++) {
      const at = begin[k] + 1;
      const count = steps[at - 1];
      const known = vector[k];
      if (known === 0) continue;
      for (let r = at; r < at + count; r++) vector[steps[r]] -= matrix[steps[r + count]] * known;
    }
    for (let k = size - 1; k >= 0; k--) {
      const at = begin[k] + 1;
      const count = steps[at - 1];
      const upper = 2 * count;
      let sum = vector[k];
      for (let c = at; c < at + count; c++) sum -= matrix[steps[c + upper]] * vector[steps[c]];
      vector[k] = sum * matrix[k];
    }
  };
})();

/** Solves (A transposed) x = vector for a factored matrix; the vector becomes x. What an adjoint needs. */
export const solveTransposed = (() => {
  const matrix = MATRIX;
  const vector = VECTOR;
  const steps = PROGRAM;
  const begin = BEGIN;
  return (plan: EliminationPlan): void => {
    layOut(plan);
    const { size } = plan;
    for (let k = 0; k < size; k++) {
      const at = begin[k] + 1;
      const count = steps[at - 1];
      const known = vector[k] * matrix[k];
      vector[k] = known;
      if (known === 0) continue;
      const upper = 2 * count;
      for (let c = at; c < at + count; c++) vector[steps[c]] -= matrix[steps[c + upper]] * known;
    }
    for (let k = size - 1; k >= 0; k--) {
      const at = begin[k] + 1;
      const count = steps[at - 1];
      let sum = vector[k];
      for (let r = at; r < at + count; r++) sum -= matrix[steps[r + count]] * vector[steps[r]];
      vector[k] = sum;
    }
  };
})();

/** A copy of the factors in the matrix. */
export function keepFactors({ entries }: EliminationPlan): Float64Array {
  inHand = MATRIX.slice(0, entries + 1);
  return inHand;
}

/** Puts kept factors back into the matrix, unless they are still there. */
export function takeFactors(kept: Float64Array): void {
  if (inHand === kept) return;
  fillings++;
  MATRIX.set(kept);
  inHand = kept;
}

/** A number that stays while the matrix is that of the last `putMatrix` or `takeFactors`. */
export function matrixMark(): number {
  return fillings;
}
