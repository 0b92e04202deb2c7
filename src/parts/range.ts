import type { Parsed } from "../units/outcome.ts";

/** One input of a formula with the ends between which the formula holds. */
export interface Ranged {
  readonly words: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

/** The first input that is outside its range, as one line; null where all are inside. */
export function outside(inputs: readonly Ranged[]): string | null {
  const wrong = inputs.find(({ value, least, most }) => !(value >= least && value <= most));
  if (wrong === undefined) return null;
  const { words, value, least, most, unit } = wrong;
  return `${words}: ${value} ${unit} is outside ${least} to ${most} ${unit}`;
}

/** The result of a formula, or which input it does not hold for. */
export function within<T>(inputs: readonly Ranged[], formula: () => T): Parsed<T> {
  const problem = outside(inputs);
  return problem === null ? { ok: true, value: formula() } : { ok: false, problem };
}

export function ranged(words: string, value: number, least: number, most: number, unit: string): Ranged {
  return { words, value, least, most, unit };
}
