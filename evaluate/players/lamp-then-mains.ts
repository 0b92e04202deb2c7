/** The customary power-up: the lamp where there is one, mains when it showed nothing hard. Null where the board has been powered so. */
import type { PowerEvent } from "../../src/bench/event.ts";
import { FINE } from "../../src/planning/power-ladder.ts";
import { lastPower } from "../../src/planning/power-step.ts";
import { lampsOf } from "../../src/safety/limiter.ts";
import type { Course } from "./course.ts";

/** The lamp of the trade's table for boards that idle at 10 to 20 W. */
const LEAST_WATTS = 60;

export function lampThenMains({ job, timeline }: Course): PowerEvent | null {
  const lamps = lampsOf(job.equipment);
  const watts = lamps.find((one) => one >= LEAST_WATTS) ?? lamps.at(-1);
  const last = lastPower(job.board, timeline);
  const mains: PowerEvent = { do: "power", feed: "mains" };
  if (last === null || last.changed || last.entry.event.do !== "power")
    return watts === undefined ? mains : { do: "power", feed: "lamp", watts };
  const fine = last.seen.length > 0 && last.seen.every((seen) => FINE.has(seen));
  return last.entry.event.feed === "lamp" && fine ? mains : null;
}
