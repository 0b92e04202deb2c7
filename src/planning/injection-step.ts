/**
 * A low voltage fed into a shorted rail, first below every junction and then up to one volt, and a look from outside for the part that
 * gets warm. Clips are set before; nothing on the board is touched while it is fed.
 */

import { standsWhole } from "../bench/bench-state.ts";
import { INJECTION, isInjection } from "../bench/injection.ts";
import { lastPowered } from "../bench/last-power.ts";
import { railEnds } from "../board/rail-ends.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { injectedAmps, injectedRise, type ShortOfRail } from "../diagnosis/injected-heat.ts";
import { type InjectedRail, injectedRails } from "../diagnosis/rail-readings.ts";
import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import { normalTail } from "../numeric/normal.ts";
import { ceramicOrChip } from "./ceramic-or-chip.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action, Forecast } from "./proposal.ts";
import { injections, warmthTool } from "./rail-tools.ts";
import type { FindingStep } from "./steps.ts";
import type { SuspectedRail } from "./suspected-rail.ts";

/** Seconds after which warmth is looked for: a small part is there by then (from memory). */
const LOOK_SECONDS = 60;
/** A part stands out from this many kelvin on (common practice: 2 to 5), and how sharply that is seen, kelvin (from memory). */
const STANDS_OUT_KELVIN = 4;
const STANDS_OUT_SPREAD = 1.5;
/** Most parts whose warmth is read, and minutes of one more of them: a camera sees all in one picture (from memory), a spot is a reading each. */
const LOOKED = { camera: { most: 14, minutesMore: 0.1 }, spot: { most: 6, minutesMore: null } } as const;

/** Kelvin by which the short would stand out under this feed. */
function standsOut(
  input: PlanningInput,
  power: Extract<Action, { do: "power" }>,
  short: ShortOfRail,
): number {
  const by = warmthTool(input.equipment);
  if (by === null || short.part === null) return 0;
  const amps = injectedAmps(power, short.ohms);
  return injectedRise(input.board, short.part, amps * amps * short.ohms, { by, afterPower: LOOK_SECONDS });
}

function seenWarm(kelvin: number): number {
  return normalTail((STANDS_OUT_KELVIN - kelvin) / STANDS_OUT_SPREAD);
}

/** Injections of this rail since anything was last changed, the last of them last. */
function doneNow({ board, timeline }: PlanningInput, { group }: SuspectedRail): readonly InjectedRail[] {
  const changed = timeline.entries.findLastIndex(({ event }) =>
    ["replace", "remove", "restore", "lift", "refit", "clean", "resolder"].includes(event.do),
  );
  const since = timeline.entries[changed]?.logIndex ?? -1;
  return injectedRails(board, timeline).filter(
    (one) => one.group === group && one.logIndex > since && one.warmths.length > 0,
  );
}

/** The injection as one step, its looks included; null where the bench has nothing to feed or to see with, or it has been done. */
export function injectionStep(input: PlanningInput, rail: SuspectedRail): FindingStep | null {
  const feeds = injections(input.equipment, rail.group);
  const last = feeds.at(-1);
  const by = warmthTool(input.equipment);
  if (by === null || last === undefined) return null;
  // a supply at its limit gives no more however far it is turned up
  const done = doneNow(input, rail).some(
    ({ power, seen }) => (power.volts ?? 0) >= (last.volts ?? 0) || seen.includes("limiting"),
  );
  if (done) return null;
  const places = rail.suspects
    .filter(({ member }) => standsWhole(input.timeline.now, member.part.ref))
    .map(({ member }) => member.part.ref)
    .slice(0, LOOKED[by].most);
  const shares = [...places, null].map(() => new Float64Array(rail.shorts.length));
  const known = new Map<string, number>();
  rail.shorts.forEach((short, h) => {
    const at = short?.part == null ? -1 : places.indexOf(short.part);
    const key = `${short?.part} ${short?.ohms}`;
    const warm = short === null || at < 0 ? 0 : (known.get(key) ?? seenWarm(standsOut(input, last, short)));
    known.set(key, warm);
    if (at >= 0) shares[at][h] = warm;
    shares[places.length][h] = 1 - warm;
  });
  const { measure, power, unpower } = benchMinutes(input.board);
  const looking = measure + (LOOKED[by].minutesMore ?? measure) * Math.max(0, places.length - 1);
  const proof = measure * storesOfCharge(input.board).length;
  return {
    action: feeds[0],
    row: [],
    minutes: power,
    allMinutes: power + looking + unpower + proof,
    outcomes: [...places.map((part) => said`${part} warmest`), said`none of them gets warm`].map((word) => ({
      word,
      low: null,
      high: null,
    })),
    shares,
    inHand: null,
    lossMoney: 0,
    lead: leadWords(rail, feeds),
  };
}

function leadWords({ group }: SuspectedRail, feeds: readonly Extract<Action, { do: "power" }>[]): string {
  const [first] = feeds;
  const volts = `${first.volts} V`;
  return [
    first.ohms === undefined
      ? said`Feed the ${group.name} rail with ${volts}, limit ${`${first.limitAmps} A`}: healthy silicon stays off, all current flows in the short.`
      : said`Feed the ${group.name} rail with a ${volts} rechargeable cell through ${`${first.ohms} ohm`}.`,
    clipsWords(group),
    said`Of the parts across the rail the warmest is the short; what feeds it in series runs hotter and does not count. Below 0.05 ohm it stays cold.`,
  ].join(" ");
}

function clipsWords(group: SuspectedRail["group"]): string {
  const [plus, minus] = railEnds(group);
  return group.volts < 0
    ? said`Clip it on with the output off, plus on its 0 V (${plus}) and minus on ${minus}, for the rail is negative, then hands off.`
    : said`Clip it on with the output off, plus on ${plus}, then hands off.`;
}

function feedWords({ volts, limitAmps, ohms }: Extract<Action, { do: "power" }>): string {
  return ohms === undefined
    ? said`${`${volts} V`}, limit ${`${limitAmps} A`}`
    : said`${`${volts} V`} cell through ${`${ohms} ohm`}`;
}

/** What is shown instead of a forecast of mains power. */
export function injectionForecast(action: Action): Forecast | null {
  if (!isInjection(action) || action.do !== "power") return null;
  return {
    rung: {
      proves: said`which part of the rail takes the current`,
      goOn: said`one part is clearly warmer than the rest`,
      stop: said`the current rises, or anything smells`,
    },
    ladder: [],
    feeds: [{ what: feedWords(action), anyBreaks: 0, lossMoney: 0, chosen: true }],
    lowers: [],
    spent: null,
    anyBreaks: 0,
    breaks: [],
    advice: [
      (action.volts ?? 0) <= INJECTION.firstVolts
        ? said`${`${action.volts} V`} is below every junction: nothing that is whole is harmed.`
        : said`${`${action.volts} V`} is below the rail's own volts: nothing that is whole is harmed.`,
      action.ohms === undefined
        ? said`Current limit first, then the clips, then the output.`
        : said`The resistor in series first, then the clips, the cell last.`,
    ].join(" "),
  };
}

/** The rail is being fed: what to do next with the hands off; null where all is seen and it goes off. */
export interface FedNext {
  readonly action: Action;
  readonly row: readonly Action[];
  readonly why: string;
}

/** Looks where they would show something, else the next volts, else nothing. */
export function fedNext(input: PlanningInput, rail: SuspectedRail | null): FedNext | null {
  const injected = injectedRails(input.board, input.timeline).at(-1);
  if (
    injected === undefined ||
    injected.logIndex !== lastPowered(input.timeline)?.entry.logIndex ||
    rail?.group !== injected.group
  )
    return null;
  if (injected.seen.some((seen) => seen === "smoke" || seen === "trip")) return null;
  const by = warmthTool(input.equipment);
  if (by === null) return null;
  const next = injections(input.equipment, rail.group).find(
    ({ volts }) => (volts ?? 0) > (injected.power.volts ?? 0),
  );
  const { power: fed } = injected;
  const showing = shareShowing(input, rail, { ...fed, do: "power" });
  const atLimit = injected.seen.includes("limiting");
  if (injected.warmths.length === 0 && (showing >= SHOWS_LEAST || next === undefined || atLimit))
    return looks(rail, input, by);
  const [coldest, hottest] = rangeOf(injected);
  if (next === undefined || hottest - coldest > STANDS_OUT_KELVIN || atLimit) return null;
  return {
    action: next,
    row: [],
    why: whyTurnUp(fed, next, injected.warmths.length > 0),
  };
}

function whyTurnUp(
  { volts }: InjectedRail["power"],
  next: Extract<Action, { do: "power" }>,
  looked: boolean,
): string {
  const [at, to, limit] = [`${volts} V`, `${next.volts} V`, `${next.limitAmps} A`];
  return looked
    ? said`At ${at} nothing stands out: turn it up to ${to}, limit ${limit}, the clips as they are, hands off.`
    : said`At ${at} nothing stands out, nor would a short of these ohms: turn it up to ${to}, limit ${limit}, the clips as they are, hands off.`;
}

/** Share of the doubt whose short would stand out for the looks to be worth taking at this feed. From memory. */
const SHOWS_LEAST = 0.4;

function shareShowing(
  input: PlanningInput,
  rail: SuspectedRail,
  power: Extract<Action, { do: "power" }>,
): number {
  let shown = 0;
  let all = 0;
  for (const { member, chance } of rail.suspects) {
    const short = rail.shorts.find((one) => one?.part === member.part.ref);
    if (short == null) continue;
    all += chance;
    shown += chance * seenWarm(standsOut(input, power, short));
  }
  return all > 0 ? shown / all : 0;
}

function looks(rail: SuspectedRail, { timeline }: PlanningInput, by: "camera" | "spot"): FedNext {
  const [first, ...rest] = rail.suspects
    .filter(({ member }) => standsWhole(timeline.now, member.part.ref))
    .slice(0, LOOKED[by].most)
    .map(
      ({ member }): Action => ({
        do: "measure",
        mode: "temperature",
        part: member.part.ref,
        by,
        afterPower: LOOK_SECONDS,
      }),
    );
  return {
    action: first,
    row: rest,
    why: [
      by === "camera"
        ? said`The ${rail.group.name} rail is fed: after a minute one picture from the camera tells which part across it is warmest.`
        : said`The ${rail.group.name} rail is fed: after a minute the spot thermometer from a hand's breadth away tells which part across it is warmest.`,
      ...ceramicOrChip(rail, "heat"),
      said`Hands off the board.`,
    ].join(" "),
  };
}

function rangeOf({ warmths }: InjectedRail): readonly [number, number] {
  const read = warmths.flatMap(({ event: { reading } }) => (typeof reading === "number" ? [reading] : []));
  return read.length === 0 ? [0, 0] : [Math.min(...read), Math.max(...read)];
}
