/**
 * Warmth while the board is on: what the meters do not hang on may still show by its heat, from outside and with nobody reaching inside. Worth
 * its minutes, the wait included, like any other check; small parts after 20 s, the rest after 2 min (common practice).
 */

import type { PowerEvent } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import { poweredNow } from "../bench/last-power.ts";
import { staysOn } from "../bench/stays-on.ts";
import type { Draft } from "./cards.ts";
import { type Partition, refine } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { unreadClips } from "./live-clips.ts";
import { livePartition } from "./live-partition.ts";
import { liveProposal } from "./live-proposal.ts";
import { LOAD_TEST } from "./load-test.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import { warmthTool } from "./rail-tools.ts";
import type { RepairModel } from "./repair-model.ts";
import { partitionShares, valueAfter } from "./steps.ts";
import { jobValue } from "./value.ts";
import { type LiveMeasure, warmthChecks } from "./warmth-checks.ts";

/** Minutes of one more part at the same moment: a camera sees all in one picture (from memory). */
const CAMERA_MINUTES = 0.1;

/** A check with what it would show under each hypothesis. */
interface Warmth {
  readonly action: LiveMeasure;
  readonly partition: Partition;
}

/** The power-up that the board is on by where it stands idle and nothing says that it has to go off; null elsewhere. */
function idlePower({ timeline }: PlanningInput): { readonly power: PowerEvent; readonly at: number } | null {
  const on = poweredNow(timeline);
  if (on === null || isInjection(on.power) || on.power.load !== undefined) return null;
  const goesOff = [on.power.observed ?? []]
    .flat()
    .some((seen) => !staysOn(seen) || seen === "lamp-bright" || seen === "limiting");
  return goesOff || unreadClips(timeline).length > 0 ? null : on;
}

/** The warmths that are worth their minutes now, those of one moment in one row; null where none is, or the board is off. */
export function warmthWhileOn(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft | null {
  const by = warmthTool(input.equipment);
  const on = by === null ? null : idlePower(input);
  if (by === null || on === null) return null;
  const read = input.timeline.entries
    .slice(on.at + 1)
    .flatMap(({ event }) => (event.do === "measure" && event.mode === "temperature" ? [event] : []));
  const reached = Math.max(0, ...read.map(({ afterPower }) => afterPower ?? 0));
  const moments = [LOAD_TEST.soonSeconds, LOAD_TEST.warmSeconds].filter((seconds) => seconds >= reached);
  const moreMinutes = by === "camera" ? CAMERA_MINUTES : model.minutes.measure;
  let best: { readonly row: readonly LiveMeasure[]; readonly net: number } | null = null;
  for (const seconds of moments) {
    const open = warmthChecks(input, hypotheses, seconds).filter(
      ({ part }) => !read.some((one) => one.part === part && (one.afterPower ?? 0) >= seconds),
    );
    const told = open.flatMap((action): Warmth[] => {
      const partition = livePartition(input, hypotheses, on.power, action);
      return partition === null || partition.outcomes.length < 2 ? [] : [{ action, partition }];
    });
    const found = bestRow(told, (seconds - reached) / 60, moreMinutes, hypotheses, model);
    if (found !== null && found.net > (best?.net ?? 0)) best = found;
  }
  const [first, ...row] = best?.row ?? [];
  return first === undefined ? null : { ...liveProposal(input, first, hypotheses, model), row };
}

/** One part after the other, each beside those before it, as long as it pays. */
function bestRow(
  told: readonly Warmth[],
  waitMinutes: number,
  moreMinutes: number,
  hypotheses: Hypotheses,
  model: RepairModel,
): { readonly row: readonly LiveMeasure[]; readonly net: number } | null {
  const { perMinute } = model;
  const { minutesPerBit, slip, leastGainMinutes } = PLANNING_RATES;
  const worth = (partition: Partition) =>
    valueAfter(partitionShares(partition), hypotheses, model, minutesPerBit, slip);
  const start = jobValue(model.weights, model, minutesPerBit);
  const row: LiveMeasure[] = [];
  let joint: Partition | null = null;
  let now = start;
  for (let left = told; left.length > 0; ) {
    const tried = left.map((one) => {
      const refined = joint === null ? one.partition : refine(joint, one.partition);
      return { one, refined, value: worth(refined) };
    });
    const next = tried.reduce((most, other) => (other.value > most.value ? other : most));
    const minutes = row.length === 0 ? waitMinutes + model.minutes.measure : moreMinutes;
    if (next.value - now <= (minutes + leastGainMinutes) * perMinute) break;
    row.push(next.one.action);
    joint = next.refined;
    now = next.value;
    left = left.filter((other) => other !== next.one);
  }
  const minutes = waitMinutes + model.minutes.measure + moreMinutes * (row.length - 1);
  return row.length === 0 ? null : { row, net: now - start - minutes * perMinute };
}
