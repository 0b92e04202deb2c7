/** The inverse of a matrix of conductances: solved with hundreds of times while the same junctions conduct. */

/**
 * Inverts a row-major symmetric positive definite matrix in place (Gauss and Jordan). Diagonal pivots are safe for such a matrix;
 * one that is not positive throws.
 */
export function invertConductances(size: number, matrix: Float64Array): void {
  for (let k = 0; k < size; k++) {
    const pivot = matrix[k * size + k];
    if (!(pivot > 0)) throw new Error("a net of the power circuit hangs on nothing");
    const inverse = 1 / pivot;
    matrix[k * size + k] = 1;
    for (let j = 0; j < size; j++) matrix[k * size + j] *= inverse;
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const ratio = matrix[i * size + k];
      if (ratio === 0) continue;
      matrix[i * size + k] = 0;
      for (let j = 0; j < size; j++) matrix[i * size + j] -= ratio * matrix[k * size + j];
    }
  }
}
