/** Volts of nets that can be told, each against its own 0 V, and from them the volts between two places. */

/** One net's volts against the net that its domain is named by. */
export interface Potential {
  readonly domain: string;
  readonly dcVolts: number;
  /** deviation of the mean, volts */
  readonly dcSpread: number;
  /** through one cycle of the feed; null: steady but for `rippleVolts` */
  readonly wave: Float64Array | null;
  /** root mean square of what rides on it where there is no wave */
  readonly rippleVolts: number;
  readonly rippleSpread: number;
}

/** What a meter shows between two places of a powered board. Deviations are one standard deviation, volts. */
export interface LiveVolts {
  readonly dc: number;
  readonly dcSpread: number;
  /** root mean square of the alternating part alone */
  readonly ac: number;
  readonly acSpread: number;
}

/** A wave's alternating part is told to this share of itself: capacitors are 20 % parts, loads are guessed. From memory. */
const RIPPLE_SHARE = 0.25;
/** What a meter of 10 megohm picks up on a powered board, volts (common practice: ghost volts). */
const PICK_UP_VOLTS = 0.3;

function alternating(wave: Float64Array): number {
  const mean = wave.reduce((sum, volts) => sum + volts, 0) / wave.length;
  return Math.sqrt(wave.reduce((sum, volts) => sum + (volts - mean) ** 2, 0) / wave.length);
}

export function steady(
  domain: string,
  dcVolts: number,
  dcSpread: number,
  rippleVolts = 0,
  rippleSpread = 0,
): Potential {
  return { domain, dcVolts, dcSpread, wave: null, rippleVolts, rippleSpread };
}

/** `share`: deviation of the feed's volts, which every wave has in common. */
export function between(one: Potential, far: Potential, share: number): LiveVolts | null {
  if (one.domain !== far.domain) return null;
  const dc = one.dcVolts - far.dcVolts;
  // Two nets of one feed move together: the feed's own share counts once, on their difference.
  const own =
    one.wave !== null && far.wave !== null ? Math.abs(dc) * share : Math.hypot(one.dcSpread, far.dcSpread);
  const count = one.wave?.length ?? far.wave?.length ?? 0;
  const difference = Float64Array.from(
    { length: count },
    (_, k) => (one.wave?.[k] ?? 0) - (far.wave?.[k] ?? 0),
  );
  const moving = count === 0 ? 0 : alternating(difference);
  const riding = Math.hypot(one.rippleVolts, far.rippleVolts);
  const whole = one.wave !== null && far.wave !== null && moving > 0.3 * Math.abs(dc);
  const spread = Math.hypot((whole ? share : RIPPLE_SHARE) * moving, one.rippleSpread, far.rippleSpread);
  return {
    dc,
    dcSpread: Math.hypot(own, PICK_UP_VOLTS / 10),
    ac: Math.hypot(moving, riding),
    acSpread: Math.hypot(spread, PICK_UP_VOLTS / 10),
  };
}
