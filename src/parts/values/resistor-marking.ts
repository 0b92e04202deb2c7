/** What is printed on a resistor, by IEC 60062 as listed at public pages. */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

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
  /** two digits belong to 5 % and wider, three to 2 % and tighter: what is otherwise may be read from the wrong end */
  readonly usual: boolean;
}

/** Where two digits end and three begin (instrumentationtools.com, IEC page). */
const THREE_DIGITS_UP_TO = 0.02;

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
  const usual = tolerance === null || tolerance <= THREE_DIGITS_UP_TO === (digitCount === 3);
  return { ok: true, value: { ohms: Number((value * times).toPrecision(6)), tolerance, usual } };
}
