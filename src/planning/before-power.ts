import { lastPowerUp } from "../bench/injection.ts";
import { isPlugged } from "../bench/place.ts";
import { faultSites } from "../board/fault-sites.ts";
import type { ColdCheck } from "../meter/prediction.ts";
import { MINUTES } from "../money/minutes.ts";
import { minutesOf } from "./action-minutes.ts";
import { placeOf } from "./candidate-checks.ts";
import { junctionPins } from "./junction-pins.ts";
import type { DueStep } from "./make-safe.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";

/** Most readings of one cold re-check row. */
const MOST_RECHECKS = 6;

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
        `${isPlugged(board, place) ? "Contact" : "Pin"} ${place.slice(ref.length + 1)} of ${ref} goes back ${isPlugged(board, place) ? "on" : "on its pad"} before anything is powered.`,
      );
  }
  for (const ref of [...off].sort()) {
    if (absent.has(ref) || !board.parts.has(ref) || isMotor(input, ref)) continue;
    if ((dead.get(ref) ?? 0) < 0.5)
      return due({ do: "restore", part: ref }, `${ref} reads good and goes back before anything is powered.`);
    return due(
      { do: "replace", part: ref },
      `${ref} is off the board and not to be trusted: a new one goes in.`,
    );
  }
  const [first, ...rest] = recheckRow(input);
  return first === undefined
    ? null
    : {
        action: first,
        row: rest,
        why: "Cold re-check before power: what was fitted or soldered may be bad, in wrong, or bridged, and a second short behind the first is common.",
        expect: [],
      };
}

/** Minutes of all that `beforePower` will ask for: pins and parts back in their places, and the re-check. */
export function minutesBeforePower(input: PlanningInput): number {
  const { board, timeline } = input;
  const { lifted, off } = timeline.now;
  const absent = absentParts(input);
  const back = (action: Action) => minutesOf(board, timeline.now, action);
  let minutes = MINUTES.measure * recheckRow(input).length;
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
  const [first, ...rest] = recheckRow(input, ref);
  return first === undefined
    ? null
    : {
        action: first,
        row: rest,
        why: `The joints of ${ref} are new: read it again before it is replaced after all.`,
        expect: [],
      };
}

/**
 * Readings across each part worked on since power was last on, where none was taken after the work.
 * @param only - this part alone
 */
function recheckRow({ board, timeline }: PlanningInput, only: string | null = null): readonly Action[] {
  const since = timeline.entries.slice(lastPowerUp(timeline) + 1);
  const worked = new Map<string, number>();
  since.forEach(({ event }, at) => {
    if (event.do === "replace" || event.do === "restore") worked.set(event.part, at);
    if (event.do === "resolder" && event.part !== undefined) worked.set(event.part, at);
    if (event.do === "refit") worked.set(event.place.slice(0, event.place.indexOf(".")), at);
  });
  const row: Action[] = [];
  for (const [ref, at] of worked) {
    const part = board.parts.get(ref);
    if (part === undefined || part.kind === "motor" || (only !== null && ref !== only)) continue;
    const checks = faultSites(part).flatMap((site): ColdCheck[] => {
      const pins = junctionPins(part, site.junction);
      if (pins === null) return [];
      const [red, black] = pins.map((pin) => placeOf(timeline.now, part, pin));
      return red === black ? [] : [{ mode: "diode", red, black }];
    });
    const nets = (a: string, b: string) => [a, b].sort().join(" ");
    const wanted = new Set(checks.map(({ red, black }) => nets(red, black)));
    const done = since
      .slice(at + 1)
      .some(
        ({ event }) =>
          event.do === "measure" &&
          event.mode !== "dcv" &&
          wanted.has(nets(event.red ?? "", event.black ?? "")),
      );
    if (done) continue;
    for (const { mode, red, black } of checks.slice(0, 2)) {
      row.push({ do: "measure", mode, red, black });
      if (part.kind !== "fuse" && part.kind !== "link")
        row.push({ do: "measure", mode, red: black, black: red });
    }
  }
  return row.slice(0, MOST_RECHECKS);
}
