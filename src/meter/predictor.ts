/**
 * Predicts readings of one board in one state of the bench. Remembers, per check, only the sets of faults that change anything:
 * most faults are silent for most checks, so nearly every question is answered from a handful of solved states.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { siteKey } from "../cold/circuit-builder.ts";
import { coldCircuit } from "../cold/cold-circuit.ts";
import { faradsOf } from "./capacitance.ts";
import { OTHER_METERS } from "./other-meters.ts";
import type { ColdCheck, MakePredictor, MeterReading, Prediction, Predictor } from "./prediction.ts";
import { type Probed, Probing } from "./probing.ts";
import { FARADS_LEAST_OHMS, faradsHiddenBy, voltsAt } from "./ranges.ts";
import type { MeterSettings } from "./settings.ts";
import { type Settled, type State, settledState, solveState } from "./settled-state.ts";
import { differ, movedReading, readingOf, SILENT_SHARE, silentVolts } from "./shown.ts";
import { boundAmps, changeOfOhms, disturbance, effectOf, mostGain } from "./silent.ts";
import { faradsBound } from "./silent-farads.ts";
import { StateMemory } from "./state-memory.ts";

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
/** The same where some meters show it and others do not: there is no one line. */
const BETWEEN_LINES_SHARE = 0.1;
/** ln of the factor within which the line is asked exactly. */
const NEAR_THE_LINE = 0.7;
/** Chances of OL as near as this are the same answer. */
const HIDDEN_ALIKE = 0.02;
class BoardPredictor implements Predictor {
  readonly board: Board;
  readonly bench: BenchState;
  readonly meter: MeterSettings;
  readonly probing: Probing;
  readonly #gain: number;
  readonly #memory: StateMemory;
  readonly #states = new Map<string, State>();
  readonly #checkIds = new Map<string, number>();
  readonly #faultIds = new Map<string, number>();
  readonly #effects = new WeakMap<Fault, string>();
  readonly #effectIds = new WeakMap<Fault, number>();
  readonly #siteNames = new Map<string, number>();
  readonly #siteIds = new WeakMap<Fault, number>();

  constructor(
    board: Board,
    bench: BenchState,
    meter: MeterSettings,
    boardOhms: number | undefined,
    memory: StateMemory,
  ) {
    this.board = board;
    this.bench = bench;
    this.meter = meter;
    this.probing = new Probing(coldCircuit(board, bench), meter, boardOhms ?? OTHER_METERS.boardOhms);
    this.#gain = mostGain(this.probing.circuit);
    this.#memory = memory;
  }

  predict(check: ColdCheck, faults: readonly Fault[]): Prediction {
    return this.#settledIn(check, faults).state.prediction();
  }

  audible(
    check: ColdCheck,
    faults: readonly Fault[],
    candidates: readonly Fault[],
    sharpness = 1,
  ): boolean[] {
    const { state, core } = this.#settledIn(check, faults);
    const taken = this.#sitesOf(faults);
    return candidates.map((candidate) => {
      if (taken.has(this.#siteId(candidate))) return false;
      const effect = this.#effectId(candidate);
      const known = state.heard.get(effect);
      if (known !== undefined) return known;
      const heard = this.#moves(check, state, core, candidate, sharpness);
      state.heard.set(effect, heard);
      return heard;
    });
  }

  withEach(
    check: ColdCheck,
    faults: readonly Fault[],
    candidates: readonly Fault[],
    sharpness = 1,
  ): (Prediction | null)[] {
    const { state, core } = this.#settledIn(check, faults);
    const taken = this.#sitesOf(faults);
    return candidates.map((candidate) => {
      if (taken.has(this.#siteId(candidate))) return null;
      const effect = this.#effectId(candidate);
      const known = state.beside.get(effect);
      if (known !== undefined) return known;
      const shown = this.#besides(check, state, core, candidate, sharpness);
      state.beside.set(effect, shown);
      return shown;
    });
  }

  /** What one fault more would make the meter show, by a few chord steps where these can tell; null: nothing else. */
  #besides(
    check: ColdCheck,
    state: State,
    core: readonly Fault[],
    candidate: Fault,
    sharpness: number,
  ): Prediction | null {
    const before = state.prediction();
    const { settled } = state;
    const anew = () => this.predict(check, [...core, candidate]);
    if (!before.solved || settled === null)
      return this.#moves(check, state, core, candidate, sharpness) ? anew() : null;
    const sharp = { ...before, spread: sharpness * before.spread };
    const allowed = silentVolts(sharp, settled, this.probing.boardOhms);
    const moved = this.#movedVolts(check, settled, core, candidate, allowed);
    if (moved === "nowhere") return null;
    if (moved === "unsolved") return anew();
    const raw = this.probing.rawOf(check, settled, moved);
    const after = movedReading(check, this.meter, before, settled.range, raw, this.probing.boardOhms);
    if (!differ(sharp, after, settled.range, this.probing.boardOhms)) return null;
    return this.probing.staysInRange(check, settled, raw) ? after : anew();
  }

  rawWith(check: ColdCheck, faults: readonly Fault[], at: number, ohms: number): number | null {
    const { state, core } = this.#settledIn(check, faults);
    const { settled } = state;
    const other = { ...faults[at], value: ohms };
    const change = changeOfOhms(this.probing.circuit, faults[at], ohms);
    if (settled === null || change === null || !core.includes(faults[at])) {
      const found = this.predict(
        check,
        faults.map((fault, i) => (i === at ? other : fault)),
      );
      return found.solved ? found.raw : null;
    }
    const { range, linearised } = settled;
    const volts = linearised.moved([change], EXACT_SHIFT_VOLTS / (range.ohms * this.#gain));
    const raw = volts === null ? null : this.probing.rawOf(check, settled, volts);
    if (raw !== null && this.probing.staysInRange(check, settled, raw)) return raw;
    const shifted = core.with(core.indexOf(faults[at]), other);
    const anew = this.probing.settle(check, this.probing.circuit.withFaults(shifted), settled);
    return anew.solved ? anew.raw : null;
  }

  /** The state of the check with those of `faults` that matter, found by adding what is not silent until nothing is left. */
  #settledIn(check: ColdCheck, faults: readonly Fault[]): { state: State; core: readonly Fault[] } {
    let core: readonly Fault[] = [];
    let near: Probed | null = null;
    for (;;) {
      const state = this.#state(check, core, near);
      const { settled } = state;
      if (settled === null) {
        if (core.length === faults.length) return { state, core };
        core = faults;
        continue;
      }
      const loud = faults.filter((fault) => core.includes(fault) || this.#loud(settled, fault));
      if (loud.length === core.length) return { state, core };
      core = loud;
      near = settled;
    }
  }

  /** Could the fault set enough current moving, here or with another one, for the probes to notice? */
  #loud({ problem, answer, range, linearised, volts: answerVolts }: Settled, fault: Fault): boolean {
    const found = disturbance(this.probing.circuit, problem.values, answer.volts, fault);
    const ohms = range.ohms * this.#gain;
    const exact =
      range.reads === "ohms"
        ? Math.min(EXACT_VOLTS, EXACT_SHARE * (range.openVolts - answerVolts))
        : EXACT_VOLTS;
    if (found.roughAmps * ohms <= exact) return false;
    return boundAmps(found, linearised) * ohms > exact;
  }

  matters(check: ColdCheck, faults: readonly Fault[]): readonly Fault[] {
    return this.#settledIn(check, faults).core;
  }

  #moves(
    check: ColdCheck,
    state: State,
    core: readonly Fault[],
    candidate: Fault,
    sharpness: number,
  ): boolean {
    const predicted = state.prediction();
    if (!predicted.solved) return true;
    const before = { ...predicted, spread: sharpness * predicted.spread };
    if (state.alternating !== null)
      return this.#movesFarads(check, before, state.alternating, core, candidate);
    const { settled } = state;
    if (settled === null) {
      const after = this.#state(check, [...core, candidate], null).prediction();
      return !after.solved || differ(before, after, null, this.probing.boardOhms);
    }
    const allowed = silentVolts(before, settled, this.probing.boardOhms);
    const moved = this.#movedVolts(check, settled, core, candidate, allowed);
    if (moved === "nowhere") return false;
    return moved === "unsolved" || this.#differs(check, before, settled, moved);
  }

  /**
   * Where the nets go when `candidate` comes to `core`, in the range of `settled`; nowhere when the probes can move by no more
   * than `allowed` volts. Written over by the next question.
   */
  #movedVolts(
    check: ColdCheck,
    settled: Settled,
    core: readonly Fault[],
    candidate: Fault,
    allowed: number,
  ): Float64Array | "nowhere" | "unsolved" {
    const { linearised, problem, answer, range } = settled;
    const found = disturbance(this.probing.circuit, problem.values, answer.volts, candidate);
    const ohms = range.ohms * this.#gain;
    if (found.roughAmps * ohms <= allowed) return "nowhere";
    if (boundAmps(found, linearised) * ohms <= allowed) return "nowhere";
    const near = found.whole ? linearised.moved(found.changes, (RESIDUAL_SHARE * allowed) / ohms) : null;
    if (near !== null) return near;
    const both = [...core, candidate];
    const key = this.#key(check, both);
    const known = this.#states.get(key)?.settled;
    if (known?.range === range) return known.answer.volts;
    const after = this.probing.inRange(check, settled, this.probing.circuit.withFaults(both));
    if (!after.solved) return "unsolved";
    // Whoever could hear it may soon be asked how likely the set with it is.
    if (this.probing.holdsRange(check, after))
      this.#memory.keep(this.#states, key, settledState(this.probing, check, after));
    return after.answer.volts;
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
    const { settled } = state;
    if (settled === null) return true;
    const toTheLine = Math.abs(settled.volts - voltsAt(settled.range, FARADS_LEAST_OHMS));
    const hidden = before.hiddenChance ?? 0;
    const share = hidden > 0 && hidden < 1 ? BETWEEN_LINES_SHARE : LINE_SHARE;
    const moved = this.#movedVolts(inOhms, settled, settledCore, candidate, share * toTheLine);
    if (moved === "unsolved") return true;
    let ohms = moved === "nowhere" ? settled.raw : this.probing.rawOf(inOhms, settled, moved);
    const nearLine = Math.abs(Math.log(ohms / FARADS_LEAST_OHMS)) < NEAR_THE_LINE;
    if (moved !== "nowhere" && (nearLine || faradsHiddenBy(ohms) !== hidden)) {
      const exact = this.#settledIn(inOhms, [...core, candidate]).state.settled;
      if (exact === null) return true;
      ohms = exact.raw;
    }
    const shownAfter = ohms >= FARADS_LEAST_OHMS;
    if (shownAfter !== (before.shown !== "OL")) return true;
    if (Math.abs(faradsHiddenBy(ohms) - hidden) > HIDDEN_ALIKE) return true;
    if (hidden === 1) return false;
    const allowed = SILENT_SHARE * before.spread;
    if (faradsBound(this.probing.circuit, values, perVolt, candidate) <= allowed) return false;
    const raw = faradsOf(this.probing, check, this.probing.circuit.withFaults([...core, candidate]));
    return raw === null || Math.abs(raw - before.raw) > allowed;
  }

  #state(check: ColdCheck, core: readonly Fault[], near: Probed | null): State {
    const key = this.#key(check, core);
    const known = this.#states.get(key);
    if (known !== undefined) {
      known.askedAgain = true;
      return known;
    }
    const state = solveState(this.probing, check, this.probing.circuit.withFaults(core), near);
    this.#memory.keep(this.#states, key, state);
    return state;
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

  /** Where the fault is: two of one place exclude each other, and the circuit cannot hold both. */
  #siteId(fault: Fault): number {
    const known = this.#siteIds.get(fault);
    if (known !== undefined) return known;
    const site = fault.of === "nets" ? fault.nets.join("~") : siteKey(fault.part, fault.junction);
    const id = idOf(this.#siteNames, site);
    this.#siteIds.set(fault, id);
    return id;
  }

  #sitesOf(faults: readonly Fault[]): ReadonlySet<number> {
    return new Set(faults.map((fault) => this.#siteId(fault)));
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

/** Makes the predictor of a board on the bench. Compiles the circuit once; throws where the bench names what the board has not. */
export const makePredictor: MakePredictor = (board, bench, meter, boardOhms) =>
  new BoardPredictor(board, bench, meter, boardOhms, new StateMemory());

/** Predictors of one board in its several states of the bench, which share the room for what they have solved. */
export function sharingPredictors(boardOhms: number | undefined, memory = new StateMemory()): MakePredictor {
  return (board, bench, meter) => new BoardPredictor(board, bench, meter, boardOhms, memory);
}
