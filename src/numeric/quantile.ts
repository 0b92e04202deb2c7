/**
 * The x at which a rising distribution function reaches `probability`, by halving [low, high]; the function is asked a hundred times
 * at most. `high` may be infinite: it is then doubled up from 1 until it is high enough.
 */
export function quantileOf(
  cumulative: (x: number) => number,
  probability: number,
  low: number,
  high: number,
): number {
  let [from, to] = [low, Number.isFinite(high) ? high : Math.max(1, low)];
  while (to < high && cumulative(to) < probability) to *= 2;
  for (let step = 0; step < 100 && to - from > 1e-15 * to; step++) {
    const middle = (from + to) / 2;
    if (cumulative(middle) < probability) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
