/**
 * What a low voltage fed into a shorted rail shows: whether the supply goes to its limit, the amps, and which part gets warm. The short
 * turns amps squared times its ohms to heat; nobody knows its ohms beyond what was read across the rail, and one room is behind all
 * readings, so both are summed over. Of the parts across the rail the warmest is the short; what stands in series with it is no member.
 */
import { INJECTION } from "../bench/injection.ts";
import type { Board } from "../board/board.ts";
import { FEED_MODEL } from "../live/power-feed.ts";
import { temperatureOf } from "../live/temperature.ts";
import { RISE_SHARE, ROOM, THERMOMETERS } from "../live/thermal-table.ts";
import { logAdd, logSumExp } from "../numeric/log-space.ts";
import { logNormalDensity, normalTail } from "../numeric/normal.ts";
import type { InjectedRail } from "./rail-readings.ts";

export const INJECTED = {
  /** of the short's rise what board and copper bring to the parts around it, and its deviation (from memory) */
  nearShare: 0.08,
  nearSpread: 0.08,
  /** a reading astray: how often, and how wide, kelvin; shiny parts and wrong ones read too cold, hardly any too hot (from memory) */
  slipShare: 0.015,
  hotSlipShare: 0.002,
  slipKelvin: 60,
  /** watts in the short of a rail that its own supply feeds, hiccuping or at its limit: median, deviation of the ln (from memory) */
  someWatts: 0.3,
  someWattsLn: 1.3,
  /** deviation of ln(ohms) of what was read across the rail, contact included, and the ohms of leads and contact */
  readLn: 0.12,
  contactOhms: 0.3,
  /** deviation of ln(amps) at which a supply says that it limits, and of amps read (from memory) */
  limitLn: 0.1,
  ampsShare: 0.08,
  ampsLeast: 0.01,
  /** a chip's amps above this many volts, as multiples of what its ohms would pass, each as likely (0.5 V common practice, rest from memory) */
  bendsAboveVolts: 0.5,
  bends: [1, 1.5, 2.2],
  /** sights that follow no rule (from memory) */
  stray: 0.03,
} as const;

const M = INJECTED;
const STEP = 0.5;
const POINTS = Array.from({ length: 13 }, (_, k) => (k - 6) * STEP);
const LOG_WEIGHTS = (() => {
  const total = Math.log(POINTS.reduce((sum, z) => sum + Math.exp(-0.5 * z * z), 0));
  return POINTS.map((z) => -0.5 * z * z - total);
})();

/** Where the short is and how many ohms: a part across the rail, or none of them; `ohms` infinite where there is no short. */
export interface ShortOfRail {
  readonly part: string | null;
  readonly ohms: number;
  /** deviation of its ln */
  readonly spreadLn: number;
  /** a chip, which conducts more than in proportion once its junctions do; a capacitor, dirt or solder does not */
  readonly bends: boolean;
}

/** Amps that the feed drives through so many ohms. */
export function injectedAmps(
  { volts, limitAmps, ohms }: Pick<InjectedRail["power"], "volts" | "limitAmps" | "ohms">,
  shortOhms: number,
): number {
  const free =
    (volts ?? INJECTION.firstVolts) / ((ohms ?? 0) + FEED_MODEL.benchOhms + Math.max(shortOhms, 1e-4));
  return Math.min(limitAmps ?? INJECTION.limitAmps, free);
}

/** Kelvin over the room that a thermometer shows of the part with so many watts in it. */
export function injectedRise(
  board: Board,
  part: string,
  watts: number,
  taken: Parameters<typeof temperatureOf>[3],
): number {
  return temperatureOf(board, [{ part, watts }], part, { ...taken, ambient: 0 })?.celsius ?? 0;
}

/** ln of ohms on the grid with their weights, told by what was read across the rail where somebody has. */
function ohmsGrid({ ohms, spreadLn }: ShortOfRail, read: number | null): { ohms: number; log: number }[] {
  if (!Number.isFinite(ohms)) return [{ ohms, log: 0 }];
  const points = POINTS.map((z, k) => {
    const at = ohms * Math.exp(spreadLn * z);
    const apart = read === null ? 0 : Math.log((at + M.contactOhms) / (read + M.contactOhms));
    // a cell of the grid is as wide as this
    const wide = Math.hypot(M.readLn, ((spreadLn * STEP) / Math.sqrt(12)) * (at / (at + M.contactOhms)));
    return {
      ohms: at,
      log: LOG_WEIGHTS[k] + (read === null ? 0 : logNormalDensity(apart / wide) - Math.log(wide)),
    };
  });
  const total = logSumExp(points.map(({ log }) => log));
  return points.map((point) => ({ ohms: point.ohms, log: point.log - total }));
}

function seenLog({ power, seen }: InjectedRail, amps: number, free: number): number {
  if (power.ohms !== undefined || seen.length === 0) return 0;
  const limit = power.limitAmps ?? INJECTION.limitAmps;
  const limiting = amps <= 0 ? 0 : 1 - normalTail(Math.log(Math.max(free, 1e-9) / limit) / M.limitLn);
  const chance = seen.includes("limiting") ? limiting : 1 - limiting;
  return Math.log(M.stray + (1 - 2 * M.stray) * chance);
}

/** Ohmic: as many amps as its ohms pass. */
const STRAIGHT: readonly number[] = [1];

function ampsLog({ amps, power }: InjectedRail, predicted: number, bends: readonly number[]): number {
  if (amps.length === 0) return 0;
  const most = power.limitAmps ?? INJECTION.limitAmps;
  const each = bends.map((times) => {
    const passed = Math.min(most, times * predicted);
    const deviation = Math.hypot(M.ampsLeast, M.ampsShare * passed);
    return amps.reduce((sum, one) => {
      const good = logNormalDensity((one.amps - passed) / deviation) - Math.log(deviation);
      return sum + logAdd(Math.log1p(-M.slipShare) + good, Math.log(M.slipShare));
    }, -Math.log(bends.length));
  });
  return logSumExp(each);
}

/** ln of the density of the warmths, the room summed over where no reading names it. */
function warmthLog(board: Board, { warmths }: InjectedRail, part: string | null, watts: number): number {
  if (warmths.length === 0) return 0;
  const astray = (apart: number) => Math.log((apart > 0 ? M.hotSlipShare : M.slipShare) / M.slipKelvin);
  const rises = warmths.map(({ event }) => {
    const taken = { by: event.by, afterPower: event.afterPower };
    const own = part === null ? 0 : injectedRise(board, part, watts, taken);
    const shown = event.part === part ? own : M.nearShare * own;
    const doubt = event.part === part ? RISE_SHARE * own : M.nearSpread * own;
    return { shown, deviation: Math.hypot(THERMOMETERS[event.by ?? "contact"].kelvin, doubt, 0.5) };
  });
  const rooms = POINTS.map((z, k) => {
    let sum = LOG_WEIGHTS[k];
    warmths.forEach(({ event: { ambient, reading } }, i) => {
      const { shown, deviation } = rises[i];
      const room = ambient ?? ROOM.celsius + ROOM.spread * z;
      const apart = (reading as number) - room - shown;
      const good = logNormalDensity(apart / deviation) - Math.log(deviation);
      sum += logAdd(Math.log1p(-M.slipShare) + good, astray(apart));
    });
    return sum;
  });
  return logSumExp(rooms);
}

/** ln of the likelihood of everything that this injection showed, given where the short is. */
export function injectedLog(board: Board, injected: InjectedRail, short: ShortOfRail): number {
  const { power, ohms: read } = injected;
  if (injected.somehow) {
    const some = Number.isFinite(short.ohms) ? M.someWatts : 0;
    return logSumExp(
      POINTS.map((z, k) => {
        const watts = some * Math.exp(M.someWattsLn * z);
        return LOG_WEIGHTS[k] + warmthLog(board, injected, short.part, watts);
      }),
    );
  }
  const logs = ohmsGrid(short, read).map(({ ohms, log }) => {
    const whole = !Number.isFinite(ohms);
    const amps = whole ? 0 : injectedAmps(power, ohms);
    const free = whole ? 0 : injectedAmps({ ...power, limitAmps: Number.MAX_VALUE }, ohms);
    const watts = whole ? 0 : amps * amps * ohms;
    const bends = short.bends && amps * ohms > M.bendsAboveVolts ? M.bends : STRAIGHT;
    return (
      log +
      seenLog(injected, amps, free) +
      ampsLog(injected, amps, bends) +
      warmthLog(board, injected, short.part, watts)
    );
  });
  return logSumExp(logs);
}

/** The highest that any short could give. */
export function injectedBest({ warmths, amps }: InjectedRail): number {
  const warmth = warmths.reduce(
    (sum, { event }) => sum - Math.log(THERMOMETERS[event.by ?? "contact"].kelvin),
    warmths.length * logNormalDensity(0),
  );
  return warmth + amps.length * (logNormalDensity(0) - Math.log(M.ampsLeast));
}
