/** The checks that `predict` and `deck` are asked for: measure events that have no reading yet. */
import { parseEvent } from "../bench/parse-event.ts";
import { step } from "../bench/step.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Job } from "../job/job.ts";
import type { ColdCheck } from "../meter/prediction.ts";
import type { Parsed } from "../units/outcome.ts";

/** A `climbing` reading is the value this long after touching. */
const CLIMBING_SECONDS = 2;
/** Longer than any capacitor on a board takes to fill through a meter. */
const MOST_SECONDS = 1e6;
const MOST_CHECKS = 10_000;

export function parseChecks(input: unknown, job: Job, timeline: Timeline): Parsed<readonly ColdCheck[]> {
  if (!Array.isArray(input)) return { ok: false, problem: "checks: expected a list of measure events" };
  if (input.length > MOST_CHECKS) {
    return { ok: false, problem: `checks: ${input.length} are too many at once; the most is ${MOST_CHECKS}` };
  }
  const checks: ColdCheck[] = [];
  for (const [index, item] of input.entries()) {
    const check = parseCheck(item, `checks[${index}]`, job, timeline);
    if (!check.ok) return check;
    checks.push(check.value);
  }
  return { ok: true, value: checks };
}

/** One check; a problem begins with `path`. Its places are held against the board as the log leaves it. */
export function parseCheck(input: unknown, path: string, job: Job, timeline: Timeline): Parsed<ColdCheck> {
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    return { ok: false, problem: `${path}: expected a measure event without its reading` };
  }
  const { seconds, ...fields } = input as { readonly seconds?: unknown };
  // The event's own parser wants a reading; any would do, since it is not looked at.
  const event = parseEvent({ reading: "OL", ...fields }, path);
  if (!event.ok) return event;
  const measure = event.value;
  if (measure.do !== "measure") {
    return { ok: false, problem: `${path}.do: "${measure.do}" is no check; expected "measure"` };
  }
  const { mode, red, black } = measure;
  if (mode === "dcv" || mode === "acv" || mode === "amps" || mode === "temperature") {
    return {
      ok: false,
      problem: `${path}.mode: "${mode}" needs power; the cold modes are diode continuity ohms farads`,
    };
  }
  if (red === undefined || black === undefined) return { ok: false, problem: `${path}: needs red and black` };
  const reached = step(job.board, new Set(job.absent), { ...timeline.now, powered: false }, measure);
  if (!reached.ok) return { ok: false, problem: `${path}.${reached.problem}` };
  const after = seconds ?? (measure.settling === "climbing" ? CLIMBING_SECONDS : undefined);
  if (after === undefined) return { ok: true, value: { mode, red, black } };
  if (typeof after !== "number" || !(after >= 0 && after <= MOST_SECONDS)) {
    return { ok: false, problem: `${path}.seconds: expected a number from 0 to ${MOST_SECONDS}` };
  }
  return { ok: true, value: { mode, red, black, seconds: after } };
}
