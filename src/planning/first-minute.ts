/**
 * The first minute of a power-up: what a good board shows, as bands; what a reading outside of them would mean, from what is still
 * believed; when to switch off at once; and the moments at which heat is felt for. Known before the switch goes on, or it is too late.
 */

import type { Observed, Place, PowerEvent } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import { poweredNow } from "../bench/last-power.ts";
import type { Board } from "../board/board.ts";
import { deriveRoles } from "../board/roles.ts";
import type { LiveCheck, LiveReading } from "../live/live-reading.ts";
import { signShown, signsOf } from "../live/signs.ts";
import { said } from "../messages/said.ts";
import { expectations } from "./expectations.ts";
import { commaList } from "./faults-in-words.ts";
import type { FirstMinute, WatchRow } from "./first-minute-shape.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { boardUnder, goodLiveReading, livePartition } from "./live-partition.ts";
import { AS_IT_SHOULD, signsPartition } from "./live-signs.ts";
import { LOAD_TEST } from "./load-test.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import { plainStep, toldBy } from "./steps.ts";

/** When to switch off, each with where it comes from. */
export const ABORT_LIMITS = {
  /** a rail this share over its volts: the feedback is lost, and what hangs on it dies next (common practice) */
  railOver: 0.2,
  /** a lamp may be bright this long, seconds; behind a PTC a bus charges no slower, a short only shows later (trade notes 6.3) */
  lampSeconds: 3,
  lampBehindPtcSeconds: 30,
  /** degC at which a part that has no load yet is wrong, at the first moment and at the second (from memory) */
  soonCelsius: 60,
  warmCelsius: 90,
  /** a bench supply at its limit for longer than a bus takes to charge, seconds (common practice) */
  limitSeconds: 10,
} as const;

/** Outcomes rarer than this are not spoken of, and at most so many are. */
const RARE = 0.004;
const MOST_OTHERWISE = 2;
/** A band is this many deviations wide to either side: 5 to 95 %. */
const BAND = 1.645;
/** Parts whose warmth is told, and the least rise worth telling, kelvin. */
const WARMEST = 2;
const LEAST_RISE = 6;
const ROOM_CELSIUS = 23;

/** What to watch at the power-up that this step is, or at which it is taken; null at any other, and without a live model. */
export function firstMinute(
  input: PlanningInput,
  hypotheses: Hypotheses,
  action: Action,
): FirstMinute | null {
  const { board, timeline } = input;
  const power = action.do === "power" ? action : (poweredNow(timeline)?.power ?? null);
  if (input.liveFor === undefined || power === null) return null;
  const { bus, rails } = deriveRoles(board);
  const fedRail = power.feed === "bench" && typeof power.at === "object" ? power.at[0] : null;
  const places: readonly { readonly what: string; readonly at: readonly [Place, Place] }[] = [
    ...(bus === null ? [] : [{ what: said`bus`, at: [bus.plus, bus.minus] as const }]),
    ...rails.map(({ name, net, back }) => ({ what: name, at: [net, back] as const })),
  ];
  const rows = places.flatMap(({ what, at }) => voltsRow(input, hypotheses, power, what, at));
  return {
    underLoad: power.load !== undefined,
    on: input.timeline.now.powered,
    rows: [...lampRow(input, power), ...signRow(input, hypotheses, power), ...rows, ...heatRow(input, power)],
    abort: abortWords(board, power, fedRail),
    marks: marksOf(power),
  };
}

function voltsRow(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
  what: string,
  [red, black]: readonly [Place, Place],
): readonly WatchRow[] {
  const check: LiveCheck = { mode: "dcv", red, black };
  const good = goodLiveReading(input, power, check);
  const partition = livePartition(input, hypotheses, power, check);
  if (good === null || partition === null) return [];
  const step = plainStep({ do: "measure", mode: "dcv", red, black }, toldBy(partition), 0);
  const otherwise = expectations(step, hypotheses, input.board, null)
    .filter(({ probability, low, high }) => probability >= RARE && !holds(low, high, good))
    .slice(0, MOST_OTHERWISE)
    .map((one) => ({ if: one.if, means: one.means, probability: one.probability }));
  const clipped = (power.meters ?? []).some((pair) => pair[0] === red && pair[1] === black);
  return [{ what, places: [red, black], clipped, good: bandWords(good), otherwise }];
}

function holds(low: number | null, high: number | null, { value }: LiveReading): boolean {
  return low !== null && high !== null && low <= Math.abs(value) && Math.abs(value) <= high;
}

/** `310 V to 336 V`, small volts with two digits. */
function bandWords({ value, spread }: LiveReading): string {
  const digits = Math.abs(value) < 60 ? 2 : 0;
  const [low = "", high = ""] = [value - BAND * spread, value + BAND * spread].map(
    (one) => `${one.toFixed(digits)} V`,
  );
  return low === high ? low : said`${low} to ${high}`;
}

const FLASH_THEN_DARK = said`a flash, then dark`;
const LAMP_WORDS: Readonly<Partial<Record<Observed, string>>> = {
  "lamp-dark": FLASH_THEN_DARK,
  "lamp-dim": said`a flash, then dim`,
  "lamp-pulsing": said`slow pulsing: the lamp is too small for this board`,
  "lamp-bright": said`bright`,
};

function lampRow(input: PlanningInput, power: PowerEvent): readonly WatchRow[] {
  if (power.feed !== "lamp") return [];
  const state = boardUnder(input, power)?.state([]);
  const [seen] = state?.observed.slice(-1) ?? [];
  const good = LAMP_WORDS[seen ?? "lamp-dark"] ?? FLASH_THEN_DARK;
  const otherwise = [
    { if: said`stays bright`, means: said`a hard short: off, back to the cold checks`, probability: 0 },
    { if: said`dark at once, no bus`, means: said`the feed is open`, probability: 0 },
  ];
  return [{ what: said`lamp`, places: null, clipped: false, good, otherwise }];
}

/** Lights, clicks and fans of a good board, and what those that stay out would mean. */
function signRow(input: PlanningInput, hypotheses: Hypotheses, power: PowerEvent): readonly WatchRow[] {
  const state = boardUnder(input, power)?.state([]);
  const signs = signsOf(input.board);
  if (state === undefined || signs.length === 0 || isInjection(power)) return [];
  const given = signs.flatMap((sign) => {
    const there = state.givesSign(sign);
    return there === null ? [] : [signShown(sign, there)];
  });
  const partition = signsPartition(input, hypotheses, power);
  const step = partition === null ? null : plainStep({ do: "power", feed: power.feed }, toldBy(partition), 0);
  const otherwise = step === null ? [] : expectations(step, hypotheses, input.board, null);
  return [
    {
      what: said`signs of life`,
      places: null,
      clipped: false,
      good: commaList(given),
      otherwise: otherwise
        .filter((one) => one.if !== AS_IT_SHOULD && one.probability >= RARE)
        .slice(0, MOST_OTHERWISE)
        .map((one) => ({ if: one.if, means: one.means, probability: one.probability })),
    },
  ];
}

/** What gets warm on a good board by the second moment. */
function heatRow(input: PlanningInput, power: PowerEvent): readonly WatchRow[] {
  const state = boardUnder(input, power)?.state([]);
  if (state === undefined) return [];
  const warm = [...input.board.parts.keys()]
    .flatMap((part) => {
      const found = state.temperature(part, {
        ambient: ROOM_CELSIUS,
        by: "camera",
        afterPower: LOAD_TEST.warmSeconds,
      });
      const rise = (found?.celsius ?? 0) - ROOM_CELSIUS;
      return found === null || rise < LEAST_RISE ? [] : [{ part, rise, spread: found.spread }];
    })
    .sort((a, b) => b.rise - a.rise || (a.part < b.part ? -1 : 1))
    .slice(0, WARMEST)
    .map(({ part, rise, spread }) => `${part} ${rise.toFixed(0)} K (+-${(BAND * spread).toFixed(0)})`);
  const good =
    warm.length === 0
      ? said`nothing warm to speak of after 2 min`
      : said`over the room after 2 min: ${commaList(warm)}`;
  return [{ what: said`heat`, places: null, clipped: false, good, otherwise: [] }];
}

function abortWords(board: Board, power: PowerEvent, fedRail: Place | null): readonly string[] {
  const { railOver, lampSeconds, lampBehindPtcSeconds, limitSeconds } = ABORT_LIMITS;
  const { busCapacitors, inrush } = deriveRoles(board);
  const bears = Math.min(
    ...busCapacitors.map((ref) => board.parts.get(ref)?.value.volts ?? Number.POSITIVE_INFINITY),
  );
  const ptc = inrush.some((ref) => board.parts.get(ref)?.kind === "ptc");
  const words: string[] = [said`smoke, a crackle, a smell`];
  if (power.feed === "lamp")
    words.push(
      ptc
        ? said`lamp bright for more than ${`${lampBehindPtcSeconds} s`} (a PTC is in the way)`
        : said`lamp bright for more than ${`${lampSeconds} s`}`,
    );
  if (power.feed === "bench") words.push(said`supply at its limit for more than ${`${limitSeconds} s`}`);
  words.push(said`a rail over by ${`${Math.round(100 * railOver)} %`} or more`);
  if (fedRail === null && Number.isFinite(bears))
    words.push(said`bus above ${`${bears} V`}, all that its capacitors bear`);
  words.push(
    said`a part over ${`${ABORT_LIMITS.soonCelsius} degC`} at 20 s, over ${`${ABORT_LIMITS.warmCelsius} degC`} at 2 min (from outside, never by finger)`,
  );
  return words;
}

function marksOf(power: PowerEvent): FirstMinute["marks"] {
  const { soonSeconds, warmSeconds, endSeconds } = LOAD_TEST;
  const marks = [
    { seconds: soonSeconds, what: said`small parts: what is hot now is shorted or overdriven` },
    { seconds: warmSeconds, what: said`the warmest parts against their band` },
  ];
  return power.load === undefined
    ? marks
    : [...marks, { seconds: endSeconds, what: said`one thermal cycle, where it was worth the wait` }];
}
