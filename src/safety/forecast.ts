import { faultName } from "../board/fault.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { PriorTable } from "../priors/fault-prior.ts";

/** One part that may break when power is applied, and the fault that would most likely take it. */
interface PowerBreak {
  readonly part: string;
  readonly probability: number;
  /** the fault still believed that contributes most, with its probability; null: it would break by itself */
  readonly because: { readonly fault: string; readonly probability: number } | null;
}

/** What would break at power-up, from what is still believed. Most probable first. */
export interface PowerForecast {
  readonly anyBreaks: number;
  readonly breaks: readonly PowerBreak[];
}

/**
 * Forecasts a power-up. Under each explanation a part breaks with 1 - exp(-sum of its rates): its own rate at power-up plus the
 * knock-ons of every fault present, a silent fault counting by its probability. Averaged over the explanations; the weight of
 * what no explanation lists (`remainder`) is spread over them. Parts already dead under an explanation cannot break again there.
 * @param off - parts that are off the board
 */
export function forecastPower(belief: Belief, priors: PriorTable, off: ReadonlySet<string>): PowerForecast {
  const parts = [...new Set(priors.faults.map((prior) => prior.part))].filter((part) => !off.has(part));
  const slot = new Map(parts.map((part, index) => [part, index]));
  const sum = new Float64Array(parts.length);
  const cause = new Map<number, Map<number, number>>();
  let any = 0;
  let weight = 0;
  for (const explanation of belief.explanations) {
    const present = presence(explanation.presentNow, explanation.silent, priors, off);
    const rates = breakRates(present, priors, slot, explanation.probability, cause);
    weight += explanation.probability;
    let total = 0;
    for (let p = 0; p < rates.length; p++) {
      sum[p] += explanation.probability * -Math.expm1(-rates[p]);
      total += rates[p];
    }
    any += explanation.probability * -Math.expm1(-total);
  }
  const norm = weight > 0 ? weight : 1;
  const breaks = parts.map((part, index) => ({
    part,
    probability: sum[index] / norm,
    because: leading(cause.get(index), belief, priors, norm),
  }));
  return {
    anyBreaks: any / norm,
    breaks: breaks.sort((a, b) => b.probability - a.probability || (a.part < b.part ? -1 : 1)),
  };
}

/** Probability that each fault of the table is present under one explanation. */
function presence(
  presentNow: readonly number[],
  silent: Float64Array,
  priors: PriorTable,
  off: ReadonlySet<string>,
): Float64Array {
  const present = Float64Array.from(priors.faults, (prior, f) =>
    off.has(prior.part) ? 0 : (silent[f] ?? 0),
  );
  for (const f of presentNow) if (!off.has(priors.faults[f].part)) present[f] = 1;
  return present;
}

function breakRates(
  present: Float64Array,
  priors: PriorTable,
  slot: ReadonlyMap<string, number>,
  weight: number,
  cause: Map<number, Map<number, number>>,
): Float64Array {
  const rates = new Float64Array(slot.size);
  const dead = new Float64Array(slot.size);
  priors.faults.forEach((prior, f) => {
    const at = slot.get(prior.part);
    if (at === undefined) return;
    rates[at] += priors.breaksAtPower[f] ?? 0;
    dead[at] = Math.min(1, dead[at] + present[f]);
  });
  for (const knock of priors.knockOns) {
    if (present[knock.parent] === 0) continue;
    const at = slot.get(priors.faults[knock.child].part);
    if (at === undefined || priors.faults[knock.child].part === priors.faults[knock.parent].part) continue;
    const rate = knock.rate * present[knock.parent];
    rates[at] += rate;
    const byFault = cause.get(at) ?? new Map<number, number>();
    cause.set(at, byFault.set(knock.parent, (byFault.get(knock.parent) ?? 0) + weight * rate));
  }
  for (let p = 0; p < rates.length; p++) rates[p] *= 1 - dead[p];
  return rates;
}

function leading(
  byFault: ReadonlyMap<number, number> | undefined,
  belief: Belief,
  priors: PriorTable,
  norm: number,
): PowerBreak["because"] {
  if (byFault === undefined) return null;
  const [fault] = [...byFault].reduce((best, entry) => (entry[1] > best[1] ? entry : best));
  let probability = 0;
  for (const explanation of belief.explanations) {
    const share = explanation.presentNow.includes(fault) ? 1 : (explanation.silent[fault] ?? 0);
    probability += (explanation.probability * share) / norm;
  }
  const prior = priors.faults[fault];
  return { fault: prior.reportAs === "" ? faultName(prior.fault) : prior.reportAs, probability };
}
