/** What the live board takes for granted of parts under power, each with where it comes from. */

/**
 * Junctions under power as a drop and ohms, laid through 0.1 A and 1 A, where a board at idle has its charging peaks (data sheets
 * of general types, from memory).
 */
export const POWER_JUNCTIONS = {
  bridge: { dropVolts: 0.68, ohms: 0.12 },
  rectifier: { dropVolts: 0.68, ohms: 0.13 },
  fast: { dropVolts: 0.78, ohms: 0.14 },
  schottky: { dropVolts: 0.3, ohms: 0.08 },
  sic: { dropVolts: 0.88, ohms: 0.15 },
  signal: { dropVolts: 0.7, ohms: 0.5 },
} as const;

export function powerJunction(type: string | undefined): { dropVolts: number; ohms: number } {
  return type === "fast" || type === "schottky" || type === "sic" || type === "signal"
    ? POWER_JUNCTIONS[type]
    : POWER_JUNCTIONS.rectifier;
}

export const PATH_MODEL = {
  /** a resistor up to this may carry the board's power: 10 to 47 ohm inrush parts, 100 to 200 ohm brake resistors (common practice) */
  mostSeriesOhms: 300,
  /** a capacitor under this holds nothing that a meter would see at 100 Hz */
  leastFarads: 0.05e-6,
  /** contact of a relay, ohms (data sheets: at most 0.1 new, from memory) */
  contactOhms: 0.02,
  /** a PTC limiter heats until it takes no more than about this, watts; its curve is steeper than any other in the path (from memory) */
  ptcWatts: 1.2,
  ptcSteepness: 8,
  /** an NTC limiter: watts a kelvin that it gives off, and its constant (data sheets of 10 to 15 mm discs, from memory) */
  ntcWattsPerKelvin: 0.017,
  ntcBeta: 3000,
} as const;

export const PROTECTION_MODEL = {
  /** a fuse opens within seconds from this many times its rating (IEC 60127: 2.75 times within seconds to a minute, from memory) */
  fuseTimes: 2.75,
  /** a fuse of a board that names no rating, amps (common practice) */
  fuseAmps: 10,
  /** melting energy of a time-lag fuse, A2s a squared amp of rating (data sheets: 2 to 10, from memory) */
  fuseMelts: 4,
  /** a resistor burns open within seconds from this many times its watts (pulse curves of data sheets, from memory) */
  resistorTimes: 20,
  resistorWatts: 0.25,
  /** the outlet's breaker of 16 A trips at once from about this, root mean square (curve B, 3 to 5 times; common practice) */
  breakerAmps: 70,
} as const;

/** The small off-line supply with an integrated switch. */
export const SUPPLY_MODEL = {
  /** starts from its own drain from about this bus (trade: 50 to 100 V), stops some way under it, volts */
  startVolts: 80,
  stopVolts: 60,
  /** output over input power of a small flyback at light load (common practice: 70 to 80 %) */
  efficiency: 0.75,
  /** what it draws itself, watts (from memory) */
  ownWatts: 0.4,
  /** watts of a switch that names none (common practice: auxiliary supplies of 10 to 20 W) */
  watts: 15,
  /** overload: the limit of its current lies this much above its rating (from memory) */
  limitTimes: 1.4,
  /** below this share of its volts its own feed collapses and it starts again: hiccup (8 to 9 V of 15, from memory) */
  collapseShare: 0.58,
  /** share of the time it tries, and seconds from one try to the next (data sheets: 5 to 10 %; trade: pulses of 0.5 to 3 s) */
  hiccupDuty: 0.08,
  hiccupSeconds: 0.8,
  /** with its loop open the rails rise until its own feed's over-voltage stops it, times nominal (from memory: 24 of 15 V) */
  runawayTimes: 1.45,
  /** what a secondary's load costs it beside its winding's ohms: leakage of the transformer, as ohms (from memory: 5 to 10 % at half an amp) */
  secondaryOhms: 0.8,
  /** its own feed when all is well, volts, and its deviation (data sheets: 11 to 18) */
  ownVolts: 15,
  ownSpread: 2.5,
  /** while it hiccups that feed saw-tooths between these (trade: 8 to 15 V) */
  hiccupVolts: [8, 15],
} as const;

/** A supply that its feed cannot carry comes up and stops again: means and ripple as shares of good rails (from memory). */
export const STARVED = { share: 0.35, ripple: 0.4, doubt: 0.3, busDoubt: 0.3, busRipple: 0.2 } as const;

/** Where the watts that a small flyback loses go (from memory). */
export const LOSS_SHARES = { switcher: 0.5, transformer: 0.3, rectifiers: 0.2, tryingOutput: 0.3 } as const;

/** Ohms of a short or leak below which a pin of the supply no longer does its work (from memory). */
export const SUPPLY_FAILS_OHMS = {
  feed: 2_000,
  feedback: 5_000,
  coupler: 2_000,
  drain: 2_000,
  clamp: 1_000,
} as const;

/** Linear regulators (data sheets of general three-pin types, from memory). */
export const REGULATOR_MODEL = {
  dropoutVolts: 1.8,
  /** low-drop types make 3.3 V from 5 V */
  lowDropoutVolts: 1.1,
  limitTimes: 1.5,
  amps: 0.5,
  quiescentAmps: 0.005,
  /** shuts down by its heat above this, watts without a heatsink */
  shutdownWatts: 2.5,
} as const;

/** What parts draw from their rail at idle, amps (common practice). */
export const LOAD_AMPS = {
  /** of one that does not name its own (data sheets: 20 to 60 mA running) */
  controller: 0.03,
  ic: 0.008,
  module: 0.004,
  fan: 0.12,
  display: 0.04,
  opto: 0.002,
} as const;

/** What a feed is asked for is guessed: deviation of its amps as a share, and an ammeter's own, amps (from memory). */
export const AMPS_DOUBT = { share: 0.3, amps: 0.002 } as const;

/** A bench supply's rail: deviation of its volts when free and when at its limit, a share (from memory). */
export const FED_RAIL_SHARE = { free: 0.01, limited: 0.15 } as const;

/** Deviation of rails from what the model says, as a share. */
export const RAIL_SHARE = {
  regulated: 0.012,
  crossed: 0.035,
  linear: 0.015,
  hiccup: 0.5,
  runaway: 0.12,
} as const;
