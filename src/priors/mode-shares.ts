import type { FaultMode } from "../board/fault.ts";
import type { Sourced } from "../units/mark.ts";

/** What fails: a part kind, or one junction inside a part, as far as failure modes differ. */
export type Shape =
  | "electrolytic"
  | "film"
  | "ceramic"
  | "resistor"
  | "ntc-ptc"
  | "varistor"
  | "fuse"
  | "link"
  | "inductor"
  | "winding"
  | "coil"
  | "contact"
  | "diode"
  | "rectifier-diode"
  | "signal-diode"
  | "zener"
  | "led"
  | "switch"
  | "gate"
  | "bjt-junction"
  | "thyristor"
  | "opto-led"
  | "opto-output"
  | "regulator-pass"
  | "regulator-output"
  | "chip-supply"
  | "chip-pin"
  | "chip-pin-to-supply"
  | "bootstrap"
  | "reference"
  | "motor";

/** Shares of the modes of one shape; they sum to one. */
export interface ModeShares extends Sourced {
  readonly shares: Readonly<Partial<Record<FaultMode, number>>>;
}

const HANDBOOK = "MIL-HDBK-338B failure-mode table (1998), recalled, not looked up";

/**
 * Mode shares by shape. Only the four `seen` rows are published figures read at their source; what the sources call a change of
 * parameter is a leak in a junction and a drift in a resistance or capacitance.
 */
export const MODE_SHARES: Readonly<Record<Shape, ModeShares>> = {
  electrolytic: {
    id: "FM1",
    mark: "seen",
    words:
      "Table A-1 of a reliability practitioner's guide (support.ptc.com, WRR r12): short 50 %, open 30 %; the 20 % it does not list split between lost capacity and leak from memory",
    shares: { short: 0.5, open: 0.3, drift: 0.12, leaky: 0.08 },
  },
  ceramic: {
    id: "FM5",
    mark: "seen",
    words:
      "Reliability Engineering: Basic Concepts and Applications in ICT, table 8.11: open 0.4, short 0.4, value drift 0.1, loss drift 0.1; a crack leaks before it shorts (FM10), so the loss share is the leak",
    shares: { open: 0.4, short: 0.4, drift: 0.1, leaky: 0.1 },
  },
  resistor: {
    id: "FM4",
    mark: "seen",
    words:
      "Reliability Engineering: Basic Concepts and Applications in ICT, table 8.11: open 0.8, short 0.1, drift 0.1",
    shares: { open: 0.8, short: 0.1, drift: 0.1 },
  },
  "opto-led": {
    id: "FM6-led",
    mark: "seen",
    words:
      "Reliability Engineering: Basic Concepts and Applications in ICT, table 8.11: input open 0.3, input short 0.1 (order of the rows uncertain in the scan); a small leak added from memory",
    shares: { open: 0.68, short: 0.23, leaky: 0.09 },
  },
  "opto-output": {
    id: "FM6-output",
    mark: "seen",
    words:
      "Reliability Engineering: Basic Concepts and Applications in ICT, table 8.11: output open 0.3, output short 0.3; the leak taken out of both from memory",
    shares: { open: 0.42, short: 0.42, leaky: 0.16 },
  },
  film: {
    id: "H-film",
    mark: "from memory",
    words: `${HANDBOOK}: plastic film open .42, short .40, value change .18`,
    shares: { open: 0.42, short: 0.4, drift: 0.15, leaky: 0.03 },
  },
  "ntc-ptc": {
    id: "H-thermistor",
    mark: "from memory",
    words: `${HANDBOOK}: thermistor open .63, parameter .22, short .15`,
    shares: { open: 0.63, drift: 0.22, short: 0.15 },
  },
  varistor: {
    id: "P-varistor",
    mark: "common practice",
    words: "no handbook row; a varistor that took a surge shorts, later leaks, seldom opens",
    shares: { short: 0.6, leaky: 0.25, open: 0.15 },
  },
  fuse: {
    id: "P-fuse",
    mark: "common practice",
    words: "a fuse in a dead board is open; a tired contact or clip reads high",
    shares: { open: 0.95, leaky: 0.05 },
  },
  link: {
    id: "H-connector",
    mark: "from memory",
    words: `${HANDBOOK}: connector open .61, poor contact .23, short .16 (a link's short is its health)`,
    shares: { open: 0.72, leaky: 0.28 },
  },
  inductor: {
    id: "P-inductor",
    mark: "from memory",
    words: "a choke's joint or lead cracks open; shorted turns are rare",
    shares: { open: 0.8, short: 0.2 },
  },
  winding: {
    id: "H-transformer",
    mark: "from memory",
    words: `${HANDBOOK}: transformer open .42, short .42, parameter .16`,
    shares: { open: 0.42, short: 0.42, drift: 0.16 },
  },
  coil: {
    id: "H-relay-coil",
    mark: "from memory",
    words: `${HANDBOOK}: relay fails to trip .55, short .19; the coil's part of it`,
    shares: { open: 0.75, short: 0.15, drift: 0.1 },
  },
  contact: {
    id: "H-relay-contact",
    mark: "from memory",
    words: `${HANDBOOK}: relay fails to trip .55, spurious trip .26, short .19; the contact's part of it`,
    shares: { open: 0.6, short: 0.25, leaky: 0.15 },
  },
  diode: {
    id: "H-diode",
    mark: "from memory",
    words: `${HANDBOOK}: diode, general: short .49, open .36, parameter .15`,
    shares: { short: 0.49, open: 0.36, leaky: 0.15 },
  },
  "rectifier-diode": {
    id: "H-rectifier",
    mark: "from memory",
    words: `${HANDBOOK}: diode, rectifier: short .51, open .29, parameter .20 (the .20 also seen second hand, FM9)`,
    shares: { short: 0.51, open: 0.29, leaky: 0.2 },
  },
  "signal-diode": {
    id: "H-small-diode",
    mark: "from memory",
    words: `${HANDBOOK}: small signal diode: parameter .58, open .24, short .18; most of the parameter share stays within limits, so the leak is cut to a third`,
    shares: { open: 0.39, leaky: 0.32, short: 0.29 },
  },
  zener: {
    id: "P-zener",
    mark: "common practice",
    words:
      "a clamp that did its work reads zero; the handbook's regulator diode row (open .45, recalled) is not what benches see",
    shares: { short: 0.6, leaky: 0.15, open: 0.25 },
  },
  led: {
    id: "H-led",
    mark: "from memory",
    words: `${HANDBOOK}: LED open .70, short .30`,
    shares: { open: 0.7, short: 0.3 },
  },
  switch: {
    id: "P-switch",
    mark: "common practice",
    words:
      "power switches short first, then open when the bond wires fuse; the handbook's nearest row (FET short .51, open .05, rest parameter) is recalled only",
    shares: { short: 0.72, leaky: 0.16, open: 0.12 },
  },
  gate: {
    id: "P-gate",
    mark: "from memory",
    words: "gate oxide punched through: short or leak to the emitter, seldom a lifted bond",
    shares: { short: 0.5, leaky: 0.35, open: 0.15 },
  },
  "bjt-junction": {
    id: "H-bjt",
    mark: "from memory",
    words: `${HANDBOOK}: bipolar transistor short .73, open .27; a leak taken out of the short`,
    shares: { short: 0.63, open: 0.27, leaky: 0.1 },
  },
  thyristor: {
    id: "H-scr",
    mark: "from memory",
    words: `${HANDBOOK}: SCR short .98, open .02; a leak taken out of the short`,
    shares: { short: 0.88, leaky: 0.1, open: 0.02 },
  },
  "regulator-pass": {
    id: "P-regulator",
    mark: "from memory",
    words:
      "linear chips: improper output .77, none .23 (handbook, recalled); the pass element shorts or opens",
    shares: { short: 0.45, open: 0.45, leaky: 0.1 },
  },
  "regulator-output": {
    id: "P-regulator-output",
    mark: "from memory",
    words: "an over-volted regulator loads its own output",
    shares: { short: 0.6, leaky: 0.3, open: 0.1 },
  },
  "chip-supply": {
    id: "P-chip-supply",
    mark: "common practice",
    words: "a killed chip loads its rail; the handbook's rows for chips name functions, not terminals",
    shares: { short: 0.6, leaky: 0.3, open: 0.1 },
  },
  "chip-pin": {
    id: "P-chip-pin",
    mark: "from memory",
    words: "pin clamps punched through to ground, leaking, or bond and joint open",
    shares: { short: 0.5, leaky: 0.25, open: 0.25 },
  },
  "chip-pin-to-supply": {
    id: "P-chip-pin-supply",
    mark: "from memory",
    words: "upper clamp punched through",
    shares: { short: 1 },
  },
  bootstrap: {
    id: "P-bootstrap",
    mark: "common practice",
    words: "one bootstrap pair shorted while all six switches read well: the high-side chip",
    shares: { short: 0.65, leaky: 0.25, open: 0.1 },
  },
  reference: {
    id: "P-reference",
    mark: "from memory",
    words: "shunt references over-volted from the primary short; else open or leaking",
    shares: { short: 0.5, open: 0.35, leaky: 0.15 },
  },
  motor: {
    id: "P-motor",
    mark: "common practice",
    words: "a burnt winding shorts or opens; tested by itself off the board",
    shares: { short: 0.5, open: 0.3, leaky: 0.2 },
  },
};
