/**
 * The cold re-check after rework: across what was fitted or soldered, and both ways from its ground each rail that the work was at. One row
 * with one set-up. Readings elsewhere still stand and are not taken again.
 */
import type { JobEvent } from "../bench/event.ts";
import { baselineOf } from "../bench/incoming.ts";
import { lastPowerUp } from "../bench/injection.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board, Part } from "../board/board.ts";
import { faultSites } from "../board/fault-sites.ts";
import { deriveRoles } from "../board/roles.ts";
import { said } from "../messages/said.ts";
import type { ColdCheck } from "../meter/prediction.ts";
import { checkOnBoard } from "./beside-baseline.ts";
import { placeOf } from "./candidate-checks.ts";
import { andList, semicolonList } from "./faults-in-words.ts";
import { junctionPins } from "./junction-pins.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import { checkKey } from "./still-known.ts";

const RECHECK = {
  /** readings across the parts worked on, and rails read, at most: a bound on minutes. From memory. */
  mostAcross: 6,
  mostRails: 2,
} as const;

export interface Recheck {
  readonly row: readonly Action[];
  /** why each reading is taken, and what no meter event can say; empty where the row is */
  readonly why: string;
}

/** Where in the log each part was last worked on since power was on. */
type Work = ReadonlyMap<string, number>;

/** The row still open; empty where nothing was worked on since power was last on, or all is read again. */
export function coldRecheck(input: PlanningInput): Recheck {
  const { board, timeline } = input;
  const work = workSince(timeline.entries, lastPowerUp(timeline) + 1);
  const { row: across, parts } = acrossWork(input, work);
  const taken = new Set(across.flatMap(keysOf));
  const rails = railsAtWork(input, work)
    .map(({ name, at, checks }) => ({ name, at, row: checks.filter((one) => !taken.has(checkKey(one))) }))
    .filter(({ row }) => row.length > 0)
    .slice(0, RECHECK.mostRails);
  const row = [
    ...across,
    ...rails.flatMap(({ row: open }) => open.map((check): Action => ({ do: "measure", ...check }))),
  ];
  if (row.length === 0) return { row, why: "" };
  const acrossWords =
    parts.length === 0
      ? []
      : [
          said`across ${andList(parts)}, because what was fitted or soldered may be bad, in wrong, or bridged`,
          ...(parts.some((part) => baselineOf(timeline.entries, part).length > 0)
            ? [said`held against what was read before it went in`]
            : []),
        ];
  const railWords = rails.map(({ name, at }) =>
    name === null
      ? said`the bus both ways, because ${andList(at)} hangs on it`
      : said`the ${name} rail both ways, because ${andList(at)} hangs on it`,
  );
  return {
    row,
    why: [
      said`Cold re-check before power: ${semicolonList([...acrossWords, ...railWords])}. A second short behind the first is common.`,
      ...heatsinkWords(board, timeline.entries, work),
    ].join(" "),
  };
}

/** The readings across one part that were not taken since it was last worked on. */
export function recheckOf(input: PlanningInput, ref: string): readonly Action[] {
  const at = workSince(input.timeline.entries, lastPowerUp(input.timeline) + 1).get(ref);
  return at === undefined ? [] : acrossWork(input, new Map([[ref, at]])).row;
}

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
      return event.part ?? null;
    case "refit":
      return pinOfPlace(event.place)?.ref ?? null;
    default:
      return null;
  }
}

function acrossWork(
  { board, timeline }: PlanningInput,
  work: Work,
): { readonly row: readonly Action[]; readonly parts: readonly string[] } {
  const row: Action[] = [];
  const parts: string[] = [];
  for (const [ref, at] of work) {
    const part = board.parts.get(ref);
    // a motor has a gate of its own (`motor-first.ts`)
    if (part === undefined || part.kind === "motor") continue;
    const after = coldAfter(timeline.entries, at);
    const baseline = timeline.entries[at].event.do === "replace" ? baselineOnBoard(board, timeline, ref) : [];
    if (baseline.length > 0) {
      const taken = new Set(after.map(checkKey));
      const open = baseline.filter((check) => !taken.has(checkKey(check)));
      if (open.length > 0) parts.push(ref);
      row.push(...open.map((check): Action => ({ do: "measure", ...check })));
      continue;
    }
    const checks = faultSites(part).flatMap((site): ColdCheck[] => {
      const pins = junctionPins(part, site.junction);
      if (pins === null) return [];
      const [red, black] = pins.map((pin) => placeOf(timeline.now, part, pin));
      return red === black ? [] : [{ mode: "diode", red, black }];
    });
    const pair = (a: string, b: string) => [a, b].sort().join(" ");
    const wanted = new Set(checks.map(({ red, black }) => pair(red, black)));
    const read = after.some(({ red, black }) => wanted.has(pair(red, black)));
    if (read || checks.length === 0) continue;
    parts.push(ref);
    for (const { mode, red, black } of checks.slice(0, 2)) {
      row.push({ do: "measure", mode, red, black });
      if (part.kind !== "fuse" && part.kind !== "link")
        row.push({ do: "measure", mode, red: black, black: red });
    }
  }
  return { row: row.slice(0, RECHECK.mostAcross), parts };
}

/** What was read of the part before it went in, between the same pins on the board: the row that it is held against. */
function baselineOnBoard(board: Board, timeline: Timeline, ref: string): readonly ColdCheck[] {
  return baselineOf(timeline.entries, ref)
    .flatMap((one) => checkOnBoard(board, timeline, one) ?? [])
    .slice(0, RECHECK.mostAcross);
}

/** Cold readings taken after this place in the log. */
function coldAfter(entries: readonly TimelineEntry[], at: number): readonly ColdCheck[] {
  return entries.slice(at + 1).flatMap(({ event }): ColdCheck[] => {
    if (event.do !== "measure" || !isColdMode(event.mode)) return [];
    const { mode, red = "", black = "" } = event;
    return [{ mode, red, black }];
  });
}

function keysOf(action: Action): readonly string[] {
  if (action.do !== "measure" || !isColdMode(action.mode)) return [];
  const { mode, red = "", black = "" } = action;
  return [checkKey({ mode, red, black })];
}

/** Work by which a joint on a rail is made anew, or another part comes to it; a pin put back is read across its part alone. */
const AT_RAIL: ReadonlySet<JobEvent["do"]> = new Set(["replace", "restore", "resolder"]);

/** Bus (without a name) and rails that a part worked on hangs on, with the directions not read since, and those parts. */
function railsAtWork({ board, timeline }: PlanningInput, work: Work) {
  const { bus, rails } = deriveRoles(board);
  const all = [
    ...(bus === null ? [] : [{ name: null, net: bus.plus, back: bus.minus }]),
    ...rails.map(({ name, net, back }) => ({ name, net, back })),
  ];
  return all.flatMap(({ name, net, back }) => {
    const at = [...work].filter(
      ([ref, index]) =>
        AT_RAIL.has(timeline.entries[index].event.do) && netsOf(board.parts.get(ref)).includes(net),
    );
    if (at.length === 0) return [];
    const since = Math.max(...at.map(([, index]) => index));
    const read = new Set(coldAfter(timeline.entries, since).map(checkKey));
    const both: readonly ColdCheck[] = [
      { mode: "diode", red: net, black: back },
      { mode: "diode", red: back, black: net },
    ];
    return [{ name, at: at.map(([ref]) => ref), checks: both.filter((check) => !read.has(checkKey(check))) }];
  });
}

function netsOf(part: Part | undefined): readonly string[] {
  return part === undefined ? [] : [...part.pins.values()];
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
function heatsinkWords(board: Board, entries: readonly TimelineEntry[], work: Work): readonly string[] {
  const fitted = [...work].flatMap(([ref, at]) => {
    const { do: what } = entries[at].event;
    const onSink = ON_HEATSINK.has(board.parts.get(ref)?.kind ?? "");
    return (what === "replace" || what === "restore") && onSink ? [ref] : [];
  });
  return fitted.length === 0
    ? []
    : [
        said`Screwed down: each lead of ${andList(fitted)} to the heatsink in the highest ohms range, OL; less is a missing pad, a burr or a bridge of paste.`,
      ];
}
