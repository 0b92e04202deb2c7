/** Events as the page makes them: an action of the engine's, plus what came of it, plus an id of the page's own. */
import type { ActionView } from "../wire/bench-view.ts";
import type { AppendRequest, CreateJobRequest, JobAnswer } from "../wire/job-api.ts";

export type KeptEvent = AppendRequest["events"][number];
export type JobHeader = CreateJobRequest["job"];
export type KeptJob = JobAnswer;
export type Outcome = Readonly<Record<string, unknown>>;

/** Of these `at` names places, not the time. */
const PLACES_IN_AT = new Set(["clip", "unclip", "power"]);

/** A UUID of version 4 (RFC 9562, 5.4), made here: over plain http from another machine the browser's own maker of them is not there. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const digits = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return [
    [0, 8],
    [8, 12],
    [12, 16],
    [16, 20],
    [20, 32],
  ]
    .map(([from, to]) => digits.slice(from, to))
    .join("-");
}

/**
 * The event of an action that was done, with its outcome (`{ reading: 0.47 }`), stamped with an id and the time.
 * The engine wrote the action and the server judges the whole log again, so the shape is not checked here.
 */
export function happened(action: ActionView, outcome: Outcome = {}): KeptEvent {
  const stamp = PLACES_IN_AT.has(action.do) ? {} : { at: new Date().toISOString() };
  // The engine wrote the action: see above.
  return { ...action, ...outcome, ...stamp, id: newId() } as unknown as KeptEvent;
}

/** Two actions ask for the same thing: compared as text, field order aside. */
export function sameAction(a: ActionView, b: ActionView): boolean {
  return actionKey(a) === actionKey(b);
}

export function actionKey(action: ActionView): string {
  return JSON.stringify(Object.entries(action).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** A text field of an action, or null where it has none. */
export function field(action: ActionView, name: string): string | null {
  const value = action[name];
  return typeof value === "string" ? value : typeof value === "number" ? String(value) : null;
}
