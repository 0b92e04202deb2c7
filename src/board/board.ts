/**
 * The board: what a board file says, parsed and frozen. Everything the engine knows of the hardware stands here;
 * what happened to it on the bench stands in `bench/`.
 */

/** Every part kind of `faultwright-board/1`. */
export type PartKind =
  | "fuse"
  | "link"
  | "resistor"
  | "ntc"
  | "ptc"
  | "varistor"
  | "capacitor"
  | "inductor"
  | "choke"
  | "transformer"
  | "relay"
  | "diode"
  | "zener"
  | "led"
  | "bridge"
  | "bjt"
  | "mosfet"
  | "igbt"
  | "thyristor"
  | "triac"
  | "module"
  | "opto"
  | "regulator"
  | "switcher"
  | "shuntref"
  | "controller"
  | "ic"
  | "motor";

/** One winding of a transformer: the two pins it joins and its resistance. */
export interface Winding {
  readonly pins: readonly [string, string];
  readonly ohms?: number;
}

/** The `value` of a part. Which fields a kind may carry is `board/kinds.ts`; SI units throughout. */
export interface PartValue {
  readonly ohms?: number;
  readonly ohmsOn?: number;
  readonly tolerance?: number;
  readonly watts?: number;
  readonly volts?: number;
  readonly amps?: number;
  readonly farads?: number;
  readonly henries?: number;
  readonly joules?: number;
  readonly beta?: number;
  readonly coilOhms?: number;
  readonly coilVolts?: number;
  /** capacitor: electrolytic film ceramic; diode: rectifier fast schottky sic signal */
  readonly type?: string;
  readonly polarity?: "npn" | "pnp";
  readonly channel?: "n" | "p";
  /** igbt: an anti-parallel diode inside (default true) */
  readonly diode?: boolean;
  readonly windings?: Readonly<Record<string, Winding>>;
  /** ic: [pin, its ground pin] pairs with no path to vcc or gnd */
  readonly floating?: readonly (readonly [string, string])[];
}

/** Minutes a board gives for handling one part; what it leaves out comes from `money/minutes.ts`. */
export interface PartMinutes {
  readonly lift?: number;
  readonly refit?: number;
  readonly remove?: number;
  readonly restore?: number;
  readonly replace?: number;
}

/** Minutes of what belongs to no part: how long a bench takes over them. */
export interface BenchMinutes {
  readonly measure: number;
  readonly look: number;
  readonly clip: number;
  readonly power: number;
  readonly unpower: number;
}

/** A part as soldered: its reference, its kind and the net of each pin. */
export interface Part {
  readonly ref: string;
  readonly kind: PartKind;
  /** pin name -> net name, in file order */
  readonly pins: ReadonlyMap<string, string>;
  readonly value: PartValue;
  readonly stage: string | null;
  readonly role: string | null;
  /** price of buying one, in the job's currency; null: the kind's default */
  readonly price: number | null;
  readonly minutes: PartMinutes;
  /** null: the kind's default (false for a controller) */
  readonly obtainable: boolean | null;
  readonly plugged: boolean;
  readonly assumed: boolean;
}

/** A supply rail: its net, nominal volts, what feeds it. */
export interface Rail {
  readonly name: string;
  readonly net: string;
  readonly volts: number;
  readonly tolerance: number;
  /** reference of the part that makes it, or null */
  readonly from: string | null;
  /** the net it is measured against where that is not the board's zero */
  readonly against: string | null;
}

/** A named point to probe, with its words and its place on the board picture. */
export interface TestPoint {
  readonly name: string;
  readonly net: string;
  readonly at: string | null;
  readonly xy: readonly [number, number] | null;
}

export interface Supply {
  readonly kind: "ac" | "dc";
  readonly volts: number;
  readonly hz: number | null;
  readonly at: readonly string[];
}

/** Cold modes in which good boards are compared: a beep has no spread. */
export type ReferenceMode = "diode" | "ohms" | "farads";

/** What good boards of this number read at one cold check, nothing lifted and nothing clipped on. */
export interface ReferenceReading {
  readonly mode: ReferenceMode;
  readonly red: string;
  readonly black: string;
  /** mean of the readings, in V, ohm or F; of ohms and farads the geometric mean */
  readonly reading: number;
  /** standard deviation of one reading: volts in diode mode, else of the natural logarithm */
  readonly spread: number;
  readonly count: number;
}

export interface Board {
  readonly name: string;
  /** what it is known by whatever it is called; left out: its name */
  readonly identity?: string;
  readonly family: string;
  readonly supply: Supply;
  /** the net that rails are measured against */
  readonly zero: string;
  /** net name -> its label (null where the file gives none); every net that a pin names is here */
  readonly nets: ReadonlyMap<string, string | null>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly rails: readonly Rail[];
  readonly points: readonly TestPoint[];
  /** as learnt on the bench where the board lies, never in a board file; left out: those of `money/minutes.ts` */
  readonly benchMinutes?: BenchMinutes;
  /** left out: none was read */
  readonly references?: readonly ReferenceReading[];
  /** logs of good boards that are counted in them already; left out: not known of any */
  readonly referencesFrom?: readonly CountedLog[];
}

/** The beginning of a log that has been counted. */
export interface CountedLog {
  /** how many of its entries */
  readonly entries: number;
  /** SHA-256 of those, in hexadecimal */
  readonly log: string;
}
