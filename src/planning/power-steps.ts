/** Power among the steps to weigh: the next rung on the mains, and those below it that this bench has. */
import type { PowerEvent } from "../bench/event.ts";
import { minutesBeforePower } from "./before-power.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { lowerRungs } from "./lower-rungs.ts";
import { minutesOfMotorGate } from "./motor-first.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { PowerRisk } from "./power-risk.ts";
import { powerFinding } from "./power-step.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

export interface PowerSteps {
  /** to find something out */
  readonly finding: readonly FindingStep[];
  /** the one to take where nothing cold pays: null where the board as it is has been powered so already, or too much would break */
  readonly due: FindingStep | null;
}

/**
 * With what stands before it charged to each: pins and parts to put back, the re-check, and before the mains the motor's readings.
 * @param straightOn - from the lamp to the mains with nobody reaching inside: another place for the meter wants the proof first
 */
export function powerSteps(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  risk: PowerRisk,
  straightOn: boolean,
): PowerSteps {
  const under = (event: PowerEvent) => risk.under(event);
  const power = powerFinding(input, hypotheses, model, under, straightOn);
  const moved = straightOn ? powerFinding(input, hypotheses, model, under, false) : null;
  const lower = lowerRungs(input, hypotheses, model, risk, power);
  const before = minutesBeforePower(input);
  const mains = power && later(power.step, before + minutesOfMotorGate(input));
  const first = lower.first && later(lower.first, before);
  return {
    finding: [
      ...lower.all.map((step) => later(step, before)),
      ...(moved === null ? [] : [later(moved.step, model.proofMinutes)]),
      ...(mains === null || first !== null ? [] : [mains]),
    ],
    due: first ?? (power?.again === true ? null : mains),
  };
}

/** A step that something else comes before. */
export function later(step: FindingStep, minutes: number): FindingStep {
  return minutes > 0 ? { ...step, allMinutes: step.allMinutes + minutes } : step;
}
