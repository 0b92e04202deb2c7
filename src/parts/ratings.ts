/**
 * The ratings of a part that decide whether another may stand in for it. SI units (coulombs for gate charge), but millimetres and
 * degrees Celsius where the name says so. A rating that is left out is not known; it is never taken for zero.
 */

/** Ratings that are numbers. */
export interface FigureRatings {
  /** blocking voltage, rated voltage, zener or regulated voltage, 1 mA voltage of a varistor */
  readonly volts?: number;
  /** rated current; of an IGBT or MOSFET at a case of 25 degC */
  readonly amps?: number;
  /** of a switch: current at a case of 100 degC */
  readonly hotAmps?: number;
  /** one half cycle of the mains that does not repeat */
  readonly surgeAmps?: number;
  readonly meltingAmps2Seconds?: number;
  /** how long a shorted IGBT lives at its gate voltage; 0 says that it is not rated for it */
  readonly shortCircuitSeconds?: number;
  readonly gateCoulombs?: number;
  /** forward drop of a diode, saturation of a switch, at rated current */
  readonly dropVolts?: number;
  readonly recoverySeconds?: number;
  readonly ohmsOn?: number;
  readonly ohms?: number;
  readonly tolerance?: number;
  readonly watts?: number;
  readonly kelvinDrift?: number;
  readonly farads?: number;
  readonly rippleAmps?: number;
  readonly esrOhms?: number;
  readonly degC?: number;
  readonly heightMm?: number;
  readonly pitchMm?: number;
  readonly discMm?: number;
  /** highest alternating voltage that may stand across it for ever */
  readonly acVolts?: number;
  readonly joules?: number;
  readonly breakingAmps?: number;
  readonly coilVolts?: number;
  readonly coilOhms?: number;
  readonly transferLow?: number;
  readonly transferHigh?: number;
  readonly isolationVolts?: number;
  readonly hertz?: number;
  /** voltage at the over-current input at which a module trips */
  readonly tripVolts?: number;
}

/** Ratings that are one of a few words. */
export interface WordRatings {
  /** diode: rectifier fast schottky sic signal; capacitor: electrolytic film ceramic */
  readonly type?: string;
  /** IGBT: what it was made for */
  readonly speed?: string;
  /** is the mounting face joined to a pin? */
  readonly tab?: string;
  /** X1 X2 Y1 Y2 */
  readonly safety?: string;
  /** fuse: F quick, T slow */
  readonly blow?: string;
  readonly body?: string;
  /** module inputs: switched on by a high or by a low level */
  readonly logic?: string;
  /** module: where the current is measured */
  readonly shunt?: string;
  /** optocoupler: passes an analogue signal back, or drives a gate */
  readonly use?: string;
  readonly polarity?: string;
  readonly channel?: string;
}

/** Ratings that are names, alike or not. */
export interface NameRatings {
  readonly package?: string;
  /** the pins from left to right, seen from the marking: `G C E` */
  readonly pinOrder?: string;
  /** switcher: its family; what a bigger sister shares */
  readonly family?: string;
  /** module: the drawing of its pins */
  readonly pinMap?: string;
  /** module: the curve of its temperature output */
  readonly sensor?: string;
  /** controller, memory: what is programmed into it */
  readonly program?: string;
}

/** Ratings that are yes or no. */
export interface FlagRatings {
  /** IGBT: an anti-parallel diode inside */
  readonly copack?: boolean;
  readonly cutout?: boolean;
  readonly bootDiode?: boolean;
  readonly openEmitters?: boolean;
  readonly fourTerminal?: boolean;
  readonly fusible?: boolean;
}

export interface Ratings extends FigureRatings, WordRatings, NameRatings, FlagRatings {}

export type FigureName = keyof FigureRatings;
export type RatingName = keyof Ratings;

/** How a rating is read, written and named for people. */
export type RatingRule =
  | { readonly reads: "figure"; readonly unit: string; readonly words: string }
  | { readonly reads: "word"; readonly known: readonly string[]; readonly words: string }
  | { readonly reads: "name"; readonly words: string }
  | { readonly reads: "flag"; readonly words: string };

function figure(unit: string, words: string): RatingRule {
  return { reads: "figure", unit, words };
}

function word(words: string, ...known: readonly string[]): RatingRule {
  return { reads: "word", known, words };
}

function name(words: string): RatingRule {
  return { reads: "name", words };
}

function flag(words: string): RatingRule {
  return { reads: "flag", words };
}

const ROWS: Readonly<Record<RatingName, RatingRule>> = {
  volts: figure("V", "voltage"),
  amps: figure("A", "current"),
  hotAmps: figure("A", "current at 100 degC case"),
  surgeAmps: figure("A", "surge current"),
  meltingAmps2Seconds: figure("A2s", "I2t"),
  shortCircuitSeconds: figure("s", "short-circuit time"),
  gateCoulombs: figure("C", "gate charge"),
  dropVolts: figure("V", "forward drop"),
  recoverySeconds: figure("s", "recovery time"),
  ohmsOn: figure("ohm", "on-resistance"),
  ohms: figure("ohm", "resistance"),
  tolerance: figure("%", "tolerance"),
  watts: figure("W", "power"),
  kelvinDrift: figure("ppm", "drift per kelvin"),
  farads: figure("F", "capacitance"),
  rippleAmps: figure("A", "ripple current"),
  esrOhms: figure("ohm", "ESR"),
  degC: figure("degC", "rated temperature"),
  heightMm: figure("mm", "height"),
  pitchMm: figure("mm", "pin pitch"),
  discMm: figure("mm", "disc"),
  acVolts: figure("V", "continuous AC voltage"),
  joules: figure("J", "energy"),
  breakingAmps: figure("A", "breaking capacity"),
  coilVolts: figure("V", "coil voltage"),
  coilOhms: figure("ohm", "coil resistance"),
  transferLow: figure("%", "lowest current transfer ratio"),
  transferHigh: figure("%", "highest current transfer ratio"),
  isolationVolts: figure("V", "isolation voltage"),
  hertz: figure("Hz", "frequency"),
  tripVolts: figure("V", "over-current threshold"),
  type: word("type", "rectifier", "fast", "schottky", "sic", "signal", "electrolytic", "film", "ceramic"),
  speed: word("speed class", "motor", "high-speed", "resonant"),
  tab: word("tab", "isolated", "live"),
  safety: word("safety class", "X1", "X2", "Y1", "Y2"),
  blow: word("blow", "F", "T"),
  body: word("body", "glass", "ceramic"),
  logic: word("input logic", "high", "low"),
  shunt: word("shunt", "inside", "outside"),
  use: word("use", "feedback", "drive"),
  polarity: word("polarity", "npn", "pnp"),
  channel: word("channel", "n", "p"),
  package: name("package"),
  pinOrder: name("pin order"),
  family: name("family"),
  pinMap: name("pin map"),
  sensor: name("temperature curve"),
  program: name("program"),
  copack: flag("diode inside"),
  cutout: flag("thermal cut-out"),
  bootDiode: flag("bootstrap diodes inside"),
  openEmitters: flag("open emitters"),
  fourTerminal: flag("four terminals"),
  fusible: flag("fusible, flameproof"),
};

/** Every rating by its name, in the order in which a catalogue file has them. */
export const RATINGS: ReadonlyMap<RatingName, RatingRule> = new Map(
  Object.entries(ROWS) as [RatingName, RatingRule][],
);

/** What a person calls a rating. */
export function ratingWords(name: RatingName): string {
  return ROWS[name].words;
}
