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
  /** both places swing with the feed: what lies between them is no pick-up */
  readonly held: boolean;
}

/** A wave's alternating part is told to this share of itself: capacitors are 20 % parts, loads are guessed. From memory. */
const RIPPLE_SHARE = 0.25;
/** What a meter of 10 megohm picks up on a powered board, volts (common practice: ghost volts). */
const PICK_UP_VOLTS = 0.3;

/** Root mean square of what moves between two waves, without the mean. */
export function alternating(one: Float64Array | null, far: Float64Array | null): number {
  const count = one?.length ?? far?.length ?? 0;
  let [sum, squares] = [0, 0];
  const start = (one?.[0] ?? 0) - (far?.[0] ?? 0);
  for (let k = 0; k < count; k++) {
    // Against the first moment, so that a small ripple is not lost beside a large mean.
    const volts = (one === null ? 0 : one[k]) - (far === null ? 0 : far[k]) - start;
    sum += volts;
    squares += volts * volts;
  }
  return count === 0 ? 0 : Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
}

/** From this on a net is fed and does not float, volts root mean square (from memory). */
const HELD_VOLTS = 20;

function rms(wave: Float64Array): number {
  let squares = 0;
  for (const volts of wave) squares += volts * volts;
  return Math.sqrt(squares / Math.max(1, wave.length));
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
  const moving = alternating(one.wave, far.wave);
  const riding = Math.hypot(one.rippleVolts, far.rippleVolts);
  const whole = one.wave !== null && far.wave !== null && moving > 0.3 * Math.abs(dc);
  const spread = Math.hypot((whole ? share : RIPPLE_SHARE) * moving, one.rippleSpread, far.rippleSpread);
  const swings = ({ wave }: Potential): boolean => wave !== null && rms(wave) > HELD_VOLTS;
  return {
    dc,
    held: swings(one) && swings(far),
    dcSpread: Math.hypot(own, PICK_UP_VOLTS / 10),
    ac: Math.hypot(moving, riding),
    acSpread: Math.hypot(spread, PICK_UP_VOLTS / 10),
  };
}
