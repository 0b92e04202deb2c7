/** The same elimination for complex values, held as two arrays (real and imaginary parts). */
import type { EliminationPlan } from "./elimination-plan.ts";

export interface ComplexValues {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Factors in place and solves A x = rhs, which becomes x. False where a pivot is zero or not finite. */
export function factorAndSolveComplex(
  plan: EliminationPlan,
  values: ComplexValues,
  rhs: ComplexValues,
): boolean {
  const { re, im } = values;
  const { size, program } = plan;
  const begin = new Int32Array(size);
  let at = 0;
  for (let k = 0; k < size; k++) {
    begin[k] = at;
    const count = program[at];
    const square = re[k] ** 2 + im[k] ** 2;
    if (!(square > 0) || !Number.isFinite(square)) return false;
    const inverseRe = re[k] / square;
    const inverseIm = -im[k] / square;
    const knownRe = rhs.re[k];
    const knownIm = rhs.im[k];
    let target = at + 1 + 3 * count;
    for (let r = 1; r <= count; r++) {
      const slot = program[at + count + r];
      const ratioRe = re[slot] * inverseRe - im[slot] * inverseIm;
      const ratioIm = re[slot] * inverseIm + im[slot] * inverseRe;
      const row = program[at + r];
      rhs.re[row] -= ratioRe * knownRe - ratioIm * knownIm;
      rhs.im[row] -= ratioRe * knownIm + ratioIm * knownRe;
      for (let c = 1; c <= count; c++, target++) {
        const upper = program[at + 2 * count + c];
        re[program[target]] -= ratioRe * re[upper] - ratioIm * im[upper];
        im[program[target]] -= ratioRe * im[upper] + ratioIm * re[upper];
      }
    }
    at = target;
  }
  backSubstitute(plan, begin, values, rhs);
  return true;
}

function backSubstitute(
  plan: EliminationPlan,
  begin: Int32Array,
  values: ComplexValues,
  rhs: ComplexValues,
): void {
  const { re, im } = values;
  const { size, program } = plan;
  for (let k = size - 1; k >= 0; k--) {
    const at = begin[k];
    const count = program[at];
    let sumRe = rhs.re[k];
    let sumIm = rhs.im[k];
    for (let c = 1; c <= count; c++) {
      const upper = program[at + 2 * count + c];
      const x = program[at + c];
      sumRe -= re[upper] * rhs.re[x] - im[upper] * rhs.im[x];
      sumIm -= re[upper] * rhs.im[x] + im[upper] * rhs.re[x];
    }
    const square = re[k] ** 2 + im[k] ** 2;
    rhs.re[k] = (sumRe * re[k] + sumIm * im[k]) / square;
    rhs.im[k] = (sumIm * re[k] - sumRe * im[k]) / square;
  }
}
