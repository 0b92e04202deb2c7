/**
 * What a charged capacitor may do to a hand, by the tables of published standards as they were seen at second hand. None of them makes a
 * store of charge safe to touch: what this program holds to is the proof below 10 V. They tell how much is at stake.
 */
import { storedJoules } from "../../board/stored-charge.ts";
import type { Mark } from "../../units/mark.ts";
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

/** Energy source classes of IEC 62368-1: 1 felt at most, 2 hurts, 3 harms. */
export type TouchClass = "ES1" | "ES2" | "ES3";

const NANO = 1e-9;
/** Nanofarads, highest peak volts of ES1 and of ES2. IEC 62368-1 table 5 (seen at second hand); linear between two rows. */
const BY_CAPACITANCE: readonly (readonly [number, number, number])[] = [
  [0.133, 25_000, 50_000],
  [0.2, 20_000, 40_000],
  [0.4, 10_000, 20_000],
  [0.8, 5000, 10_000],
  [1.6, 2500, 5000],
  [4, 1000, 2000],
  [8, 500, 1000],
  [12, 350, 700],
  [18, 250, 500],
  [28, 200, 400],
  [41, 150, 300],
  [61, 125, 250],
  [91, 100, 200],
  [170, 75, 150],
  [300, 60, 120],
];

function classOf(volts: number, first: number, second: number): TouchClass {
  return volts <= first ? "ES1" : volts <= second ? "ES2" : "ES3";
}

/** Highest peak volts of ES1 and ES2 that a capacitor may hold. */
function touchVolts(farads: number): readonly [number, number] {
  const nano = farads / NANO;
  const above = BY_CAPACITANCE.findIndex(([upTo]) => nano <= upTo);
  const [least, largest] = [BY_CAPACITANCE[0], BY_CAPACITANCE.at(-1)];
  if (least === undefined || largest === undefined) throw new Error("an empty table");
  if (above <= 0) return above === 0 ? [least[1], least[2]] : [largest[1], largest[2]];
  const [low, high] = [BY_CAPACITANCE[above - 1] ?? least, BY_CAPACITANCE[above] ?? largest];
  const share = (nano - low[0]) / (high[0] - low[0]);
  return [low[1] + share * (high[1] - low[1]), low[2] + share * (high[2] - low[2])];
}

/** The class of a charged capacitor. */
export function touchClass(farads: number, volts: number): Parsed<TouchClass> {
  const inputs = [ranged("capacitance", farads, 0, 1, "F"), ranged("voltage", volts, 0, 100_000, "V")];
  return within(inputs, () => {
    const [first, second] = touchVolts(farads);
    return classOf(volts, first, second);
  });
}

/** Volts that stand for ever: 60 and 120 V direct, 42.4 and 70.7 V peak alternating. IEC 62368-1 table 4 (seen at second hand). */
const STEADY = { direct: [60, 120], alternatingPeak: [42.4, 70.7] } as const;

export function steadyClass(kind: keyof typeof STEADY, volts: number): TouchClass {
  const [first, second] = STEADY[kind];
  return classOf(volts, first, second);
}

/** Seconds, and the volts of ES2 for one pulse that long. IEC 62368-1 table 6 (seen at second hand); a step takes the longer pulse's. */
const PULSE: readonly (readonly [number, number])[] = [
  [0.01, 196],
  [0.02, 178],
  [0.05, 150],
  [0.08, 135],
  [0.1, 129],
  [0.2, 120],
];

/** The class of a single pulse. */
export function pulseClass(seconds: number, volts: number): Parsed<TouchClass> {
  const inputs = [ranged("pulse", seconds, 0, 3600, "s"), ranged("voltage", volts, 0, 100_000, "V")];
  return within(inputs, () => classOf(volts, 60, PULSE.find(([upTo]) => seconds <= upTo)?.[1] ?? 120));
}

/** Amperes that may flow for ever. IEC 62368-1 table 4 (seen at second hand); that copy's ES2 of alternating current is a misprint: 5 mA from memory. */
const STEADY_AMPS = { direct: [2e-3, 25e-3], alternating: [0.5e-3, 5e-3] } as const;

/** The class of a current that flows for ever through a body, effective where it alternates. */
export function steadyCurrentClass(kind: keyof typeof STEADY_AMPS, amps: number): TouchClass {
  const [first, second] = STEADY_AMPS[kind];
  return classOf(amps, first, second);
}

/** Seconds, and the amperes of ES2 for one pulse that long. IEC 62368-1 table 7 (seen at second hand); steps as those of volts. */
const PULSE_AMPS: readonly (readonly [number, number])[] = [
  [0.01, 0.2],
  [0.02, 0.153],
  [0.05, 0.107],
  [0.1, 0.081],
  [0.2, 0.062],
  [0.5, 0.043],
  [1, 0.033],
];
const LONG_PULSE_AMPS = 0.025;

/** The class of a single pulse of current. */
export function pulseCurrentClass(seconds: number, amps: number): Parsed<TouchClass> {
  const inputs = [ranged("pulse", seconds, 0, 3600, "s"), ranged("current", amps, 0, 100, "A")];
  const [felt] = STEADY_AMPS.direct;
  return within(inputs, () =>
    classOf(amps, felt, PULSE_AMPS.find(([upTo]) => seconds <= upTo)?.[1] ?? LONG_PULSE_AMPS),
  );
}

const EXTRA_LOW_PEAK_VOLTS = 42.4;
const FREE_FARADS = 0.1e-6;
const FREE_COULOMBS = 45e-6;
const FREE_JOULES = 0.35;

/** Whether IEC 60335-1 cl. 8.1.4 still calls a charged conductor no live part (seen at second hand). */
export function isNoLivePart(farads: number, peakVolts: number): boolean {
  if (peakVolts <= EXTRA_LOW_PEAK_VOLTS) return true;
  if (peakVolts <= 450) return farads <= FREE_FARADS;
  if (peakVolts <= 15_000) return farads * peakVolts <= FREE_COULOMBS;
  return storedJoules(farads, peakVolts) <= FREE_JOULES;
}

/** Whether IEC 61010-1 cl. 6.3.1 c lets the charge pass that is left five seconds after the plug is pulled (seen at second hand). */
export function isFreeCharge(farads: number, volts: number): boolean {
  return farads * volts < FREE_COULOMBS;
}

/** Seconds that mains capacitors behind a plug may take for one time constant: type A the common plug, B the industrial one. */
const PLUG_TIME_CONSTANT = { A: 1, B: 10 } as const;

/** IEC 60950-1 cl. 2.1.1.7 (seen at second hand): more than 0.1 uF needs a time constant of a second, 10 s where the plug is industrial. */
export function dischargesFastEnough(
  farads: number,
  ohms: number,
  plug: keyof typeof PLUG_TIME_CONSTANT,
): boolean {
  return farads <= FREE_FARADS || farads * ohms <= PLUG_TIME_CONSTANT[plug];
}

export interface ChargeRemark {
  readonly words: string;
  readonly mark: Mark;
  readonly source: string;
}

/** Energy above which a standard or a rule of laboratories speaks of harm, and from which volts on. */
const ENERGY_ROWS: readonly (ChargeRemark & { readonly joules: number; readonly volts: number })[] = [
  {
    joules: 20,
    volts: 2,
    words: "over 20 J: a hazardous energy, it burns and welds",
    mark: "seen-2nd",
    source: "IEC 60950-1, bbs.angui.org thread 59326",
  },
  {
    joules: 0.25,
    volts: 400,
    words: "over 0.25 J above 400 V: the start itself makes hands hit what is near",
    mark: "seen",
    source: "mixed laboratory rules, a poor source",
  },
];

/** What is to be said of the energy in a capacitor. */
export function energyRemarks(farads: number, volts: number): readonly ChargeRemark[] {
  const joules = storedJoules(farads, volts);
  return ENERGY_ROWS.filter((row) => joules > row.joules && volts >= row.volts).map(
    ({ words, mark, source }) => ({ words, mark, source }),
  );
}
