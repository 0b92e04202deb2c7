/**
 * From watts to the temperature of a junction: junction, case, what lies between case and heatsink, heatsink, air. Kelvin a watt, degrees
 * Celsius. The chain is Ohm's law of heat, as every data sheet with Rth(j-c) and Rth(c-s) has it.
 */
import type { Parsed } from "../../units/outcome.ts";
import { type Ranged, ranged, within } from "../range.ts";

/** What lies between a case and its heatsink, and what it resists. */
export interface Interface {
  readonly words: string;
  readonly low: number;
  readonly high: number;
  readonly isolates: boolean;
  readonly mark: "seen" | "from memory";
  readonly source: string;
}

/** Kelvin a watt for a TO-220, TO-247 or TO-3P case, screwed with the right torque. */
export const INTERFACES = {
  paste: {
    words: "paste, metal to metal",
    low: 0.2,
    high: 1,
    isolates: false,
    mark: "seen",
    source: "TO-247 0.20 and 0.24 (40EPS bulletin I2104, IRG4PC50SD); TO-220 1.0 (slideplayer.com 5191918)",
  },
  mica: {
    words: "mica with paste on both faces",
    low: 0.4,
    high: 1,
    isolates: true,
    mark: "from memory",
    source: "insulators of TO-220 to TO-247",
  },
  pad: {
    words: "silicone pad, dry",
    low: 0.5,
    high: 1.3,
    isolates: true,
    mark: "from memory",
    source: "insulators of TO-220 to TO-247",
  },
} as const satisfies Readonly<Record<string, Interface>>;

export type InterfaceName = keyof typeof INTERFACES;

/** One part on a heatsink. */
export interface Mounted {
  readonly watts: number;
  readonly junctionToCase: number;
  readonly caseToSink: number;
}

const KELVIN_PER_WATT = (words: string, value: number) => ranged(words, value, 0.001, 500, "K/W");
const AIR = (degC: number) => ranged("air", degC, -40, 100, "degC");

function checked(part: Mounted): readonly Ranged[] {
  return [
    ranged("heat", part.watts, 0, 2000, "W"),
    KELVIN_PER_WATT("junction to case", part.junctionToCase),
    KELVIN_PER_WATT("case to heatsink", part.caseToSink),
  ];
}

export interface Temperatures {
  readonly sinkDegC: number;
  /** in the order of the parts */
  readonly junctionDegC: readonly number[];
}

/** Every junction on one heatsink: the heatsink bears the sum, each junction stands above it by its own watts. */
export function junctionTemperatures(
  parts: readonly Mounted[],
  sinkToAir: number,
  airDegC: number,
): Parsed<Temperatures> {
  const inputs = [AIR(airDegC), KELVIN_PER_WATT("heatsink to air", sinkToAir), ...parts.flatMap(checked)];
  return within(inputs, () => {
    const sinkDegC = airDegC + sinkToAir * parts.reduce((sum, part) => sum + part.watts, 0);
    return {
      sinkDegC,
      junctionDegC: parts.map((part) => sinkDegC + part.watts * (part.junctionToCase + part.caseToSink)),
    };
  });
}

/** The heatsink that keeps one part at its limit, in kelvin a watt. */
export function sinkWanted(part: Mounted, limitDegC: number, airDegC: number): Parsed<number> {
  const inputs = [AIR(airDegC), ranged("junction limit", limitDegC, airDegC, 225, "degC"), ...checked(part)];
  const found = within(
    inputs,
    () => (limitDegC - airDegC) / part.watts - part.junctionToCase - part.caseToSink,
  );
  if (!found.ok || found.value > 0) return found;
  return {
    ok: false,
    problem: "no heatsink is large enough: case and what lies under it already take all of the rise",
  };
}

/** What a part may turn into heat at a case temperature: (limit - case) / Rth. */
export function wattsAtCase(limitDegC: number, caseDegC: number, junctionToCase: number): Parsed<number> {
  const inputs = [
    ranged("junction limit", limitDegC, -40, 225, "degC"),
    ranged("case", caseDegC, -55, limitDegC, "degC"),
    KELVIN_PER_WATT("junction to case", junctionToCase),
  ];
  return within(inputs, () => (limitDegC - caseDegC) / junctionToCase);
}

/** Rth where the data sheet gives only the watts at 25 degC: (limit - 25) / watts (Toshiba, semiconductor FAQ). */
export function resistanceFromWatts(limitDegC: number, watts: number): Parsed<number> {
  const inputs = [
    ranged("junction limit", limitDegC, 26, 225, "degC"),
    ranged("watts at 25 degC", watts, 0.01, 2000, "W"),
  ];
  return within(inputs, () => (limitDegC - 25) / watts);
}

/** One step of a data sheet's network: kelvin a watt, and seconds. */
export interface ThermalStep {
  readonly kelvinPerWatt: number;
  readonly seconds: number;
}

/** Zth(t) = sum of R (1 - exp(-t / tau)). */
export function transientResistance(steps: readonly ThermalStep[], seconds: number): Parsed<number> {
  const inputs = [
    ranged("time", seconds, 0, 1e6, "s"),
    ...steps.flatMap((one) => [
      KELVIN_PER_WATT("step", one.kelvinPerWatt),
      ranged("time constant", one.seconds, 1e-9, 1e5, "s"),
    ]),
  ];
  return within(inputs, () =>
    steps.reduce((sum, one) => sum + one.kelvinPerWatt * (1 - Math.exp(-seconds / one.seconds)), 0),
  );
}

/** Resistivity of what heat goes through, kelvin centimetres a watt (Power Electronics Handbook p. 70, table 2.1). */
export const RESISTIVITY = {
  copper: 0.3,
  aluminium: 0.5,
  solder: 2,
  paste: 130,
  mica: 150,
  mylar: 400,
  air: 3000,
} as const;

/** A flat layer of a conductivity in watts a metre and kelvin: R = t / (k A). Millimetres and square millimetres. */
export function slabResistance(
  wattsPerMetreKelvin: number,
  thickMm: number,
  squareMm: number,
): Parsed<number> {
  const inputs = [
    ranged("conductivity", wattsPerMetreKelvin, 0.01, 2500, "W/mK"),
    ranged("thickness", thickMm, 0.001, 20, "mm"),
    ranged("area", squareMm, 1, 1e5, "mm2"),
  ];
  return within(inputs, () => (thickMm * 1000) / (wattsPerMetreKelvin * squareMm));
}

/** A flat layer of a material of the table; 100 over kelvin centimetres a watt are watts a metre and kelvin. */
export function layerResistance(
  material: keyof typeof RESISTIVITY,
  thickMm: number,
  squareMm: number,
): Parsed<number> {
  return slabResistance(100 / RESISTIVITY[material], thickMm, squareMm);
}

/** A junction before and after something under it was changed. */
export interface Comparison {
  readonly beforeDegC: number;
  readonly afterDegC: number;
  /** how often it fails, against before: halves from 160 to 135 degC, so doubles in 25 K (onsemi AN1040/D p. 1) */
  readonly failureTimes: number;
  /** does it stay below the guideline of 110 degC (same source)? */
  readonly cool: boolean;
}

const DOUBLES_IN_KELVIN = 25;
const GUIDE_DEGC = 110;

/** The same place with another part, case or pad. */
export function beforeAndAfter(
  before: Mounted,
  after: Mounted,
  sinkToAir: number,
  airDegC: number,
): Parsed<Comparison> {
  const [one, other] = [before, after].map((part) => junctionTemperatures([part], sinkToAir, airDegC));
  if (one === undefined || other === undefined) throw new Error("two parts give two temperatures");
  if (!one.ok) return one;
  if (!other.ok) return other;
  const [beforeDegC = 0, afterDegC = 0] = [one.value.junctionDegC[0], other.value.junctionDegC[0]];
  return {
    ok: true,
    value: {
      beforeDegC,
      afterDegC,
      failureTimes: 2 ** ((afterDegC - beforeDegC) / DOUBLES_IN_KELVIN),
      cool: afterDegC <= GUIDE_DEGC,
    },
  };
}
