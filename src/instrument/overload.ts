/** From which figure on a number on the wire stands for "over the range". */
import type { Sourced } from "../units/mark.ts";

interface OverloadRow extends Sourced {
  /** as large as this, either way: over the range */
  readonly from: number;
}

/** The answer that SCPI-1999 has for "not a number": no figure, and no overload either. */
const NOT_A_NUMBER = 9.91e37;

export const OVERLOAD_ROWS: readonly OverloadRow[] = [
  {
    id: "infinity",
    from: 9.9e37,
    mark: "from memory",
    words: "SCPI-1999, volume 1, 7.2.1: INFinity is 9.9E37, NINFinity -9.9E37, NAN 9.91E37",
  },
  {
    id: "thousand-million",
    from: 1e9,
    mark: "seen-2nd",
    words: "libsigrok, its driver for SCPI multimeters: one make answers 1E9 over the range, in every mode",
  },
];

const FROM = Math.min(...OVERLOAD_ROWS.map((row) => row.from));

/** The number as a reading: itself, `OL` over the range, null where it is none. */
export function shownNumber(value: number): number | "OL" | null {
  if (Number.isNaN(value) || Math.abs(value - NOT_A_NUMBER) < 1e33) return null;
  if (Math.abs(value) >= FROM) return "OL";
  return value === 0 ? 0 : value;
}
