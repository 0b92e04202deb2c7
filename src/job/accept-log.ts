import type { AcceptLog } from "./job-store.ts";
import { parseJob } from "./parse-job.ts";

/**
 * Judges a log before it is kept: every event in its shape, every place and part on the board, and the whole foldable
 * (nothing lifted twice, no undo that makes a later event impossible). One line where not.
 */
export const acceptLog: AcceptLog = (header, log) => {
  const parsed = parseJob({ ...header, log }, null);
  return parsed.ok ? null : parsed.problem;
};
