/** Four-wire milliohms at the pins of the parts across a shorted rail, as one row: the lowest reading is at the short. */

import { benchKey, standsWhole } from "../bench/bench-state.ts";
import { type AtPart, lowestAtShort, lowestFirst } from "../diagnosis/along-rail.ts";
import { alongRails } from "../diagnosis/rail-readings.ts";
import { said } from "../messages/said.ts";
import { ceramicOrChip } from "./ceramic-or-chip.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import { milliohmTool } from "./rail-tools.ts";
import type { FindingStep } from "./steps.ts";
import type { SuspectedRail } from "./suspected-rail.ts";

/** Parts read in one go: a bound on the row, the rest comes after. */
const MOST_READ = 10;

/** The row that has not been read yet; null without the tool, or where fewer than two parts could be compared. */
export function alongRailStep(input: PlanningInput, rail: SuspectedRail): FindingStep | null {
  const tool = milliohmTool(input);
  if (tool === null) return null;
  const before = readOnThisBench(input, rail);
  const done = new Set(before.map(({ part }) => part));
  const here = rail.suspects.filter(({ member }) => standsWhole(input.timeline.now, member.part.ref));
  const open = here.filter(({ member }) => !done.has(member.part.ref)).slice(0, MOST_READ);
  if (open.length === 0 || open.length + done.size < 2) return null;
  const [first, ...rest] = open.map(
    ({ member: { part, plus, minus } }): Action => ({
      do: "measure",
      mode: "ohms",
      wires: 4,
      red: `${part.ref}.${plus}`,
      black: `${part.ref}.${minus}`,
    }),
  );
  // of those read before only the lowest can still be the lowest of all
  const [lowest] = lowestFirst(before);
  const places = [
    ...(lowest === undefined ? [] : [lowest.part]),
    ...open.map(({ member }) => member.part.ref),
  ];
  return {
    action: first,
    row: rest,
    minutes: tool.minutes,
    allMinutes: tool.minutes * open.length,
    outcomes: [...places.map((part) => said`lowest at ${part}`), said`high at every part`].map((word) => ({
      word,
      low: null,
      high: null,
    })),
    shares: sharesOf(places, rail),
    inHand: null,
    lossMoney: 0,
    lead: [
      said`Milliohms along the ${rail.group.name} rail fall towards its short: take them at the pins of each part, the lowest is the short.`,
      tool.how,
      ...ceramicOrChip(rail, "place"),
    ].join(" "),
  };
}

/** P(the lowest is there | hypothesis), place by place, and that none is low. */
function sharesOf(places: readonly string[], { shorts }: SuspectedRail): readonly Float64Array[] {
  const shares = [...places, null].map(() => new Float64Array(shorts.length));
  const sure = new Map<number, number>();
  shorts.forEach((short, h) => {
    if (short === null) {
      shares[places.length][h] = 1;
      return;
    }
    const at = short.part === null ? -1 : places.indexOf(short.part);
    const right = sure.get(short.ohms) ?? lowestAtShort(short.ohms, places.length);
    sure.set(short.ohms, right);
    places.forEach((_, p) => {
      if (at < 0) shares[p][h] = 1 / places.length;
      else shares[p][h] = p === at ? right : (1 - right) / Math.max(1, places.length - 1);
    });
  });
  return shares;
}

function readOnThisBench({ board, timeline }: PlanningInput, { group }: SuspectedRail): readonly AtPart[] {
  const now = benchKey(timeline.now);
  const entry = new Map(timeline.entries.map((one) => [one.logIndex, one]));
  const span = timeline.spans.length - 1;
  return alongRails(board, timeline)
    .filter((along) => along.group === group)
    .flatMap(({ readings }) => readings)
    .filter(({ logIndex }) => {
      const taken = entry.get(logIndex);
      return taken !== undefined && taken.span === span && benchKey(taken.before) === now;
    });
}
