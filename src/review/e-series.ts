/**
 * Values as they are sold: the preferred numbers of IEC 60063. E24 as its table has it; E96 by its formula. Which series a part
 * keeps to is common practice.
 */
import type { Part } from "../board/board.ts";

const E24 = [
  1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2,
  9.1,
];
const E12 = E24.filter((_, i) => i % 2 === 0);
const E96 = Array.from({ length: 96 }, (_, i) => Math.round(100 * 10 ** (i / 96)) / 100);

/** From here on a resistor may be of E96. Common practice: 1 and 2 % parts. */
const CLOSE_TOLERANCE = 0.02;
/** Below an ohm resistors measure current and are made in round milliohms. Common practice. */
const SHUNT_OHMS = 1;
/** How far a value may be from its number and still be it: digits that were left out. */
const SAME = 0.004;

export interface OffSeries {
  readonly part: string;
  readonly field: "ohms" | "farads" | "volts";
  readonly value: number;
  /** the nearest value that is sold */
  readonly nearest: number;
}

/** The number of `series` nearest to `value` by ratio, in its decade or the next. */
function nearestOf(series: readonly number[], value: number): number {
  const decade = Math.floor(Math.log10(value) + 1e-9);
  const numbers = [...series, 10].map((number) => Number(`${number}e${decade}`));
  const apart = (number: number) => Math.abs(Math.log(number / value));
  return numbers.reduce((best, number) => (apart(number) < apart(best) ? number : best));
}

/** A value of the part that nobody sells, or null. */
export function offSeries(part: Part): OffSeries | null {
  const { kind, ref, value } = part;
  const judged = (field: OffSeries["field"], given: number | undefined, series: readonly number[]) => {
    if (given === undefined || given <= 0) return null;
    const nearest = nearestOf(series, given);
    return Math.abs(given / nearest - 1) <= SAME ? null : { part: ref, field, value: given, nearest };
  };
  if (kind === "resistor") {
    if ((value.ohms ?? 0) < SHUNT_OHMS || part.plugged) return null;
    const close = value.tolerance !== undefined && value.tolerance <= CLOSE_TOLERANCE;
    return judged("ohms", value.ohms, close ? [...E24, ...E96] : E24);
  }
  if (kind === "capacitor") return judged("farads", value.farads, E12);
  return kind === "zener" ? judged("volts", value.volts, E24) : null;
}
