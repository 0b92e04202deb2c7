import { coldRecheck } from "./cold-recheck.ts";
import type { DueStep } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";

/**
 * What still stands between this board and power although nothing more is to be replaced: pins to put back, parts to restore, and
 * the cold re-check of what was fitted (common practice; skipping it because everything is new is the costly mistake). Null: power may come.
 * @param dead - chance that each part is faulty
 */
export function beforePower(input: PlanningInput, dead: ReadonlyMap<string, number>): DueStep | null {
  const { board, timeline } = input;
  const absent = absentParts(input);
  const { lifted, off } = timeline.now;
  for (const place of [...lifted].sort()) {
    const ref = place.slice(0, place.indexOf("."));
    if (!off.has(ref))
      return due(
        { do: "refit", place },
        `Pin ${place.slice(ref.length + 1)} of ${ref} goes back on its pad before anything is powered.`,
      );
  }
  for (const ref of [...off].sort()) {
    if (absent.has(ref) || !board.parts.has(ref)) continue;
    if ((dead.get(ref) ?? 0) < 0.5)
      return due({ do: "restore", part: ref }, `${ref} reads good and goes back before anything is powered.`);
    return due(
      { do: "replace", part: ref },
      `${ref} is off the board and not to be trusted: a new one goes in.`,
    );
  }
  const { row, beside } = coldRecheck(input);
  const [first, ...rest] = row;
  return first === undefined
    ? null
    : {
        action: first,
        row: rest,
        why: `Cold re-check before power: what was fitted or soldered may be bad, in wrong, or bridged, and a second short behind the first is common. Every rail to its ground both ways, and what was read before where the work may have changed it.${beside}`,
        expect: [],
      };
}

function due(action: Action, why: string): DueStep {
  return { action, row: [], why, expect: [] };
}

/**
 * A part whose joints were made anew has to be read again before it is replaced after all: it may be cured. Null where it has not been
 * resoldered, or has been read since.
 */
export function resolderedUnread(input: PlanningInput, ref: string): DueStep | null {
  const work = input.timeline.entries.findLast(
    ({ event }) => (event.do === "resolder" || event.do === "replace") && event.part === ref,
  );
  if (work?.event.do !== "resolder") return null;
  const [first, ...rest] = coldRecheck(input, ref).row;
  return first === undefined
    ? null
    : {
        action: first,
        row: rest,
        why: `The joints of ${ref} are new: read it again before it is replaced after all.`,
        expect: [],
      };
}
