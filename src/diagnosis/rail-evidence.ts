/** What was read of one rail as a whole, as the search sees it: which part across it explains the readings. */

import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { type RailGroup, type RailShort, railShort } from "../board/rail-groups.ts";
import { said } from "../messages/said.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { ALONG_RAIL, alongRailBest, alongRailLog } from "./along-rail.ts";
import type { EvidenceMemory } from "./cold-evidence.ts";
import { COMMON_POINTS, type Evidence, type Piece } from "./evidence.ts";
import { INJECTED, injectedAmps, injectedBest, injectedLog, type ShortOfRail } from "./injected-heat.ts";
import {
  type AlongRail,
  alongRails,
  type InjectedRail,
  injectedRails,
  saidAlong,
  saidInjected,
} from "./rail-readings.ts";
import { warmedRails } from "./warmed-rails.ts";

/** Shorts of the rail by index into the prior table; the same list for the same table. */
const shortsOf = new WeakMap<RailGroup, WeakMap<readonly FaultPrior[], ReadonlyMap<number, RailShort>>>();

/** Which faults of the table short the rail, and where. */
export function railShorts(group: RailGroup, priors: readonly FaultPrior[]): ReadonlyMap<number, RailShort> {
  const ofGroup = shortsOf.get(group) ?? new WeakMap<readonly FaultPrior[], ReadonlyMap<number, RailShort>>();
  shortsOf.set(group, ofGroup);
  const known = ofGroup.get(priors);
  if (known !== undefined) return known;
  const found = new Map<number, RailShort>();
  priors.forEach(({ fault }, index) => {
    const short = railShort(group, fault);
    if (short !== null) found.set(index, short);
  });
  ofGroup.set(priors, found);
  return found;
}

/** Of several shorts of the rail the one of fewest ohms, which takes the current; null where there is none. Index into the table. */
export function leadingShort(
  shorts: ReadonlyMap<number, RailShort>,
  faults: readonly number[],
): number | null {
  let found: number | null = null;
  for (const fault of faults) {
    const short = shorts.get(fault);
    if (short === undefined) continue;
    const best = found === null ? undefined : shorts.get(found);
    if (best === undefined || short.ohms < best.ohms) found = fault;
  }
  return found;
}

const NO_SHORT: ShortOfRail = { part: null, ohms: Number.POSITIVE_INFINITY, spreadLn: 0, bends: false };

/** The short as it is fed: its part, its ohms and how far they are known. */
export function shortOfRail({ member, ohms }: RailShort, spreadLn: number): ShortOfRail {
  return {
    part: member?.part.ref ?? null,
    ohms,
    spreadLn,
    bends: member !== null && member.junction !== null,
  };
}

/** What all evidence of one rail has in common: it asks only where the leading short is, and keeps the answers. */
function byPlace(
  shorts: ReadonlyMap<number, RailShort>,
  priors: readonly FaultPrior[],
  logIndex: number,
  limits: { readonly best: number; readonly slip: number; readonly key: string },
  memory: EvidenceMemory,
  log: (leading: number | null) => number,
  words: (leading: number | null) => string,
): Evidence {
  const mask = (): Uint8Array =>
    memory.mask(limits.key, () => Uint8Array.from(priors, (_, index) => (shorts.has(index) ? 1 : 0)));
  return memory.remembering(limits.key, {
    logIndex,
    best: limits.best,
    slip: limits.slip,
    logLikelihood: (faults) => {
      const leading = leadingShort(shorts, faults);
      return memory.vector(limits.key, `${leading ?? "none"}`, () =>
        new Float64Array(COMMON_POINTS.length).fill(log(leading)),
      );
    },
    wouldShow: (faults) => words(leadingShort(shorts, faults)),
    audible: mask,
    hears: (_, fault) => shorts.has(fault),
  });
}

function alongEvidence(
  { group, readings }: AlongRail,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): Piece {
  const shorts = railShorts(group, priors);
  const placeOf = (leading: number | null) =>
    leading === null ? null : (shorts.get(leading)?.member?.part.ref ?? null);
  const slip =
    Math.log(ALONG_RAIL.slipShare) +
    (readings.length - 1) * Math.log(ALONG_RAIL.slipShare / ALONG_RAIL.slipOhms);
  const evidence = byPlace(
    shorts,
    priors,
    readings[0].logIndex,
    {
      best: alongRailBest(readings),
      slip,
      key: `along|${group.name}|${readings.map(({ part, ohms }) => `${part}=${ohms}`).join(",")}`,
    },
    memory,
    (leading) => alongRailLog(readings, placeOf(leading)),
    (leading) => {
      const place = placeOf(leading);
      return place === null ? said`lowest at none of them in particular` : said`lowest at ${place}`;
    },
  );
  // the lowest speaks for itself too, as an ohms reading
  const [, ...rest] = readings;
  return { evidence, logIndexes: rest.map(({ logIndex }) => logIndex) };
}

function injectedEvidence(
  board: Board,
  injected: InjectedRail,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): Piece {
  const { group, power, warmths, amps, seen, ohms } = injected;
  const shorts = railShorts(group, priors);
  const shortOf = (leading: number | null): ShortOfRail => {
    const short = leading === null ? undefined : shorts.get(leading);
    return leading === null || short === undefined ? NO_SHORT : shortOfRail(short, priors[leading].spreadLn);
  };
  const read = warmths.map(({ event }) => [
    event.part,
    event.reading,
    event.ambient,
    event.by,
    event.afterPower,
  ]);
  const evidence = byPlace(
    shorts,
    priors,
    injected.logIndex,
    {
      best: injectedBest(injected),
      slip:
        (injected.somehow ? 0 : Math.log(INJECTED.stray)) +
        warmths.length * Math.log(INJECTED.slipShare / INJECTED.slipKelvin) +
        amps.length * Math.log(INJECTED.slipShare),
      key: `injected|${JSON.stringify([group.name, injected.somehow, power.volts, power.limitAmps, power.ohms, seen, read, amps, ohms])}`,
    },
    memory,
    (leading) => injectedLog(board, injected, shortOf(leading)),
    (leading) => {
      const { part, ohms: through } = shortOf(leading);
      if (!Number.isFinite(through)) return said`next to no amps, nothing warm`;
      if (injected.somehow) return part === null ? said`none of the parts warm` : said`${part} warmest`;
      const most = injectedAmps(power, through);
      return part === null
        ? said`${`${most.toFixed(2)} A`}, none of the parts warm`
        : said`${`${most.toFixed(2)} A`}, ${part} warmest`;
    },
  );
  return {
    evidence,
    logIndexes: [...saidInjected([injected])],
  };
}

/** What the log says of rails as a whole. */
interface OfRails {
  readonly pieces: readonly Piece[];
  /** log indexes of what these pieces speak for, so that no other evidence says it again */
  readonly said: ReadonlySet<number>;
}

/** Milliohms along rails and low voltages fed into them; a log without either is walked through once. */
export function ofRails(
  board: Board,
  timeline: Timeline,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): OfRails {
  const along = alongRails(board, timeline);
  const injected = [...injectedRails(board, timeline), ...warmedRails(board, timeline)];
  const telling = injected.filter(
    ({ seen, amps, warmths }) => seen.length + amps.length + warmths.length > 0,
  );
  return {
    pieces: [
      ...along.filter(({ readings }) => readings.length > 1).map((one) => alongEvidence(one, priors, memory)),
      ...telling.map((one) => injectedEvidence(board, one, priors, memory)),
    ],
    said: new Set([...saidAlong(along), ...saidInjected(injected)]),
  };
}
