/**
 * The point of its law at which each junction is linearised. Near a solution that is the voltage between its nets; far from one a
 * tangent followed that far means little, and the next point is chosen between where the tangent ends and where the law passes
 * the tangent's current.
 */
import { DESK } from "./desk.ts";
import { JUNCTION_LEAK_SIEMENS, junctionAmps, junctionSiemens, limitJunction } from "./junction.ts";
import type { LiveJunctions } from "./live.ts";

/** A junction within this many n kT/q of a known point has its exponential from there, by a short series. */
const SERIES_REACH = 1 / 32;
/** A falling current may fall to this share of itself in one step. */
const LEAST_SHARE = 0.01;

/** What one step did, judged by the laws. */
export interface Judgement {
  /** the most volts by which any net can still be wrong because laws are bent */
  error: number;
  /** the most amps that one of them misses */
  missing: number;
  /** how far the junction that went farthest stands from where the factors were made, in units of n kT/q */
  farthest: number;
}

/** The answer that junctions were last started at, with their points there: many solves start from one answer. */
const start = {
  volts: null as Float64Array | null,
  laws: null as Float64Array | null,
  at: new Float64Array(0),
  amps: new Float64Array(0),
  slope: new Float64Array(0),
};

/** exp(x) - 1 to the last bit or two for |x| up to `SERIES_REACH`: Taylor's series up to the seventh power. */
function expm1Near(x: number): number {
  const high = 1 / 120 + x * (1 / 720 + x * (1 / 5040));
  return x + x * x * (1 / 2 + x * (1 / 6 + x * (1 / 24 + x * high)));
}

/** ln(1 + x) for as small an x, to where the next step begins: Taylor's series up to the third power. */
function log1pNear(x: number): number {
  return x * (1 - x * (1 / 2 - x * (1 / 3)));
}

const put = (() => {
  const { saturations, bends, at, amps, slope } = DESK;
  return (j: number, volts: number): void => {
    const saturation = saturations[j];
    const bend = bends[j];
    at[j] = volts;
    if (volts >= -3 * bend) {
      // The law of `junction.ts` with its exponential taken once.
      const grown = saturation * Math.exp(volts / bend);
      amps[j] = grown - saturation;
      slope[j] = grown / bend;
    } else {
      amps[j] = junctionAmps(saturation, bend, volts);
      slope[j] = junctionSiemens(saturation, bend, volts);
    }
  };
})();

/** Every junction at the voltage between its netVolts. `volts` is remembered: it must not change any more. */
export const startAt = (() => {
  const { netVolts, anode, cathode, at, amps, slope } = DESK;
  return ({ count, of }: LiveJunctions, volts: Float64Array): void => {
    if (start.volts === volts && start.laws === of) {
      at.set(start.at);
      amps.set(start.amps);
      slope.set(start.slope);
      return;
    }
    netVolts.set(volts);
    for (let j = 0; j < count; j++) put(j, netVolts[anode[j]] - netVolts[cathode[j]]);
    start.volts = volts;
    start.laws = of;
    if (start.at.length !== count) {
      start.at = new Float64Array(count);
      start.amps = new Float64Array(count);
      start.slope = new Float64Array(count);
    }
    for (let j = 0; j < count; j++) {
      start.at[j] = at[j];
      start.amps[j] = amps[j];
      start.slope[j] = slope[j];
    }
  };
})();

/** Remembers where the factors about to be made belong. */
export const markFactored = (() => {
  const { at, factoredAt } = DESK;
  return ({ count }: LiveJunctions): void => {
    for (let j = 0; j < count; j++) factoredAt[j] = at[j];
  };
})();

/**
 * Judges a step that ended at the voltages in hand. Where a junction went dv from its point, its tangent misses
 * g dv (U + dv / 2) / (n kT/q), U being how far the point was from the factors' own; no net of a circuit of conductances can move
 * by more volts than that current makes across the junction's own slope, so the sum over junctions bounds the next step (leading
 * order). A transistor passes it on times its gain.
 */
export const judge = (() => {
  const { netVolts, anode, cathode, bends, perVolt, at, slope, ends, factoredAt } = DESK;
  return ({ count, diodes }: LiveJunctions, transistorGain: number, found: Judgement): void => {
    let error = 0;
    let missing = 0;
    let farthest = 0;
    for (let j = 0; j < count; j++) {
      const here = netVolts[anode[j]] - netVolts[cathode[j]];
      ends[j] = here;
      const step = Math.abs(here - at[j]);
      const tail = -3 * bends[j];
      let per = perVolt[j];
      // The cubic tail bends by its own scale, and beside a leak that does not.
      if (here < tail && at[j] < tail) per = ((-4 / here) * slope[j]) / (slope[j] + JUNCTION_LEAK_SIEMENS);
      const away = Math.abs(at[j] - factoredAt[j]);
      const own = step * (away + step / 2) * per;
      const lost = own * slope[j];
      if (lost > missing) missing = lost;
      error += j < diodes ? own : own * transistorGain;
      const far = (away + step) * per;
      if (far > farthest) farthest = far;
    }
    found.error = error;
    found.missing = missing;
    found.farthest = farthest;
  };
})();

/** Every junction to where the last step ended. */
export const follow = (() => {
  const { saturations, bends, perVolt, at, amps, slope, ends } = DESK;
  return ({ count }: LiveJunctions): void => {
    for (let j = 0; j < count; j++) {
      const here = ends[j];
      const folds = (here - at[j]) * perVolt[j];
      const tail = -3 * bends[j];
      if (!(Math.abs(folds) <= SERIES_REACH) || here < tail || at[j] < tail) {
        put(j, here);
        continue;
      }
      let grown = amps[j] + saturations[j];
      grown += grown * expm1Near(folds);
      at[j] = here;
      amps[j] = grown - saturations[j];
      slope[j] = grown * perVolt[j];
    }
  };
})();

/**
 * Every junction to the point of its law that the step's end tells most about. Upwards that is Nagel's (`limitJunction`). Downwards
 * a tangent's voltage falls by little more than n kT/q a step, however little current it leaves; where something else decides
 * the current, the tangent's is right at once, and the law's voltage at that current is where to go on. Where it was the voltage
 * that was right, the next step comes back to it.
 */
export const hold = (() => {
  const { bends, critical, at, ends } = DESK;
  return (live: LiveJunctions): void => {
    for (let j = 0; j < live.count; j++) {
      const wanted = ends[j];
      const last = at[j];
      const bend = bends[j];
      const folds = (wanted - last) / bend;
      if (wanted > 0 && folds < 0) {
        const atCurrent =
          folds > -SERIES_REACH ? log1pNear(folds) : Math.log1p(Math.max(folds, LEAST_SHARE - 1));
        ends[j] = Math.max(0, last + bend * Math.min(folds, atCurrent));
      } else ends[j] = limitJunction(wanted, last, bend, critical[j]);
    }
    follow(live);
  };
})();

/** Every junction to the end of a last step, in which none went far: its series may end with the third power. */
export const settle = (() => {
  const { bends, perVolt, at, amps, slope, ends } = DESK;
  return ({ count }: LiveJunctions): void => {
    for (let j = 0; j < count; j++) {
      const step = ends[j] - at[j];
      const folds = ends[j] < -3 * bends[j] ? 0 : step * perVolt[j];
      const bent = folds * (1 / 2 + folds * (1 / 6));
      at[j] = ends[j];
      amps[j] += slope[j] * step * (1 + bent);
      slope[j] *= 1 + folds * (1 + bent);
    }
  };
})();
