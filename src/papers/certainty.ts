/** Nothing that was measured is certain, and no repair is: on paper 99 per cent at most. */
export function certainty(chance: number): number {
  return Math.min(chance, 0.99);
}
