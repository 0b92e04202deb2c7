/** Values that nobody sells. Which series a part keeps to is common practice. */
import type { Part } from "../board/board.ts";
import { nearestPreferred, type Series } from "../units/preferred-values.ts";

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

/** A value of the part that nobody sells, or null. */
export function offSeries(part: Part): OffSeries | null {
  const { kind, ref, value } = part;
  const judged = (field: OffSeries["field"], given: number | undefined, ...series: readonly Series[]) => {
    if (given === undefined || given <= 0) return null;
    const nearest = nearestPreferred(given, ...series);
    return Math.abs(given / nearest - 1) <= SAME ? null : { part: ref, field, value: given, nearest };
  };
  if (kind === "resistor") {
    if ((value.ohms ?? 0) < SHUNT_OHMS || part.plugged) return null;
    const close = value.tolerance !== undefined && value.tolerance <= CLOSE_TOLERANCE;
    return close ? judged("ohms", value.ohms, "E24", "E96") : judged("ohms", value.ohms, "E24");
  }
  if (kind === "capacitor") return judged("farads", value.farads, "E12");
  return kind === "zener" ? judged("volts", value.volts, "E24") : null;
}
