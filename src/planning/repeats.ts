import { benchKey } from "../bench/bench-state.ts";
import type { JobEvent } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Timeline } from "../bench/timeline.ts";
import { said } from "../messages/said.ts";
import type { Action } from "./proposal.ts";

/**
 * The same reading a second time wants saying why, or it looks like a mistake of the program: the board was worked on or powered since,
 * or the reading fits badly with the rest. None where it was not taken on the bench as it is.
 * @param unexplained - log indexes of readings that nothing explains
 */
export function repeatWords(
  timeline: Timeline,
  action: Action,
  unexplained: readonly number[],
): readonly string[] {
  if (action.do !== "measure") return [];
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
  if (taken === undefined) return [];
  const since = timeline.entries.slice(at + 1).map(({ event }) => sinceWords(event));
  const work = since.findLast((words) => words !== null);
  if (work !== null && work !== undefined) return [work];
  return unexplained.includes(taken.logIndex)
    ? [said`The same reading once more: what it showed fits badly with the rest, and probes slip.`]
    : [said`The same reading once more: much hangs on it, and a probe slips now and then.`];
}

/** What was done that may have changed a reading; null for what changes none. */
function sinceWords(event: JobEvent): string | null {
  switch (event.do) {
    case "replace":
      return said`Read before ${event.part} was replaced; once more now.`;
    case "restore":
      return said`Read before ${event.part} was put back; once more now.`;
    case "resolder":
      if (event.part !== undefined) return said`Read before ${event.part} was resoldered; once more now.`;
      return event.stage === undefined
        ? said`Read before the board area was resoldered; once more now.`
        : said`Read before the ${event.stage} area was resoldered; once more now.`;
    case "clean":
      if (event.part !== undefined) return said`Read before ${event.part} was cleaned; once more now.`;
      return event.stage === undefined
        ? said`Read before the board area was cleaned; once more now.`
        : said`Read before the ${event.stage} area was cleaned; once more now.`;
    case "refit": {
      const pin = pinOfPlace(event.place);
      return said`Read before ${pin?.ref ?? event.place} pin ${pin?.pin ?? ""} was soldered back; once more now.`;
    }
    case "power":
      return said`Read before the board was powered; once more now.`;
    default:
      return null;
  }
}
