import type { MeasureEvent } from "../bench/event.ts";
import { lastPowered } from "../bench/last-power.ts";
import { isColdMode } from "../bench/words.ts";
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
        why: "Nothing can be read there: switch off and pull the plug.",
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
  const when = afterPower === undefined ? "now" : `${momentWords(afterPower)} after switch-on`;
  const then = afterPower === undefined ? ", then switch off" : "";
  if (part !== undefined)
    return `Take the warmth of ${part} ${when} with the camera or the spot thermometer, a hand's breadth away: nothing touches a live board. What cooks shows before it fails.`;
  return `The meter hangs on ${clipAt(board, [red ?? "", black ?? ""]).what}: read it ${when}, with the hands off the board${then}.`;
}

/** Seconds after switch-on as they are said. */
export function momentWords(seconds: number): string {
  return seconds < 60 ? `${seconds} s` : `${Math.round(seconds / 60)} min`;
}
