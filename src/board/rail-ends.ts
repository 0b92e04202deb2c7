/** Which of a rail's two nets is the higher one. */

/** A rail as far as its polarity goes: its own net, its 0 V, its volts (below zero: its net is the lower one). */
interface Polarity {
  readonly net: string;
  readonly back: string;
  readonly volts: number;
}

/** Plus and minus of the rail, as a supply is clipped to it: at a negative rail the 0 V is plus. */
export function railEnds({ net, back, volts }: Polarity): readonly [plus: string, minus: string] {
  return volts < 0 ? [back, net] : [net, back];
}
