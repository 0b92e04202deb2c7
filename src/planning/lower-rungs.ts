/** The rungs without mains that a bench supply adds below the lamp, each with what it may find and what it would spare above it. */
import type { PowerEvent } from "../bench/event.ts";
import { said } from "../messages/said.ts";
import type { Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { openBenchRungs } from "./power-ladder.ts";
import type { PowerRisk } from "./power-risk.ts";
import { BREAKS_MOST, type PowerFinding, powerMinutes, seenAt } from "./power-step.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** A rung is not tried where it says stop on fewer of the boards believed in than this. From memory. */
const LEAST_STOPPED = 0.005;

/** Rungs worth weighing; `first`: the one that spares more than it costs before the next rung on the mains, null where none does. */
interface LowerRungs {
  readonly all: readonly FindingStep[];
  readonly first: FindingStep | null;
}

/**
 * What a bench supply could find out before the mains. No work where the bench has none.
 * @param next - the next rung on the mains; null: none
 */
export function lowerRungs(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  risk: PowerRisk,
  next: PowerFinding | null,
): LowerRungs {
  const rungs = openBenchRungs(input);
  if (rungs.length === 0) return { all: [], first: null };
  const above = next === null || next.again ? null : risk.losses(next.rung.action, hypotheses);
  const all: FindingStep[] = [];
  let first: FindingStep | null = null;
  let most = 0;
  for (const { action } of rungs) {
    const step = stepOf(input, action, hypotheses, model, risk);
    if (step === null) continue;
    all.push(step);
    if (above === null) continue;
    const spared = averted(step, risk.losses(action, hypotheses), above, hypotheses);
    const net = spared - step.allMinutes * model.perMinute;
    if (net <= most) continue;
    most = net;
    first = step;
  }
  return { all, first };
}

function stepOf(
  input: PlanningInput,
  action: PowerEvent,
  hypotheses: Hypotheses,
  model: RepairModel,
  risk: PowerRisk,
): FindingStep | null {
  const { anyBreaks, lossMoney } = risk.under(action);
  if (anyBreaks > BREAKS_MOST) return null;
  const [seen, chances] = seenAt(input, hypotheses, action);
  const step: FindingStep = {
    ...powerMinutes(model),
    action,
    outcomes: seen.map((word) => ({ word, low: null, high: null })),
    shares: seen.map((_, o) => Float64Array.from(chances, (chance) => chance[o])),
    lossMoney,
    lead: said`The supply's own display shows what it gives: look twice at which lead is plus.`,
  };
  return stopChance(step, hypotheses) < LEAST_STOPPED ? null : step;
}

/** Money that the higher rung would lose on boards where the lower one says stop, less what the lower one loses there. */
function averted(lower: FindingStep, below: Float64Array, above: Float64Array, { list }: Hypotheses): number {
  const stops = stopShares(lower);
  let total = 0;
  let spared = 0;
  list.forEach(({ weight }, h) => {
    total += weight;
    spared += weight * stops[h] * Math.max(0, above[h] - below[h]);
  });
  return total > 0 ? spared / total : 0;
}

/** Sights of a bench supply after which the next rung does not come. */
const STOPS: ReadonlySet<string> = new Set(["limiting", "smoke"]);

function stopShares({ outcomes, shares }: FindingStep): Float64Array {
  const stops = new Float64Array(shares[0]?.length ?? 0);
  outcomes.forEach(({ word }, o) => {
    if (word !== null && STOPS.has(word)) for (let h = 0; h < stops.length; h++) stops[h] += shares[o][h];
  });
  return stops;
}

/** How much likelier it is to say stop on some board believed in than on one where nothing is wrong for it. */
function stopChance(step: FindingStep, { list }: Hypotheses): number {
  const stops = stopShares(step);
  const least = stops.reduce((low, share) => Math.min(low, share), 1);
  return list.reduce((sum, { weight }, h) => sum + weight * (stops[h] - least), 0);
}
