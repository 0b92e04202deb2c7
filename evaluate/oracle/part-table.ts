/**
 * What the oracle's parts are made of: its own equations and spreads, richer than the engine's and set without it. A type
 * (maker and batch) is drawn once for all parts of one kind and value on a board, then each part about its type: so three
 * phases match while two boards differ.
 */
import type { Range } from "./draw.ts";

/** Where a row comes from. */
export type Mark = "common practice" | "from memory";

/** A diode by its drop at 1 mA and 25 degC, and the constants of its SPICE model. */
export interface DiodeFamily {
  readonly volts: number;
  /** deviation of types from each other, and of parts of one type, volts */
  readonly typeSigma: number;
  readonly partSigma: number;
  readonly emission: Range;
  readonly seriesOhms: Range;
  /** knee of high injection, amps */
  readonly kneeAmps: Range;
  /** leakage as ohms in parallel, some volts in reverse */
  readonly leakOhms: Range;
  /** junction capacitance at zero bias, farads */
  readonly farads: Range;
  /** band gap that gives the drift with temperature, electron volts */
  readonly gapVolts: number;
  readonly mark: Mark;
}

const SILICON_GAP = 1.11;
const SMALL_OHMS: Range = [0.1, 0.8];
const TIGHT: Range = [1e9, 1e11];

function family(
  volts: number,
  typeSigma: number,
  more: Partial<DiodeFamily> = {},
  mark: Mark = "from memory",
): DiodeFamily {
  return {
    volts,
    typeSigma,
    partSigma: 0.006,
    emission: [1.2, 1.6],
    seriesOhms: [0.01, 0.08],
    kneeAmps: [0.5, 5],
    leakOhms: [1e8, 1e10],
    farads: [2e-11, 1e-10],
    gapVolts: SILICON_GAP,
    mark,
    ...more,
  };
}

/**
 * Emissions are held to what leaves a low drop with a reverse current of some nanoamps: a diode that reads OL backwards on a 60 M
 * range. Bands of trade practice (0.42-0.55 V bridge, 0.36-0.45 V ultrafast, 0.75-0.85 V SiC, ...) taken as two deviations of types. */
export const DIODE_FAMILIES = {
  rectifier: family(0.49, 0.03, {}, "common practice"),
  fast: family(0.415, 0.025, { emission: [1.1, 1.45] }, "common practice"),
  schottky: family(
    0.2,
    0.02,
    { emission: [1.02, 1.1], leakOhms: [3e5, 1e7], gapVolts: 0.69 },
    "common practice",
  ),
  sic: family(0.8, 0.025, { emission: [1.01, 1.1], gapVolts: 1.25, leakOhms: TIGHT }, "common practice"),
  signal: family(0.6, 0.012, { seriesOhms: SMALL_OHMS, kneeAmps: [0.02, 0.1], farads: [1e-12, 4e-12] }),
  bridge: family(0.485, 0.03, { farads: [5e-11, 2e-10] }, "common practice"),
  zenerForward: family(0.66, 0.03, { seriesOhms: SMALL_OHMS, emission: [1.1, 1.5], farads: [5e-11, 3e-10] }),
  led: family(1.8, 0.06, { emission: [1.7, 2.6], seriesOhms: [1, 8], gapVolts: 1.9, leakOhms: TIGHT }),
  optoLed: family(1.08, 0.03, { emission: [1.3, 2], seriesOhms: [0.5, 3], gapVolts: 1.4, leakOhms: TIGHT }),
  mosfetBody: family(0.5, 0.03, { emission: [1.1, 1.5], farads: [2e-10, 1e-9] }, "common practice"),
  freewheel: family(0.435, 0.03, { emission: [1.1, 1.45], farads: [5e-11, 3e-10] }, "common practice"),
  moduleSubstrate: family(0.75, 0.04, { emission: [1.2, 1.8], seriesOhms: [1, 20] }),
  moduleBootstrapBack: family(0.65, 0.03, { seriesOhms: [1, 10] }),
  moduleBootstrap: family(0.55, 0.03),
  moduleSupply: family(0.58, 0.03, { seriesOhms: [1, 10] }),
  moduleInput: family(0.68, 0.04, { seriesOhms: [5, 60] }),
  regulator: family(0.57, 0.03, { seriesOhms: [0.5, 8] }),
  regulatorGround: family(0.64, 0.04, { seriesOhms: [1, 15] }),
  switcherPin: family(0.64, 0.04, { seriesOhms: [2, 30] }),
  reference: family(0.66, 0.04, { seriesOhms: [1, 10] }),
  gateCathode: family(0.66, 0.04, { seriesOhms: [1, 20] }),
  chipPin: family(0.62, 0.035, { seriesOhms: [4, 60], leakOhms: [1e7, 1e10], farads: [3e-12, 1.2e-11] }),
  chipFloatingPin: family(0.66, 0.04, { seriesOhms: [2, 30], leakOhms: [1e7, 1e10] }),
  chipSupply: family(0.56, 0.03, { seriesOhms: [0.5, 6], farads: [5e-11, 5e-10] }),
  baseCollector: family(0.63, 0.02, { emission: [1, 1.1] }),
} as const satisfies Record<string, DiodeFamily>;

export type DiodeName = keyof typeof DIODE_FAMILIES;

/** Silicon and its kin: exponent of saturation current with temperature. Textbook value. */
export const SATURATION_EXPONENT = 3;

/**
 * What a chip draws between its supply and ground when it is cold: a stack of junctions with ohms behind it, and beside it the
 * dividers and start-up resistors that conduct from nothing. From memory; the knee is the board file format's nominal one.
 */
export const CHIP_LOADS = {
  low: { knee: [0.55, 0.78], emission: [1.4, 2.2], ohms: [180, 480], dividerOhms: [15e3, 400e3] },
  high: { knee: [1.2, 1.8], emission: [2.5, 4], ohms: [380, 1100], dividerOhms: [30e3, 500e3] },
  module: { knee: [1.9, 2.6], emission: [3, 5], ohms: [1500, 6000], dividerOhms: [60e3, 1e6] },
  reference: { knee: [1.2, 1.6], emission: [3, 5], ohms: [1500, 6000], dividerOhms: [2e6, 3e7] },
  mark: "from memory",
} as const satisfies { mark: Mark } & Record<
  "low" | "high" | "module" | "reference",
  { knee: Range; emission: Range; ohms: Range; dividerOhms: Range }
>;

/** Resistances: nominal ohms where the board gives none, deviation of types and of parts (shares), drift per kelvin. */
export interface OhmsRow {
  readonly ohms: number;
  readonly typeShare: number;
  readonly partShare: number;
  readonly perKelvin: number;
  readonly mark: Mark;
}

const COPPER = 0.0039;

const ohmsRow = (ohms: number, typeShare: number, partShare: number, perKelvin = 0): OhmsRow => ({
  ohms,
  typeShare,
  partShare,
  perKelvin,
  mark: "from memory",
});

export const OHMS_ROWS = {
  fuse: ohmsRow(0.02, 0.4, 0.1, 0.002),
  link: ohmsRow(0.008, 0.5, 0.4),
  inductor: ohmsRow(0.08, 0.2, 0.04, COPPER),
  choke: ohmsRow(0.035, 0.3, 0.05, COPPER),
  winding: ohmsRow(0.3, 0.25, 0.04, COPPER),
  primary: ohmsRow(1.5, 0.3, 0.04, COPPER),
  relayCoil: ohmsRow(400, 0.07, 0.02, COPPER),
  ptc: ohmsRow(47, 0.12, 0.06, 0.004),
  ntc: ohmsRow(10, 0.1, 0.05),
  motor: ohmsRow(4, 0.06, 0.01, COPPER),
  triacGate: ohmsRow(60, 0.4, 0.15),
  moduleBootstrap: ohmsRow(33, 0.25, 0.1),
  moduleInput: ohmsRow(5000, 0.25, 0.08),
  regulatorDivider: ohmsRow(5000, 0.4, 0.1),
  varistor: ohmsRow(5e8, 1, 0.5),
  gate: ohmsRow(2e9, 1, 0.5),
  contact: ohmsRow(1e11, 0.5, 0.5),
  dark: ohmsRow(1e10, 1, 0.5),
  surface: ohmsRow(1e11, 0.5, 0.5),
} as const satisfies Record<string, OhmsRow>;

export type OhmsName = keyof typeof OHMS_ROWS;

/** Marked resistors: half the marked tolerance is a deviation; a maker's reel is off by this share as one (from memory). */
export const RESISTOR = { tolerance: 0.05, reelShare: 0.4, perKelvin: 2e-4, mark: "from memory" } as const;

/** NTC thermistor law where the board names no beta. Common practice. */
export const NTC_BETA = 3450;

/**
 * Capacitors: ageing as the mean share of what is marked, deviations, loss resistance, insulation as seconds (R x C) and the ladder
 * that soaks: shares of the capacitance behind time constants in seconds. From memory.
 */
export const CAPACITORS = {
  electrolytic: {
    farads: 100e-6,
    meanShare: 0.95,
    typeShare: 0.07,
    partShare: 0.02,
    seriesSeconds: [5e-6, 6e-5],
    insulationSeconds: [800, 40_000],
    mostOhms: 2e9,
    soak: [
      { share: [0.01, 0.04], seconds: [2, 8] },
      { share: [0.01, 0.05], seconds: [15, 80] },
    ],
  },
  film: {
    farads: 100e-9,
    meanShare: 1,
    typeShare: 0.035,
    partShare: 0.01,
    seriesSeconds: [1e-8, 5e-8],
    insulationSeconds: [5000, 100_000],
    mostOhms: 1e12,
    soak: [{ share: [0.0005, 0.003], seconds: [1, 20] }],
  },
  ceramic: {
    farads: 100e-9,
    meanShare: 0.98,
    typeShare: 0.05,
    partShare: 0.02,
    seriesSeconds: [1e-9, 3e-8],
    insulationSeconds: [200, 10_000],
    mostOhms: 1e12,
    soak: [{ share: [0.005, 0.03], seconds: [1, 20] }],
  },
  mark: "from memory",
} as const;

/** From this many farads on a capacitor without a named type is an electrolytic. From memory. */
export const ELECTROLYTIC_FARADS = 4.7e-6;

/** Seconds a technician waits until a reading counts as settled: what still soaks then is part of it. From memory. */
export const SETTLED_SECONDS: Range = [8, 40];

/** Small transistor, Gummel-Poon: gains, early voltage, knee, junction ohms. General-purpose data sheets, from memory. */
export const TRANSISTOR = {
  saturationAmps: [4e-15, 6e-14],
  forwardGain: [80, 350],
  reverseGain: [1, 8],
  earlyVolts: [40, 150],
  kneeAmps: [0.02, 0.3],
  baseOhms: [5, 60],
  collectorOhms: [0.2, 2],
  emitterOhms: [0.05, 0.6],
  leakAmps: [1e-15, 3e-13],
  leakEmission: [1.5, 2],
  /** base-emitter breakdown, volts */
  emitterBreaks: [6, 8.5],
  mark: "from memory",
} as const;

/** Zener breakdown: below about 5 V the knee is soft (emission of the breakdown). Published curves, from memory. */
export const ZENER = {
  tolerance: 0.05,
  testAmps: 5e-3,
  softBelowVolts: 5.2,
  softEmission: [4, 10],
  hardEmission: [1, 2],
  mark: "from memory",
} as const;

/** Insulation of a wet or dirty surface between neighbouring nets: median ohms, deviation of ln, least. From memory. */
export const MOISTURE = {
  water: { medianOhms: 4e6, sigmaLn: 1.6, leastOhms: 3e5, share: 1 },
  insects: { medianOhms: 2e7, sigmaLn: 1.6, leastOhms: 3e5, share: 0.3 },
  other: { medianOhms: 1e9, sigmaLn: 1.5, leastOhms: 2e7, share: 1 },
  mark: "from memory",
} as const;
