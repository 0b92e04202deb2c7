/**
 * The point of its law at which each junction is linearised. Near a solution that is the voltage between its nets; far from one a
 * tangent followed that far means little, and the next point is chosen between where the tangent ends and where the law passes
 * the tangent's current.
 */
import { JUNCTION_LEAK_SIEMENS, junctionAmps, junctionSiemens, limitJunction } from "./junction.ts";
import type { LiveJunctions } from "./live.ts";

/** A junction within this many n kT/q of a known point has its exponential from there, by a short series. */
const SERIES_REACH = 1 / 32;

interface Known {
  readonly volts: Float64Array;
  readonly junctionAmps: Float64Array;
}

/** exp(x) - 1 to the last bit or two for |x| up to `SERIES_REACH`: Taylor's series up to the seventh power. */
function expm1Near(x: number): number {
  return (
    x *
    (1 + (x / 2) * (1 + (x / 3) * (1 + (x / 4) * (1 + (x / 5) * (1 + (x / 6) * (1 + x / 7))))))
  );
}

export class JunctionPoints {
  readonly at: Float64Array;
  /** amps and slope of the law there, without the junction's leak */
  readonly amps: Float64Array;
  readonly slope: Float64Array;
  /** the points that the factors in use were made at */
  readonly factoredAt: Float64Array;
  /**
   * of the last step: the most volts by which any net can still be wrong because laws are bent, and how far the junction that went
   * farthest stands from where the factors were made, in units of n kT/q
   */
  error = 0;
  farthest = 0;

  constructor(most: number) {
    this.at = new Float64Array(most);
    this.amps = new Float64Array(most);
    this.slope = new Float64Array(most);
    this.factoredAt = new Float64Array(most);
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

  /** From a point with known amps to one near it. */
  #shift(live: LiveJunctions, j: number, volts: number, known: number, amps: number): void {
    const bend = live.emissionVolts[j];
    const folds = (volts - known) / bend;
    if (!(Math.abs(folds) <= SERIES_REACH) || volts < -3 * bend || known < -3 * bend) {
      this.#set(live, j, volts);
      return;
    }
    const saturation = live.saturation[j];
    let grown = amps + saturation;
    grown += grown * expm1Near(folds);
    this.at[j] = volts;
    this.amps[j] = grown - saturation;
    this.slope[j] = grown / bend;
  }

  /** Every junction at the voltage between its nets, with its amps there where they are known. */
  startAt(live: LiveJunctions, volts: Float64Array, amps: Float64Array | null): void {
    const { count, from, to, place, saturation, emissionVolts } = live;
    for (let j = 0; j < count; j++) {
      const here = volts[from[j]] - volts[to[j]];
      const bend = emissionVolts[j];
      const known = amps === null ? 0 : amps[place[j]];
      // No amps at some volts: it was not there, or that was never asked.
      if (known === 0 || here < -3 * bend) this.#set(live, j, here);
      else {
        this.at[j] = here;
        this.amps[j] = known;
        this.slope[j] = (known + saturation[j]) / bend;
      }
    }
  }

  /** The same at voltages that are mostly those of a known solution. */
  startNear(live: LiveJunctions, volts: Float64Array, near: Known): void {
    const { count, from, to, place } = live;
    for (let j = 0; j < count; j++) {
      const known = near.volts[from[j]] - near.volts[to[j]];
      this.#shift(live, j, volts[from[j]] - volts[to[j]], known, near.junctionAmps[place[j]]);
    }
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
    const { count, diodes, from, to, emissionVolts } = live;
    const { at, factoredAt, slope } = this;
    let error = 0;
    let farthest = 0;
    for (let j = 0; j < count; j++) {
      const here = volts[from[j]] - volts[to[j]];
      const bend = emissionVolts[j];
      const step = Math.abs(here - at[j]);
      let per = 1 / bend;
      if (here < -3 * bend && at[j] < -3 * bend)
        // The cubic tail bends by its own scale, and beside a leak that does not.
        per = ((-4 / here) * slope[j]) / (slope[j] + JUNCTION_LEAK_SIEMENS);
      const away = Math.abs(at[j] - factoredAt[j]);
      const own = step * (away + step / 2) * per;
      error += j < diodes ? own : own * transistorGain;
      const far = (away + step) * per;
      if (far > farthest) farthest = far;
    }
    this.error = error;
    this.farthest = farthest;
  }

  /** Every junction to the voltage between its nets. */
  moveTo(live: LiveJunctions, volts: Float64Array): void {
    const { count, from, to } = live;
    for (let j = 0; j < count; j++)
      this.#shift(live, j, volts[from[j]] - volts[to[j]], this.at[j], this.amps[j]);
  }

  /** Every junction to the point of its law that the step's end tells most about. */
  hold(live: LiveJunctions, volts: Float64Array): void {
    const { count, from, to, emissionVolts, critical } = live;
    for (let j = 0; j < count; j++) {
      const wanted = volts[from[j]] - volts[to[j]];
      const bend = emissionVolts[j];
      const last = this.at[j];
      const folds = (wanted - last) / bend;
      let next = limitJunction(wanted, last, bend, critical[j]);
      if (K === 1 && wanted > 0 && folds < 0 && folds > -1) {
        next = last + bend * Math.max(0.5 * (folds + Math.log1p(folds)), -20);
      } else if (K === 2 && wanted > 0 && folds < 0 && folds > -1) {
        next = Math.max(0, last + bend * Math.log1p(folds));
      } else if (K === 3 && wanted > 0 && folds < 0) {
        const w = Math.log1p(Math.max(folds, -0.99));
        next = Math.max(0, last + bend * Math.min(folds, w));
      } else if (K === 4 && wanted > 0 && folds < 0) {
        const w = Math.log1p(Math.max(folds, -0.98));
        next = Math.max(0, last + bend * Math.min(folds, 0.5 * (folds + w)));
      } else if (K === 5 && wanted > 0 && folds < 0) {
        const w = Math.log1p(Math.max(folds, -0.98));
        next = Math.max(0, last + bend * Math.min(folds, folds > -0.5 ? 0.5 * (folds + w) : w));
      }
      this.#shift(live, j, next, last, this.amps[j]);
    }
  }

  /** Writes the amps at `volts`, which no junction is far from, to their places. */
  read(live: LiveJunctions, volts: Float64Array, amps: Float64Array): void {
    this.moveTo(live, volts);
    for (let j = 0; j < live.count; j++) amps[live.place[j]] = this.amps[j];
  }
}
const K = Number(process.env.K ?? 0);
