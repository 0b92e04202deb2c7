/**
 * The ratings of a part that decide whether another may stand in for it. SI units (coulombs for gate charge), but millimetres and
 * degrees Celsius where the name says so. A rating that is left out is not known; it is never taken for zero.
 */
import { said } from "../messages/said.ts";

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
  volts: figure("V", said`voltage`),
  amps: figure("A", said`current`),
  hotAmps: figure("A", said`current at 100 degC case`),
  surgeAmps: figure("A", said`surge current`),
  meltingAmps2Seconds: figure("A2s", said`I2t`),
  shortCircuitSeconds: figure("s", said`short-circuit time`),
  gateCoulombs: figure("C", said`gate charge`),
  dropVolts: figure("V", said`forward drop`),
  recoverySeconds: figure("s", said`recovery time`),
  ohmsOn: figure("ohm", said`on-resistance`),
  ohms: figure("ohm", said`resistance`),
  tolerance: figure("%", said`tolerance`),
  watts: figure("W", said`power`),
  kelvinDrift: figure("ppm", said`drift per kelvin`),
  farads: figure("F", said`capacitance`),
  rippleAmps: figure("A", said`ripple current`),
  esrOhms: figure("ohm", said`ESR`),
  degC: figure("degC", said`rated temperature`),
  heightMm: figure("mm", said`height`),
  pitchMm: figure("mm", said`pin pitch`),
  discMm: figure("mm", said`disc`),
  acVolts: figure("V", said`continuous AC voltage`),
  joules: figure("J", said`energy`),
  breakingAmps: figure("A", said`breaking capacity`),
  coilVolts: figure("V", said`coil voltage`),
  coilOhms: figure("ohm", said`coil resistance`),
  transferLow: figure("%", said`lowest current transfer ratio`),
  transferHigh: figure("%", said`highest current transfer ratio`),
  isolationVolts: figure("V", said`isolation voltage`),
  hertz: figure("Hz", said`frequency`),
  tripVolts: figure("V", said`over-current threshold`),
  type: word(said`type`, "rectifier", "fast", "schottky", "sic", "signal", "electrolytic", "film", "ceramic"),
  speed: word(said`speed class`, "motor", "high-speed", "resonant"),
  tab: word(said`tab`, "isolated", "live"),
  safety: word(said`safety class`, "X1", "X2", "Y1", "Y2"),
  blow: word(said`blow`, "F", "T"),
  body: word(said`body`, "glass", "ceramic"),
  logic: word(said`input logic`, "high", "low"),
  shunt: word(said`shunt`, "inside", "outside"),
  use: word(said`use`, "feedback", "drive"),
  polarity: word(said`polarity`, "npn", "pnp"),
  channel: word(said`channel`, "n", "p"),
  package: name(said`package`),
  pinOrder: name(said`pin order`),
  family: name(said`family`),
  pinMap: name(said`pin map`),
  sensor: name(said`temperature curve`),
  program: name(said`program`),
  copack: flag(said`diode inside`),
  cutout: flag(said`thermal cut-out`),
  bootDiode: flag(said`bootstrap diodes inside`),
  openEmitters: flag(said`open emitters`),
  fourTerminal: flag(said`four terminals`),
  fusible: flag(said`fusible, flameproof`),
};

/** Every rating by its name, in the order in which a catalogue file has them. */
export const RATINGS: ReadonlyMap<RatingName, RatingRule> = new Map(
  Object.entries(ROWS) as [RatingName, RatingRule][],
);

/** What a person calls a rating. */
export function ratingWords(name: RatingName): string {
  return ROWS[name].words;
}
