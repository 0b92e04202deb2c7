/** Finding the short of a rail: the ways that a bench has, beside ohms both ways and lifting one part after another. */

import { said } from "../messages/said.ts";
import { benchMinutes } from "../money/minutes.ts";
import { minutesOf } from "./action-minutes.ts";
import { alongRailStep } from "./along-rail-step.ts";
import type { Draft } from "./cards.ts";
import { outlook } from "./cards.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { fedNext, injectionForecast, injectionStep } from "./injection-step.ts";
import type { PlanningInput } from "./planning-input.ts";
import { railCutSteps } from "./rail-cut-steps.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";
import { suspectedRail } from "./suspected-rail.ts";

/** Milliohms along the rail, cuts that halve it, a low voltage into it; none where no rail is probably shorted. */
export function shortedRailSteps(input: PlanningInput, hypotheses: Hypotheses): readonly FindingStep[] {
  const rail = suspectedRail(input.board, hypotheses);
  if (rail === null) return [];
  return [alongRailStep(input, rail), ...railCutSteps(input, rail), injectionStep(input, rail)].flatMap(
    (step) => step ?? [],
  );
}

/** What comes next while a low voltage feeds the rail; null where it does not, or has shown what it can. */
export function fedRailProposal(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft | null {
  if (!input.timeline.now.powered) return null;
  const next = fedNext(input, suspectedRail(input.board, hypotheses));
  if (next === null) return null;
  return {
    ...next,
    minutes: minutesOf(input.board, input.timeline.now, next.action),
    money: 0,
    expect: [],
    others: [
      {
        action: { do: "unpower" },
        minutes: benchMinutes(input.board).unpower,
        money: 0,
        why: said`Nothing more is to be seen: output off, clips off.`,
      },
    ],
    atStake: null,
    forecast: injectionForecast(next.action),
    probesOn: null,
    outlook: outlook(model),
  };
}
