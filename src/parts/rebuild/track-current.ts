/**
 * Current and warmth of a rebuilt track: I = k dT^0.44 A^0.725, A in square mils, k 0.048 outside and 0.024 inside (IPC-2221 curve, as
 * fitted in qorvo.com's and KiCad's calculators). Holds to 35 A outside, 17.5 A inside, 100 K, 400 mils. Copper in millimetres.
 */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

export type TrackLayer = "outside" | "inside";

const FACTOR: Readonly<Record<TrackLayer, number>> = { outside: 0.048, inside: 0.024 };
const MOST_AMPS: Readonly<Record<TrackLayer, number>> = { outside: 35, inside: 17.5 };
const WARMTH = 0.44;
const AREA = 0.725;
const MM_PER_MIL = 0.0254;
/** One ounce of copper: 1.378 mils, which is 35 um. */
export const OUNCE_MM = 1.378 * MM_PER_MIL;
const MOST_MILS = 400;
const MOST_KELVIN = 100;

const amps = (value: number, layer: TrackLayer) => ranged("current", value, 0.01, MOST_AMPS[layer], "A");
const warmth = (kelvin: number) => ranged("temperature rise", kelvin, 0.1, MOST_KELVIN, "K");

/** Copper wanted, in square mils. */
export function trackSquareMils(current: number, kelvin: number, layer: TrackLayer): Parsed<number> {
  return within(
    [amps(current, layer), warmth(kelvin)],
    () => (current / (FACTOR[layer] * kelvin ** WARMTH)) ** (1 / AREA),
  );
}

/** Width wanted, in millimetres. */
export function trackWidthMm(
  current: number,
  kelvin: number,
  layer: TrackLayer,
  copperMm: number = OUNCE_MM,
): Parsed<number> {
  const area = trackSquareMils(current, kelvin, layer);
  if (!area.ok) return area;
  const mils = area.value / (copperMm / MM_PER_MIL);
  const inputs = [
    ranged("copper", copperMm, 0.005, 0.5, "mm"),
    ranged("width", Number((mils * MM_PER_MIL).toFixed(3)), 0, MOST_MILS * MM_PER_MIL, "mm"),
  ];
  const width = within(inputs, () => mils * MM_PER_MIL);
  return width.ok ? width : { ok: false, problem: `${width.problem}: lay a wire along it` };
}

/** Current that a track carries at a rise, in amperes. */
export function trackAmps(
  widthMm: number,
  copperMm: number,
  kelvin: number,
  layer: TrackLayer,
): Parsed<number> {
  const inputs = [
    ranged("width", widthMm, 0.05, MOST_MILS * MM_PER_MIL, "mm"),
    ranged("copper", copperMm, 0.005, 0.5, "mm"),
    warmth(kelvin),
  ];
  const squareMils = (widthMm * copperMm) / MM_PER_MIL ** 2;
  return within(inputs, () => FACTOR[layer] * kelvin ** WARMTH * squareMils ** AREA);
}
