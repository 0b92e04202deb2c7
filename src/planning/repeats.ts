import { benchKey } from "../bench/bench-state.ts";
import type { JobEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Action } from "./proposal.ts";

/**
 * The same reading a second time wants saying why, or it looks like a mistake of the program: the board was worked on or powered since,
 * or the reading fits badly with the rest. Empty where it was not taken on the bench as it is.
 * @param unexplained - log indexes of readings that nothing explains
 */
export function repeatWords(timeline: Timeline, action: Action, unexplained: readonly number[]): string {
  if (action.do !== "measure") return "";
  const bench = benchKey(timeline.now);
  const at = timeline.entries.findLastIndex(
    ({ event, before }) =>
      event.do === "measure" &&
      event.mode === action.mode &&
      event.red === action.red &&
      event.black === action.black &&
      benchKey(before) === bench,
  );
  const taken = timeline.entries[at];
  if (taken === undefined) return "";
  const since = timeline.entries.slice(at + 1).map(({ event }) => workWords(event));
  const work = since.findLast((words) => words !== null);
  if (work !== null && work !== undefined) return `Read before ${work}; once more now. `;
  return unexplained.includes(taken.logIndex)
    ? "The same reading once more: what it showed fits badly with the rest, and probes slip. "
    : "The same reading once more: much hangs on it, and a probe slips now and then. ";
}

/** What was done that may have changed a reading; null for what changes none. */
function workWords(event: JobEvent): string | null {
  switch (event.do) {
    case "replace":
      return `${event.part} was replaced`;
    case "restore":
      return `${event.part} was put back`;
    case "resolder":
    case "clean":
      return `${event.part ?? `the ${event.stage ?? "board"} area`} was ${event.do === "clean" ? "cleaned" : "resoldered"}`;
    case "refit":
      return `${event.place.replace(".", " pin ")} was soldered back`;
    case "power":
      return "the board was powered";
    default:
      return null;
  }
}
