/**
 * How far apart two conductors must be on a rebuilt area. Steps of the tables of IEC 60664-1:2020 as transcribed in KiCad's calculator
 * (seen at second hand: check once against the standard before a life hangs on it). A value between two steps takes the next higher one;
 * nothing is interpolated. Millimetres and volts. Local codes and the standard of the appliance come first.
 */
import type { Parsed } from "../../units/outcome.ts";
import { outside, ranged } from "../range.ts";

/** 1 sealed, 2 ordinary indoor dirt, 3 conductive or damp dirt, 4 always conductive. A board of a wet or dusty place is 3. */
export type PollutionDegree = 1 | 2 | 3 | 4;
export type OvervoltageCategory = "I" | "II" | "III" | "IV";
/** By comparative tracking index: I 600 and more, II 400 to 599, III 100 to 399. Ordinary board laminate is III. */
export type MaterialGroup = "I" | "II" | "III";
export type Insulation = "basic" | "reinforced";

type Steps = readonly (readonly [number, ...number[]])[];

/** Rated impulse volts by line voltage: categories I to IV. Table F.1. */
const IMPULSE: Steps = [
  [50, 330, 500, 800, 1500],
  [100, 500, 800, 1500, 2500],
  [150, 800, 1500, 2500, 4000],
  [300, 1500, 2500, 4000, 6000],
  [600, 2500, 4000, 6000, 8000],
  [1000, 4000, 6000, 8000, 12_000],
];
/** Clearance by impulse volts, uneven field; degree 1 goes below what degree 2 keeps. Table F.2. */
const CLEARANCE: Steps = [
  [330, 0.01],
  [400, 0.02],
  [500, 0.04],
  [600, 0.06],
  [800, 0.1],
  [1000, 0.15],
  [1200, 0.25],
  [1500, 0.5],
  [2000, 1],
  [2500, 1.5],
  [3000, 2],
  [4000, 3],
  [5000, 4],
  [6000, 5.5],
  [8000, 8],
  [10_000, 11],
  [12_000, 14],
];
const CLEARANCE_FLOOR: Readonly<Record<PollutionDegree, number>> = { 1: 0, 2: 0.2, 3: 0.8, 4: 1.6 };
/** Clearance by the peak of a steady voltage, uneven field. Table F.8. */
const PEAK_CLEARANCE: Steps = [
  [330, 0.01],
  [400, 0.02],
  [500, 0.04],
  [600, 0.06],
  [800, 0.13],
  [1000, 0.26],
  [1200, 0.42],
  [1500, 0.76],
  [2000, 1.27],
  [2500, 1.8],
  [3000, 2.4],
  [4000, 3.8],
];
/** Creepage at degree 2, material I, II, III. Table F.5; up to 32 V table F.4 in the WAGO catalogue of 2015, p. 598 (seen). */
const CREEPAGE_2: Steps = [
  [10, 0.4, 0.4, 0.4],
  [20, 0.48, 0.48, 0.48],
  [32, 0.53, 0.53, 0.53],
  [50, 0.6, 0.85, 1.2],
  [100, 0.71, 1, 1.4],
  [125, 0.75, 1.05, 1.5],
  [160, 0.8, 1.1, 1.6],
  [200, 1, 1.4, 2],
  [250, 1.25, 1.8, 2.5],
  [320, 1.6, 2.2, 3.2],
  [400, 2, 2.8, 4],
  [500, 2.5, 3.6, 5],
  [630, 3.2, 4.5, 6.3],
  [800, 4, 5.6, 8],
  [1000, 5, 7.1, 10],
];
/** Creepage at degree 3. Of 800 V no row was seen: it takes that of 1000 V. */
const CREEPAGE_3: Steps = [
  [10, 1, 1, 1],
  [20, 1.2, 1.2, 1.2],
  [32, 1.3, 1.3, 1.3],
  [200, 2.5, 2.8, 3.2],
  [250, 3.2, 3.6, 4],
  [320, 4, 4.5, 5],
  [400, 5, 5.6, 6.3],
  [500, 6.3, 7.1, 8],
  [630, 8, 9, 10],
  [1000, 12.5, 14, 16],
];
/** Creepage at degree 1, any material. */
const CREEPAGE_1: Steps = [
  [250, 0.56],
  [320, 0.75],
  [400, 1],
  [500, 1.3],
  [1000, 3.2],
];
/** Creepage on printed wiring at degree 2, under a resist that holds. A scraped or charred area is no longer that. */
const PRINTED_2: Steps = [
  [10, 0.04],
  [50, 0.04],
  [100, 0.16],
  [160, 0.4],
  [200, 0.63],
  [250, 1],
  [320, 1.6],
  [400, 2],
  [500, 2.5],
  [630, 3.2],
  [800, 4],
  [1000, 5],
];
const PRINTED_1: Steps = [
  [10, 0.025],
  [250, 0.56],
  [320, 0.75],
  [400, 1],
];
/** Clearance grows with altitude in metres. Table A.2. */
const ALTITUDE: Steps = [
  [2000, 1],
  [3000, 1.14],
  [4000, 1.29],
  [5000, 1.48],
  [6000, 1.7],
  [7000, 1.95],
  [8000, 2.25],
  [9000, 2.62],
  [10_000, 3.02],
];
/** Grooves narrower than this do not count as a longer path. */
const GROOVE: Readonly<Record<1 | 2 | 3, number>> = { 1: 0.25, 2: 1, 3: 1.5 };
/** Reinforced insulation: impulse times this, then the table; creepage twice. */
const REINFORCED_IMPULSE = 1.6;
const REINFORCED_CREEPAGE = 2;

const CATEGORIES: readonly OvervoltageCategory[] = ["I", "II", "III", "IV"];
const MATERIALS: readonly MaterialGroup[] = ["I", "II", "III"];

/** The column of the first step that is not below the value. */
function stepAt(steps: Steps, value: number, column: number, words: string, unit: string): Parsed<number> {
  const last = steps.at(-1)?.[0] ?? 0;
  const problem = outside([ranged(words, value, 0, last, unit)]);
  const row = steps.find(([upTo]) => value <= upTo);
  if (problem !== null || row === undefined) return { ok: false, problem: problem ?? `${words}: no step` };
  return { ok: true, value: row[column] ?? Number.NaN };
}

/** Impulse that mains wiring may bring, by line voltage to neutral and overvoltage category (an appliance with a plug: II). */
export function impulseVolts(lineVolts: number, category: OvervoltageCategory): Parsed<number> {
  return stepAt(IMPULSE, lineVolts, 1 + CATEGORIES.indexOf(category), "line voltage", "V");
}

/** Shortest way through air, by impulse. */
export function clearanceMm(
  impulse: number,
  degree: PollutionDegree,
  insulation: Insulation = "basic",
): Parsed<number> {
  const scaled = insulation === "reinforced" ? impulse * REINFORCED_IMPULSE : impulse;
  const found = stepAt(CLEARANCE, scaled, 1, "impulse voltage", "V");
  return found.ok ? { ok: true, value: Math.max(found.value, CLEARANCE_FLOOR[degree]) } : found;
}

/** Shortest way through air, by the peak of a steady or repeating voltage. */
export function peakClearanceMm(peakVolts: number): Parsed<number> {
  return stepAt(PEAK_CLEARANCE, peakVolts, 1, "peak voltage", "V");
}

/** What an older standard asked for on mains of more than 150 to 300 V, its transients 1500 V: IEC 60950-1 at ce-mag.com 01/03 table III (seen). */
export const OLDER_MAINS_CLEARANCE: ReadonlyMap<
  "functional" | Insulation,
  { readonly usual: number; readonly controlled: number }
> = new Map([
  ["functional", { usual: 1.6, controlled: 1 }],
  ["basic", { usual: 1.9, controlled: 1 }],
  ["reinforced", { usual: 3.8, controlled: 2 }],
]);

/** The older standard's clearance, without a quality programme; null where its table does not reach. */
export function olderClearanceMm(lineVolts: number, insulation: Insulation): number | null {
  if (lineVolts <= 150 || lineVolts > 300) return null;
  return OLDER_MAINS_CLEARANCE.get(insulation)?.usual ?? null;
}

/** What clearance is multiplied by at a height above the sea. */
export function altitudeFactor(metres: number): Parsed<number> {
  return stepAt(ALTITUDE, metres, 1, "altitude", "m");
}

/** Shortest way along a surface, by the working voltage (effective, or steady). */
export function creepageMm(
  volts: number,
  degree: 1 | 2 | 3,
  material: MaterialGroup,
  insulation: Insulation = "basic",
): Parsed<number> {
  const steps = degree === 1 ? CREEPAGE_1 : degree === 2 ? CREEPAGE_2 : CREEPAGE_3;
  const column = degree === 1 ? 1 : 1 + MATERIALS.indexOf(material);
  const found = stepAt(steps, volts, column, "working voltage", "V");
  const times = insulation === "reinforced" ? REINFORCED_CREEPAGE : 1;
  return found.ok ? { ok: true, value: found.value * times } : found;
}

/** Along printed wiring under sound resist. */
export function printedCreepageMm(volts: number, degree: 1 | 2): Parsed<number> {
  return stepAt(degree === 1 ? PRINTED_1 : PRINTED_2, volts, 1, "working voltage", "V");
}

/** The width from which a milled groove counts: a third of the clearance where that is below 3 mm. */
export function grooveMm(degree: 1 | 2 | 3, clearance: number): number {
  return clearance < 3 ? Math.min(GROOVE[degree], clearance / 3) : GROOVE[degree];
}

/** Material group by comparative tracking index. */
export function materialGroup(trackingIndex: number): Parsed<MaterialGroup> {
  const problem = outside([ranged("tracking index", trackingIndex, 100, 1000, "")]);
  if (problem !== null) return { ok: false, problem };
  return { ok: true, value: trackingIndex >= 600 ? "I" : trackingIndex >= 400 ? "II" : "III" };
}

export interface Spacing {
  readonly impulseVolts: number;
  readonly clearanceMm: number;
  /** never below the clearance */
  readonly creepageMm: number;
}

/** Both distances for a place on a rebuilt board, up to 2000 m. */
export function spacingFor(place: {
  readonly lineVolts: number;
  readonly workingVolts: number;
  readonly category: OvervoltageCategory;
  readonly degree: 1 | 2 | 3;
  readonly material: MaterialGroup;
  readonly insulation: Insulation;
}): Parsed<Spacing> {
  const impulse = impulseVolts(place.lineVolts, place.category);
  if (!impulse.ok) return impulse;
  const clearance = clearanceMm(impulse.value, place.degree, place.insulation);
  if (!clearance.ok) return clearance;
  // what stands there for ever asks for its own way through air; doubled insulation counts it as it counts an impulse (from memory)
  const times = place.insulation === "reinforced" ? REINFORCED_IMPULSE : 1;
  const steady = peakClearanceMm(place.workingVolts * Math.SQRT2 * times);
  if (!steady.ok) return steady;
  const air = Math.max(clearance.value, steady.value);
  const creepage = creepageMm(place.workingVolts, place.degree, place.material, place.insulation);
  if (!creepage.ok) return creepage;
  return {
    ok: true,
    value: {
      impulseVolts: impulse.value,
      clearanceMm: air,
      creepageMm: Math.max(creepage.value, air),
    },
  };
}
