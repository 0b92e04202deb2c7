/**
 * What the inside of each part kind measures when it is cold and healthy. Forward drops are volts at 1 mA and 25 degC, with
 * their emission and the standard deviation from part to part. Where a board gives a value, the board wins.
 */

/** Where a row comes from. */
export type Mark = "common practice" | "from memory" | "board file format";

export interface JunctionModel {
  readonly volts: number;
  readonly emission: number;
  /** deviation of one part from another of its type, and of types from each other */
  readonly partVolts: number;
  readonly typeVolts: number;
  readonly mark: Mark;
}

const SILICON = 1.4;
const METAL = 1.1;
/** Scatter of a drop among parts of one type, and among types (from memory: the bands that the trade names are two of these). */
const PART = 0.022;
const TYPE = 0.032;

function drop(
  volts: number,
  mark: Mark,
  emission = SILICON,
  partVolts = PART,
  typeVolts = TYPE,
): JunctionModel {
  return { volts, emission, partVolts, typeVolts, mark };
}

/** The current at which drops stand in the tables, amps. */
export const TABLE_AMPS = 1e-3;

export const JUNCTION_MODELS = {
  rectifier: drop(0.47, "common practice"),
  fast: drop(0.41, "common practice"),
  schottky: drop(0.2, "common practice", METAL),
  sic: drop(0.8, "common practice", METAL),
  signal: drop(0.6, "common practice"),
  bridge: drop(0.47, "common practice"),
  // a gate clamp reads 0.5 to 0.65 V forward on the bench
  zenerForward: drop(0.64, "common practice"),
  led: drop(1.8, "from memory", 2, 0.08, 0.14),
  optoLed: drop(1.1, "common practice", SILICON, 0.03, 0.05),
  mosfetBody: drop(0.5, "common practice"),
  freewheel: drop(0.43, "common practice"),
  moduleSubstrate: drop(0.75, "board file format"),
  moduleBootstrapBack: drop(0.65, "board file format"),
  moduleBootstrap: drop(0.55, "board file format"),
  moduleDrive: drop(0.58, "board file format"),
  regulatorReverse: drop(0.55, "common practice"),
  switcherSupply: drop(0.6, "from memory"),
  shuntrefReverse: drop(0.65, "from memory"),
  thyristorGate: drop(0.65, "from memory"),
  chipPin: drop(0.6, "common practice"),
  chipFloatingPin: drop(0.65, "from memory"),
  chipSupplyLow: drop(0.55, "common practice"),
  chipSupplyHigh: drop(0.58, "common practice"),
  /** load of a chip between its supply and ground; with the resistance of `LOAD_OHMS` */
  chipLoadLow: drop(0.65, "board file format", SILICON, 0.08, 0.14),
  chipLoadHigh: drop(1.5, "board file format", SILICON, 0.15, 0.26),
} as const satisfies Record<string, JunctionModel>;

/** A chip for this supply or less has the low knee. */
export const LOW_SUPPLY_VOLTS = 5;

/** Resistances inside parts, ohms: nominal and share of deviation. */
export const RESISTANCE_MODELS = {
  fuse: { ohms: 0.02, sigma: 0.3, mark: "common practice" },
  link: { ohms: 0.005, sigma: 0.5, mark: "common practice" },
  inductor: { ohms: 0.08, sigma: 0.1, mark: "common practice" },
  choke: { ohms: 0.03, sigma: 0.1, mark: "common practice" },
  winding: { ohms: 0.3, sigma: 0.1, mark: "common practice" },
  primary: { ohms: 1.2, sigma: 0.15, mark: "common practice" },
  relayCoil: { ohms: 400, sigma: 0.05, mark: "common practice" },
  resistor: { ohms: 10_000, sigma: 0.02, mark: "from memory" },
  /** some 4 % a kelvin: the room alone makes a third */
  ntc: { ohms: 10, sigma: 0.35, mark: "common practice" },
  ptc: { ohms: 47, sigma: 0.1, mark: "common practice" },
  motor: { ohms: 4, sigma: 0.05, mark: "common practice" },
  varistor: { ohms: 1e9, sigma: 0.3, mark: "from memory" },
  triacGate: { ohms: 60, sigma: 0.3, mark: "from memory" },
  moduleBootstrap: { ohms: 33, sigma: 0.2, mark: "board file format" },
  moduleInput: { ohms: 5000, sigma: 0.2, mark: "board file format" },
  chipLoadLow: { ohms: 300, sigma: 0.3, mark: "board file format" },
  chipLoadHigh: { ohms: 680, sigma: 0.3, mark: "board file format" },
  /** divider inside a fixed regulator, from its output to ground */
  regulatorDivider: { ohms: 5000, sigma: 0.45, mark: "from memory" },
  /** bias of a chip across its supply below the knee of its load */
  chipBias: { ohms: 80_000, sigma: 0.9, mark: "from memory" },
  /** what a shunt reference draws below its voltage */
  referenceBias: { ohms: 8e6, sigma: 0.8, mark: "from memory" },
  /** bond wire and lead frame of a chip's supply pin: the place where it can come off */
  chipBond: { ohms: 0.01, sigma: 0.5, mark: "from memory" },
} as const satisfies Record<string, { ohms: number; sigma: number; mark: Mark }>;

/** Deviation of a resistor whose tolerance the board does not give (5 % parts, two deviations). */
export const RESISTOR_TOLERANCE = 0.05;

/**
 * Capacitor insulation as a time constant R x C in seconds at the meter's few volts, with a ceiling in ohms. Data sheets bound
 * electrolytics at rated voltage (0.02 CV + 25 uA after 5 minutes: about 50 s); at a hundredth of it they are far better, less what
 * still soaks when a reading is called settled.
 */
export const CAPACITOR_MODELS = {
  electrolytic: {
    farads: 100e-6,
    insulationSeconds: 1_500,
    mostOhms: 1e9,
    tolerance: 0.2,
    mark: "from memory",
  },
  film: { farads: 100e-9, insulationSeconds: 30_000, mostOhms: 1e11, tolerance: 0.1, mark: "from memory" },
  ceramic: { farads: 100e-9, insulationSeconds: 1_000, mostOhms: 1e11, tolerance: 0.1, mark: "from memory" },
} as const;

/** Deviation of the insulation of a capacitor, share: it differs by more than any other value (from memory). */
export const INSULATION_SPREAD = 1;

/** An electrolytic is assumed at and above this capacitance where the board names no type (from memory). */
export const ELECTROLYTIC_FARADS = 4.7e-6;

/** Small transistor: base-emitter drop with the collector open, gains, emission (general-purpose data sheets, from memory). */
export const BJT_MODEL = {
  baseEmitterVolts: 0.65,
  forwardGain: 100,
  reverseGain: 2,
  emission: 1,
  partVolts: 0.015,
  typeVolts: 0.025,
  mark: "from memory",
} as const;

/**
 * A knee at some voltage takes this many e-folds from nothing to 1 mA (from memory; low-voltage zeners are as soft). No junction
 * is steeper: its saturation current would fall below 1e-28 A, where ngspice stops following.
 */
export const KNEE_FOLDS = 50;
