import { faultWords } from "../board/fault-words.ts";
import type { Outcome } from "./check-outcomes.ts";
import { orList, percent } from "./faults-in-words.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { Expectation } from "./proposal.ts";
import { type FindingStep, outcomeProbabilities } from "./steps.ts";

/** How much likelier a fault must become to be named as what an outcome accuses, and how much less to be named as cleared. */
const ACCUSED_FACTOR = 1.3;
const CLEARED_FACTOR = 0.35;
const NAMED_LEAST = 0.04;
const MOST_NAMED = 3;

/** What may come out of a step and what each outcome would mean, most probable first. */
export function expectations(step: FindingStep, hypotheses: Hypotheses): readonly Expectation[] {
  const probabilities = outcomeProbabilities(step.shares, hypotheses);
  const before = chances(hypotheses, null);
  const unit = unitOf(step);
  return step.outcomes
    .map((outcome, o) => ({
      if: ifWords(outcome, unit),
      low: outcome.low,
      high: outcome.high,
      unit,
      probability: probabilities[o],
      means: meaning(before, chances(hypotheses, step.shares[o])),
    }))
    .filter(({ probability }) => probability >= 0.0005)
    .sort((a, b) => b.probability - a.probability || (a.low ?? -1) - (b.low ?? -1));
}

function unitOf({ action }: FindingStep): string {
  if (action.do !== "measure") return "";
  return action.mode === "diode" ? "V" : action.mode === "ohms" ? "ohm" : action.mode === "farads" ? "F" : "";
}

function ifWords({ word, low, high }: Outcome, unit: string): string {
  if (word !== null || low === null || high === null) return word ?? "anything else";
  return `${amount(low, unit)} to ${amount(high, unit)}`;
}

/** A quantity as the meter would show it. */
export function amount(value: number, unit: string): string {
  if (unit === "V") return `${value.toFixed(2)} V`;
  const scales: readonly (readonly [number, string])[] =
    unit === "F"
      ? [
          [1e-3, "m"],
          [1e-6, "u"],
          [1e-9, "n"],
          [1e-12, "p"],
        ]
      : [
          [1e6, "M"],
          [1e3, "k"],
          [1, ""],
        ];
  // A hand meter shows tenths of an ohm, no more.
  if (unit === "ohm" && value < 10) return `${Number(value.toFixed(1))} ohm`;
  const [scale, prefix] = scales.find(([size]) => value >= size) ?? scales[scales.length - 1];
  return `${Number((value / scale).toPrecision(3))} ${prefix}${unit}`;
}

/** Probability of each fault (by its words) among the hypotheses an outcome leaves. */
function chances(hypotheses: Hypotheses, share: Float64Array | null): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  let total = 0;
  hypotheses.list.forEach((hypothesis, h) => {
    const w = hypothesis.weight * (share === null ? 1 : share[h]);
    if (w === 0) return;
    total += w;
    for (const f of faultsOf(hypothesis, hypotheses)) {
      const words = faultWords(hypotheses.priors[f].fault);
      sums.set(words, (sums.get(words) ?? 0) + w);
    }
  });
  if (total > 0) for (const [words, sum] of sums) sums.set(words, sum / total);
  return sums;
}

function meaning(before: ReadonlyMap<string, number>, after: ReadonlyMap<string, number>): string {
  const accused = [...after]
    .filter(([words, p]) => p >= NAMED_LEAST && p >= ACCUSED_FACTOR * (before.get(words) ?? 0))
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const cleared = [...before]
    .filter(([words, p]) => p >= NAMED_LEAST && (after.get(words) ?? 0) <= CLEARED_FACTOR * p)
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const sentences: string[] = [];
  if (accused.length > 0)
    sentences.push(orList(accused.slice(0, MOST_NAMED).map(([words, p]) => `${words} (${percent(p)})`)));
  if (cleared.length > 0)
    sentences.push(`speaks against ${orList(cleared.slice(0, MOST_NAMED).map(([words]) => words))}`);
  return sentences.length > 0 ? sentences.join("; ") : "little changes";
}
