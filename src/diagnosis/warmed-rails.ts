/**
 * A rail that reads shorted and is fed by the board's own supply: of the parts across it the warmest is the short. What stands in series
 * with it, its own maker above all, runs hotter and does not count.
 */

import { netOfPlace } from "../bench/place.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { RAIL_SHORT_OHMS, type RailGroup, railGroups } from "../board/rail-groups.ts";
import type { InjectedRail } from "./rail-readings.ts";

/** Warmths that are compared: fewer tell nothing of each other. */
const LEAST_COMPARED = 2;

/** The rails that read shorted and of which the warmth of two parts or more was read under one power-up. */
export function warmedRails(board: Board, timeline: Timeline): readonly InjectedRail[] {
  const found: InjectedRail[] = [];
  let power: TimelineEntry | null = null;
  let warmths: { readonly event: WarmthEvent; readonly logIndex: number }[] = [];
  const close = (): void => {
    if (power !== null && warmths.length >= LEAST_COMPARED)
      found.push(...ofPower(board, timeline, power, warmths));
    power = null;
    warmths = [];
  };
  for (const entry of timeline.entries) {
    const { event, logIndex } = entry;
    if (event.do === "power" || event.do === "unpower") close();
    if (event.do === "power" && event.feed !== "bench") power = entry;
    if (event.do === "measure" && event.mode === "temperature" && typeof event.reading === "number")
      warmths.push({ event, logIndex });
  }
  close();
  return found;
}

type WarmthEvent = InjectedRail["warmths"][number]["event"];

function ofPower(
  board: Board,
  timeline: Timeline,
  { event, after, logIndex }: TimelineEntry,
  read: InjectedRail["warmths"],
): readonly InjectedRail[] {
  if (event.do !== "power") return [];
  return railGroups(board).flatMap((group): readonly InjectedRail[] => {
    const across = new Set(
      group.members.filter(({ part }) => !feeds(group, part.ref)).map(({ part }) => part.ref),
    );
    const warmths = read.filter(({ event: { part } }) => part !== undefined && across.has(part));
    if (warmths.length < LEAST_COMPARED || !readsShorted(board, timeline, group, logIndex)) return [];
    const nothing = { seen: [], amps: [], ohms: null };
    return [{ group, somehow: true, power: event, bench: after, logIndex, warmths, ...nothing }];
  });
}

/** Does the part make the rail, so that all of its current runs through it? */
function feeds({ members }: RailGroup, ref: string): boolean {
  return members.some(({ part, junction }) => part.ref === ref && junction === "outgnd");
}

/** Was it read so low across, from where it last was worked on to this power-up? */
function readsShorted(board: Board, { entries }: Timeline, group: RailGroup, until: number): boolean {
  const nets = new Set([group.net, ...group.cuts.flatMap((cut) => cut.nets)]);
  let low = false;
  for (const { event, logIndex } of entries) {
    if (logIndex >= until) break;
    if (event.do === "replace" || event.do === "clean") low = false;
    if (event.do !== "measure" || (event.mode !== "ohms" && event.mode !== "continuity")) continue;
    const [one, other] = [event.red ?? "", event.black ?? ""].map((place) => netOfPlace(board, place));
    const across = (nets.has(one) && other === group.back) || (nets.has(other) && one === group.back);
    const { reading } = event;
    if (across)
      low =
        reading === "beep" ||
        reading === "zero" ||
        (typeof reading === "number" && reading < RAIL_SHORT_OHMS);
  }
  return low;
}
