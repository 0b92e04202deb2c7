import type { Timeline } from "../bench/timeline.ts";
import type { DueStep } from "./make-safe.ts";
import { lastPower } from "./power-step.ts";

const CURES: ReadonlySet<string> = new Set(["replace", "clean", "resolder"]);

/**
 * Closing a job whose board has run: `repaired` where something was cured, `no-fault` where it ran as it came. A job
 * already closed stays so. Null: the job goes on.
 */
export function closingStep(timeline: Timeline): DueStep | null {
  const closed = timeline.entries.findLast(({ event }) => event.do === "close");
  if (timeline.closed && closed?.event.do === "close")
    return close(closed.event.verdict, "This job is closed.");
  const last = lastPower(timeline);
  if (last === null || timeline.now.powered || last.changed || !last.seen.includes("runs")) return null;
  const cured = timeline.entries.some(({ event }) => CURES.has(event.do));
  return cured
    ? close(
        "repaired",
        "It ran after the repair and nothing has been changed since: write it up and hand it back.",
      )
    : close(
        "no-fault",
        "It ran as it came, with nothing replaced: no fault found on this board; look at what it is connected to.",
      );
}

function close(
  verdict: "repaired" | "no-fault" | "not-economic" | "not-repairable" | "declined",
  why: string,
): DueStep {
  return { action: { do: "close", verdict }, row: [], why, expect: [] };
}
