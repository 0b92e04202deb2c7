/**
 * The cold re-check after rework: what was fitted or soldered, every rail to its ground both ways, and the earlier readings that the work
 * could have changed. One row with one set-up. Skipping it because everything is new is the costly mistake (common practice).
 */
import type { JobEvent, MeasureEvent } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { TimelineEntry } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board, Part } from "../board/board.ts";
import { faultSites } from "../board/fault-sites.ts";
import { deriveRoles } from "../board/roles.ts";
import type { ColdCheck } from "../meter/prediction.ts";
import { lastPowerIndex } from "../safety/discharge.ts";
import { placeOf } from "./candidate-checks.ts";
import { andList } from "./faults-in-words.ts";
import { junctionPins } from "./junction-pins.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";

const RECHECK = {
  /** readings across the parts worked on, and earlier readings repeated, at most: 0.4 minutes each. From memory. */
  mostAcross: 6,
  mostRepeats: 5,
} as const;

type ColdMeasure = Omit<MeasureEvent, "reading">;

export interface Recheck {
  readonly row: readonly Action[];
  /** what is left out, and what no meter event can say; empty where there is nothing */
  readonly beside: string;
}

/** Work on the board since power was last on: part -> where in the log it was last worked on. */
type Work = ReadonlyMap<string, number>;

function workSince(entries: readonly TimelineEntry[], from: number): Work {
  const worked = new Map<string, number>();
  entries.forEach(({ event }, at) => {
    const ref = at < from ? null : workedPart(event);
    if (ref !== null) worked.set(ref, at);
  });
  return worked;
}

function workedPart(event: JobEvent): string | null {
  switch (event.do) {
    case "replace":
    case "restore":
      return event.part;
    case "resolder":
    case "clean":
      return event.part ?? null;
    case "refit":
      return pinOfPlace(event.place)?.ref ?? null;
    default:
      return null;
  }
}

/**
 * The row still open, empty where nothing was worked on since power or all is read again.
 * @param only - the readings across this part alone
 */
export function coldRecheck(input: PlanningInput, only: string | null = null): Recheck {
  const { board, timeline } = input;
  const { entries } = timeline;
  const work = workSince(entries, lastPowerIndex(timeline) + 1);
  const across = acrossParts(input, work, only);
  if (only !== null || work.size === 0) return { row: across, beside: "" };
  const last = Math.max(...work.values());
  const rails = openRails(input, work);
  const { repeats, left } = repeatable(input, work, last, [...across, ...rails]);
  const row = [...across, ...rails, ...repeats];
  return {
    row,
    beside: row.length === 0 ? "" : [leftWords(left), insulationWords(board, entries, work)].join(""),
  };
}

/** Readings across each part worked on, where none was taken after the work. */
function acrossParts({ board, timeline }: PlanningInput, work: Work, only: string | null): readonly Action[] {
  const row: Action[] = [];
  for (const [ref, at] of work) {
    const part = board.parts.get(ref);
    if (part === undefined || (only !== null && ref !== only) || timeline.entries[at]?.event.do === "clean")
      continue;
    const checks = faultSites(part).flatMap((site): ColdCheck[] => {
      const pins = junctionPins(part, site.junction);
      if (pins === null) return [];
      const [red, black] = pins.map((pin) => placeOf(timeline.now, part, pin));
      return red === black ? [] : [{ mode: "diode", red, black }];
    });
    const wanted = new Set(checks.map(({ red, black }) => pairKey(red, black)));
    const done = readAfter(timeline.entries, at).some(({ red, black }) =>
      wanted.has(pairKey(red ?? "", black ?? "")),
    );
    if (done) continue;
    for (const { mode, red, black } of checks.slice(0, 2)) {
      row.push({ do: "measure", mode, red, black });
      if (part.kind !== "fuse" && part.kind !== "link")
        row.push({ do: "measure", mode, red: black, black: red });
    }
  }
  return row.slice(0, RECHECK.mostAcross);
}

const pairKey = (a: string, b: string): string => [a, b].sort().join(" ");

function readAfter(entries: readonly TimelineEntry[], at: number): readonly MeasureEvent[] {
  return entries
    .slice(at + 1)
    .flatMap(({ event }) => (event.do === "measure" && isColdMode(event.mode) ? [event] : []));
}

function netsOf(part: Part | undefined): readonly string[] {
  return part === undefined ? [] : [...part.pins.values()];
}

/** Each rail to its ground both ways, unless that was read since the last work on one of its nets (or, with none, ever). */
function openRails({ board, timeline }: PlanningInput, work: Work): readonly Action[] {
  return deriveRoles(board).rails.flatMap(({ net, back }) => {
    const touched = [...work].filter(([ref]) => netsOf(board.parts.get(ref)).includes(net));
    const since = touched.reduce((last, [, at]) => Math.max(last, at), -1);
    const read = readAfter(timeline.entries, since);
    return [
      [net, back],
      [back, net],
    ].flatMap(([red = "", black = ""]): Action[] =>
      read.some((event) => event.red === red && event.black === black)
        ? []
        : [{ do: "measure", mode: "diode", red, black }],
    );
  });
}

function netAt(board: Board, place: string | undefined): string {
  const pin = pinOfPlace(place ?? "");
  return pin === null ? (place ?? "") : (board.parts.get(pin.ref)?.pins.get(pin.pin) ?? "");
}

/** Earlier readings with a probe on a net of the work (its ground apart), not taken again since; those on two such nets first. */
function repeatable(
  { board, timeline }: PlanningInput,
  work: Work,
  last: number,
  planned: readonly Action[],
): { readonly repeats: readonly Action[]; readonly left: number } {
  const touched = new Set([...work.keys()].flatMap((ref) => netsOf(board.parts.get(ref))));
  const again = new Set(
    [...planned, ...readAfter(timeline.entries, Math.min(...work.values()))].map(readingKey),
  );
  const before = new Map<string, ColdMeasure>();
  for (const { event, before: bench } of timeline.entries.slice(0, last)) {
    if (event.do !== "measure" || !isColdMode(event.mode) || again.has(readingKey(event))) continue;
    if (bench.lifted.size > 0 || bench.off.size > timeline.now.off.size) continue;
    const { mode, red, black } = event;
    if (red === undefined || black === undefined) continue;
    before.set(readingKey(event), { do: "measure", mode, red, black });
  }
  const shared = (event: ColdMeasure): number =>
    [event.red, event.black].filter((place) => {
      const net = netAt(board, place);
      return net !== board.zero && touched.has(net);
    }).length;
  const both = (event: ColdMeasure): boolean =>
    [event.red, event.black].every((place) => touched.has(netAt(board, place)));
  const changed = [...before.values()].filter((event) => shared(event) > 0);
  const ordered = [...changed.filter(both), ...changed.filter((event) => !both(event))];
  const repeats = ordered.slice(0, RECHECK.mostRepeats);
  return { repeats, left: before.size - repeats.length };
}

function readingKey(event: Action | MeasureEvent): string {
  return event.do === "measure" ? `${event.mode} ${event.red} ${event.black}` : "";
}

function leftWords(left: number): string {
  if (left === 0) return "";
  return ` ${left === 1 ? "One earlier reading is" : `${left} earlier readings are`} left out: no probe of theirs stood where the work was, or another of this row says the same.`;
}

/** Kinds that stand on a heatsink. Common practice. */
const ON_HEATSINK: ReadonlySet<string> = new Set([
  "module",
  "igbt",
  "mosfet",
  "bridge",
  "triac",
  "thyristor",
]);

/** A board file knows no heatsink: that its parts are insulated from it is for the hand to check, and said here. */
function insulationWords(board: Board, entries: readonly TimelineEntry[], work: Work): string {
  const fitted = [...work]
    .filter(([ref, at]) => {
      const event = entries[at]?.event.do;
      return (
        (event === "replace" || event === "restore") && ON_HEATSINK.has(board.parts.get(ref)?.kind ?? "")
      );
    })
    .map(([ref]) => ref);
  return fitted.length === 0
    ? ""
    : ` Screwed down, before power: every lead of ${andList(fitted)} to the heatsink in the highest ohms range, OL each; less is a missing pad, a burr or a bridge of paste.`;
}
