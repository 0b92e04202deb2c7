/**
 * What is asked of a board that nobody has described: one row a question, with the trade's default. The first four make a board
 * that can be worked on; what is left open takes its default, and the parts behind it count as not seen.
 */
import { said } from "../messages/said.ts";

/** Where a default comes from: what the trade agrees on, or what was judged. */
export type SourceMark = "common practice" | "from memory";

export type QuestionId =
  | "supply"
  | "boost"
  | "switches"
  | "rails"
  | "filter"
  | "fuseAmps"
  | "inrush"
  | "bus"
  | "busCount"
  | "busMicrofarads"
  | "gates"
  | "brake"
  | "offline"
  | "lowRails"
  | "controller"
  | "relays"
  | "relayDrive"
  | "thermistors"
  | "sensing";

export interface Choice {
  readonly value: string;
  readonly words: string;
  readonly hint?: string;
}

interface Asked {
  readonly id: QuestionId;
  readonly title: string;
  /** one of those that must be answered before the board can be worked on */
  readonly first: boolean;
  /** what is taken where nobody knows, given the answers before it */
  readonly usual: (before: Settled) => string;
  readonly mark: SourceMark;
  /** what the default rests on, in words */
  readonly source: string;
  /** left out where it has nothing to ask */
  readonly applies?: (before: Settled) => boolean;
}

/** One of a few answers; `fits` leaves out those that an earlier answer excludes. */
export interface ChoiceQuestion extends Asked {
  readonly kind: "choice";
  readonly choices: readonly Choice[];
  readonly fits?: (value: string, before: Settled) => boolean;
}

/** A number with its unit and bounds. */
export interface NumberQuestion extends Asked {
  readonly kind: "number";
  readonly unit: string;
  /** counted, not measured */
  readonly whole: boolean;
  readonly least: number;
  readonly most: number;
}

export type Question = ChoiceQuestion | NumberQuestion;

/** An answer to every question that applies. */
export type Settled = ReadonlyMap<QuestionId, string>;

const phases = (before: Settled) => (before.get("supply")?.endsWith("-3") ? 3 : 1);
const volts = (before: Settled) => Number(before.get("supply")?.split("-")[0] ?? 230);
/** Above this the bus of three-phase mains wants two electrolytics in series. Common practice. */
const SERIES_FROM_VOLTS = 300;

const FIRST: readonly Question[] = [
  {
    kind: "choice",
    id: "supply",
    title: said`What it runs on`,
    first: true,
    choices: [
      { value: "230-1", words: said`230 V, one phase` },
      { value: "120-1", words: said`120 V, one phase` },
      { value: "230-3", words: said`230 V, three phases` },
      { value: "400-3", words: said`400 V, three phases` },
      { value: "480-3", words: said`480 V, three phases` },
    ],
    usual: () => "230-1",
    mark: "common practice",
    source: said`most boards on a bench hang on one phase of 230 V`,
  },
  {
    kind: "choice",
    id: "boost",
    title: said`Boost before the bus`,
    first: true,
    choices: [
      { value: "none", words: said`None` },
      {
        value: "switch",
        words: said`One switch`,
        hint: said`a reactor, a switch and a diode beside the bridge`,
      },
    ],
    fits: (value, before) => value === "none" || phases(before) === 1,
    usual: () => "none",
    mark: "common practice",
    source: said`small drives have none; behind three phases it is rare`,
  },
  {
    kind: "choice",
    id: "switches",
    title: said`What drives the motor`,
    first: true,
    choices: [
      { value: "module", words: said`Power module`, hint: said`one block on the heatsink` },
      { value: "discrete", words: said`Single switches`, hint: said`six transistors on the heatsink` },
    ],
    usual: () => "module",
    mark: "common practice",
    source: said`up to some kilowatts most drives carry a module`,
  },
  {
    kind: "choice",
    id: "rails",
    title: said`Rails`,
    first: true,
    choices: [
      { value: "15,5", words: said`15 V, 5 V` },
      { value: "15,3.3", words: said`15 V, 3.3 V` },
      { value: "15,5,3.3", words: said`15 V, 5 V, 3.3 V` },
      { value: "15,12,5", words: said`15 V, 12 V, 5 V` },
      { value: "15,12,5,3.3", words: said`15, 12, 5, 3.3 V` },
      { value: "15,24,5", words: said`15 V, 24 V, 5 V` },
    ],
    usual: () => "15,5",
    mark: "common practice",
    source: said`15 V for the drive, 5 V for the logic`,
  },
];

const MAINS_AND_BUS: readonly Question[] = [
  {
    kind: "choice",
    id: "filter",
    title: said`Filter at the mains`,
    first: false,
    choices: [
      { value: "full", words: said`With a choke`, hint: said`fuse, varistors, X and Y capacitors, choke` },
      { value: "plain", words: said`Without a choke`, hint: said`fuse, one varistor, one X capacitor` },
      { value: "fuse", words: said`A fuse alone` },
    ],
    applies: (before) => phases(before) === 1,
    usual: () => "full",
    mark: "common practice",
    source: said`what is sold must not disturb the mains`,
  },
  {
    kind: "number",
    id: "fuseAmps",
    title: said`Mains fuse`,
    first: false,
    unit: "A",
    whole: false,
    least: 0.1,
    most: 200,
    usual: (before) => (before.get("boost") === "switch" ? "20" : phases(before) === 3 ? "12" : "10"),
    mark: "from memory",
    source: said`1 to 2 kW`,
  },
  {
    kind: "choice",
    id: "inrush",
    title: said`What limits the inrush`,
    first: false,
    choices: [
      { value: "ntc", words: said`NTC alone`, hint: said`a disc in the line, no relay` },
      { value: "ptc-relay", words: said`PTC and relay`, hint: said`a disc in the line, a relay across it` },
      {
        value: "resistor-relay",
        words: said`Resistor and relay`,
        hint: said`a cement resistor between bridge and bus`,
      },
      { value: "none", words: said`Nothing` },
    ],
    fits: (value, before) =>
      phases(before) === 3
        ? value === "resistor-relay" || value === "none"
        : value !== "resistor-relay" || before.get("boost") === "none",
    usual: (before) =>
      phases(before) === 3 ? "resistor-relay" : before.get("boost") === "switch" ? "ptc-relay" : "ntc",
    mark: "common practice",
    source: said`NTC up to a kilowatt, PTC and relay above, charge resistor behind three phases`,
  },
  {
    kind: "choice",
    id: "bus",
    title: said`Bus capacitors`,
    first: false,
    choices: [
      { value: "parallel", words: said`Side by side` },
      { value: "series", words: said`Two in series`, hint: said`with a resistor across each` },
    ],
    fits: (value, before) => value === "series" || volts(before) <= SERIES_FROM_VOLTS,
    usual: (before) => (volts(before) > SERIES_FROM_VOLTS ? "series" : "parallel"),
    mark: "common practice",
    source: said`electrolytics end at 450 V: above that two share the bus`,
  },
  {
    kind: "number",
    id: "busCount",
    title: said`How many side by side`,
    first: false,
    unit: said`capacitors`,
    whole: true,
    least: 1,
    most: 12,
    usual: (before) => (before.get("bus") === "series" ? "1" : "2"),
    mark: "common practice",
    source: said`1 to 2 kW`,
  },
  {
    kind: "number",
    id: "busMicrofarads",
    title: said`Each bus capacitor`,
    first: false,
    unit: "uF",
    whole: false,
    least: 1,
    most: 10_000,
    usual: () => "470",
    mark: "common practice",
    source: said`330 to 680 uF`,
  },
];

const OUTPUT_AND_LOGIC: readonly Question[] = [
  {
    kind: "choice",
    id: "gates",
    title: said`Parts round the gates`,
    first: false,
    choices: [
      {
        value: "usual",
        words: said`As usual`,
        hint: said`resistor, pull-down and clamp a gate; bootstrap for the upper ones`,
      },
    ],
    usual: () => "usual",
    mark: "common practice",
    source: said`47 ohm in, 10 kohm and 18 V across; at a module 100 ohm and 1 nF an input`,
  },
  {
    kind: "choice",
    id: "brake",
    title: said`Brake chopper`,
    first: false,
    choices: [
      { value: "no", words: said`None` },
      { value: "yes", words: said`On board`, hint: said`a terminal for a brake resistor` },
    ],
    usual: () => "no",
    mark: "common practice",
    source: said`frequency drives have one, appliances none`,
  },
  {
    kind: "choice",
    id: "offline",
    title: said`Small supply`,
    first: false,
    choices: [
      { value: "flyback", words: said`Flyback, optocoupler` },
      { value: "flyback-own", words: said`Flyback, no optocoupler`, hint: said`held by its own winding` },
      { value: "plug", words: said`On another board`, hint: said`the rails come in on a plug` },
    ],
    usual: () => "flyback",
    mark: "common practice",
    source: said`a chip of some watts with a small transformer`,
  },
  {
    kind: "choice",
    id: "lowRails",
    title: said`Where 5 V and 3.3 V come from`,
    first: false,
    choices: [
      { value: "regulators", words: said`Linear regulators` },
      { value: "windings", words: said`Own windings` },
    ],
    applies: (before) => before.get("offline") !== "plug",
    usual: () => "regulators",
    mark: "common practice",
    source: said`a three-legged regulator a rail`,
  },
  {
    kind: "choice",
    id: "controller",
    title: said`Controller`,
    first: false,
    choices: [
      { value: "5", words: said`Here, on 5 V` },
      { value: "3.3", words: said`Here, on 3.3 V` },
      { value: "plug", words: said`On another board`, hint: said`comes on a plug` },
    ],
    fits: (value, before) => value === "plug" || (before.get("rails") ?? "").split(",").includes(value),
    usual: (before) => ((before.get("rails") ?? "").endsWith("3.3") ? "3.3" : "5"),
    mark: "common practice",
    source: said`it hangs on the lowest rail`,
  },
  {
    kind: "number",
    id: "relays",
    title: said`Relays for loads`,
    first: false,
    unit: said`relays`,
    whole: true,
    least: 0,
    most: 7,
    usual: () => "0",
    mark: "common practice",
    source: said`the one of the inrush is not counted`,
  },
  {
    kind: "choice",
    id: "relayDrive",
    title: said`What pulls their coils down`,
    first: false,
    choices: [
      { value: "transistors", words: said`A transistor each` },
      { value: "array", words: said`A driver array` },
    ],
    applies: (before) => before.get("relays") !== "0",
    usual: (before) => (Number(before.get("relays")) > 2 ? "array" : "transistors"),
    mark: "common practice",
    source: said`an array from three relays on`,
  },
  {
    kind: "number",
    id: "thermistors",
    title: said`Thermistors`,
    first: false,
    unit: said`thermistors`,
    whole: true,
    least: 0,
    most: 6,
    usual: () => "1",
    mark: "common practice",
    source: said`10 kohm, one at the heatsink`,
  },
  {
    kind: "choice",
    id: "sensing",
    title: said`What else is sensed`,
    first: false,
    choices: [
      { value: "bus-current", words: said`Bus and current` },
      { value: "bus", words: said`Bus alone` },
    ],
    usual: () => "bus-current",
    mark: "common practice",
    source: said`a chain to the bus, an amplified or filtered shunt`,
  },
];

/** Every question, in the order in which they are asked: an answer never depends on a later one. */
export const QUESTIONS: readonly Question[] = [...FIRST, ...MAINS_AND_BUS, ...OUTPUT_AND_LOGIC];
