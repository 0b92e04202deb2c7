/** A rating as a catalogue file or a person writes it (`600V`, `470u`, `4k7`, `35ns`, `20%`), and back. */
import { plain, said } from "../messages/said.ts";
import { quoted } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import { formatQuantity, parseQuantity } from "../units/quantity.ts";
import { RATINGS, type RatingName, type RatingRule, ratingWords } from "./ratings.ts";

/** What may stand behind the digits of a figure in this unit; longest first. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  V: ["volts", "volt", "vac", "vdc", "v"],
  A: ["amps", "amp", "a"],
  A2s: ["a2s", "a\u00b2s"],
  s: ["s"],
  C: ["c"],
  ohm: ["ohms", "ohm", "\u03c9", "\u2126"],
  W: ["w"],
  F: ["f"],
  J: ["j"],
  Hz: ["hz"],
  degC: ["degc", "\u00b0c", "c"],
  mm: ["mm"],
  "%": ["%"],
  ppm: ["ppm/k", "ppm"],
};
/** Units that take no prefix: `5m` in a column of millimetres was meant as something else. */
const NO_PREFIX: ReadonlySet<string> = new Set(["degC", "mm", "%", "ppm", "A2s"]);
/** In these a figure is zero only where that says something. */
const MAY_BE_ZERO: ReadonlySet<RatingName> = new Set(["shortCircuitSeconds", "ohms"]);
const YES: ReadonlySet<string> = new Set(["yes", "y", "true", "1", "x"]);
const NO: ReadonlySet<string> = new Set(["no", "n", "false", "0"]);

function withoutUnit(text: string, unit: string): string {
  const lower = text.toLowerCase();
  const spelling = (SPELLINGS[unit] ?? []).find((one) => lower.endsWith(one));
  return spelling === undefined ? text : text.slice(0, -spelling.length).trimEnd();
}

/** Digits and a prefix with nothing behind them: what is left once this column's own unit is taken off. */
const BARE = /^[+-]?[\d.,]*(?:e[+-]?\d+)?[pnu\u00b5\u03bcmRrkKMG]?\d*$/;

function readFigure(text: string, unit: string, name: RatingName): Parsed<number> {
  const bare = withoutUnit(text, unit).replace(/\s+/g, "");
  const words = ratingWords(name);
  const refused = { ok: false, problem: said`${quoted(text)}: expected ${words} in ${unit}` } as const;
  if (!BARE.test(bare)) return refused;
  if (NO_PREFIX.has(unit) && /[^\d.,e+-]/.test(bare))
    return { ok: false, problem: said`${quoted(text)}: expected ${words} in ${unit}, without a prefix` };
  const read = parseQuantity(bare);
  if (!read.ok || typeof read.value !== "number") return refused;
  const value = unit === "%" ? read.value / 100 : read.value;
  if (value < 0 || (value === 0 && !MAY_BE_ZERO.has(name)))
    return { ok: false, problem: said`${quoted(text)}: ${words} must be above 0` };
  return { ok: true, value };
}

/** One rating from its text. A problem says what was found and what was expected there. */
export function readRating(text: string, name: RatingName): Parsed<number | string | boolean> {
  const rule = RATINGS.get(name);
  if (rule === undefined) throw new Error(`no such rating: ${name}`);
  const typed = plain(text).trim();
  if (rule.reads === "figure") return readFigure(typed, rule.unit, name);
  if (rule.reads === "name") return { ok: true, value: typed.replace(/\s+/g, " ") };
  if (rule.reads === "word") {
    const known = rule.known.find((one) => one.toLowerCase() === typed.toLowerCase());
    if (known !== undefined) return { ok: true, value: known };
    return { ok: false, problem: said`${quoted(typed)} is no ${rule.words}; known: ${rule.known.join(" ")}` };
  }
  const lower = typed.toLowerCase();
  if (YES.has(lower)) return { ok: true, value: true };
  if (NO.has(lower)) return { ok: true, value: false };
  return { ok: false, problem: said`${quoted(typed)}: ${rule.words} is yes or no` };
}

/** The words that a rating may be, as they are said; letters and classes stand for themselves. */
const CHOICE_WORDS: Readonly<Record<string, string>> = {
  rectifier: said`rectifier`,
  fast: said`fast`,
  schottky: said`schottky`,
  sic: said`sic`,
  signal: said`signal`,
  electrolytic: said`electrolytic`,
  film: said`film`,
  ceramic: said`ceramic`,
  motor: said`motor`,
  "high-speed": said`high-speed`,
  resonant: said`resonant`,
  isolated: said`isolated`,
  live: said`live`,
  glass: said`glass`,
  high: said`high`,
  low: said`low`,
  inside: said`inside`,
  outside: said`outside`,
  feedback: said`feedback`,
  drive: said`drive`,
};
const YES_WORD = said`yes`;
const NO_WORD = said`no`;

function choiceWords(value: string, rule: RatingRule): string {
  return rule.reads === "word" ? (CHOICE_WORDS[value] ?? value) : value;
}

/** What a person may choose of a rating; empty where it is typed. */
export function choicesOf(rule: RatingRule): readonly string[] {
  if (rule.reads === "flag") return [YES_WORD, NO_WORD];
  return rule.reads === "word" ? rule.known.map((value) => choiceWords(value, rule)) : [];
}

/** A rating for a person: `600 V`, `120 nC`, `20 %`, `yes`. */
export function ratingText(value: number | string | boolean, rule: RatingRule): string {
  if (typeof value === "boolean") return value ? YES_WORD : NO_WORD;
  if (typeof value === "string" || rule.reads !== "figure") return choiceWords(String(value), rule);
  if (rule.unit === "%") return `${Number((value * 100).toPrecision(6))} %`;
  if (NO_PREFIX.has(rule.unit) || rule.unit === "V") return `${Number(value.toPrecision(6))} ${rule.unit}`;
  return formatQuantity(value, rule.unit);
}

/** A rating as a catalogue file has it, read back as the same value. */
export function ratingCell(value: number | string | boolean, rule: RatingRule): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string" || rule.reads !== "figure") return String(value);
  return rule.unit === "%" ? `${Number((value * 100).toPrecision(12))}%` : String(value);
}
