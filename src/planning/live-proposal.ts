import type { MeasureEvent } from "../bench/event.ts";
import { lastPowered } from "../bench/last-power.ts";
import { isColdMode } from "../bench/words.ts";
import { said } from "../messages/said.ts";
import { type Draft, outlook } from "./cards.ts";
import { expectations } from "./expectations.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { clipAt } from "./live-clips.ts";
import { livePartition } from "./live-partition.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { RepairModel } from "./repair-model.ts";
import { plainStep, toldBy } from "./steps.ts";

/** The board is on: what is read of it now, hands off, before anything else. */
export function liveProposal(
  input: PlanningInput,
  action: Omit<MeasureEvent, "reading">,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft {
  const power = lastPowered(input.timeline)?.power ?? null;
  const { mode } = action;
  const partition =
    power === null || isColdMode(mode) ? null : livePartition(input, hypotheses, power, { ...action, mode });
  const step = partition && plainStep(action, toldBy(partition), model.minutes.measure);
  return {
    action,
    row: [],
    minutes: model.minutes.measure,
    money: 0,
    why: whyLive(input, action),
    expect: step === null ? [] : expectations(step, hypotheses, input.board, null),
    others: [
      {
        action: { do: "unpower" },
        minutes: model.minutes.unpower,
        money: 0,
        why: said`Nothing can be read there: switch off and pull the plug.`,
      },
    ],
    atStake: null,
    forecast: null,
    probesOn: null,
    outlook: outlook(model),
  };
}

function whyLive(
  { board }: PlanningInput,
  { part, red, black, afterPower }: Omit<MeasureEvent, "reading">,
): string {
  const moment = afterPower === undefined ? null : momentWords(afterPower);
  if (part !== undefined)
    return moment === null
      ? said`Take the warmth of ${part} now with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.`
      : said`Take the warmth of ${part} ${moment} after switch-on with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.`;
  const { what } = clipAt(board, [red ?? "", black ?? ""]);
  return moment === null
    ? said`The meter hangs on ${what}: read it now, with the hands off the board, then switch off.`
    : said`The meter hangs on ${what}: read it ${moment} after switch-on, with the hands off the board.`;
}

/** Seconds after switch-on as they are said. */
export function momentWords(seconds: number): string {
  return seconds < 60 ? `${seconds} s` : `${Math.round(seconds / 60)} min`;
}
