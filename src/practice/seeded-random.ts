/** Numbers in [0, 1), one after another. */
export type Random = () => number;

const STEP = 0x9e3779b9;

/** Stirs 32 bits so that neighbouring inputs give unrelated outputs (two multiply-xorshift rounds). */
function stir(bits: number): number {
  let mixed = bits | 0;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x45d9f3b);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  return (mixed ^ (mixed >>> 16)) >>> 0;
}

/**
 * A stream of random numbers that depends on the seed and the salt alone: the same practice job answers the same question alike,
 * whatever was asked before it. A counter stepped by a fixed odd number, stirred: good enough for practice, not for secrets.
 */
export function seededRandom(seed: number, salt: string): Random {
  let state = stir(Math.trunc(seed) ^ Math.trunc(seed / 2 ** 32));
  for (const letter of salt) state = stir(state ^ (letter.codePointAt(0) ?? 0)) + STEP;
  return () => {
    state = (state + STEP) | 0;
    return (stir(state) * 2 ** 21 + (stir(state ^ STEP) >>> 11)) / 2 ** 53;
  };
}

/** A standard normal deviate (Box and Muller 1958). */
export function normalDeviate(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}

/** Draws one of `items` with chances in proportion to `weights`; null where nothing has weight. */
export function drawOne<T>(items: readonly T[], weights: readonly number[], random: Random): T | null {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let left = random() * total;
  let last: T | null = null;
  for (const [at, item] of items.entries()) {
    const weight = weights[at] ?? 0;
    if (weight <= 0) continue;
    last = item;
    left -= weight;
    if (left < 0) return item;
  }
  return last;
}
