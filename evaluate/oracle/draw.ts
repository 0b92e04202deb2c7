/** Draws from the spreads that the oracle's tables use; every one takes its chance as an argument. */
import { normalDeviate, type Random } from "../../src/practice/seeded-random.ts";

/** A range of values from `[least, most]`. */
export type Range = readonly [number, number];

export function uniform(random: Random, [least, most]: Range): number {
  return least + (most - least) * random();
}

/** Even over the decades between the two. */
export function logUniform(random: Random, [least, most]: Range): number {
  return least * (most / least) ** random();
}

/** A normal deviate cut at two and a half: what is sorted out by the maker never reaches a board. */
export function sortedNormal(random: Random): number {
  return Math.max(-2.5, Math.min(2.5, normalDeviate(random)));
}

/** A factor about 1 with this deviation of its logarithm. */
export function logNormal(random: Random, sigmaLn: number): number {
  return Math.exp(sigmaLn * normalDeviate(random));
}

export function pick<T>(random: Random, from: readonly T[]): T | undefined {
  return from[Math.floor(random() * from.length)];
}
