/**
 * The two minutes before a part goes in: every junction, the control pins, whether a gate holds, the tab, the marking. What is read here
 * is what the cold re-check is later compared with. Common practice unless a row names its source; drops at about 1 mA and 25 degC.
 */
import type { PartKind } from "../board/board.ts";
import type { Mark } from "../units/mark.ts";
import type { PartRole } from "./part-role.ts";
import type { Ratings } from "./ratings.ts";

export interface IncomingStep {
  readonly do: string;
  readonly expect: string;
  /** for a part from another board alone */
  readonly pulledOnly: boolean;
  /** of what is expected */
  readonly mark: Mark;
  readonly source: string | null;
}

type Source = Pick<IncomingStep, "mark" | "source">;
const PRACTICE: Source = { mark: "common practice", source: null };
const MEMORY: Source = { mark: "from memory", source: null };

function seen(source: string): Source {
  return { mark: "seen", source };
}

function step(what: string, expect: string, source: Source = PRACTICE): IncomingStep {
  return { do: what, expect, pulledOnly: false, ...source };
}

function pulled(what: string, expect: string, source: Source = PRACTICE): IncomingStep {
  return { do: what, expect, pulledOnly: true, ...source };
}

/** A junction of a module out of circuit: row B1 of the published values. */
const MODULE_JUNCTION = "each 0.3 to 0.7 V";
const MODULE_SOURCE = seen("Powertec 1000AR manual p. 44, six-switch modules");
/** What the three of one module have in common is closer than what modules have in common. */
const MODULE_ALIKE = "the three of one module agree within 20 mV, most often at 0.36 to 0.46 V";

const SWITCH_END: readonly IncomingStep[] = [
  step(
    "9 to 15 V from gate to the lower pin for a moment, through 1 kohm",
    "now it conducts: a few tenths of a volt",
  ),
  step("wait ten seconds, gate open", "it still conducts: the gate holds and does not leak"),
  step("short the gate to the lower pin", "off again: OL"),
  pulled(
    "threshold: gate joined to the upper pin, a bench supply through 10 kohm",
    "3 to 7 V for an IGBT, 2 to 5 V for a MOSFET",
  ),
  pulled(
    "capacitance gate to lower pin, beside a genuine one",
    "alike within a fifth; far less is a small die",
  ),
];

const LIVE_LOOK: readonly IncomingStep[] = [
  step(
    "marking and legs",
    "laser print of the maker's kind, no second coat of black, legs straight and bright",
  ),
];

const BY_KIND: Readonly<Partial<Record<PartKind, readonly IncomingStep[]>>> = {
  igbt: [
    step("short gate to emitter first, then diode mode, red on C, black on E", "OL"),
    step("diode mode, red on E, black on C", "0.35 to 0.55 V with a diode inside, OL without"),
    step("diode mode, gate to emitter and gate to collector, both ways", "OL all four"),
    ...SWITCH_END,
  ],
  mosfet: [
    step("short gate to source first, then diode mode, red on D, black on S", "OL"),
    step(
      "diode mode, red on S, black on D",
      "0.4 to 0.7 V",
      seen("ee-diary.com 2025-05, body diode (a weak source)"),
    ),
    step("diode mode, gate to source and gate to drain, both ways", "OL all four"),
    ...SWITCH_END,
  ],
  module: [
    step("diode mode, red on U, V, W, black on P", MODULE_JUNCTION, MODULE_SOURCE),
    step("diode mode, red on each N, black on U, V, W", MODULE_JUNCTION, MODULE_SOURCE),
    step("compare the three of each row", MODULE_ALIKE, MEMORY),
    step("the same six with the leads swapped", "OL all six"),
    step("V15 to COM and each VB to its VS, both ways", "no short; three alike"),
    step("each input to COM, both ways", "six alike, about 5 kohm or one diode drop"),
    step("fault and trip pins to COM", "no short"),
    step("leads joined, to the base plate, insulation tester or the highest ohms", "over 20 Mohm"),
    pulled("pins and base", "no cracked base, no pulled pin, old paste off"),
  ],
  diode: [
    step(
      "diode mode, red on A, black on K, silicon",
      "0.40 to 0.80 V; a large fast one reads at the low end",
      seen("FLIR CM174 manual p. 21"),
    ),
    step("the same, Schottky", "0.1 to 0.45 V", seen("testmultimeter.com 2021-11 (a weak source)")),
    step("the same, silicon carbide", "0.75 to 0.85 V", MEMORY),
    step("leads swapped", "OL; a Schottky may show over 1 V"),
  ],
  bridge: [
    step(
      "diode mode, each AC pin to plus, minus to each AC pin",
      "each 0.2 to 0.8 V",
      seen("Cigweld Weldskill 180 service manual p. 74 table 12-9"),
    ),
    step("compare the four", "alike within 20 mV, most often at 0.42 to 0.55 V", MEMORY),
    step("the same four with the leads swapped, and AC to AC both ways", "OL all six"),
    step("all legs joined, to the case face, highest ohms", "over 20 Mohm"),
  ],
  zener: [
    step("diode mode, red on A, black on K", "0.60 to 0.80 V"),
    step("a bench supply above its volts through 10 kohm, K to plus", "its volts, within the marking"),
  ],
  bjt: [
    step(
      "diode mode, base to emitter and base to collector",
      "NPN: red on B, PNP: black on B; 0.55 to 0.75 V, the emitter's a little more",
    ),
    step("collector to emitter, both ways", "OL"),
  ],
  switcher: [
    step("diode mode, red on S, black on D", "0.40 to 0.60 V"),
    step("leads swapped", "OL"),
    step("supply and feedback pins to S, both ways", "no short"),
  ],
  opto: [
    step("diode mode on the input, both ways", "0.95 to 1.20 V, OL the other way"),
    step("output, both ways, input dark", "OL"),
    step("5 mA through the input, ohms across the output", "falls to a few hundred ohms"),
  ],
  regulator: [
    step("IN to OUT, OUT to GND, IN to GND, both ways", "no short"),
    step("a bench supply a few volts above its output, limit 50 mA", "its volts within 4 %"),
  ],
  shuntref: [step("REF joined to K, a bench supply through 1 kohm", "its volts within 2 %")],
  capacitor: [
    step(
      "capacitance",
      "within its tolerance; an electrolytic no less than 80 %",
      seen("end of life: Lelon RGA, Nichicon RS"),
    ),
    step("class, volts and degrees on the body", "as wanted, not only the colour"),
    pulled("ESR, beside a new one of its kind", "no more than twice as much"),
    pulled("seal, top and feet", "no dome, no stain, no soft seal"),
    step(
      "an electrolytic that lay over a year: its volts from a limited supply through 22 kohm 10 W, clipped on before power",
      "the current falls to its leakage within the hour: reformed; then discharge it and prove it below 10 V",
    ),
  ],
  varistor: [step("highest ohms, both ways", "over 10 Mohm"), pulled("the coating", "no crack, no soot")],
  ntc: [step("ohms, cold", "the marking within 20 %; it falls in the hand")],
  ptc: [
    step("ohms, cold", "the marking within 20 %; it rises under hot air"),
    pulled("the discs", "no crack"),
  ],
  fuse: [
    step("ohms", "below 0.1 ohm"),
    step("amps, volts, F or T, breaking capacity on the cap", "as wanted"),
  ],
  resistor: [step("ohms, out of circuit", "the marking within its tolerance; a shunt by four wires")],
  relay: [
    step("coil ohms", "the data sheet's within 10 %"),
    step("contact, coil dark and coil fed", "OL, then below 0.1 ohm"),
    pulled("the contacts, where they can be seen", "no bead, no soot"),
  ],
  controller: [
    step("supply pins to ground, both ways", "a junction one way, no short"),
    step("a few pins to ground", "alike, one diode drop"),
    pulled("board number and firmware label of the donor", "the very same"),
  ],
  ic: [
    step("supply to ground, both ways", "no short, a junction one way"),
    step("like pins among each other", "alike"),
  ],
};

const TAB_ISOLATED = step("leads joined, to the tab, insulation tester or the highest ohms", "over 20 Mohm");
const TAB_LIVE = step("tab to the middle pin", "below 1 ohm: live, so pad and bush are needed; OL: isolated");

/** Roles whose case may touch the heatsink. */
const SCREWED: ReadonlySet<PartRole> = new Set([
  "motor switch",
  "boost switch",
  "resonant switch",
  "small switch",
  "off-line switch",
  "boost diode",
]);

/** The checks for one candidate, in order. */
export function incomingCheck(
  kind: PartKind,
  role: PartRole,
  ratings: Ratings,
  used: boolean,
): readonly IncomingStep[] {
  const steps = [...LIVE_LOOK, ...(BY_KIND[kind] ?? [])];
  const onSink = SCREWED.has(role) && kind !== "module" && kind !== "switcher";
  if (onSink) steps.push(ratings.tab === "isolated" ? TAB_ISOLATED : TAB_LIVE);
  return used ? steps : steps.filter((one) => !one.pulledOnly);
}

/** What the readings are for. */
export const BASELINE =
  "Write these down: the cold re-check after soldering and after the last screw is compared with them.";
