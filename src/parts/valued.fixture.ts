import { plain } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";

/** The value of an outcome that has one. */
export function valued<T>(outcome: Parsed<T>): T {
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

/** The problem of an outcome that was refused. */
export function problemOf(outcome: Parsed<unknown>): string {
  if (outcome.ok) throw new Error(`not refused: ${JSON.stringify(outcome.value)}`);
  return plain(outcome.problem);
}
