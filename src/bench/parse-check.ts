import type { Board } from "../board/board.ts";
import { Fields, found, Problems } from "../units/fields.ts";
import type { Parsed } from "../units/outcome.ts";
import type { ColdMode, Place } from "./event.ts";
import { parseEvent } from "./parse-event.ts";
import { placeProblem } from "./place.ts";
import { isColdMode } from "./words.ts";

/** A cold check asked for: what a meter would show there; `seconds` after touching, absent for the settled value. */
export interface CheckRequest {
  readonly mode: ColdMode;
  readonly red: Place;
  readonly black: Place;
  readonly seconds?: number;
}

/** A reading marked `climbing` is the one two seconds after touching (file format). */
export const CLIMBING_SECONDS = 2;

/**
 * A measure event asked as a question: its reading may be left out, `seconds` may be added. `path` is where it stands; a
 * problem is one line beginning with the field's path.
 */
export function parseCheck(input: unknown, board: Board, path: string): Parsed<CheckRequest> {
  const problems = new Problems();
  const check = new Fields(problems, path, input);
  const seconds = check.number("seconds", { least: 0 });
  if (problems.first !== null) return { ok: false, problem: problems.first };
  const asEvent: Record<string, unknown> = { do: "measure", reading: 0 };
  for (const key of check.keys) {
    if (key === "seconds") continue;
    Object.defineProperty(asEvent, key, { value: check.raw(key), enumerable: true, configurable: true });
  }
  const event = parseEvent(asEvent, path);
  if (!event.ok) return event;
  const measure = event.value;
  if (measure.do !== "measure")
    return { ok: false, problem: `${path}.do: expected "measure", found "${measure.do}"` };
  if (!isColdMode(measure.mode))
    return {
      ok: false,
      problem: `${path}.mode: ${measure.mode} is no cold mode; a check can be predicted in diode, continuity, ohms, farads`,
    };
  const { mode, red = "", black = "" } = measure;
  for (const [key, place] of [
    ["red", red],
    ["black", black],
  ] as const) {
    const unknown = placeProblem(board, place);
    if (unknown !== null) return { ok: false, problem: `${path}.${key}: ${unknown}` };
  }
  const after = seconds ?? (measure.settling === "climbing" ? CLIMBING_SECONDS : undefined);
  return {
    ok: true,
    value: after === undefined ? { mode, red, black } : { mode, red, black, seconds: after },
  };
}

/** A checks file's value (a JSON array of measure events) as checks. */
export function parseChecks(input: unknown, board: Board): Parsed<readonly CheckRequest[]> {
  if (!Array.isArray(input))
    return { ok: false, problem: `expected a list of measure events, found ${found(input)}` };
  const checks: CheckRequest[] = [];
  for (const [index, item] of input.entries()) {
    const check = parseCheck(item, board, `[${index}]`);
    if (!check.ok) return check;
    checks.push(check.value);
  }
  return { ok: true, value: checks };
}
