/** Which entries of a log speak of one rail as a whole: milliohms at the pins of its parts, and what a low voltage fed into it showed. */
import { type BenchState, benchKey } from "../bench/bench-state.ts";
import type { MeasureEvent, Observed, PowerEvent } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import { pinOfPlace } from "../bench/place.ts";
import { railAtPins } from "../bench/rail-at-pins.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { type RailGroup, railGroups } from "../board/rail-groups.ts";
import type { AtPart } from "./along-rail.ts";

/** Milliohms read along one rail, the board unchanged in between. */
export interface AlongRail {
  readonly group: RailGroup;
  readonly readings: readonly (AtPart & { readonly logIndex: number })[];
}

/** A low voltage fed into a shorted rail, or its own supply on it, and what was read of it. */
export interface InjectedRail {
  /** the board's own supply feeds it, nobody knows with how many amps: only the warmths are compared */
  readonly somehow: boolean;
  readonly group: RailGroup;
  readonly power: PowerEvent;
  readonly bench: BenchState;
  readonly logIndex: number;
  readonly seen: readonly Observed[];
  readonly amps: readonly { readonly amps: number; readonly logIndex: number }[];
  readonly warmths: readonly { readonly event: MeasureEvent; readonly logIndex: number }[];
  /** ohms read across the rail before, on the same bench; null where nobody has */
  readonly ohms: number | null;
}

const CURES: ReadonlySet<string> = new Set(["clean", "resolder"]);

/** Milliohm readings by rail, in an order that does not depend on when they were taken. */
export function alongRails(board: Board, timeline: Timeline): readonly AlongRail[] {
  const found = new Map<string, { group: RailGroup; readings: (AtPart & { logIndex: number })[] }>();
  let cures = 0;
  for (const { event, before, logIndex, span } of timeline.entries) {
    if (CURES.has(event.do)) cures++;
    if (event.do !== "measure" || typeof event.reading !== "number") continue;
    const at = railAtPins(board, before, event);
    if (at === null) continue;
    const key = `${at.group.name}|${benchKey(before)}|${span}|${cures}`;
    const known = found.get(key) ?? { group: at.group, readings: [] };
    known.readings.push({ part: at.part, ohms: event.reading, logIndex });
    found.set(key, known);
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { group, readings }]) => ({
      group,
      readings: readings.sort((a, b) => a.ohms - b.ohms || (a.part < b.part ? -1 : 1)),
    }));
}

/** Of milliohm readings all but the lowest: how low the rail is, is said once. */
export function saidAlong(along: readonly AlongRail[]): ReadonlySet<number> {
  return new Set(along.flatMap(({ readings }) => readings.slice(1).map(({ logIndex }) => logIndex)));
}

/** Does this feed stand on the rail and its 0 V? */
export function injectedGroup(board: Board, bench: BenchState, power: PowerEvent): RailGroup | null {
  if (!isInjection(power) || typeof power.at !== "object") return null;
  const nets = power.at.map((place) => {
    const pin = pinOfPlace(place);
    if (pin === null) return place;
    return bench.lifted.has(place) || bench.off.has(pin.ref)
      ? null
      : (board.parts.get(pin.ref)?.pins.get(pin.pin) ?? null);
  });
  return railGroups(board).find(({ net, back }) => nets.includes(net) && nets.includes(back)) ?? null;
}

/** Ohms read across the rail at its own net on this bench, the last of them. */
function ohmsAcross(timeline: Timeline, group: RailGroup, bench: BenchState, until: number): number | null {
  const cold = { ...bench, powered: false };
  const found = timeline.entries.findLast(
    ({ event, before, logIndex }) =>
      logIndex < until &&
      event.do === "measure" &&
      event.mode === "ohms" &&
      typeof event.reading === "number" &&
      benchKey(before) === benchKey(cold) &&
      [event.red, event.black].every((place) => place === group.net || place === group.back),
  );
  return found?.event.do === "measure" && typeof found.event.reading === "number"
    ? found.event.reading
    : null;
}

/** Every low voltage fed into a rail, with what was read before the feed changed. */
export function injectedRails(board: Board, timeline: Timeline): readonly InjectedRail[] {
  const found: (InjectedRail & {
    amps: { amps: number; logIndex: number }[];
    warmths: { event: MeasureEvent; logIndex: number }[];
  })[] = [];
  let now: (typeof found)[number] | null = null;
  for (const { event, before, after, logIndex } of timeline.entries) {
    if (event.do === "unpower") now = null;
    if (event.do === "power") {
      const group = injectedGroup(board, before, event);
      now =
        group === null
          ? null
          : {
              group,
              somehow: false,
              power: event,
              bench: after,
              logIndex,
              seen: [event.observed ?? []].flat(),
              amps: [],
              warmths: [],
              ohms: ohmsAcross(timeline, group, before, logIndex),
            };
      if (now !== null) found.push(now);
    }
    if (now === null || event.do !== "measure" || typeof event.reading !== "number") continue;
    if (event.mode === "temperature" && event.part !== undefined) now.warmths.push({ event, logIndex });
    if (event.mode === "amps") now.amps.push({ amps: event.reading, logIndex });
  }
  return found;
}

/** Log indexes of all that these account for: where the board's own supply feeds the rail, not its power-up. */
export function saidInjected(injected: readonly InjectedRail[]): ReadonlySet<number> {
  return new Set(
    injected.flatMap(({ logIndex, somehow, amps, warmths }) => [
      ...(somehow ? [] : [logIndex]),
      ...amps.map((one) => one.logIndex),
      ...warmths.map((one) => one.logIndex),
    ]),
  );
}
