/** Values as they are sold: the preferred numbers of IEC 60063, as listed at public pages; E48 and E96 by its formula. */

export type Series = "E6" | "E12" | "E24" | "E48" | "E96";

/** The two-digit series are history, not a formula. */
const TWO_DIGITS: Readonly<Record<"E6" | "E12" | "E24", readonly number[]>> = {
  E6: [10, 15, 22, 33, 47, 68],
  E12: [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82],
  E24: [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91],
};

/** One decade of a series, 100 to 999 (E6 to E24 times ten). E48 and E96 are round(100 10^(i/n)). */
export function decadeOf(series: Series): readonly number[] {
  if (series === "E48" || series === "E96") {
    const count = series === "E48" ? 48 : 96;
    return Array.from({ length: count }, (_, at) => Math.round(100 * 10 ** (at / count)));
  }
  return TWO_DIGITS[series].map((value) => value * 10);
}

/** The number of one or more series that is nearest to `value` by ratio, in its decade or at the start of the next. `value` above 0. */
export function nearestPreferred(value: number, ...series: readonly Series[]): number {
  const power = Math.floor(Math.log10(value) + 1e-9) - 2;
  const numbers = [...series.flatMap(decadeOf), 1000].map((number) => Number(`${number}e${power}`));
  const apart = (number: number) => Math.abs(Math.log(number / value));
  return numbers.reduce((best, number) => (apart(number) < apart(best) ? number : best));
}
