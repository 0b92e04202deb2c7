/**
 * The point of its law at which each junction is linearised. Near a solution that is the voltage between its nets; far from one a
 * tangent followed that far means little, and the next point is chosen between where the tangent ends and where the law passes
 * the tangent's current.
 */
import { JUNCTION_LEAK_SIEMENS, junctionAmps, junctionSiemens, limitJunction } from "./junction.ts";
import type { LiveJunctions } from "./live.ts";

/** A junction within this many n kT/q of a known point has its exponential from there, by a short series. */
const SERIES_REACH = 1 / 32;

/** exp(x) - 1 to the last bit or two for |x| up to `SERIES_REACH`: Taylor's series up to the seventh power. */
function expm1Near(x: number): number {
  const high = 1 / 120 + x * (1 / 720 + x * (1 / 5040));
  return x + x * x * (1 / 2 + x * (1 / 6 + x * (1 / 24 + x * high)));
}

export class JunctionPoints {
  readonly at: Float64Array;
  /** amps and slope of the law there, without the junction's leak */
  readonly amps: Float64Array;
  readonly slope: Float64Array;
  /** the voltage between each junction's nets where the last step ended */
  readonly ends: Float64Array;
  /** the points that the factors in use were made at */
  readonly factoredAt: Float64Array;
  /**
   * of the last step: the most volts by which any net can still be wrong because laws are bent, the most amps that one of them
   * misses, and how far the junction that went farthest stands from where the factors were made, in units of n kT/q
   */
  error = 0;
  missing = 0;
  farthest = 0;

  readonly #start: {
    volts: Float64Array | null;
    laws: Float64Array | null;
    readonly at: Float64Array;
    readonly amps: Float64Array;
    readonly slope: Float64Array;
  };

  constructor(most: number) {
    this.at = new Float64Array(most);
    this.amps = new Float64Array(most);
    this.slope = new Float64Array(most);
    this.ends = new Float64Array(most);
    this.factoredAt = new Float64Array(most);
    const room = () => new Float64Array(most);
    this.#start = { volts: null, laws: null, at: room(), amps: room(), slope: room() };
  }

  #set(live: LiveJunctions, j: number, volts: number): void {
    const saturation = live.saturation[j];
    const bend = live.emissionVolts[j];
    this.at[j] = volts;
    if (volts >= -3 * bend) {
      // The law of `junction.ts` with its exponential taken once.
      const grown = saturation * Math.exp(volts / bend);
      this.amps[j] = grown - saturation;
      this.slope[j] = grown / bend;
    } else {
      this.amps[j] = junctionAmps(saturation, bend, volts);
      this.slope[j] = junctionSiemens(saturation, bend, volts);
    }
  }

  /**
   * Every junction at the voltage between its nets. The last start is remembered, since many solves start from one answer: `volts`
   * must not change any more.
   */
  startAt(live: LiveJunctions, volts: Float64Array): void {
    const { at, amps, slope } = this;
    const start = this.#start;
    if (start.volts === volts && start.laws === live.of) {
      at.set(start.at);
      amps.set(start.amps);
      slope.set(start.slope);
      return;
    }
    for (let j = 0; j < live.count; j++) this.#set(live, j, volts[live.from[j]] - volts[live.to[j]]);
    start.volts = volts;
    start.laws = live.of;
    start.at.set(at);
    start.amps.set(amps);
    start.slope.set(slope);
  }

  /** Remembers where the factors about to be made belong. */
  factored(): void {
    this.factoredAt.set(this.at);
  }

  /**
   * Judges a step that ended at `volts`. Where a junction went dv from its point, its tangent misses g dv (U + dv / 2) / (n kT/q),
   * U being how far the point was from the factors' own; no net of a circuit of conductances can move by more volts than that
   * current makes across the junction's own slope, so the sum over junctions bounds the next step (leading order). A transistor
   * passes it on times its gain.
   */
  judge(live: LiveJunctions, volts: Float64Array, transistorGain: number): void {
    const { count, diodes, from, to, emissionVolts, perVolt } = live;
    const { at, ends, factoredAt, slope } = this;
    let error = 0;
    let missing = 0;
    let farthest = 0;
    for (let j = 0; j < count; j++) {
      const here = volts[from[j]] - volts[to[j]];
      ends[j] = here;
      const step = Math.abs(here - at[j]);
      let per = perVolt[j];
      if (here < -3 * emissionVolts[j] && at[j] < -3 * emissionVolts[j])
        // The cubic tail bends by its own scale, and beside a leak that does not.
        per = ((-4 / here) * slope[j]) / (slope[j] + JUNCTION_LEAK_SIEMENS);
      const away = Math.abs(at[j] - factoredAt[j]);
      const own = step * (away + step / 2) * per;
      const lost = own * slope[j];
      if (lost > missing) missing = lost;
      error += j < diodes ? own : own * transistorGain;
      const far = (away + step) * per;
      if (far > farthest) farthest = far;
    }
    this.error = error;
    this.missing = missing;
    this.farthest = farthest;
  }

  /** Every junction to where the last step ended. */
  follow(live: LiveJunctions): void {
    const { count, emissionVolts, perVolt, saturation } = live;
    const { at, ends, amps, slope } = this;
    for (let j = 0; j < count; j++) {
      const here = ends[j];
      const folds = (here - at[j]) * perVolt[j];
      if (!(Math.abs(folds) <= SERIES_REACH) || here < -3 * emissionVolts[j] || at[j] < -3 * emissionVolts[j]) {
        this.#set(live, j, here);
        continue;
      }
      let grown = amps[j] + saturation[j];
      grown += grown * expm1Near(folds);
      at[j] = here;
      amps[j] = grown - saturation[j];
      slope[j] = grown * perVolt[j];
    }
  }

  /** Every junction to the point of its law that the step's end tells most about. */
  hold(live: LiveJunctions): void {
    const { count, emissionVolts, critical } = live;
    const { at, ends } = this;
    for (let j = 0; j < count; j++) {
      const wanted = ends[j];
      const bend = emissionVolts[j];
      const last = at[j];
      const folds = (wanted - last) / bend;
      let next = limitJunction(wanted, last, bend, critical[j]);
      if (wanted > 0 && folds < 0) {
        const w = Math.log1p(Math.max(folds, -0.99));
        next = Math.max(0, last + bend * Math.min(folds, w));
      }
      ends[j] = next;
    }
    this.follow(live);
  }

  /** Every junction to the end of a last step, in which none went far: its series may end with the third power. */
  settle(live: LiveJunctions): void {
    const { count, emissionVolts, perVolt } = live;
    const { at, ends, amps, slope } = this;
    for (let j = 0; j < count; j++) {
      const step = ends[j] - at[j];
      const folds = ends[j] < -3 * emissionVolts[j] ? 0 : step * perVolt[j];
      const bent = folds * (1 / 2 + folds * (1 / 6));
      at[j] = ends[j];
      amps[j] += slope[j] * step * (1 + bent);
      slope[j] *= 1 + folds * (1 + bent);
    }
  }
}
