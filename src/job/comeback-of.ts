/** The link from a board that came back to the job that it left with. */
import { said } from "../messages/said.ts";
import type { Fields } from "../units/fields.ts";

/** Why it came back; `other` is nothing of the repair's. */
export type ComebackReason = "same-fault" | "missed-fault" | "fitted-part" | "other";
export const COMEBACK_REASONS: readonly ComebackReason[] = [
  "same-fault",
  "missed-fault",
  "fitted-part",
  "other",
];

/** The job field that links a returned board to the job that it left with. */
export interface ComebackOf {
  /** the old job's id, or the path of its file */
  readonly job: string;
  readonly reason: ComebackReason;
}

/** The field out of a job file; null where it has none. */
export function readComeback(job: Fields): ComebackOf | null {
  if (!job.has("comebackOf")) return null;
  const link = job.object("comebackOf");
  link.only(["job", "reason"], said`a comeback`);
  link.require("job", "reason");
  const name = link.text("job") ?? "";
  if (name.trim() === "")
    link.complain("job", said`is empty; it is the id or the file of the job that came back`);
  return { job: name, reason: link.word("reason", COMEBACK_REASONS) ?? "other" };
}

/** Is the old repair to blame? Then it is mended for nothing. */
export function isOwnFault(comeback: ComebackOf | null): boolean {
  return comeback !== null && comeback.reason !== "other";
}
