import type { BenchState } from "../bench/bench-state.ts";
import type { ColdMode, Place } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { MeterSettings } from "./settings.ts";

/** A cold check: where the probes go and what the meter is set to. */
export interface ColdCheck {
  readonly mode: ColdMode;
  readonly red: Place;
  readonly black: Place;
  /** seconds after touching, capacitors empty before; absent: the settled value */
  readonly seconds?: number;
}

/**
 * What a meter would show. `raw` is the quantity before the OL rule (volts at the probes in diode mode, ohms, farads) and
 * `spread` its standard deviation in the same unit, from the tolerances of the parts that carry the current.
 * `alike` is what is left of it between readings of like parts of one board, by one meter in one room.
 * For ohms both deviations are steep: as a share of `raw` they are the deviation of the logarithm.
 * `centre` (same unit) is where the readings of unknown meters lie: `raw` is what the one meter of the job file shows, whose open
 * voltage and source a real one need not have.
 * `hiddenChance` is, in farads, the chance that a meter of unknown make shows OL for the ohms beside; left out: as `shown` says.
 * `common` is the share of that deviation (same unit) which all readings of this meter and room have in common: a meter that reads
 * high reads high everywhere.
 */
export interface MeterReading {
  readonly solved: true;
  readonly raw: number;
  readonly shown: number | "OL" | "beep" | "silent";
  readonly centre: number;
  readonly spread: number;
  readonly common: number;
  readonly alike: number;
  readonly hiddenChance?: number;
  /** references of assumed parts that make much of the spread, weightiest first */
  readonly restsOn: readonly string[];
}

/** A solve that did not converge is a named outcome, never a number. */
export interface NotSolved {
  readonly solved: false;
  /** one sentence: rung, iterations, worst net and its residual in amps */
  readonly why: string;
}

export type Prediction = MeterReading | NotSolved;

/**
 * Predicts readings of one board in one state of the bench. Compiled once, then asked many times; holds a bounded cache.
 * Fault sets are given as arrays in any order.
 */
export interface Predictor {
  readonly board: Board;
  readonly bench: BenchState;
  readonly meter: MeterSettings;
  predict(check: ColdCheck, faults: readonly Fault[]): Prediction;
  /**
   * The raw reading if the short, leak or drift `faults[at]` were of this value instead (ohms, of a drifted capacitor farads); null where
   * there is no answer. What an unknown resistance does to a reading, for a tenth of a prediction.
   */
  rawWith(check: ColdCheck, faults: readonly Fault[], at: number, ohms: number): number | null;
  /**
   * What the meter would show with each of `candidates` by itself beside `faults`; null where the technician would see no other
   * reading. By the linearised circuit where that can tell, the spread carried over: to tell outcomes apart, not to judge by.
   */
  withEach(
    check: ColdCheck,
    faults: readonly Fault[],
    candidates: readonly Fault[],
    sharpness?: number,
  ): (Prediction | null)[];
  /** Faults with the same word here do the same to the circuit, as shorts of two capacitors side by side do. */
  effect(fault: Fault): string;
  /**
   * Those of `faults` that matter to this reading, together: predict(faults) = predict(those). Two faults that each change
   * nothing alone but do together are both kept.
   */
  matters(check: ColdCheck, faults: readonly Fault[]): readonly Fault[];
  /**
   * Those of `candidates` that could move this reading when added to `faults` (no false negatives beyond a reading change of
   * a tenth of its spread, to first order: see `meter/silent.ts`). The rest are silent: predict(S+f) = predict(S). Another
   * fault of a junction that has one already is not: the two exclude each other.
   * @param sharpness - what is left of the spread, as a share, where more is known of this check than the circuit tells; the same for
   *   the same check and faults. Left out: all of it
   */
  audible(
    check: ColdCheck,
    faults: readonly Fault[],
    candidates: readonly Fault[],
    sharpness?: number,
  ): boolean[];
}

/** Makes a predictor; `meter/predictor.ts` has the only implementation. `boardOhms`: insulation of the board; absent: a dry one's. */
export type MakePredictor = (
  board: Board,
  bench: BenchState,
  meter: MeterSettings,
  boardOhms?: number,
) => Predictor;
