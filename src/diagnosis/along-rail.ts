/**
 * Four-wire milliohms along a rail: taken at the pins of one part after another they fall towards the short. The board file knows no
 * tracks, so the track from the rail to each part is an unknown of its own; only the differences between the readings speak here, how low
 * the lowest is speaks like every ohms reading.
 */
import { FOUR_WIRE, fourWireSpread } from "../meter/four-wire.ts";
import { logAdd } from "../numeric/log-space.ts";
import { logNormalDensity, normalTail } from "../numeric/normal.ts";

/** Readings of the gradient that are none. */
export const ALONG_RAIL = {
  /** a reading at the wrong pins, or not four-wire at all: how often, and how far off, ohms (from memory) */
  slipShare: 0.03,
  slipOhms: 0.3,
} as const;

const M = ALONG_RAIL;
const STEP = 0.5;
/** Grid over ln of a track, with its weights; each point stands for its cell. */
const TRACKS: readonly { readonly ohms: number; readonly weight: number; readonly cellOhms: number }[] =
  (() => {
    const points = Array.from({ length: 13 }, (_, k) => (k - 6) * STEP);
    const total = points.reduce((sum, z) => sum + Math.exp(-0.5 * z * z), 0);
    return points.map((z) => {
      const ohms = FOUR_WIRE.trackOhms * Math.exp(FOUR_WIRE.trackSpreadLn * z);
      return {
        ohms,
        weight: Math.exp(-0.5 * z * z) / total,
        cellOhms: (ohms * FOUR_WIRE.trackSpreadLn * STEP) / Math.sqrt(12),
      };
    });
  })();

/** One reading at a part's own pins. */
export interface AtPart {
  readonly part: string;
  readonly ohms: number;
}

function slipDensity(lowest: number): number {
  return M.slipShare / Math.max(M.slipOhms, lowest);
}

/** Density of a difference that is `sign` times the part's own track beyond `from`, slips included. */
function density(difference: number, from: number, sign: 1 | -1, deviation: number, slip: number): number {
  let sum = 0;
  for (const { ohms, weight, cellOhms } of TRACKS) {
    const wide = Math.hypot(deviation, cellOhms);
    sum += weight * Math.exp(logNormalDensity((difference - from - sign * ohms) / wide) - Math.log(wide));
  }
  return (1 - M.slipShare) * sum + slip;
}

/** Readings of one part taken together; the lowest part first. */
export function lowestFirst(readings: readonly AtPart[]): readonly AtPart[] {
  const byPart = new Map<string, number[]>();
  for (const { part, ohms } of readings) byPart.set(part, [...(byPart.get(part) ?? []), ohms]);
  return [...byPart]
    .map(([part, all]) => ({ part, ohms: all.reduce((sum, one) => sum + one, 0) / all.length }))
    .sort((a, b) => a.ohms - b.ohms || (a.part < b.part ? -1 : 1));
}

/**
 * ln of the density of the differences between the readings if the short is at `place`, null where it is at none of the parts read. Each
 * reading is the short's ohms, the short's own track and that of the part read; at the short's own pins it is the short alone.
 */
export function alongRailLog(readings: readonly AtPart[], place: string | null): number {
  const [lowest, ...rest] = lowestFirst(readings);
  if (lowest === undefined || rest.length === 0) return 0;
  const slip = slipDensity(lowest.ohms);
  const here = place === lowest.part;
  let sum = 0;
  for (const track of TRACKS) {
    let product = track.weight;
    for (const { part, ohms } of rest) {
      const deviation = Math.hypot(fourWireSpread(ohms), fourWireSpread(lowest.ohms), track.cellOhms);
      const difference = ohms - lowest.ohms;
      // from the lowest part's reading its own track comes off, unless the short is there: then the other's way runs over it
      if (part === place) product *= density(difference, -track.ohms, -1, deviation, slip);
      else product *= density(difference, here ? track.ohms : -track.ohms, 1, deviation, slip);
    }
    sum += product;
  }
  // the lowest may itself be the one taken at the wrong pins
  const astray = Math.log(M.slipShare) - rest.length * Math.log(Math.max(M.slipOhms, lowest.ohms));
  return logAdd(Math.log(sum), astray);
}

/** The highest that any place could give. */
export function alongRailBest(readings: readonly AtPart[]): number {
  const [lowest, ...rest] = lowestFirst(readings);
  if (lowest === undefined) return 0;
  return rest.reduce(
    (sum, { ohms }) =>
      sum + logNormalDensity(0) - Math.log(Math.hypot(fourWireSpread(ohms), fourWireSpread(lowest.ohms))),
    Math.log(2),
  );
}

/** Chance that of `count` parts read the shorted one, of so many ohms, reads lowest. */
export function lowestAtShort(shortOhms: number, count: number): number {
  const deviation = Math.SQRT2 * fourWireSpread(shortOhms);
  let chance = 0;
  for (const own of TRACKS) {
    let below = 0;
    for (const other of TRACKS) below += other.weight * normalTail(-(own.ohms + other.ohms) / deviation);
    chance += own.weight * below ** (count - 1);
  }
  return chance;
}
