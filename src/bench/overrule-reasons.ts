/** Why a gate or a proposal is passed over, in words that are one tap. */
import { plain, said } from "../messages/said.ts";
import type { Overruled } from "./event.ts";

/** The reasons heard most often at a bench (from memory); told where they are tapped, kept in the log as they read in English. */
export const OVERRULE_REASONS: Readonly<Record<Overruled, readonly string[]>> = {
  proof: [
    said`Emptied it through my own resistor`,
    said`Proved it with another meter`,
    said`Its capacitors are off or shorted out`,
    said`I answer for it, for a reason of my own`,
  ],
  motor: [
    said`Read before this job, it is good`,
    said`It runs on another board`,
    said`I answer for it, for a reason of my own`,
  ],
  resistor: [said`It is meant to stay on for this run`, said`I answer for it, for a reason of my own`],
  proposal: [
    said`I cannot reach that place`,
    said`I do not have the part or tool`,
    said`Already done before this job`,
    said`It does not look safe to me`,
    said`I know this board`,
  ],
};

const BY_PLAIN = new Map(
  Object.values(OVERRULE_REASONS)
    .flat()
    .map((reason) => [plain(reason), reason]),
);

/** A reason of the log: one that was tapped can be told in any language, what somebody wrote stays as it is. */
export function overruleReason(why: string): string {
  return BY_PLAIN.get(why) ?? why;
}
