/** The JSON objects that the commands for scripts print (docs/formats.md). */
import type { Belief, Explanation } from "../diagnosis/belief.ts";
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
  /** readings (log indexes) that rest on parts nobody has seen */
  readonly assumptions: readonly { readonly reading: number; readonly parts: readonly string[] }[];
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
    assumptions: [...assessment.assumptions].map(([reading, parts]) => ({ reading, parts })),
  };
}

interface NamedExplanation {
  readonly faults: string[];
  probability: number;
}

/** Explanations of the readings in the file format's spelling; those that differ only in the level of a resistance are one. */
export function namedExplanations(belief: Belief): NamedExplanation[] {
  return named(belief, ({ faults }) => faults.map(({ fault }) => fault));
}

/** The same by what is faulty now: a fault that has been cured explains readings, and is no news to who cured it. */
export function explanationsNow(belief: Belief): NamedExplanation[] {
  return named(belief, ({ presentNow }) => presentNow);
}

function named(
  belief: Belief,
  faultsOf: (explanation: Explanation) => readonly number[],
): NamedExplanation[] {
  const sums = new Map<string, NamedExplanation>([["", { faults: [], probability: 0 }]]);
  for (const explanation of belief.explanations) {
    const faults = [...new Set(faultsOf(explanation).map((fault) => belief.priors[fault].reportAs))].sort();
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
