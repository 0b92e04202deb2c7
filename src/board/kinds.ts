/**
 * The part kinds of `faultwright-board/1`: one row each. Pins, value fields, junctions and modes are the file format's; the
 * words for people are ours.
 */
import { said } from "../messages/said.ts";
import type { Bounds } from "../units/fields.ts";
import type { PartKind } from "./board.ts";

/** How one field of `value` is read. */
export type ValueRule =
  | { readonly reads: "number"; readonly bounds: Bounds }
  | { readonly reads: "word"; readonly words: readonly string[] }
  | { readonly reads: "flag" }
  | { readonly reads: "windings" }
  | { readonly reads: "floating" };

export interface Kind {
  /** what a person calls it */
  readonly words: string;
  /** pins that every part of the kind has, in the format's order */
  readonly pins: readonly string[];
  /** pins that may be left out */
  readonly mayLeaveOut: readonly string[];
  /** any other pin names may be added */
  readonly otherPins: boolean;
  readonly value: ReadonlyMap<string, ValueRule>;
  /** can one normally be bought? */
  readonly obtainable: boolean;
}

const POSITIVE: ValueRule = { reads: "number", bounds: { above: 0 } };
/** A wire, a fuse or a bridging resistor may be given as 0 ohm; the solver has its own floor. */
const ZERO_OR_MORE: ValueRule = { reads: "number", bounds: { least: 0 } };
const FRACTION: ValueRule = { reads: "number", bounds: { least: 0, below: 1 } };
const VOLTS_AMPS = { volts: POSITIVE, amps: POSITIVE };

function word(...words: readonly string[]): ValueRule {
  return { reads: "word", words };
}

interface Row {
  readonly words: string;
  readonly pins: string;
  readonly mayLeaveOut?: string;
  readonly otherPins?: boolean;
  readonly value?: Readonly<Record<string, ValueRule>>;
  readonly obtainable?: boolean;
}

/** The inputs of a power module; each is also the name of its junction to `com`. */
export const MODULE_INPUTS: readonly string[] = [
  "inup",
  "invp",
  "inwp",
  "inun",
  "invn",
  "inwn",
  "fault",
  "trip",
];

const ROWS: Readonly<Record<PartKind, Row>> = {
  fuse: { words: said`fuse`, pins: "1 2", value: { ...VOLTS_AMPS, ohms: ZERO_OR_MORE } },
  link: { words: said`link`, pins: "1 2", value: { ohms: ZERO_OR_MORE } },
  resistor: {
    words: said`resistor`,
    pins: "1 2",
    value: { ohms: ZERO_OR_MORE, tolerance: FRACTION, watts: POSITIVE },
  },
  ntc: { words: said`NTC thermistor`, pins: "1 2", value: { ohms: POSITIVE, beta: POSITIVE } },
  ptc: { words: said`PTC thermistor`, pins: "1 2", value: { ohms: POSITIVE, beta: POSITIVE } },
  varistor: { words: said`varistor`, pins: "1 2", value: { volts: POSITIVE, joules: POSITIVE } },
  capacitor: {
    words: said`capacitor`,
    pins: "plus minus",
    value: {
      farads: POSITIVE,
      volts: POSITIVE,
      tolerance: FRACTION,
      type: word("electrolytic", "film", "ceramic"),
    },
  },
  inductor: { words: said`inductor`, pins: "1 2", value: { henries: POSITIVE, ohms: ZERO_OR_MORE } },
  choke: {
    words: said`common-mode choke`,
    pins: "1 2 3 4",
    value: { henries: POSITIVE, ohms: ZERO_OR_MORE },
  },
  transformer: {
    words: said`transformer`,
    pins: "",
    otherPins: true,
    value: { windings: { reads: "windings" } },
  },
  relay: {
    words: said`relay`,
    pins: "coil1 coil2 com no",
    value: { coilOhms: POSITIVE, coilVolts: POSITIVE, amps: POSITIVE },
  },
  diode: {
    words: said`diode`,
    pins: "a k",
    value: { ...VOLTS_AMPS, type: word("rectifier", "fast", "schottky", "sic", "signal") },
  },
  zener: { words: said`zener diode`, pins: "a k", value: { volts: POSITIVE, watts: POSITIVE } },
  led: { words: said`LED`, pins: "a k", value: { volts: POSITIVE } },
  bridge: {
    words: said`bridge rectifier`,
    pins: "ac1 ac2 plus minus",
    mayLeaveOut: "ac3",
    value: VOLTS_AMPS,
  },
  bjt: {
    words: said`bipolar transistor`,
    pins: "b c e",
    value: { ...VOLTS_AMPS, polarity: word("npn", "pnp") },
  },
  mosfet: {
    words: said`MOSFET`,
    pins: "g d s",
    value: { ...VOLTS_AMPS, channel: word("n", "p"), ohmsOn: POSITIVE },
  },
  igbt: { words: said`IGBT`, pins: "g c e", value: { ...VOLTS_AMPS, diode: { reads: "flag" } } },
  thyristor: { words: said`thyristor`, pins: "g a k", value: VOLTS_AMPS },
  triac: { words: said`triac`, pins: "g 1 2", value: VOLTS_AMPS },
  module: {
    words: said`power module`,
    pins: "p u v w",
    mayLeaveOut: `n nu nv nw vcc com vbu vbv vbw ${MODULE_INPUTS.join(" ")}`,
    value: VOLTS_AMPS,
  },
  opto: { words: said`optocoupler`, pins: "a k c e" },
  regulator: { words: said`linear regulator`, pins: "in out gnd", value: VOLTS_AMPS },
  switcher: {
    words: said`off-line switcher chip`,
    pins: "d s vcc fb",
    value: { volts: POSITIVE, watts: POSITIVE },
  },
  shuntref: { words: said`shunt reference`, pins: "ref k a", value: { volts: POSITIVE } },
  controller: {
    words: said`controller`,
    pins: "vdd gnd",
    otherPins: true,
    value: VOLTS_AMPS,
    obtainable: false,
  },
  ic: {
    words: said`chip`,
    pins: "vcc gnd",
    otherPins: true,
    value: { ...VOLTS_AMPS, floating: { reads: "floating" } },
  },
  motor: { words: said`motor`, pins: "u v w", mayLeaveOut: "pe", value: { ohms: POSITIVE } },
};

function list(words: string | undefined): readonly string[] {
  return words === undefined || words === "" ? [] : words.split(" ");
}

/** Kind name -> its row. */
export const KINDS: ReadonlyMap<PartKind, Kind> = new Map(
  (Object.entries(ROWS) as [PartKind, Row][]).map(([kind, row]) => [
    kind,
    {
      words: row.words,
      pins: list(row.pins),
      mayLeaveOut: list(row.mayLeaveOut),
      otherPins: row.otherPins ?? false,
      value: new Map(Object.entries(row.value ?? {})),
      obtainable: row.obtainable ?? true,
    },
  ]),
);

export const KIND_NAMES: readonly PartKind[] = [...KINDS.keys()];

/** The row of a kind; every kind of the type has one. */
export function kindOf(kind: PartKind): Kind {
  const row = KINDS.get(kind);
  if (row === undefined) throw new Error(`no row for the part kind ${kind}`);
  return row;
}

/** The supply pin of a controller or chip. */
export function supplyPin(kind: "controller" | "ic"): "vdd" | "vcc" {
  return kind === "controller" ? "vdd" : "vcc";
}

/** `a fuse`, `an igbt`: the kind's word in an error. */
export function aKind(kind: PartKind): string {
  return /^(?:[aeiou]|led|ntc)/.test(kind) ? said`an ${kind}` : said`a ${kind}`;
}
