/** Reads what a technician types off the meter: `0.47`, `.47`, `470m`, `OL`, `beep`, `10k`, `4k7`, `22u`. */

export type EntryMode = "diode" | "continuity" | "ohms" | "farads" | "dcv" | "acv" | "amps" | "temperature";

export type EnteredReading =
  | { readonly ok: true; readonly reading: number | "OL" | "beep" | "silent" }
  | { readonly ok: false; readonly problem: string };

const PREFIX: Readonly<Record<string, number>> = {
  p: 1e-12,
  n: 1e-9,
  u: 1e-6,
  µ: 1e-6,
  μ: 1e-6,
  m: 1e-3,
  "": 1,
  r: 1,
  k: 1e3,
  K: 1e3,
  M: 1e6,
};

const WORDS: Readonly<Record<string, "OL" | "beep" | "silent">> = {
  ol: "OL",
  "o.l": "OL",
  "0l": "OL",
  "0.l": "OL",
  open: "OL",
  beep: "beep",
  b: "beep",
  silent: "silent",
  s: "silent",
};

const UNIT = /\s*(?:volts?|v|ohms?|Ω|Ω|farads?|f|amps?|a|°?c)$/i;
const PLAIN = /^([+-]?(?:\d+\.?\d*|\.\d+))\s*([pnuµμmrkKM]?)$/;
/** `4k7`, `0R22`: the prefix standing where the point would */
const LETTER_FOR_POINT = /^(\d+)([pnuµμmRrkKM])(\d+)$/;

/** The typed text as a reading of this mode, or one line saying what to type instead. */
export function parseEntry(text: string, mode: EntryMode): EnteredReading {
  const typed = text.trim().replace(",", ".");
  if (typed === "") return refuse("Type what the meter shows, for example 0.47, 470m, OL or 10k.");
  const word = WORDS[typed.toLowerCase()];
  if (word !== undefined) return wordFor(word, mode);
  const number = parseNumber(typed.replace(UNIT, ""));
  if (number === null)
    return refuse(`"${text.trim()}" is no reading: type digits such as 0.47, 470m or 10k, or OL.`);
  return checkRange(number, mode);
}

function wordFor(word: "OL" | "beep" | "silent", mode: EntryMode): EnteredReading {
  if (mode === "continuity") return { ok: true, reading: word === "OL" ? "silent" : word };
  if (word === "beep" || word === "silent")
    return refuse(`The meter is in ${mode} here: type its digits, or OL.`);
  if (mode === "temperature") return refuse("A temperature is a number in degrees Celsius.");
  return { ok: true, reading: "OL" };
}

function parseNumber(typed: string): number | null {
  const letter = LETTER_FOR_POINT.exec(typed);
  const match = letter ?? PLAIN.exec(typed);
  if (match === null) return null;
  const digits = letter === null ? match[1] : `${match[1]}.${match[3]}`;
  const prefix = match[2] ?? "";
  const factor = PREFIX[prefix === "R" ? "r" : prefix];
  const value = Number(digits) * (factor ?? Number.NaN);
  if (!Number.isFinite(value)) return null;
  // A decimal prefix must not leave binary dust: 470m is 0.47. Adding zero turns -0 into 0.
  return Number(value.toPrecision(12)) + 0;
}

function checkRange(value: number, mode: EntryMode): EnteredReading {
  if (mode === "diode" && Math.abs(value) > 10)
    return refuse("In diode mode the meter shows volts: type 0.470, or 470m for 470 millivolts.");
  if (mode === "farads" && value >= 1)
    return refuse("That would be whole farads: add the prefix, as in 22u, 100n or 47p.");
  if ((mode === "ohms" || mode === "farads" || mode === "continuity") && value < 0)
    return refuse("A negative value here means that charge is left: discharge, wait, and measure again.");
  return { ok: true, reading: value };
}

function refuse(problem: string): EnteredReading {
  return { ok: false, problem };
}
