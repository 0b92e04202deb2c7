/** Halving a shorted rail: one end of a link, bead or small inductor lifted, then ohms on the side where the rail is made. */

import { type BenchState, standsWhole } from "../bench/bench-state.ts";
import type { RailCut } from "../board/rail-groups.ts";
import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import { minutesOf } from "./action-minutes.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import type { FindingStep } from "./steps.ts";
import type { SuspectedRail } from "./suspected-rail.ts";

/** A cut is weighed where each side holds at least this share of the doubt. From memory. */
const SIDE_LEAST = 0.05;
/** Ohms both ways on the side that is left. */
const READINGS = 2;

export function railCutSteps(input: PlanningInput, rail: SuspectedRail): readonly FindingStep[] {
  return rail.group.cuts.flatMap((cut) => cutStep(input, rail, cut) ?? []);
}

/** Nets still joined to where the rail is made, with what is lifted and this cut open. */
function nearSide({ group }: SuspectedRail, bench: BenchState, open: RailCut): ReadonlySet<string> {
  const near = new Set([group.net]);
  for (let before = -1; before < near.size; ) {
    before = near.size;
    for (const cut of group.cuts) {
      if (cut === open || !standsWhole(bench, cut.part.ref)) continue;
      const [one, other] = cut.nets;
      if (near.has(one) !== near.has(other)) near.add(one).add(other);
    }
  }
  return near;
}

function cutStep({ board, timeline }: PlanningInput, rail: SuspectedRail, cut: RailCut): FindingStep | null {
  const { now } = timeline;
  if (!standsWhole(now, cut.part.ref)) return null;
  const near = nearSide(rail, now, cut);
  const isNear = new Map(rail.group.members.map(({ part, net }) => [part.ref, near.has(net)]));
  let [nearChance, farChance] = [0, 0];
  for (const { member, chance } of rail.suspects)
    if (near.has(member.net)) nearChance += chance;
    else farChance += chance;
  if (Math.min(nearChance, farChance) < SIDE_LEAST * (nearChance + farChance)) return null;
  const pin = [...cut.part.pins].find(([, net]) => !near.has(net))?.[0] ?? [...cut.part.pins.keys()][0];
  const place = `${cut.part.ref}.${pin}`;
  const action: Action = { do: "lift", place };
  const low = Float64Array.from(rail.shorts, (short) => {
    if (short === null) return 0;
    return short.part === null ? 0.5 : Number(isNear.get(short.part) === true);
  });
  const minutes = minutesOf(board, now, action);
  return {
    action,
    row: [],
    minutes,
    allMinutes:
      minutes + READINGS * benchMinutes(board).measure + minutesOf(board, now, { do: "refit", place }),
    outcomes: [
      { word: said`${rail.group.net} still reads low`, low: null, high: null },
      { word: said`${rail.group.net} reads high`, low: null, high: null },
    ],
    shares: [low, low.map((share) => 1 - share)],
    inHand: null,
    lossMoney: 0,
    lead: said`With one end of ${cut.part.ref} up the ${rail.group.name} rail is in two halves; ohms from ${rail.group.net} to ${rail.group.back} tell in which the short is.`,
  };
}
