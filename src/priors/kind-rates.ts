import type { Part } from "../board/board.ts";
import type { Sourced } from "../units/mark.ts";
import { capacitorShape } from "./junctions.ts";
import type { StageGroup } from "./stage-groups.ts";

/** How often a stage holds the first fault of a dead board. */
export interface StageShare extends Sourced {
  /** relative number of first faults of a fully fitted stage */
  readonly share: number;
  /** sum of kind weights of a fully fitted stage: a stage with less gets proportionally less, one with more no more */
  readonly full: number;
}

const ORDER =
  "service order for drives: inverter switch or module, bus capacitors, driver and control, rectifier, fan";

/**
 * First faults by stage. Handbook rates taken raw would accuse the boost diode in every job, so stages are held to what benches
 * report; the order of the first four is from a published drive service guide, the figures are `from memory`.
 */
export const STAGE_SHARES: Readonly<Record<StageGroup, StageShare>> = {
  inverter: { id: "S-inverter", mark: "from memory", words: ORDER, share: 26, full: 11 },
  bus: { id: "S-bus", mark: "from memory", words: ORDER, share: 15, full: 4 },
  drive: { id: "S-drive", mark: "from memory", words: ORDER, share: 10, full: 5 },
  rectifier: { id: "S-rectifier", mark: "from memory", words: ORDER, share: 8, full: 5 },
  supply: {
    id: "S-supply",
    mark: "from memory",
    words: "small off-line supplies are the next most repaired stage",
    share: 14,
    full: 11,
  },
  pfc: { id: "S-pfc", mark: "from memory", words: "boost switch with its gate parts", share: 9, full: 5 },
  rail: {
    id: "S-rail",
    mark: "from memory",
    words: "rails and their regulators, capacitors",
    share: 6,
    full: 5,
  },
  input: { id: "S-input", mark: "from memory", words: "fuse, varistor, filter", share: 5, full: 4 },
  inrush: { id: "S-inrush", mark: "from memory", words: "limiter and its relay", share: 4, full: 2.5 },
  logic: {
    id: "S-logic",
    mark: "from memory",
    words: "controller and chips beside it: seldom first, never sold",
    share: 6,
    full: 5,
  },
  output: { id: "S-output", mark: "from memory", words: "relays, valves, fan plugs", share: 3, full: 4 },
  sensor: { id: "S-sensor", mark: "from memory", words: "sense chains and shunts", share: 3.5, full: 3 },
  chopper: { id: "S-chopper", mark: "from memory", words: "brake switch, resistor", share: 3, full: 4 },
  other: { id: "S-other", mark: "from memory", words: "parts no stage claims", share: 5, full: 6 },
};

/** Weight of one part among the others of its stage. */
export interface KindWeight extends Sourced {
  readonly weight: number;
}

const weigh = (id: string, weight: number, words: string): KindWeight => ({
  id: `W-${id}`,
  mark: "from memory",
  words,
  weight,
});

/** Weights by kind; `capacitor` and `resistor` are split further by `weightKey`. */
export const KIND_WEIGHTS: Readonly<Record<string, KindWeight>> = {
  module: weigh("module", 10, "six switches and three drivers in one part"),
  igbt: weigh("igbt", 2.6, "a switch on the bus"),
  "resonant-switch": weigh(
    "resonant-switch",
    7,
    "does alone what six do in a drive, at over a thousand volts",
  ),
  "resonant-film": weigh("resonant-film", 1.2, "carries the whole resonant current"),
  "resonant-bus-film": weigh(
    "resonant-bus-film",
    0.7,
    "a small bus capacitor that carries the switching current",
  ),
  mosfet: weigh("mosfet", 2.4, "a switch on the bus"),
  bjt: weigh("bjt", 0.8, "small transistor"),
  thyristor: weigh("thyristor", 1.8, "line switch"),
  triac: weigh("triac", 1.8, "line switch"),
  bridge: weigh("bridge", 5, "four or six junctions taking the inrush"),
  diode: weigh("diode", 1.1, "power diode"),
  "signal-diode": weigh("signal-diode", 0.3, "small signal"),
  zener: weigh("zener", 0.8, "clamp"),
  led: weigh("led", 0.15, "indicator"),
  electrolytic: weigh("electrolytic", 1.6, "wears out; the largest share of capacitor failures is thermal"),
  film: weigh("film", 0.5, "snubber, X capacitor"),
  ceramic: weigh("ceramic", 0.35, "cracks by flexing"),
  resistor: weigh("resistor", 0.16, "small resistor at ease"),
  "stressed-resistor": weigh(
    "stressed-resistor",
    0.5,
    "fuse, shunt and power resistors, high-voltage chains",
  ),
  fuse: weigh("fuse", 0.7, "blows by itself seldom; mostly a knock-on"),
  link: weigh("link", 0.25, "joint or contact"),
  ntc: weigh("ntc", 0.8, "limiter or sensor"),
  ptc: weigh("ptc", 1.0, "limiter"),
  varistor: weigh("varistor", 1.4, "wears with each surge"),
  inductor: weigh("inductor", 0.25, "joint cracks"),
  choke: weigh("choke", 0.2, "joint cracks"),
  transformer: weigh("transformer", 0.5, "windings"),
  relay: weigh("relay", 1.2, "contacts and coil"),
  opto: weigh("opto", 1.0, "ages and takes surges"),
  regulator: weigh("regulator", 1.4, "over-volted or overloaded"),
  switcher: weigh("switcher", 4.0, "switch and controller of the small supply in one part"),
  shuntref: weigh("shuntref", 0.8, "reference"),
  controller: weigh("controller", 2.6, "programmed chip"),
  ic: weigh("ic", 2.2, "driver, array, amplifier"),
  motor: weigh("motor", 0.5, "off the board: tested by itself, seldom the fault that brings a board in"),
};

/** The key of `KIND_WEIGHTS` that this part falls under. */
export function weightKey(part: Part): string {
  if (part.kind === "capacitor") return capacitorShape(part);
  if (part.kind === "diode") return part.value.type === "signal" ? "signal-diode" : "diode";
  if (part.kind !== "resistor") return part.kind;
  const { ohms, watts } = part.value;
  if ((watts ?? 0) >= 1) return "stressed-resistor";
  return ohms !== undefined && (ohms <= 1 || ohms >= 100_000) ? "stressed-resistor" : "resistor";
}

/** Root faults expected on a board that is brought in, before knock-ons. `from memory`. */
export const ROOT_FAULTS = 1.3;
/** A part that nobody has seen may be anything. `from memory`. */
export const ASSUMED_FACTOR = 3;
