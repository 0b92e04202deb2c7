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
import { faradsOf, readFarads } from "./capacitance.ts";
import { climbAt } from "./climbing.ts";
import { OTHER_METERS } from "./other-meters.ts";
import type {
  ColdCheck,
  MakePredictor,
  MeterReading,
  NotSolved,
  Prediction,
  Predictor,
} from "./prediction.ts";
import { type Probed, Probing, whyUnsolved } from "./probing.ts";
import { FARADS_LEAST_OHMS, rangesOf, voltsAt } from "./ranges.ts";
import type { MeterSettings } from "./settings.ts";
import { differ, movedReading, readingOf, SILENT_SHARE, silentVolts } from "./shown.ts";
import { boundAmps, changeOfOhms, disturbance, effectOf, mostGain } from "./silent.ts";
import { faradsBound } from "./silent-farads.ts";
import { climbingSpread, type Sensitivity, sensitivityOf } from "./spread.ts";

/** States kept; each holds the voltages of the nets and its branch values, about five kilobytes. */
const MOST_STATES = 12_000;
/** A fault whose current could move the probes by less than this is left out of the state (volts). */
const EXACT_VOLTS = 1e-6;
/** Near open an ohms range tells megohms from gigohms by what little it drops: there a fault counts by its share of that. */
const EXACT_SHARE = 1e-4;
/** How closely a reading shifted by other ohms is followed, in volts at the probes. */
const EXACT_SHIFT_VOLTS = 1e-8;
/** Currents that a moved circuit may still miss, as a share of what would be silent. */
const RESIDUAL_SHARE = 0.2;
/** Share of the way to the line between a capacitance and OL that the settled ohms may come without being asked. */
const LINE_SHARE = 0.5;
/** ln of the factor within which the line is asked exactly. */
const NEAR_THE_LINE = 0.7;
/** A settled circuit with how it answers to small changes. */
interface Settled extends Probed {
  readonly sensitivity: Sensitivity;
}

/** One solved question: a check with the faults that matter to it. */
interface State {
  readonly prediction: Prediction;
  /** settled circuit behind it; null for farads, climbing readings and failures */
  readonly probed: Settled | null;
  /** effect of a further fault -> would the technician see it in this reading */
  readonly heard: Map<number, boolean>;
  /** effect of a further fault -> what the meter would then show; null where the technician would see no other reading */
  readonly beside: Map<number, Prediction | null>;
  /** farads only: the branch values, and net voltages for 1 V at the probes */
  readonly alternating: { readonly values: Values; readonly perVolt: ComplexValues } | null;
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
  readonly #effectIds = new WeakMap<Fault, number>();

  constructor(board: Board, bench: BenchState, meter: MeterSettings, boardOhms?: number) {
    this.board = board;
    this.bench = bench;
    this.meter = meter;
    this.probing = new Probing(coldCircuit(board, bench), meter, boardOhms ?? OTHER_METERS.boardOhms);
    this.#gain = mostGain(this.probing.circuit);
  }

  predict(check: ColdCheck, faults: readonly Fault[]): Prediction {
    return this.#settledIn(check, faults).state.prediction;
  }

  audible(check: ColdCheck, faults: readonly Fault[], candidates: readonly Fault[]): boolean[] {
    const { state, core } = this.#settledIn(check, faults);
    const present = new Map(faults.map((fault) => [this.#effectId(fault), faultName(fault)]));
    return candidates.map((candidate) => {
      const effect = this.#effectId(candidate);
      const alike = present.get(effect);
      if (alike !== undefined && alike === faultName(candidate)) return false;
      const known = state.heard.get(effect);
      if (known !== undefined) return known;
      const heard = this.#moves(check, state, core, candidate);
      state.heard.set(effect, heard);
      return heard;
    });
  }

  withEach(check: ColdCheck, faults: readonly Fault[], candidates: readonly Fault[]): (Prediction | null)[] {
    const { state, core } = this.#settledIn(check, faults);
    return candidates.map((candidate) => {
      const effect = this.#effectId(candidate);
      const known = state.beside.get(effect);
      if (known !== undefined) return known;
      const shown = this.#besides(check, state, core, candidate);
      state.beside.set(effect, shown);
      return shown;
    });
  }

  /** What one fault more would make the meter show, by a few chord steps where these can tell; null: nothing else. */
  #besides(check: ColdCheck, state: State, core: readonly Fault[], candidate: Fault): Prediction | null {
    const { prediction: before, probed } = state;
    const anew = () => this.predict(check, [...core, candidate]);
    if (!before.solved || probed === null) return this.#moves(check, state, core, candidate) ? anew() : null;
    const allowed = silentVolts(before, probed, this.probing.boardOhms);
    const moved = this.#movedVolts(check, probed, core, candidate, allowed);
    if (moved === "nowhere") return null;
    if (moved === "unsolved") return anew();
    const raw = this.probing.rawOf(check, probed, moved);
    const after = movedReading(check, this.meter, before, probed.range, raw, this.probing.boardOhms);
    if (!differ(before, after, probed.range, this.probing.boardOhms)) return null;
    return this.probing.staysInRange(check, probed, raw) ? after : anew();
  }

  rawWith(check: ColdCheck, faults: readonly Fault[], at: number, ohms: number): number | null {
    const { state, core } = this.#settledIn(check, faults);
    const { prediction, probed } = state;
    const other = faults.map((fault, i) => (i === at ? { ...fault, value: ohms } : fault));
    const change = changeOfOhms(this.probing.circuit, faults[at], ohms);
    if (probed !== null && prediction.solved && change !== null && core.includes(faults[at])) {
      const { range, sensitivity } = probed;
      const volts = sensitivity.linearised.moved([change], EXACT_SHIFT_VOLTS / (range.ohms * this.#gain));
      const raw = volts === null ? null : this.probing.rawOf(check, probed, volts);
      if (raw !== null && this.probing.staysInRange(check, probed, raw)) return raw;
    }
    const found = this.predict(check, other);
    return found.solved ? found.raw : null;
  }

  /** The state of the check with those of `faults` that matter, found by adding what is not silent until nothing is left. */
  #settledIn(check: ColdCheck, faults: readonly Fault[]): { state: State; core: readonly Fault[] } {
    let core: readonly Fault[] = [];
    let near: Probed | null = null;
    for (;;) {
      const state = this.#state(check, core, near);
      const { probed } = state;
      if (probed === null) {
        if (core.length === faults.length) return { state, core };
        core = faults;
        continue;
      }
      const loud = faults.filter((fault) => core.includes(fault) || this.#loud(probed, fault));
      if (loud.length === core.length) return { state, core };
      core = loud;
      near = probed;
    }
  }

  /** Could the fault set enough current moving, here or with another one, for the probes to notice? */
  #loud({ problem, answer, range, sensitivity, volts: answerVolts }: Settled, fault: Fault): boolean {
    const found = disturbance(this.probing.circuit, problem.values, answer.volts, fault);
    const ohms = range.ohms * this.#gain;
    const exact =
      range.reads === "ohms"
        ? Math.min(EXACT_VOLTS, EXACT_SHARE * (range.openVolts - answerVolts))
        : EXACT_VOLTS;
    if (found.roughAmps * ohms <= exact) return false;
    return boundAmps(found, sensitivity.linearised) * ohms > exact;
  }

  matters(check: ColdCheck, faults: readonly Fault[]): readonly Fault[] {
    return this.#settledIn(check, faults).core;
  }

  #moves(check: ColdCheck, state: State, core: readonly Fault[], candidate: Fault): boolean {
    const before = state.prediction;
    if (!before.solved) return true;
    if (state.alternating !== null)
      return this.#movesFarads(check, before, state.alternating, core, candidate);
    const { probed } = state;
    if (probed === null) {
      const after = this.#state(check, [...core, candidate], null).prediction;
      return !after.solved || differ(before, after, null, this.probing.boardOhms);
    }
    const allowed = silentVolts(before, probed, this.probing.boardOhms);
    const moved = this.#movedVolts(check, probed, core, candidate, allowed);
    if (moved === "nowhere") return false;
    return moved === "unsolved" || this.#differs(check, before, probed, moved);
  }

  /**
   * Where the nets go when `candidate` comes to `core`, in the range of `probed`; nowhere when the probes can move by no more
   * than `allowed` volts. Written over by the next question.
   */
  #movedVolts(
    check: ColdCheck,
    probed: Settled,
    core: readonly Fault[],
    candidate: Fault,
    allowed: number,
  ): Float64Array | "nowhere" | "unsolved" {
    const found = disturbance(this.probing.circuit, probed.problem.values, probed.answer.volts, candidate);
    const ohms = probed.range.ohms * this.#gain;
    if (found.roughAmps * ohms <= allowed) return "nowhere";
    const { linearised } = probed.sensitivity;
    if (boundAmps(found, linearised) * ohms <= allowed) return "nowhere";
    const near = found.whole ? linearised.moved(found.changes, (RESIDUAL_SHARE * allowed) / ohms) : null;
    if (near !== null) return near;
    const after = this.probing.inRange(check, probed, this.probing.circuit.withFaults([...core, candidate]));
    return after.solved ? after.volts : "unsolved";
  }

  /** Is the reading at these net voltages another one, in the range of the first? */
  #differs(check: ColdCheck, before: MeterReading, probed: Probed, volts: Float64Array): boolean {
    const raw = this.probing.rawOf(check, probed, volts);
    const after = readingOf(check, this.meter, { raw, range: probed.range }, before);
    return differ(before, after, probed.range, this.probing.boardOhms);
  }

  /** Does the capacitance move, or the settled ohms across the line above which a meter shows one? */
  #movesFarads(
    check: ColdCheck,
    before: MeterReading,
    { values, perVolt }: NonNullable<State["alternating"]>,
    core: readonly Fault[],
    candidate: Fault,
  ): boolean {
    const inOhms = { mode: "ohms", red: check.red, black: check.black } as const;
    const { state, core: settledCore } = this.#settledIn(inOhms, core);
    const { probed } = state;
    if (probed === null) return true;
    const toTheLine = Math.abs(probed.volts - voltsAt(probed.range, FARADS_LEAST_OHMS));
    const moved = this.#movedVolts(inOhms, probed, settledCore, candidate, LINE_SHARE * toTheLine);
    if (moved === "unsolved") return true;
    let ohms = moved === "nowhere" ? probed.raw : this.probing.rawOf(inOhms, probed, moved);
    if (moved !== "nowhere" && Math.abs(Math.log(ohms / FARADS_LEAST_OHMS)) < NEAR_THE_LINE) {
      const settled = this.#settledIn(inOhms, [...core, candidate]).state.prediction;
      if (!settled.solved) return true;
      ohms = settled.raw;
    }
    const shownAfter = ohms >= FARADS_LEAST_OHMS;
    if (shownAfter !== (before.shown !== "OL")) return true;
    if (!shownAfter) return false;
    const allowed = SILENT_SHARE * before.spread;
    if (faradsBound(this.probing.circuit, values, perVolt, candidate) <= allowed) return false;
    const raw = faradsOf(this.probing, check, this.probing.circuit.withFaults([...core, candidate]));
    return raw === null || Math.abs(raw - before.raw) > allowed;
  }

  #state(check: ColdCheck, core: readonly Fault[], near: Probed | null): State {
    const key = this.#key(check, core);
    const known = this.#states.get(key);
    if (known !== undefined) return known;
    const oldest = this.#states.keys().next();
    if (this.#states.size >= MOST_STATES && !oldest.done) this.#states.delete(oldest.value);
    const state = this.#solve(check, this.probing.circuit.withFaults(core), near);
    this.#states.set(key, state);
    return state;
  }

  #solve(check: ColdCheck, values: Values, near: Probed | null): State {
    const { probing, meter } = this;
    const nothing = {
      probed: null,
      alternating: null,
      heard: new Map<number, boolean>(),
      beside: new Map<number, Prediction | null>(),
    };
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
    const probed = probing.settle(check, values, near);
    if (!probed.solved) return { ...nothing, prediction: { solved: false, why: whyUnsolved(probed) } };
    const sensitivity = sensitivityOf(
      probing.circuit,
      check.mode,
      probed,
      rangesOf(check.mode, probing.meter),
      probing.boardOhms,
    );
    return {
      ...nothing,
      prediction: readingOf(check, meter, probed, sensitivity),
      probed: { ...probed, sensitivity },
    };
  }

  effect(fault: Fault): string {
    const known = this.#effects.get(fault);
    if (known !== undefined) return known;
    const effect = effectOf(this.probing.circuit, fault);
    this.#effects.set(fault, effect);
    return effect;
  }

  #effectId(fault: Fault): number {
    const known = this.#effectIds.get(fault);
    if (known !== undefined) return known;
    const id = idOf(this.#faultIds, this.effect(fault));
    this.#effectIds.set(fault, id);
    return id;
  }

  /** Integers for the check and the faults, the faults in rising order. */
  #key(check: ColdCheck, core: readonly Fault[]): string {
    const checkId = idOf(this.#checkIds, `${check.mode},${check.red},${check.black},${check.seconds ?? ""}`);
    if (core.length === 0) return `${checkId}`;
    const ids = core.map((fault) => this.#effectId(fault)).sort((a, b) => a - b);
    return `${checkId}:${ids.join(",")}`;
  }
}

function idOf(ids: Map<string, number>, name: string): number {
  const known = ids.get(name);
  if (known !== undefined) return known;
  ids.set(name, ids.size);
  return ids.size - 1;
}

function predictionOf(
  probing: Probing,
  check: ColdCheck,
  found: ReturnType<typeof climbAt>,
): readonly (MeterReading | NotSolved)[] {
  if ("solved" in found) return [{ solved: false, why: whyUnsolved(found) }];
  return found.map((probed) => {
    const settled = sensitivityOf(
      probing.circuit,
      check.mode,
      probed,
      rangesOf(check.mode, probing.meter),
      probing.boardOhms,
    );
    return readingOf(check, probing.meter, probed, climbingSpread(check.mode, probed, settled));
  });
}

/** Makes the predictor of a board on the bench. Compiles the circuit once; throws where the bench names what the board has not. */
export const makePredictor: MakePredictor = (board, bench, meter, boardOhms) =>
  new BoardPredictor(board, bench, meter, boardOhms);
