import { said } from "../messages/said.ts";
import { quoted } from "./nearest.ts";
import type { Parsed } from "./outcome.ts";

/** Powers of ten by their SI letter; `R` stands for none, as on a resistor's body (`4R7`). */
const POWERS: ReadonlyMap<string, number> = new Map([
  ["p", -12],
  ["n", -9],
  ["u", -6],
  ["\u00b5", -6],
  ["\u03bc", -6],
  ["m", -3],
  ["", 0],
  ["R", 0],
  ["r", 0],
  ["k", 3],
  ["K", 3],
  ["M", 6],
  ["G", 9],
]);
const UNIT = /(?:ohms?|\u03a9|\u2126|volts?|V|amps?|A|farads?|F|degC|C)$/i;
/** `0.47`, `.47`, `470m`, `4.7u`: digits, then a letter. */
const PLAIN = /^([+-]?)(\d+\.?\d*|\.\d+)(?:e([+-]?\d{1,3}))?([pnu\u00b5\u03bcmRrkKMG]?)$/;
/** `4k7`, `R47`, `2u2`: the letter where the point would be. */
const LETTER_AS_POINT = /^([+-]?)(\d*)([pnu\u00b5\u03bcmRrkKMG])(\d+)$/;

/** Words that a meter shows, or a thumb gives, instead of a number. */
export type QuantityWord = "OL" | "beep" | "silent" | "zero" | "junction" | "high";

const WORDS: ReadonlyMap<string, QuantityWord> = new Map([
  ["ol", "OL"],
  ["o.l", "OL"],
  ["0l", "OL"],
  ["0.l", "OL"],
  ["open", "OL"],
  ["beep", "beep"],
  ["silent", "silent"],
  ["zero", "zero"],
  ["junction", "junction"],
  ["high", "high"],
]);

/** Digits and a power of ten, joined as text so that `470m` is exactly 0.47; -0 is read as 0. */
function numberOf(sign: string, digits: string, power: number): number {
  const value = Number(`${sign}${digits}e${power}`);
  return value === 0 ? 0 : value;
}

/**
 * What a person types for a reading, in SI units: `0.47`, `.47`, `0,47`, `470m`, `4k7`, `10k`, `4.7u`, `0.47 V`, `10 kohm`, `OL`,
 * `beep`. `m` is milli and `M` mega. A problem says what was not understood.
 */
export function parseQuantity(text: string): Parsed<number | QuantityWord> {
  const typed = text.trim();
  const word = WORDS.get(typed.toLowerCase());
  if (word !== undefined) return { ok: true, value: word };
  const bare = typed.replace(/\s+/g, "").replace(UNIT, "").replace(",", ".");
  const value = plainNumber(bare) ?? letterAsPoint(bare);
  if (value === null)
    return { ok: false, problem: said`${quoted(typed)} is no reading; write 0.47, 470m, 4k7, OL or beep` };
  if (!Number.isFinite(value))
    return { ok: false, problem: said`${quoted(typed)} is too large to be a reading` };
  return { ok: true, value };
}

function plainNumber(bare: string): number | null {
  const matched = PLAIN.exec(bare);
  if (matched === null) return null;
  const [, sign = "", digits = "", exponent = "0", letter = ""] = matched;
  return numberOf(sign, digits, Number(exponent) + (POWERS.get(letter) ?? 0));
}

function letterAsPoint(bare: string): number | null {
  const matched = LETTER_AS_POINT.exec(bare);
  if (matched === null) return null;
  const [, sign = "", whole = "", letter = "", fraction = ""] = matched;
  return numberOf(sign, `${whole === "" ? "0" : whole}.${fraction}`, POWERS.get(letter) ?? 0);
}

/** Powers of ten and the letters that stand for them. */
export const PREFIXES: readonly (readonly [number, string])[] = [
  [9, "G"],
  [6, "M"],
  [3, "k"],
  [0, ""],
  [-3, "m"],
  [-6, "u"],
  [-9, "n"],
  [-12, "p"],
];

/**
 * A quantity as a meter would show it: three digits and a prefix (`4.70 kohm`, `470 uF`), but between a tenth and ten of the bare
 * unit two places and no prefix (`0.47 V`, `0.20 ohm`), since nobody calls a diode drop 470 mV.
 */
export function formatQuantity(value: number, unit: string): string {
  if (!Number.isFinite(value)) return `${value} ${unit}`;
  const size = Math.abs(value);
  if (size < 5e-13) return `0 ${unit}`;
  if (size >= 0.0995 && size < 9.995 && unit !== "F") return `${value.toFixed(2)} ${unit}`;
  const rounded = Number(value.toPrecision(3));
  const [power, prefix] = PREFIXES.find(([exponent]) => Math.abs(rounded) >= 10 ** exponent * 0.9999) ?? [
    -12,
    "p",
  ];
  const scaled = rounded / 10 ** power;
  const digits = Math.abs(scaled) >= 99.95 ? 0 : Math.abs(scaled) >= 9.995 ? 1 : 2;
  return `${scaled.toFixed(digits)} ${prefix}${unit}`;
}
