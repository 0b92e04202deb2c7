/** A line of the card as it is said aloud: units and signs in full, as nobody hears a bracket. */
import { say } from "../say.ts";

type Spoken = (...found: readonly string[]) => string;

/** What is seen, and what is heard for it, in the page's language. */
const HEARD: readonly (readonly [RegExp, Spoken])[] = [
  // what sets a Latin name apart inside another script
  [/[\u2068\u2069]/g, () => ""],
  [/\bkohm\b|\bkΩ/g, () => say`kilo ohm`],
  [/\bMohm\b|\bMΩ/g, () => say`mega ohm`],
  [/\bmohm\b|\bmΩ/g, () => say`milli ohm`],
  [/\bohm\b|Ω/g, () => say`ohm`],
  [/(\d[\d.,]*) ?[uµ]F\b/g, (_, figure = "") => say`${figure} micro farad`],
  [/(\d[\d.,]*) ?nF\b/g, (_, figure = "") => say`${figure} nano farad`],
  [/(\d[\d.,]*) ?pF\b/g, (_, figure = "") => say`${figure} pico farad`],
  [/(\d[\d.,]*) ?V\b/g, (_, figure = "") => say`${figure} volts`],
  [/(\d[\d.,]*) ?mA\b/g, (_, figure = "") => say`${figure} milli amps`],
  [/(\d[\d.,]*) ?A\b/g, (_, figure = "") => say`${figure} amps`],
  [/(\d[\d.,]*) ?W\b/g, (_, figure = "") => say`${figure} watts`],
  [/\bDC bus \+/g, () => say`DC bus plus`],
  [/\bDC bus -/g, () => say`DC bus minus`],
  [/\b([A-Z]+[0-9]+)\.([A-Za-z0-9]+)/g, (_, part = "", pin = "") => say`${part} pin ${pin}`],
  [/[\u2068\u2069]/g, () => ""],
  [/[()_;:؛]+/g, () => ", "],
  [/( ,)+/g, () => ","],
  [/,\s*,/g, () => ","],
  [/\s+/g, () => " "],
];

export function spokenWords(line: string): string {
  return HEARD.reduce((heard, [sign, words]) => heard.replace(sign, words), line)
    .replace(/[,\s]+$/, "")
    .trim();
}
