import { isPlugged } from "../bench/place.ts";
import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import { minutesOf } from "./action-minutes.ts";
import { coldRecheck, recheckOf } from "./cold-recheck.ts";
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
    if (!off.has(ref) && !isMotor(input, ref))
      return due(
        { do: "refit", place },
        isPlugged(board, place)
          ? said`Contact ${place.slice(ref.length + 1)} of ${ref} goes back on before anything is powered.`
          : said`Pin ${place.slice(ref.length + 1)} of ${ref} goes back on its pad before anything is powered.`,
      );
  }
  for (const ref of [...off].sort()) {
    if (absent.has(ref) || !board.parts.has(ref) || isMotor(input, ref)) continue;
    if ((dead.get(ref) ?? 0) < 0.5)
      return due(
        { do: "restore", part: ref },
        said`${ref} reads good and goes back before anything is powered.`,
      );
    return due(
      { do: "replace", part: ref },
      said`${ref} is off the board and not to be trusted: a new one goes in.`,
    );
  }
  const { row, why } = coldRecheck(input);
  const [first, ...rest] = row;
  return first === undefined ? null : { action: first, row: rest, why, expect: [] };
}

/** Minutes of all that `beforePower` will ask for: pins and parts back in their places, and the re-check. */
export function minutesBeforePower(input: PlanningInput): number {
  const { board, timeline } = input;
  const { lifted, off } = timeline.now;
  const absent = absentParts(input);
  const back = (action: Action) => minutesOf(board, timeline.now, action);
  let minutes = benchMinutes(board).measure * coldRecheck(input).row.length;
  for (const place of lifted)
    if (!isMotor(input, place.slice(0, place.indexOf(".")))) minutes += back({ do: "refit", place });
  for (const part of off)
    if (!absent.has(part) && !isMotor(input, part)) minutes += back({ do: "restore", part });
  return minutes;
}

/** A motor has a gate of its own (`motor-first.ts`). */
function isMotor({ board }: PlanningInput, ref: string): boolean {
  return board.parts.get(ref)?.kind === "motor";
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
  const [first, ...rest] = recheckOf(input, ref);
  return first === undefined
    ? null
    : {
        action: first,
        row: rest,
        why: said`The joints of ${ref} are new: read it again before it is replaced after all.`,
        expect: [],
      };
}
