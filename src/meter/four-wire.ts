/** Four-wire milliohms at the pins of parts along a rail: what the copper between them adds, and how far two readings agree. */
export const FOUR_WIRE = {
  /** track from the rail to a part's pins and back: median ohms, deviation of its ln (5 to 40 milliohm a hop, from memory) */
  trackOhms: 0.014,
  trackSpreadLn: 0.6,
  /** what two readings may differ by at the same pins: digits and how the tips sit, ohms, and a share (from memory) */
  digitsOhms: 0.0007,
  share: 0.003,
} as const;

/** Deviation of one such reading, ohms. */
export function fourWireSpread(ohms: number): number {
  return Math.hypot(FOUR_WIRE.digitsOhms, FOUR_WIRE.share * ohms);
}
