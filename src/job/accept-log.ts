import { refusedPower } from "../safety/refused-power.ts";
import type { AcceptLog } from "./job-store.ts";
import { parseJob } from "./parse-job.ts";

/**
 * Judges a log before it is kept: every event in its shape, every place and part on the board, and the whole foldable
 * (nothing lifted twice, no undo that makes a later event impossible). Of the events that are new, none may bring power while a
 * discharging resistor is clipped on or, from the mains, while a motor is plugged in unread, unless that was overruled. One line where not.
 */
export const acceptLog: AcceptLog = (header, log, kept = log.length) => {
  const parsed = parseJob({ ...header, log }, null);
  return parsed.ok ? refusedPower(parsed.value, kept) : parsed.problem;
};
