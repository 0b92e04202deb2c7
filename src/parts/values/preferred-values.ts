/** Preferred values and what is printed on a resistor. IEC 60063 and IEC 60062 as listed at public pages. */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

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

/** The value of a series that is nearest by ratio: what a burnt resistor most likely was. */
export function nearestPreferred(ohms: number, series: Series): Parsed<number> {
  return within([ranged("value", ohms, 1e-12, 1e12, "")], () => {
    const power = Math.floor(Math.log10(ohms)) - 2;
    const decade = decadeOf(series);
    const near = [...decade, ...decade.map((value) => value * 10), ...decade.map((value) => value / 10)];
    const scaled = ohms / 10 ** power;
    const best = near.reduce((a, b) =>
      Math.abs(Math.log(b / scaled)) < Math.abs(Math.log(a / scaled)) ? b : a,
    );
    return Number((best * 10 ** power).toPrecision(4));
  });
}

/** `4K7`, `R47`, `47K3`: a value as it is printed, the letter where the point would be. */
export function printedOhms(ohms: number): Parsed<string> {
  return within([ranged("resistance", ohms, 0.001, 1e9, "ohm")], () => {
    const [size, letter] = ohms >= 1e6 ? [1e6, "M"] : ohms >= 1e3 ? [1e3, "K"] : [1, "R"];
    const [whole = "", fraction = ""] = String(Number((ohms / size).toPrecision(4))).split(".");
    return `${whole === "0" ? "" : whole}${letter}${fraction}`;
  });
}

const COLORS = ["black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"];
const SMALL: Readonly<Record<string, number>> = { pink: 1e-3, silver: 1e-2, gold: 0.1 };
/** Grey and violet differ from list to list and are read as unknown. */
const TOLERANCE: Readonly<Record<string, number>> = {
  brown: 0.01,
  red: 0.02,
  orange: 0.0005,
  yellow: 0.0002,
  green: 0.005,
  blue: 0.0025,
  gold: 0.05,
  silver: 0.1,
};
const NO_BAND = 0.2;

export interface Banded {
  readonly ohms: number;
  /** null: lists disagree on this colour */
  readonly tolerance: number | null;
}

/** Three to five colour bands, the tolerance last where there are four or more (IEC 60062, resistorcolorcodes.org chart). */
export function ohmsOfBands(bands: readonly string[]): Parsed<Banded> {
  const names = bands.map((band) => band.trim().toLowerCase());
  if (names.length < 3 || names.length > 5)
    return { ok: false, problem: `bands: ${names.length} given, three to five are read` };
  const digitCount = names.length === 5 ? 3 : 2;
  const digits = names.slice(0, digitCount).map((name) => COLORS.indexOf(name));
  const wrong = names.slice(0, digitCount).find((_, at) => digits[at] === -1);
  if (wrong !== undefined)
    return { ok: false, problem: `bands: ${wrong} is no digit; known: ${COLORS.join(" ")}` };
  const multiplier = names[digitCount] ?? "";
  const power = COLORS.indexOf(multiplier);
  const times = power === -1 ? SMALL[multiplier] : 10 ** power;
  if (times === undefined) return { ok: false, problem: `bands: ${multiplier} is no multiplier` };
  const last = names[digitCount + 1];
  const tolerance = last === undefined ? NO_BAND : (TOLERANCE[last] ?? null);
  const known = last === undefined || last in TOLERANCE || last === "violet" || last === "grey";
  if (!known) return { ok: false, problem: `bands: ${last} is no tolerance` };
  const value = digits.reduce((sum, digit) => sum * 10 + digit, 0);
  return { ok: true, value: { ohms: Number((value * times).toPrecision(6)), tolerance } };
}
