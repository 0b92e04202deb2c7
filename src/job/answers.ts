/** The JSON objects that the commands for scripts print (docs/formats.md). */
import type { Belief } from "../diagnosis/belief.ts";
import type { Action, Expectation } from "../planning/proposal.ts";
import type { Assessment, Believed } from "./assess.ts";

export interface SuspectsAnswer {
  readonly suspects: readonly {
    readonly part: string;
    readonly probability: number;
    readonly modes: readonly { readonly fault: string; readonly probability: number }[];
  }[];
  readonly healthyProbability: number;
  readonly explanations: readonly { readonly faults: readonly string[]; readonly probability: number }[];
  readonly remainder: number;
  readonly unexplained: readonly number[];
}

export function suspectsAnswer(assessment: Believed): SuspectsAnswer {
  const { belief, job } = assessment;
  return {
    suspects: belief.suspects
      .filter((suspect) => job.board.parts.has(suspect.part))
      .map(({ part, probability, modes }) => ({ part, probability, modes })),
    healthyProbability: belief.healthyProbability,
    explanations: namedExplanations(belief),
    remainder: belief.remainder,
    unexplained: belief.unexplained,
  };
}

/** Explanations in the file format's spelling; those that differ only in the level of a resistance are one. */
export function namedExplanations(belief: Belief): { faults: string[]; probability: number }[] {
  const sums = new Map<string, { faults: string[]; probability: number }>([
    ["", { faults: [], probability: 0 }],
  ]);
  for (const explanation of belief.explanations) {
    const faults = [...new Set(explanation.faults.map(({ fault }) => belief.priors[fault].reportAs))].sort();
    const key = faults.join(" ");
    const known = sums.get(key);
    if (known === undefined) sums.set(key, { faults, probability: explanation.probability });
    else known.probability += explanation.probability;
  }
  return [...sums.values()].sort((a, b) => b.probability - a.probability);
}

export interface NextAnswer {
  readonly action: Action;
  readonly row: readonly Action[];
  readonly minutes: number;
  readonly money: number;
  readonly why: string;
  readonly expect: readonly Omit<Expectation, "means">[];
  readonly others: readonly { readonly action: Action; readonly minutes: number; readonly money: number }[];
}

/** The fields that docs/formats.md promises, with what the card shows beside them as additions. */
export function nextAnswer(assessment: Assessment): NextAnswer & Record<string, unknown> {
  const { proposal } = assessment;
  return {
    action: proposal.action,
    row: proposal.row,
    minutes: proposal.minutes,
    money: proposal.money,
    why: proposal.why,
    expect: proposal.expect,
    others: proposal.others.map(({ action, minutes, money }) => ({ action, minutes, money })),
    cautions: proposal.cautions,
    atStake: proposal.atStake,
    forecast: proposal.forecast,
    outlook: proposal.outlook,
  };
}
