/** What may only be done to a board that is dead: switched off, and every store of charge on it empty. */
import type { Board } from "../board/board.ts";
import type { JobEvent, MeasureMode } from "./event.ts";
import { isColdMode } from "./words.ts";

const HANDS_INSIDE: ReadonlySet<JobEvent["do"]> = new Set([
  "lift",
  "refit",
  "remove",
  "restore",
  "replace",
  "resolder",
  "clean",
]);

/** Work on the board itself: after it the board is another one. */
export function isWork(what: JobEvent["do"]): boolean {
  return HANDS_INSIDE.has(what);
}

/** Is the board another one after this event? Pulling the plug of its motor and putting it back is no work on the board. */
export function isWorkOn({ parts }: Board, event: JobEvent): boolean {
  if (!isWork(event.do)) return false;
  switch (event.do) {
    case "lift":
    case "refit":
      return parts.get(event.place.slice(0, event.place.indexOf(".")))?.kind !== "motor";
    case "remove":
    case "restore":
      return parts.get(event.part)?.kind !== "motor";
    default:
      return true;
  }
}

/** Does this step put a hand inside the board, or a meter's own volts on it? Clipping a discharging resistor on does not count. */
export function needsDeadBoard(step: {
  readonly do: JobEvent["do"];
  readonly mode?: MeasureMode | undefined;
}): boolean {
  if (step.do === "measure") return step.mode !== undefined && isColdMode(step.mode);
  return HANDS_INSIDE.has(step.do);
}
