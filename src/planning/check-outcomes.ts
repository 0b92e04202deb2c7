import type { Fault } from "../board/fault.ts";
import type { LiveReading } from "../live/live-reading.ts";
import { said } from "../messages/said.ts";
import type { ColdCheck, MeterReading, Predictor } from "../meter/prediction.ts";
import { METER_SPREAD } from "../meter/spread.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { PLANNING_RATES } from "./planning-rates.ts";

/** One thing that may come out of a step. */
export interface Outcome {
  /** what the meter or the eye shows where that is no number: as the log spells it (`OL`, `beep`, `lamp-dark`), else said */
  readonly word: string | null;
  /** 5-95 % band of what the meter shows; null with a word */
  readonly low: number | null;
  readonly high: number | null;
  /** what meters that are clipped on then show, where the word is a sight under power and it stays on */
  readonly then?: string;
}

/** Of a reading that no model foretells. */
export const ANYTHING = said`anything`;
export const ANYTHING_ELSE = said`anything else`;

/** A step seen as a partition of the hypotheses: `classOf[h]` is the outcome hypothesis h leads to. */
export interface Partition {
  readonly classOf: Int16Array;
  readonly outcomes: readonly Outcome[];
}

interface Shown {
  readonly hypothesis: number;
  readonly word: string | null;
  readonly value: number;
  readonly spread: number;
}

/**
 * What one cold check would show under each hypothesis, gathered into outcomes that the meter can tell apart: two are apart when
 * they differ by more than `tellApartSpreads` combined spreads, or one is a word and the other a number. Null where a solve did not converge
 * (such a check promises nothing).
 */
export function checkPartition(
  check: ColdCheck,
  hypotheses: Hypotheses,
  predictor: Predictor,
): Partition | null {
  const shown = shownBy(check, hypotheses, predictor);
  return shown === null ? null : gather(shown, hypotheses.list.length, scaleOf(check.mode));
}

/** A scale on which deviations add up: volts and farads as they are, ohms by their logarithm. */
interface Scale {
  of(reading: MeterReading): { value: number; spread: number };
  back(value: number): number;
}

const LN_OHMS: Scale = {
  of({ centre, raw, spread }) {
    const steep = Math.max(0, raw) + METER_SPREAD.contactOhms;
    const floor = Math.hypot(PLANNING_RATES.floorOhms / steep, PLANNING_RATES.floorShare);
    return {
      value: Math.log(centre + METER_SPREAD.contactOhms),
      spread: Math.hypot(spread / steep, floor),
    };
  },
  back: (value) => Math.max(0, Math.exp(value) - METER_SPREAD.contactOhms),
};

function straightScale(least: number): Scale {
  return {
    of({ centre, spread }) {
      const value = Math.abs(centre);
      return { value, spread: Math.hypot(spread, least + PLANNING_RATES.floorShare * value) };
    },
    back: (value) => Math.max(0, value),
  };
}

const VOLTS = straightScale(PLANNING_RATES.floorVolts);
const FARADS = straightScale(PLANNING_RATES.floorFarads);

function scaleOf(mode: ColdCheck["mode"]): Scale {
  if (mode === "diode") return VOLTS;
  return mode === "farads" ? FARADS : LN_OHMS;
}

function shownBy(check: ColdCheck, hypotheses: Hypotheses, predictor: Predictor): Shown[] | null {
  const shown: Shown[] = [];
  const scale = scaleOf(check.mode);
  const byCore = membersByCore(hypotheses);
  for (let core = 0; core < hypotheses.cores.length; core++) {
    const { faults } = hypotheses.cores[core];
    const members = byCore[core];
    const base = predictor.predict(check, faults);
    if (!base.solved) return null;
    const asked = askedBeside(check, members, hypotheses, predictor);
    const moved = predictor.withEach(
      check,
      faults,
      asked.map((h) => faultBeside(hypotheses, h)),
    );
    // most silent faults cannot move this reading: what the core alone shows stands for them
    const readings = new Map(asked.map((h, i) => [h, moved[i]]));
    for (const h of members) {
      const reading = readings.get(h) ?? base;
      if (!reading.solved) return null;
      const word = typeof reading.shown === "string" ? reading.shown : null;
      shown.push({ hypothesis: h, word, ...scale.of(reading) });
    }
  }
  return shown;
}

/**
 * Of the hypotheses of one core those whose silent fault is asked about: the likely ones, and of the unlikely ones those that the
 * reading would show on a board with nothing else wrong. What shows only beside the core is lost for the others.
 */
function askedBeside(
  check: ColdCheck,
  members: readonly number[],
  hypotheses: Hypotheses,
  predictor: Predictor,
): readonly number[] {
  const beside = members.filter((h) => hypotheses.list[h].beside >= 0);
  const unlikely = beside.filter((h) => hypotheses.list[h].weight < PLANNING_RATES.besideAsked);
  const alone = predictor.withEach(
    check,
    [],
    unlikely.map((h) => faultBeside(hypotheses, h)),
  );
  const unheard = new Set(unlikely.filter((_, i) => alone[i] === null));
  return beside.filter((h) => !unheard.has(h));
}

function faultBeside({ priors, list }: Hypotheses, h: number): Fault {
  return priors[list[h].beside].fault;
}

const byCoreCache = new WeakMap<Hypotheses, readonly (readonly number[])[]>();

function membersByCore(hypotheses: Hypotheses): readonly (readonly number[])[] {
  const known = byCoreCache.get(hypotheses);
  if (known !== undefined) return known;
  const byCore: number[][] = hypotheses.cores.map(() => []);
  hypotheses.list.forEach(({ core }, h) => {
    byCore[core].push(h);
  });
  byCoreCache.set(hypotheses, byCore);
  return byCore;
}

function gather(shown: readonly Shown[], count: number, scale: Scale): Partition {
  const classOf = new Int16Array(count);
  const outcomes: { word: string | null; low: number | null; high: number | null }[] = [];
  const words = new Map<string, number>();
  const numbers = shown
    .filter(({ word }) => word === null)
    .sort((a, b) => a.value - b.value || a.hypothesis - b.hypothesis);
  let previous: Shown | null = null;
  for (const next of numbers) {
    const low = scale.back(next.value - 1.645 * next.spread);
    const high = scale.back(next.value + 1.645 * next.spread);
    if (previous === null || apart(previous, next)) outcomes.push({ word: null, low, high });
    const at = outcomes[outcomes.length - 1];
    at.low = Math.min(at.low ?? low, low);
    at.high = Math.max(at.high ?? high, high);
    classOf[next.hypothesis] = outcomes.length - 1;
    previous = next;
  }
  for (const { hypothesis, word } of shown) {
    if (word === null) continue;
    const known = words.get(word) ?? outcomes.push({ word, low: null, high: null }) - 1;
    words.set(word, known);
    classOf[hypothesis] = known;
  }
  return { classOf, outcomes };
}

function apart(a: Shown, b: Shown): boolean {
  return b.value - a.value > PLANNING_RATES.tellApartSpreads * Math.hypot(a.spread, b.spread);
}

/** What a meter left on a live board would show, hypothesis by hypothesis; where the model cannot say it may be anything. */
export function voltsPartition(readings: readonly (LiveReading | null)[]): Partition {
  const shown = readings.map((reading, hypothesis): Shown => {
    if (reading === null) return { hypothesis, word: ANYTHING, value: 0, spread: 0 };
    const { value, spread } = reading;
    const floor = PLANNING_RATES.floorVolts + PLANNING_RATES.floorShare * Math.abs(value);
    return { hypothesis, word: null, value: Math.abs(value), spread: Math.hypot(spread, floor) };
  });
  return gather(shown, readings.length, VOLTS);
}

/** What a bench supply's display would show of its amps, hypothesis by hypothesis. */
export function ampsPartition(
  readings: readonly ({ readonly value: number; readonly spread: number } | null)[],
): Partition {
  const shown = readings.map((reading, hypothesis): Shown => {
    if (reading === null) return { hypothesis, word: ANYTHING, value: 0, spread: 0 };
    const spread = Math.hypot(reading.spread, PLANNING_RATES.floorAmps);
    return { hypothesis, word: null, value: reading.value, spread };
  });
  return gather(shown, readings.length, straightScale(PLANNING_RATES.floorAmps));
}

/** What the outcome tells, in bits times the weight of the hypotheses. */
export function bitsOf(partition: Partition, { list }: Hypotheses): number {
  const weights = new Float64Array(partition.outcomes.length);
  let total = 0;
  list.forEach(({ weight }, h) => {
    weights[partition.classOf[h]] += weight;
    total += weight;
  });
  return weights.reduce((sum, weight) => (weight > 0 ? sum - weight * Math.log2(weight / total) : sum), 0);
}

export function shownAs({ word, low, high }: Outcome): string {
  if (word !== null || low === null || high === null) return word ?? ANYTHING_ELSE;
  return `${Number(low.toPrecision(2))}-${Number(high.toPrecision(2))}`;
}

/** Two steps taken together: hypotheses stay in one class only where both leave them in one. */
export function refine(first: Partition, second: Partition): Partition {
  const seen = new Map<number, number>();
  const classOf = new Int16Array(first.classOf.length);
  const outcomes: Outcome[] = [];
  for (let h = 0; h < classOf.length; h++) {
    const key = first.classOf[h] * 4096 + second.classOf[h];
    let at = seen.get(key);
    if (at === undefined) {
      const word = `${shownAs(first.outcomes[first.classOf[h]])}; ${shownAs(second.outcomes[second.classOf[h]])}`;
      at = outcomes.push({ word, low: null, high: null }) - 1;
      seen.set(key, at);
    }
    classOf[h] = at;
  }
  return { classOf, outcomes };
}
