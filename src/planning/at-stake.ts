import type { Board } from "../board/board.ts";
import { curedWords } from "../board/fault-words.ts";
import { plain, said } from "../messages/said.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { AtStake } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** Risks below this are not named. */
const RISK_LEAST = 0.003;
const MOST_RISKS = 5;
/** A step rules a risk out when it takes away this share of the doubt. From memory. */
const RULED_OUT = 0.6;

interface Risk {
  readonly what: string;
  readonly probability: number;
  readonly share: Float64Array;
}

/**
 * What could still waste the money a replacement spends: parts among the hypotheses that nobody sells, the part itself being
 * good, and what would take the new one with it. For each the minutes of the cheapest step that would rule it out.
 * @param money - price of what is bought
 * @param part - the part about to be replaced
 * @param together - what is replaced in the same go: it takes nothing new with it
 */
export function atStake(
  part: string,
  money: number,
  hypotheses: Hypotheses,
  priors: PriorTable,
  model: RepairModel,
  steps: readonly FindingStep[],
  board: Board,
  together: readonly string[] = [],
): AtStake {
  const risks = [
    ...unobtainableRisks(hypotheses, model),
    goodPartRisk(part, hypotheses),
    ...killerRisks(part, together, hypotheses, priors, board),
  ]
    .filter(({ probability }) => probability >= RISK_LEAST)
    .sort((a, b) => b.probability - a.probability || (plain(a.what) < plain(b.what) ? -1 : 1))
    .slice(0, MOST_RISKS);
  return {
    money,
    risks: risks.map((risk) => ({
      what: risk.what,
      probability: risk.probability,
      minutesToRuleOut: minutesToRuleOut(risk, hypotheses, steps),
    })),
    priceNote: model.terms.agreed
      ? null
      : said`no price is agreed yet: counted with the shop's usual ${`${model.terms.agreedPrice} ${model.terms.currency}`}`,
  };
}

/** Does an action cost enough, or undo so little, that the stakes must be shown? */
export function mustShowStakes(part: string, money: number, board: Board, model: RepairModel): boolean {
  const kind = board.parts.get(part)?.kind;
  const irreversible = kind === "module" || kind === "controller";
  return irreversible || money >= PLANNING_RATES.spendingShare * model.terms.agreedPrice;
}

function riskOf(what: string, hypotheses: Hypotheses, holds: (h: number) => boolean): Risk {
  const share = Float64Array.from(hypotheses.list, (_, h) => (holds(h) ? 1 : 0));
  const total = hypotheses.list.reduce((sum, { weight }) => sum + weight, 0);
  const held = hypotheses.list.reduce((sum, { weight }, h) => sum + share[h] * weight, 0);
  return { what, probability: total > 0 ? held / total : 0, share };
}

function unobtainableRisks(hypotheses: Hypotheses, model: RepairModel): Risk[] {
  return model.cures
    .filter(({ possible }) => !possible)
    .map(({ name }) =>
      riskOf(
        said`${name} is dead and cannot be bought: everything fitted before is wasted`,
        hypotheses,
        (h) => hypotheses.list[h].dead.includes(name),
      ),
    );
}

function goodPartRisk(part: string, hypotheses: Hypotheses): Risk {
  return riskOf(
    said`${part} is good and something else is the fault`,
    hypotheses,
    (h) => !hypotheses.list[h].dead.includes(part),
  );
}

function killerRisks(
  part: string,
  together: readonly string[],
  hypotheses: Hypotheses,
  priors: PriorTable,
  board: Board,
): Risk[] {
  const killers = new Set(
    priors.knockOns
      .filter(({ child, rate }) => priors.faults[child].part === part && rate >= 0.1)
      .map(({ parent }) => priors.faults[parent].part)
      .filter((killer) => killer !== part && !together.includes(killer)),
  );
  return [...killers].map((killer) =>
    riskOf(
      killer.includes("~")
        ? said`there is ${curedWords(killer, board)} too, which would take the new ${part} with it`
        : said`${killer} is faulty too and would take the new ${part} with it`,
      hypotheses,
      (h) => hypotheses.list[h].dead.includes(killer),
    ),
  );
}

/** Minutes of the cheapest step after whose outcomes little doubt is left whether the risk holds; null where no step does that. */
function minutesToRuleOut(risk: Risk, hypotheses: Hypotheses, steps: readonly FindingStep[]): number | null {
  const doubt = Math.min(risk.probability, 1 - risk.probability);
  let cheapest: number | null = null;
  for (const step of steps) {
    if (cheapest !== null && step.allMinutes >= cheapest) continue;
    let left = 0;
    for (const share of step.shares) {
      let held = 0;
      let not = 0;
      for (let h = 0; h < share.length; h++) {
        const weight = share[h] * hypotheses.list[h].weight;
        held += weight * risk.share[h];
        not += weight * (1 - risk.share[h]);
      }
      left += Math.min(held, not);
    }
    if (left <= (1 - RULED_OUT) * doubt) cheapest = step.allMinutes;
  }
  return cheapest;
}
