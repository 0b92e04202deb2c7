/** Dense LU with partial pivoting: the slow and safe way, for the rare matrix that diagonal pivots spoil. */

/**
 * Solves A x = rhs for a dense row-major `matrix` (size x size), both overwritten; `rhs` becomes x. False where the matrix is
 * singular to working precision.
 */
export function solveDense(size: number, matrix: Float64Array, rhs: Float64Array): boolean {
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++)
      if (Math.abs(matrix[i * size + k]) > Math.abs(matrix[pivot * size + k])) pivot = i;
    const value = matrix[pivot * size + k];
    if (!(Math.abs(value) > 0) || !Number.isFinite(value)) return false;
    if (pivot !== k) swapRows(size, matrix, rhs, k, pivot);
    for (let i = k + 1; i < size; i++) {
      const ratio = matrix[i * size + k] / value;
      if (ratio === 0) continue;
      for (let j = k + 1; j < size; j++) matrix[i * size + j] -= ratio * matrix[k * size + j];
      rhs[i] -= ratio * rhs[k];
    }
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = rhs[i];
    for (let j = i + 1; j < size; j++) sum -= matrix[i * size + j] * rhs[j];
    rhs[i] = sum / matrix[i * size + i];
  }
  return true;
}

function swapRows(size: number, matrix: Float64Array, rhs: Float64Array, one: number, other: number): void {
  for (let j = 0; j < size; j++) {
    const kept = matrix[one * size + j];
    matrix[one * size + j] = matrix[other * size + j];
    matrix[other * size + j] = kept;
  }
  const kept = rhs[one];
  rhs[one] = rhs[other];
  rhs[other] = kept;
}
