import type { Place } from "../bench/event.ts";
import { MINUTES } from "../money/minutes.ts";
import { type Draft, outlook } from "./cards.ts";
import { expectations } from "./expectations.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { clippedPartition, whatBetween } from "./live-clips.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { partitionShares } from "./steps.ts";

/** The board is on and a meter hangs on it: read it before anything else, hands off. */
export function liveProposal(
  input: PlanningInput,
  places: readonly [Place, Place],
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft {
  const [red, black] = places;
  const action: Action = { do: "measure", mode: "dcv", red, black };
  const partition = clippedPartition(input, hypotheses, places);
  const step = partition && {
    action,
    row: [],
    minutes: MINUTES.measure,
    allMinutes: MINUTES.measure,
    outcomes: partition.outcomes,
    shares: partitionShares(partition),
    inHand: null,
    lossMoney: 0,
    lead: null,
  };
  return {
    action,
    row: [],
    minutes: MINUTES.measure,
    money: 0,
    why: `The meter hangs on ${whatBetween(input.board, places)}: read it now, with the hands off the board, then switch off.`,
    expect: step === null ? [] : expectations(step, hypotheses, input.board, null),
    others: [
      {
        action: { do: "unpower" },
        minutes: MINUTES.unpower,
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
