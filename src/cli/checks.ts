/** The checks that `predict` and `deck` are asked for: measure events that have no reading yet. */
import type { MeasureEvent } from "../bench/event.ts";
import { parseEvent } from "../bench/parse-event.ts";
import { step } from "../bench/step.ts";
import type { Timeline } from "../bench/timeline.ts";
import { isColdMode, LIVE_MODES } from "../bench/words.ts";
import type { Job } from "../job/job.ts";
import type { LiveCheck } from "../live/live-reading.ts";
import type { ColdCheck } from "../meter/prediction.ts";
import type { Parsed } from "../units/outcome.ts";

/** A `climbing` reading is the value this long after touching. */
const CLIMBING_SECONDS = 2;
/** Longer than any capacitor on a board takes to fill through a meter. */
const MOST_SECONDS = 1e6;
const MOST_CHECKS = 10_000;

/** A list of checks: cold ones, and where the log leaves the board powered live ones too. */
export function parseChecks(
  input: unknown,
  job: Job,
  timeline: Timeline,
): Parsed<readonly (ColdCheck | LiveCheck)[]> {
  if (!Array.isArray(input)) return { ok: false, problem: "checks: expected a list of measure events" };
  if (input.length > MOST_CHECKS) {
    return { ok: false, problem: `checks: ${input.length} are too many at once; the most is ${MOST_CHECKS}` };
  }
  const checks: (ColdCheck | LiveCheck)[] = [];
  for (const [index, item] of input.entries()) {
    const path = `checks[${index}]`;
    const check = isLive(item, timeline)
      ? parseLiveCheck(item, path, job, timeline)
      : parseCheck(item, path, job, timeline);
    if (!check.ok) return check;
    checks.push(check.value);
  }
  return { ok: true, value: checks };
}

function isLive(item: unknown, timeline: Timeline): boolean {
  const mode = typeof item === "object" && item !== null && "mode" in item ? item.mode : null;
  return timeline.now.powered && LIVE_MODES.some((live) => live === mode);
}

/** The measure event that a check is, its reading left aside; with what it says of `seconds`. */
function measureOf(input: unknown, path: string): Parsed<{ measure: MeasureEvent; seconds: unknown }> {
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    return { ok: false, problem: `${path}: expected a measure event without its reading` };
  }
  const { seconds, ...fields } = input as { readonly seconds?: unknown };
  // The event's own parser wants a reading; any would do for its mode, since it is not looked at.
  const event = parseEvent(
    { reading: "mode" in fields && fields.mode === "temperature" ? 0 : "OL", ...fields },
    path,
  );
  if (!event.ok) return event;
  const measure = event.value;
  if (measure.do !== "measure") {
    return { ok: false, problem: `${path}.do: "${measure.do}" is no check; expected "measure"` };
  }
  return { ok: true, value: { measure, seconds } };
}

/** A check on a live board. */
function parseLiveCheck(input: unknown, path: string, job: Job, timeline: Timeline): Parsed<LiveCheck> {
  const read = measureOf(input, path);
  if (!read.ok) return read;
  const { measure, seconds } = read.value;
  if (seconds !== undefined)
    return { ok: false, problem: `${path}.seconds: belongs to a cold mode; a live one takes afterPower` };
  const reached = step(job.board, new Set(job.absent), timeline.now, measure);
  if (!reached.ok) return { ok: false, problem: `${path}.${reached.problem}` };
  const { mode, red, black, part, ambient, by, afterPower } = measure;
  if (isColdMode(mode)) return { ok: false, problem: `${path}.mode: "${mode}" is a cold mode` };
  return { ok: true, value: { mode, red, black, part, ambient, by, afterPower } };
}

/** One cold check; a problem begins with `path`. Its places are held against the board as the log leaves it. */
export function parseCheck(input: unknown, path: string, job: Job, timeline: Timeline): Parsed<ColdCheck> {
  const read = measureOf(input, path);
  if (!read.ok) return read;
  const { measure, seconds } = read.value;
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
