/**
 * What good boards read here, pulled into what the circuit predicts. Parts that nobody has seen, a meter and a room stand behind a prediction
 * as one unknown on the scale of its reading (the logarithm; volts in diode mode): normal about the prediction with its spread, and
 * seen `count` times with the spread of single readings. Normal and normal: the mean moves towards what was read by the share that the two
 * precisions give it (Gelman and others, Bayesian Data Analysis, 2.5), and what is left of the spread is theirs together.
 */
import type { BenchState } from "../bench/bench-state.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Board, ReferenceReading } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { ColdCheck, MakePredictor, MeterReading, Prediction, Predictor } from "./prediction.ts";

/** One reading of one good board is not surer than this: volts in diode mode, else of the logarithm (from memory: parts and meters of a shop). */
export const LEAST_REFERENCE_SPREAD = { diode: 0.015, ohms: 0.04, farads: 0.08 } as const;
/** Below this a reading is leads and contact, and no reference for anything. */
const LEAST_OHMS = 1;

interface Correction {
  /** of the healthy prediction, before */
  readonly base: MeterReading;
  /** of the mean, on the scale */
  readonly shift: number;
  /** deviation of the prediction on the scale, before; and of what is left, the spread of one reading included */
  readonly before: number;
  readonly after: number;
}

/** The same net by whichever soldered pin. */
export function netOfPlace(board: Board, place: string): string {
  const pin = pinOfPlace(place);
  return pin === null ? place : (board.parts.get(pin.ref)?.pins.get(pin.pin) ?? place);
}

/** The reference for a check, settled and by the same polarity; null where there is none. */
export function referenceFor(board: Board, check: ColdCheck): ReferenceReading | null {
  if (check.seconds !== undefined) return null;
  const [red, black] = [netOfPlace(board, check.red), netOfPlace(board, check.black)];
  const found = board.references?.find(
    (one) =>
      one.mode === check.mode && netOfPlace(board, one.red) === red && netOfPlace(board, one.black) === black,
  );
  return found ?? null;
}

/** Deviation of a prediction on the scale of the references. */
function onScale(mode: ColdCheck["mode"], value: number, reading: MeterReading): number {
  return mode === "diode" ? value : value / Math.max(reading.raw, 1e-15);
}

/** How far a good board's mean lies from what is predicted, on the scale, and how sure each of the two is; null where they do not compare. */
export function comparison(reference: ReferenceReading, prediction: Prediction) {
  if (!prediction.solved || typeof prediction.shown !== "number") return null;
  const { mode } = reference;
  if (mode === "ohms" && (prediction.raw < LEAST_OHMS || reference.reading < LEAST_OHMS)) return null;
  const offset =
    mode === "diode"
      ? reference.reading - prediction.centre
      : Math.log(reference.reading / Math.max(prediction.centre, 1e-15));
  return {
    offset,
    model: onScale(mode, prediction.spread, prediction),
    alike: onScale(mode, prediction.alike, prediction),
    single: Math.max(reference.spread, LEAST_REFERENCE_SPREAD[mode]),
  };
}

class ReferencedPredictor implements Predictor {
  readonly board: Board;
  readonly bench: BenchState;
  readonly meter: Predictor["meter"];
  readonly #inner: Predictor;
  readonly #corrections = new Map<string, Correction | null>();

  constructor(inner: Predictor) {
    this.#inner = inner;
    this.board = inner.board;
    this.bench = inner.bench;
    this.meter = inner.meter;
  }

  predict(check: ColdCheck, faults: readonly Fault[]): Prediction {
    return this.#corrected(check, this.#inner.predict(check, faults));
  }

  rawWith(check: ColdCheck, faults: readonly Fault[], at: number, ohms: number): number | null {
    const raw = this.#inner.rawWith(check, faults, at, ohms);
    const correction = raw === null ? null : this.#correction(check);
    return raw === null || correction === null ? raw : moved(check, raw, correction);
  }

  withEach(check: ColdCheck, faults: readonly Fault[], candidates: readonly Fault[]): (Prediction | null)[] {
    return this.#inner
      .withEach(check, faults, candidates, this.#sharpness(check, faults))
      .map((prediction) => (prediction === null ? null : this.#corrected(check, prediction)));
  }

  effect(fault: Fault): string {
    return this.#inner.effect(fault);
  }

  matters(check: ColdCheck, faults: readonly Fault[]): readonly Fault[] {
    return this.#inner.matters(check, faults);
  }

  audible(check: ColdCheck, faults: readonly Fault[], candidates: readonly Fault[]): boolean[] {
    return this.#inner.audible(check, faults, candidates, this.#sharpness(check, faults));
  }

  /** What the good boards leave of the spread: a fault that would have drowned in it is heard. */
  #sharpness(check: ColdCheck, faults: readonly Fault[]): number {
    if (this.#correction(check) === null) return 1;
    const before = this.#inner.predict(check, faults);
    const after = this.#corrected(check, before);
    if (!before.solved || !after.solved || before.spread <= 0) return 1;
    const share = onScale(check.mode, after.spread, after) / onScale(check.mode, before.spread, before);
    return Math.min(1, share);
  }

  #correction(check: ColdCheck): Correction | null {
    const key = `${check.mode}|${check.red}|${check.black}|${check.seconds ?? ""}`;
    const known = this.#corrections.get(key);
    if (known !== undefined) return known;
    const reference = referenceFor(this.board, check);
    const base = reference === null ? null : this.#inner.predict(check, []);
    const compared = reference === null || base === null ? null : comparison(reference, base);
    let made: Correction | null = null;
    if (reference !== null && base?.solved === true && compared !== null) {
      const { offset, model, single } = compared;
      const ofMean = single ** 2 / reference.count;
      const share = model ** 2 / (model ** 2 + ofMean);
      const after = Math.hypot(model * Math.sqrt(1 - share), single);
      made = { base, shift: share * offset, before: model, after: Math.min(model, after) };
    }
    this.#corrections.set(key, made);
    return made;
  }

  #corrected(check: ColdCheck, prediction: Prediction): Prediction {
    const correction = prediction.solved ? this.#correction(check) : null;
    if (!prediction.solved || correction === null) return prediction;
    const { before, after } = correction;
    const share = shareLeft(prediction.raw, correction);
    const raw = moved(check, prediction.raw, correction);
    const here = onScale(check.mode, prediction.spread, prediction);
    const left = Math.hypot(Math.sqrt(Math.max(0, here ** 2 - (share * before) ** 2)), share * after);
    const spread = check.mode === "diode" ? left : left * raw;
    const shown = prediction.shown;
    return {
      ...prediction,
      raw,
      centre: moved(check, prediction.centre, correction),
      shown: typeof shown === "number" ? moved(check, shown, correction) : shown,
      spread,
      common: Math.min(prediction.common, spread),
      alike: Math.min(prediction.alike, spread),
      restsOn: left < here / 2 ? [] : prediction.restsOn,
    };
  }
}

/**
 * How much of what a good board taught is left where a fault moves the reading: beside a path that carries most of the current, what stood there
 * before matters by its share of the two, which is the ratio of the readings (of ohms in parallel exactly; elsewhere a fair guess).
 */
function shareLeft(raw: number, { base }: Correction): number {
  const ratio = Math.abs(raw) / Math.max(Math.abs(base.raw), 1e-15);
  return ratio > 1 ? 1 / ratio : ratio;
}

function moved(check: ColdCheck, value: number, correction: Correction): number {
  const shift = correction.shift * shareLeft(value, correction);
  return check.mode === "diode" ? value + shift : value * Math.exp(shift);
}

/** Nothing lifted, clipped on or taken off but what pulls off by its plug: as the good boards were read. */
export function asReferencesWere(board: Board, bench: BenchState): boolean {
  const comesOff = (ref: string) =>
    board.parts.get(ref)?.plugged === true || board.parts.get(ref)?.kind === "motor";
  return bench.lifted.size === 0 && bench.clips.length === 0 && [...bench.off].every(comesOff);
}

/** Predictors that know what good boards read; of a board without references, the same ones. */
export function withReferences(make: MakePredictor): MakePredictor {
  return (board, bench, meter, boardOhms) => {
    const inner = make(board, bench, meter, boardOhms);
    const known = (board.references?.length ?? 0) > 0 && asReferencesWere(board, bench);
    return known ? new ReferencedPredictor(inner) : inner;
  };
}
