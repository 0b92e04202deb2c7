/**
 * Cold readings as evidence. Readings of the same check, on the same bench, in the same span are one piece: they share the
 * tolerance of the parts.
 */
import { benchKey } from "../bench/bench-state.ts";
import type { ColdMode, MeasureEvent, Reading } from "../bench/event.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import { driftsInFarads, nominalValue } from "../board/fault-nominal.ts";
import type { ColdCheck, MeterReading, Predictor } from "../meter/prediction.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { formatQuantity } from "../units/quantity.ts";
import { COMMON_POINTS, type Evidence } from "./evidence.ts";
import { giveSets, HeardSets } from "./heard-set.ts";
import { bestLogLikelihood, onScale, readingLogLikelihood, slipLogLikelihood } from "./reading-model.ts";
import { NO_ANSWER, shownWord } from "./shown-words.ts";
import type { Universe } from "./universe.ts";

/** A reading marked `climbing` is the value this long after touching, capacitors empty before. */
export const CLIMBING_SECONDS = 2;

export interface ColdGroup {
  readonly check: ColdCheck;
  readonly readings: readonly Reading[];
  readonly logIndexes: readonly number[];
  readonly entry: TimelineEntry;
  /** check and bench, for caches that outlive one assessment */
  readonly key: string;
}

/** The check a cold `measure` event made; null for a live one. */
export function coldCheckOf(
  event: Pick<MeasureEvent, "mode" | "red" | "black" | "settling">,
): ColdCheck | null {
  if (!isColdMode(event.mode) || event.red === undefined || event.black === undefined) return null;
  const check = { mode: event.mode, red: event.red, black: event.black };
  return event.settling === "climbing" ? { ...check, seconds: CLIMBING_SECONDS } : check;
}

/** All cold readings that count, but for those that other evidence speaks for, grouped, in an order that does not depend on when they were taken. */
export function coldGroups(timeline: Timeline, saidElsewhere: ReadonlySet<number> = new Set()): ColdGroup[] {
  const groups = new Map<
    string,
    { check: ColdCheck; readings: Reading[]; logIndexes: number[]; entry: TimelineEntry; key: string }
  >();
  let cures = 0;
  for (const entry of timeline.entries) {
    if (entry.event.do === "clean" || entry.event.do === "resolder") cures++;
    if (entry.event.do !== "measure" || saidElsewhere.has(entry.logIndex)) continue;
    const check = coldCheckOf(entry.event);
    if (check === null) continue;
    const key = `${check.mode}|${check.red}|${check.black}|${check.seconds ?? "settled"}|${benchKey(entry.before)}`;
    const group = groups.get(`${key}|${entry.span}|${cures}`);
    if (group === undefined)
      groups.set(`${key}|${entry.span}|${cures}`, {
        check,
        readings: [entry.event.reading],
        logIndexes: [entry.logIndex],
        entry,
        key,
      });
    else {
      group.readings.push(entry.event.reading);
      group.logIndexes.push(entry.logIndex);
    }
  }
  return [...groups.entries()].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, group]) => group);
}

/**
 * The costly answers of the circuit, kept between assessments of one board, cause and meter: which faults can move which
 * check, and how likely what was read is under which faults. Bounded: when full it starts afresh.
 */
export class EvidenceMemory {
  readonly #masks = new Map<string, Uint8Array>();
  readonly #vectors = new Map<string, Map<string, Float64Array>>();
  readonly #mattering = new Map<string, Map<string, readonly number[]>>();
  readonly #alike = new WeakMap<Predictor, Int32Array>();
  #vectorCount = 0;
  readonly #sets = new Map<string, HeardSets>();
  #universe: { readonly key: string; readonly universe: Universe } | null = null;
  static readonly #mostMattering = 20_000;
  static readonly #mostSets = 150_000;
  static readonly #mostMasks = 10_000;
  static readonly #mostVectors = 120_000;

  /** The universe of a log, as long as nothing more is done that breaks or cures. */
  universe(key: string, make: () => Universe): Universe {
    if (this.#universe?.key !== key) this.#universe = { key, universe: make() };
    return this.#universe.universe;
  }

  /** The piece with what was worked out for its sets before, by a name that says all that its answers depend on. */
  remembering(key: string, piece: Evidence): Evidence {
    let count = 0;
    for (const sets of this.#sets.values()) count += sets.count;
    if (count > EvidenceMemory.#mostSets) this.#sets.clear();
    this.#sets.set(key, giveSets(piece, this.#sets.get(key) ?? new HeardSets(piece)));
    return piece;
  }

  mask(key: string, compute: () => Uint8Array): Uint8Array {
    const known = this.#masks.get(key);
    if (known !== undefined) return known;
    if (this.#masks.size >= EvidenceMemory.#mostMasks) this.#masks.clear();
    const mask = compute();
    this.#masks.set(key, mask);
    return mask;
  }

  /** For each fault of the prior table the first one that does the same to the circuit on this bench, as uncertainly. */
  alike(predictor: Predictor, priors: readonly FaultPrior[]): Int32Array {
    const known = this.#alike.get(predictor);
    if (known !== undefined) return known;
    const first = new Map<string, number>();
    const alike = Int32Array.from(priors, ({ fault, spreadLn }, index) => {
      const effect = `${predictor.effect(fault)} ${spreadLn}`;
      if (!first.has(effect)) first.set(effect, index);
      return first.get(effect) ?? index;
    });
    this.#alike.set(predictor, alike);
    return alike;
  }

  mattering(check: string, faults: string, compute: () => readonly number[]): readonly number[] {
    const kept = this.#mattering.get(check) ?? new Map<string, readonly number[]>();
    this.#mattering.set(check, kept);
    const known = kept.get(faults);
    if (known !== undefined) return known;
    if (kept.size >= EvidenceMemory.#mostMattering) kept.clear();
    const found = compute();
    kept.set(faults, found);
    return found;
  }

  vector(piece: string, faults: string, compute: () => Float64Array): Float64Array {
    const kept = this.#vectors.get(piece) ?? new Map<string, Float64Array>();
    const known = kept.get(faults);
    if (known !== undefined) return known;
    if (this.#vectorCount >= EvidenceMemory.#mostVectors) {
      this.#vectors.clear();
      kept.clear();
      this.#vectorCount = 0;
    }
    const vector = compute();
    kept.set(faults, vector);
    this.#vectors.set(piece, kept);
    this.#vectorCount++;
    return vector;
  }
}

/** A reading as the meter's display would show it. */
export function shownWords(mode: ColdMode, shown: number | string): string {
  if (typeof shown === "string") return shownWord(shown);
  if (mode === "diode") return `${shown.toFixed(3)} V`;
  // a hand meter shows tenths of an ohm, no more
  if (mode === "ohms" && Math.abs(shown) < 10) return `${shown.toFixed(1)} ohm`;
  return formatQuantity(shown, mode === "farads" ? "F" : "ohm");
}

/** Shorts of no more than this are all zero to a diode mode: their own spread is not asked for. */
const DEAD_SHORT_OHMS = 1;

/**
 * How far the reading may lie from its prediction because nobody knows the ohms of a short or leak, or how far a part has drifted:
 * where it would lie one deviation of ln(value) higher, each fault by itself, added as squares.
 */
function faultSpread(
  check: ColdCheck,
  present: readonly FaultPrior[],
  predictor: Predictor,
  prediction: MeterReading,
): number {
  const here = onScale(check.mode, prediction.raw, predictor.meter);
  const faults = present.map((prior) => prior.fault);
  let square = 0;
  present.forEach(({ fault, spreadLn }, at) => {
    const nominal = nominalValue(predictor.board, fault);
    if (spreadLn === 0 || nominal === undefined) return;
    // ohms that have drifted are listed level by level; of a dried-out capacitor anything may be left
    if (fault.mode === "drift" && !(check.mode === "farads" && driftsInFarads(predictor.board, fault)))
      return;
    if (check.mode === "diode" && nominal <= DEAD_SHORT_OHMS) return;
    const higher = predictor.rawWith(check, faults, at, nominal * Math.exp(spreadLn));
    if (higher !== null) square += (onScale(check.mode, higher, predictor.meter) - here) ** 2;
  });
  return Math.sqrt(square);
}

/** The evidence of one group. `notSolved` collects predictions that failed: they count as no evidence. */
export function coldEvidence(
  group: ColdGroup,
  predictor: Predictor,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
  notSolved: Set<string>,
): Evidence {
  const { check, readings } = group;
  const alike = memory.alike(predictor, priors);
  const mattering = (indexes: readonly number[]): readonly number[] =>
    indexes.length === 0
      ? indexes
      : memory.mattering(group.key, indexes.join(","), () => {
          const kept = new Set(predictor.matters(check, faultsOf(indexes)));
          const matter = indexes.filter((index) => kept.has(priors[index].fault));
          const standIns = matter.map((index) => alike[index]);
          // two leaks side by side are both there: one place cannot stand for both
          const places = new Set(standIns.map((index) => priors[index].site));
          return (places.size < matter.length ? matter : standIns).sort((a, b) => a - b);
        });
  const piece = `${group.key}=${readings.join(",")}`;
  const candidates = priors.map((prior) => prior.fault);
  const faultsOf = (indexes: readonly number[]) => indexes.map((index) => priors[index].fault);
  return memory.remembering(piece, {
    logIndex: group.entry.logIndex,
    best: readings.reduce<number>(
      (sum, reading) => sum + bestLogLikelihood(check.mode, reading, predictor.meter),
      0,
    ),
    slip: readings.reduce<number>(
      (sum, reading) => sum + slipLogLikelihood(check.mode, reading, predictor.meter),
      0,
    ),
    logLikelihood(all) {
      const indexes = mattering(all);
      return memory.vector(piece, indexes.join(","), () => {
        const prediction = predictor.predict(check, faultsOf(indexes));
        if (prediction.solved) {
          const present = indexes.map((index) => priors[index]);
          const spread = faultSpread(check, present, predictor, prediction);
          return readingLogLikelihood(check.mode, readings, prediction, predictor.meter, spread);
        }
        notSolved.add(prediction.why);
        return new Float64Array(COMMON_POINTS.length);
      });
    },
    wouldShow(indexes) {
      const prediction = predictor.predict(check, faultsOf(indexes));
      return prediction.solved ? shownWords(check.mode, prediction.shown) : NO_ANSWER;
    },
    hears: (indexes, fault) => predictor.audible(check, faultsOf(indexes), [candidates[fault]])[0] === true,
    audible(all) {
      const indexes = mattering(all);
      return memory.mask(`${group.key}#${indexes.join(",")}`, () =>
        Uint8Array.from(predictor.audible(check, faultsOf(indexes), candidates), (heard) => (heard ? 1 : 0)),
      );
    },
  });
}
