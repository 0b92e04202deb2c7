/**
 * Predicts readings of one board in one state of the bench. Remembers, per check, only the sets of faults that change anything:
 * most faults are silent for most checks, so nearly every question is answered from a handful of solved states.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import { type Fault, faultName } from "../board/fault.ts";
import type { Values } from "../circuit/netlist.ts";
import { coldCircuit } from "../cold/cold-circuit.ts";
import type { ComplexValues } from "../numeric/sparse-lu-complex.ts";
import { readFarads } from "./capacitance.ts";
import { climbAt } from "./climbing.ts";
import type {
  ColdCheck,
  MakePredictor,
  MeterReading,
  NotSolved,
  Prediction,
  Predictor,
} from "./prediction.ts";
import { type Probed, Probing, whyUnsolved } from "./probing.ts";
import type { MeterSettings } from "./settings.ts";
import { boundAmps, disturbances, effectOf, mostGain, roughAmps } from "./silent.ts";
import { faradsBound } from "./silent-farads.ts";
import { climbingSpread, type Sensitivity, type Spread, sensitivityOf } from "./spread.ts";

/** States kept; each holds the voltages of the nets, about a kilobyte. */
const MOST_STATES = 20_000;
/** A fault whose current could move the probes by less than this is left out of the state (volts). */
const EXACT_VOLTS = 1e-5;
/** Share of the spread below which a fault is called silent. */
const SILENT_SHARE = 0.1;
/** Readings that both show OL are one reading when both are this many spreads and this share above the limit. */
const FAR_OVER = { spreads: 5, share: 0.1 } as const;

/** One solved question: a check with the faults that matter to it. */
interface State {
  readonly prediction: Prediction;
  /** settled circuit behind it; null for farads, climbing readings and failures */
  readonly probed: Probed | null;
  sensitivity: Sensitivity | null;
  /** farads only: the branch values, and net voltages for 1 V at the probes */
  readonly alternating: { readonly values: Values; readonly perVolt: ComplexValues } | null;
}

/** What the meter shows for a settled or climbing circuit, with its spread. */
function readingOf(check: ColdCheck, meter: MeterSettings, probed: Probed, spread: Spread): MeterReading {
  const { raw, range } = probed;
  const over = raw > range.limit;
  const shown =
    check.mode === "continuity"
      ? raw < meter.beepOhms
        ? ("beep" as const)
        : ("silent" as const)
      : over
        ? ("OL" as const)
        : raw;
  return { solved: true, raw, shown, spread: spread.spread, common: spread.common };
}

class BoardPredictor implements Predictor {
  readonly board: Board;
  readonly bench: BenchState;
  readonly meter: MeterSettings;
  readonly probing: Probing;
  readonly #gain: number;
  readonly #states = new Map<string, State>();
  readonly #checkIds = new Map<string, number>();
  readonly #faultIds = new Map<string, number>();
  readonly #effects = new WeakMap<Fault, string>();

  constructor(board: Board, bench: BenchState, meter: MeterSettings) {
    this.board = board;
    this.bench = bench;
    this.meter = meter;
    this.probing = new Probing(coldCircuit(board, bench), meter);
    this.#gain = mostGain(this.probing.circuit);
  }

  predict(check: ColdCheck, faults: readonly Fault[]): Prediction {
    return this.#settledIn(check, faults).state.prediction;
  }

  audible(check: ColdCheck, faults: readonly Fault[], candidates: readonly Fault[]): boolean[] {
    const { state, core } = this.#settledIn(check, faults);
    const present = new Set(faults.map(faultName));
    const asked = new Map<string, boolean>();
    for (const candidate of candidates) {
      const effect = this.effect(candidate);
      if (asked.has(effect) || present.has(faultName(candidate))) continue;
      asked.set(effect, this.#moves(check, state, core, candidate));
    }
    return candidates.map((candidate) => asked.get(this.effect(candidate)) ?? false);
  }

  /** The state of the check with those of `faults` that matter, found by adding what is not silent until nothing is left. */
  #settledIn(check: ColdCheck, faults: readonly Fault[]): { state: State; core: readonly Fault[] } {
    let core: readonly Fault[] = [];
    for (;;) {
      const state = this.#state(check, core);
      const { probed } = state;
      if (probed === null) {
        if (core.length === faults.length) return { state, core };
        core = faults;
        continue;
      }
      const loud = faults.filter((fault) => core.includes(fault) || this.#loud(check, state, probed, fault));
      if (loud.length === core.length) return { state, core };
      core = loud;
    }
  }

  /** Could the fault set enough current moving, here or with another one, for the probes to notice? */
  #loud(check: ColdCheck, state: State, probed: Probed, fault: Fault): boolean {
    const { problem, answer, range } = probed;
    const found = disturbances(this.probing.circuit, problem.values, answer.volts, fault);
    const ohms = range.ohms * this.#gain;
    if (roughAmps(found) * ohms <= EXACT_VOLTS) return false;
    return boundAmps(found, this.#sensitivity(check, state, probed).linearised) * ohms > EXACT_VOLTS;
  }

  matters(check: ColdCheck, faults: readonly Fault[]): readonly Fault[] {
    return this.#settledIn(check, faults).core;
  }

  #moves(check: ColdCheck, state: State, core: readonly Fault[], candidate: Fault): boolean {
    const before = state.prediction;
    if (!before.solved) return true;
    const { probed } = state;
    if (probed !== null) {
      const allowed = SILENT_SHARE * spreadVolts(before, state.sensitivity, probed);
      const found = disturbances(this.probing.circuit, probed.problem.values, probed.answer.volts, candidate);
      if (roughAmps(found) * probed.range.ohms * this.#gain <= allowed) return false;
      const sensitivity = this.#sensitivity(check, state, probed);
      const bound = boundAmps(found, sensitivity.linearised) * probed.range.ohms * this.#gain;
      if (bound <= allowed) return false;
    }
    if (state.alternating !== null && this.#silentFarads(check, before, state.alternating, core, candidate))
      return false;
    const after = this.#state(check, [...core, candidate]).prediction;
    if (!after.solved) return true;
    if (farOver(before, probed) && farOver(after, probed)) return false;
    return before.shown !== after.shown
      ? !same(before, after)
      : Math.abs(after.raw - before.raw) > SILENT_SHARE * before.spread;
  }

  /** Silent in farads, and in the settled ohms that decide whether farads are shown at all. */
  #silentFarads(
    check: ColdCheck,
    before: MeterReading,
    { values, perVolt }: NonNullable<State["alternating"]>,
    core: readonly Fault[],
    candidate: Fault,
  ): boolean {
    if (faradsBound(this.probing.circuit, values, perVolt, candidate) > SILENT_SHARE * before.spread)
      return false;
    const settled = this.#settledIn({ mode: "ohms", red: check.red, black: check.black }, core);
    return !this.#moves(
      { mode: "ohms", red: check.red, black: check.black },
      settled.state,
      settled.core,
      candidate,
    );
  }

  #sensitivity(check: ColdCheck, state: State, probed: Probed): Sensitivity {
    state.sensitivity ??= sensitivityOf(this.probing.circuit, check.mode, probed);
    return state.sensitivity;
  }

  #state(check: ColdCheck, core: readonly Fault[]): State {
    const key = this.#key(check, core);
    const known = this.#states.get(key);
    if (known !== undefined) return known;
    const oldest = this.#states.keys().next();
    if (this.#states.size >= MOST_STATES && !oldest.done) this.#states.delete(oldest.value);
    const state = this.#solve(check, this.probing.circuit.withFaults(core));
    this.#states.set(key, state);
    return state;
  }

  #solve(check: ColdCheck, values: Values): State {
    const { probing, meter } = this;
    const nothing = { probed: null, sensitivity: null, alternating: null };
    if (check.mode === "farads") {
      const reading = readFarads(probing, check, values);
      if (!reading.solved || reading.perVolt === null) return { ...nothing, prediction: reading };
      const { perVolt, ...prediction } = reading;
      return { ...nothing, prediction, alternating: { values, perVolt } };
    }
    if (check.seconds !== undefined) {
      const found = climbAt(probing, check, values, [check.seconds]);
      return { ...nothing, prediction: predictionOf(probing, check, found)[0] };
    }
    const probed = probing.settle(check, values);
    if (!probed.solved) return { ...nothing, prediction: { solved: false, why: whyUnsolved(probed) } };
    const spread = sensitivityOf(probing.circuit, check.mode, probed);
    return { ...nothing, prediction: readingOf(check, meter, probed, spread), probed };
  }

  effect(fault: Fault): string {
    const known = this.#effects.get(fault);
    if (known !== undefined) return known;
    const effect = effectOf(this.probing.circuit, fault);
    this.#effects.set(fault, effect);
    return effect;
  }

  /** Integers for the check and the faults, the faults in rising order. */
  #key(check: ColdCheck, core: readonly Fault[]): string {
    const checkId = idOf(this.#checkIds, `${check.mode},${check.red},${check.black},${check.seconds ?? ""}`);
    if (core.length === 0) return `${checkId}`;
    const ids = core.map((fault) => idOf(this.#faultIds, this.effect(fault))).sort((a, b) => a - b);
    return `${checkId}:${ids.join(",")}`;
  }
}

function idOf(ids: Map<string, number>, name: string): number {
  const known = ids.get(name);
  if (known !== undefined) return known;
  ids.set(name, ids.size);
  return ids.size - 1;
}

/** The spread as volts at the probes. */
function spreadVolts(reading: MeterReading, sensitivity: Sensitivity | null, probed: Probed): number {
  const spread = sensitivity?.spread ?? reading.spread;
  if (probed.range.limit > 100) {
    const dropped = probed.range.openVolts - probed.volts;
    return (spread * dropped ** 2) / (probed.range.ohms * probed.range.openVolts);
  }
  return spread;
}

function same(before: MeterReading, after: MeterReading): boolean {
  return before.shown === after.shown;
}

/** Is the reading so far above the range that the display says OL whatever the parts' tolerances do? */
function farOver(reading: MeterReading, probed: Probed | null): boolean {
  if (probed === null || reading.shown !== "OL") return false;
  const { limit } = probed.range;
  return (
    reading.raw > limit * (1 + FAR_OVER.share) && reading.raw > limit + FAR_OVER.spreads * reading.spread
  );
}

function predictionOf(
  probing: Probing,
  check: ColdCheck,
  found: ReturnType<typeof climbAt>,
): readonly (MeterReading | NotSolved)[] {
  if ("solved" in found) return [{ solved: false, why: whyUnsolved(found) }];
  return found.map((probed) => {
    const settled = sensitivityOf(probing.circuit, check.mode, probed);
    return readingOf(check, probing.meter, probed, climbingSpread(check.mode, probed, settled));
  });
}

/** Makes the predictor of a board on the bench. Compiles the circuit once; throws where the bench names what the board has not. */
export const makePredictor: MakePredictor = (board, bench, meter) => new BoardPredictor(board, bench, meter);
