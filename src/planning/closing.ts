import type { Timeline } from "../bench/timeline.ts";
import type { DueStep } from "./make-safe.ts";
import { lastPower } from "./power-step.ts";

/** A part this probably faulty is seen to before the board goes out; after so many good runs the readings are outvoted. From memory. */
const ACCUSED = 0.6;
const MOST_RUNS = 3;

const CURES: ReadonlySet<string> = new Set(["replace", "clean", "resolder"]);

/**
 * Closing a job whose board has run: `repaired` where something was cured, `no-fault` where it ran as it came. A job
 * already closed stays so. A board may run with a part that the readings still accuse: it is not handed back like that.
 * Null: the job goes on.
 * @param accused - the highest chance that some part has still to be cured; what a board lives with does not count
 */
export function closingStep(timeline: Timeline, accused: number): DueStep | null {
  const closed = timeline.entries.findLast(({ event }) => event.do === "close");
  if (timeline.closed && closed?.event.do === "close")
    return close(closed.event.verdict, "This job is closed.");
  if (accused >= ACCUSED && runs(timeline) < MOST_RUNS) return null;
  const last = lastPower(timeline);
  if (last === null || timeline.now.powered || last.changed || !last.seen.includes("runs")) return null;
  // a lamp passes too little to prove a board: it has to run on its own feed
  if (last.entry.event.do === "power" && last.entry.event.feed === "lamp") return null;
  const cured = timeline.entries.some(({ event }) => CURES.has(event.do));
  return cured
    ? close(
        "repaired",
        "It ran after the repair and nothing has been changed since. Load it until it is warm through (20 to 30 minutes), then write it up and hand it back.",
      )
    : close(
        "no-fault",
        "It ran as it came, with nothing replaced: no fault found on this board; look at what it is connected to.",
      );
}

/** Power-ups at which the board ran. */
function runs(timeline: Timeline): number {
  return timeline.entries.filter(
    ({ event }) => event.do === "power" && [event.observed].flat().includes("runs"),
  ).length;
}

function close(
  verdict: "repaired" | "no-fault" | "not-economic" | "not-repairable" | "declined",
  why: string,
): DueStep {
  return { action: { do: "close", verdict }, row: [], why, expect: [] };
}
