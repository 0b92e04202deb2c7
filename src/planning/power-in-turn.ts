/**
 * Power among the steps, worked out only where it may be the one to take: what its meters would show asks the live board under every
 * hypothesis, which takes longer than all cold checks together. Where some cold step gains more for its money than any power-up could,
 * that is known from the repair model alone, and leaving power out changes no choice.
 */
import { payingSteps, type WeighedStep, weighSteps } from "./finding-steps.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { powerMinutes } from "./power-step.ts";
import type { PowerSteps } from "./power-steps.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";
import { jobValue } from "./value.ts";

/** Rounding of the sums that are compared, as a share of them. */
const SLACK = 1e-9;

/**
 * The most that the job can be worth after any step, in money times the weight of the belief: each group as if it were known, its parts
 * surely good. No course is worth more to a group: stopping leaves what it leaves, finding out the group's margin less what it costs, and a
 * repair plan that ends with the group repaired has paid for its cures and one test at least.
 */
export function mostValue({
  weights,
  groups,
  cures,
  terms,
  stopMoney,
  testMoney,
  perMinute,
}: RepairModel): number {
  return groups.reduce((sum, { cures: own, possible, knownValue }, g) => {
    const cost = own.reduce((money, c) => money + cures[c].money + cures[c].minutes * perMinute, testMoney);
    const repaired = possible ? terms.agreedPrice - cost : stopMoney;
    return sum + weights[g] * Math.max(stopMoney, knownValue, repaired);
  }, 0);
}

export class PowerInTurn {
  readonly #model: RepairModel;
  readonly #make: () => PowerSteps;
  #made: PowerSteps | null = null;

  constructor(model: RepairModel, make: () => PowerSteps) {
    this.#model = model;
    this.#make = make;
  }

  get steps(): PowerSteps {
    this.#made ??= this.#make();
    return this.#made;
  }

  /** These steps with their worth, best first; power among them unless one of them that pays surely gains more for its money. */
  among(
    steps: readonly FindingStep[],
    hypotheses: Hypotheses,
    minutesPerBit: number,
  ): readonly WeighedStep[] {
    const model = this.#model;
    const weighed = weighSteps(steps, hypotheses, model, minutesPerBit);
    const [best] = payingSteps(weighed, model);
    if (best !== undefined && best.perMoney >= this.#mostPerMoney(minutesPerBit)) return weighed;
    const powered = weighSteps(this.steps.finding, hypotheses, model, minutesPerBit);
    return [...weighed, ...powered].sort((a, b) => b.perMoney - a.perMoney);
  }

  /** No power-up gains more for its money. */
  #mostPerMoney(minutesPerBit: number): number {
    const model = this.#model;
    const now = jobValue(model.weights, model, minutesPerBit);
    const most = mostValue(model);
    const gain = most - now + SLACK * (Math.abs(most) + Math.abs(now));
    return gain / (powerMinutes(model).allMinutes * model.perMinute);
  }
}
