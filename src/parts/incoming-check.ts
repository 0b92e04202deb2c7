/**
 * The two minutes before a part goes in: every junction, the control pins, whether a gate holds, the tab, the marking. What is read here
 * is what the cold re-check is later compared with. Common practice unless a row names its source; drops at about 1 mA and 25 degC.
 */

import type { PartKind } from "../board/board.ts";
import { said } from "../messages/said.ts";
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
const MODULE_JUNCTION = said`each 0.3 to 0.7 V`;
const MODULE_SOURCE = seen("Powertec 1000AR manual p. 44, six-switch modules");
/** What the three of one module have in common is closer than what modules have in common. */
const MODULE_ALIKE = said`the three of one module agree within 20 mV, most often at 0.36 to 0.46 V`;

const SWITCH_END: readonly IncomingStep[] = [
  step(
    said`9 to 15 V from gate to the lower pin for a moment, through 1 kohm`,
    said`now it conducts: a few tenths of a volt`,
  ),
  step(said`wait ten seconds, gate open`, said`it still conducts: the gate holds and does not leak`),
  step(said`short the gate to the lower pin`, said`off again: OL`),
  pulled(
    said`threshold: gate joined to the upper pin, a bench supply through 10 kohm`,
    said`3 to 7 V for an IGBT, 2 to 5 V for a MOSFET`,
  ),
  pulled(
    said`capacitance gate to lower pin, beside a genuine one`,
    said`alike within a fifth; far less is a small die`,
  ),
];

const LIVE_LOOK: readonly IncomingStep[] = [
  step(
    said`marking and legs`,
    said`laser print of the maker's kind, no second coat of black, legs straight and bright`,
  ),
];

const BY_KIND: Readonly<Partial<Record<PartKind, readonly IncomingStep[]>>> = {
  igbt: [
    step(said`short gate to emitter first, then diode mode, red on C, black on E`, "OL"),
    step(said`diode mode, red on E, black on C`, said`0.35 to 0.55 V with a diode inside, OL without`),
    step(said`diode mode, gate to emitter and gate to collector, both ways`, said`OL all four`),
    ...SWITCH_END,
  ],
  mosfet: [
    step(said`short gate to source first, then diode mode, red on D, black on S`, "OL"),
    step(
      said`diode mode, red on S, black on D`,
      said`0.4 to 0.7 V`,
      seen("ee-diary.com 2025-05, body diode (a weak source)"),
    ),
    step(said`diode mode, gate to source and gate to drain, both ways`, said`OL all four`),
    ...SWITCH_END,
  ],
  module: [
    step(said`diode mode, red on U, V, W, black on P`, MODULE_JUNCTION, MODULE_SOURCE),
    step(said`diode mode, red on each N, black on U, V, W`, MODULE_JUNCTION, MODULE_SOURCE),
    step(said`compare the three of each row`, MODULE_ALIKE, MEMORY),
    step(said`the same six with the leads swapped`, said`OL all six`),
    step(said`V15 to COM and each VB to its VS, both ways`, said`no short; three alike`),
    step(said`each input to COM, both ways`, said`six alike, about 5 kohm or one diode drop`),
    step(said`fault and trip pins to COM`, said`no short`),
    step(said`leads joined, to the base plate, insulation tester or the highest ohms`, said`over 20 Mohm`),
    pulled(said`pins and base`, said`no cracked base, no pulled pin, old paste off`),
  ],
  diode: [
    step(
      said`diode mode, red on A, black on K, silicon`,
      said`0.40 to 0.80 V; a large fast one reads at the low end`,
      seen("FLIR CM174 manual p. 21"),
    ),
    step(said`the same, Schottky`, said`0.1 to 0.45 V`, seen("testmultimeter.com 2021-11 (a weak source)")),
    step(said`the same, silicon carbide`, said`0.75 to 0.85 V`, MEMORY),
    step(said`leads swapped`, said`OL; a Schottky may show over 1 V`),
  ],
  bridge: [
    step(
      said`diode mode, each AC pin to plus, minus to each AC pin`,
      said`each 0.2 to 0.8 V`,
      seen("Cigweld Weldskill 180 service manual p. 74 table 12-9"),
    ),
    step(said`compare the four`, said`alike within 20 mV, most often at 0.42 to 0.55 V`, MEMORY),
    step(said`the same four with the leads swapped, and AC to AC both ways`, said`OL all six`),
    step(said`all legs joined, to the case face, highest ohms`, said`over 20 Mohm`),
  ],
  zener: [
    step(said`diode mode, red on A, black on K`, said`0.60 to 0.80 V`),
    step(
      said`a bench supply above its volts through 10 kohm, K to plus`,
      said`its volts, within the marking`,
    ),
  ],
  bjt: [
    step(
      said`diode mode, base to emitter and base to collector`,
      said`NPN: red on B, PNP: black on B; 0.55 to 0.75 V, the emitter's a little more`,
    ),
    step(said`collector to emitter, both ways`, "OL"),
  ],
  switcher: [
    step(said`diode mode, red on S, black on D`, said`0.40 to 0.60 V`),
    step(said`leads swapped`, "OL"),
    step(said`supply and feedback pins to S, both ways`, said`no short`),
  ],
  opto: [
    step(said`diode mode on the input, both ways`, said`0.95 to 1.20 V, OL the other way`),
    step(said`output, both ways, input dark`, "OL"),
    step(said`5 mA through the input, ohms across the output`, said`falls to a few hundred ohms`),
  ],
  regulator: [
    step(said`IN to OUT, OUT to GND, IN to GND, both ways`, said`no short`),
    step(said`a bench supply a few volts above its output, limit 50 mA`, said`its volts within 4 %`),
  ],
  shuntref: [step(said`REF joined to K, a bench supply through 1 kohm`, said`its volts within 2 %`)],
  capacitor: [
    step(
      said`capacitance`,
      said`within its tolerance; an electrolytic no less than 80 %`,
      seen("end of life: Lelon RGA, Nichicon RS"),
    ),
    step(said`class, volts and degrees on the body`, said`as wanted, not only the colour`),
    pulled(said`ESR, beside a new one of its kind`, said`no more than twice as much`),
    pulled(said`seal, top and feet`, said`no dome, no stain, no soft seal`),
    step(
      said`an electrolytic that lay over a year: its volts from a limited supply through 22 kohm 10 W, clipped on before power`,
      said`the current falls to its leakage within the hour: reformed; then discharge it and prove it below 10 V`,
    ),
  ],
  varistor: [
    step(said`highest ohms, both ways`, said`over 10 Mohm`),
    pulled(said`the coating`, said`no crack, no soot`),
  ],
  ntc: [step(said`ohms, cold`, said`the marking within 20 %; it falls in the hand`)],
  ptc: [
    step(said`ohms, cold`, said`the marking within 20 %; it rises under hot air`),
    pulled(said`the discs`, said`no crack`),
  ],
  fuse: [
    step(said`ohms`, said`below 0.1 ohm`),
    step(said`amps, volts, F or T, breaking capacity on the cap`, said`as wanted`),
  ],
  resistor: [step(said`ohms, out of circuit`, said`the marking within its tolerance; a shunt by four wires`)],
  relay: [
    step(said`coil ohms`, said`the data sheet's within 10 %`),
    step(said`contact, coil dark and coil fed`, said`OL, then below 0.1 ohm`),
    pulled(said`the contacts, where they can be seen`, said`no bead, no soot`),
  ],
  controller: [
    step(said`supply pins to ground, both ways`, said`a junction one way, no short`),
    step(said`a few pins to ground`, said`alike, one diode drop`),
    pulled(said`board number and firmware label of the donor`, said`the very same`),
  ],
  ic: [
    step(said`supply to ground, both ways`, said`no short, a junction one way`),
    step(said`like pins among each other`, said`alike`),
  ],
};

const TAB_ISOLATED = step(
  said`leads joined, to the tab, insulation tester or the highest ohms`,
  said`over 20 Mohm`,
);
const TAB_LIVE = step(
  said`tab to the middle pin`,
  said`below 1 ohm: live, so pad and bush are needed; OL: isolated`,
);

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
export const BASELINE = said`Write these down: the cold re-check after soldering and after the last screw is compared with them.`;
