/** A line of the card as it is said aloud: units and signs in full, as nobody hears a bracket. */

const SAID: readonly (readonly [RegExp, string])[] = [
  [/\bkohm\b|\bkΩ/g, "kilo ohm"],
  [/\bMohm\b|\bMΩ/g, "mega ohm"],
  [/\bmohm\b|\bmΩ/g, "milli ohm"],
  [/Ω/g, "ohm"],
  [/(\d) ?uF\b|(\d) ?µF\b/g, "$1$2 micro farad"],
  [/(\d) ?nF\b/g, "$1 nano farad"],
  [/(\d) ?pF\b/g, "$1 pico farad"],
  [/(\d) ?V\b/g, "$1 volts"],
  [/(\d) ?mA\b/g, "$1 milli amps"],
  [/(\d) ?A\b/g, "$1 amps"],
  [/(\d) ?W\b/g, "$1 watts"],
  [/\bDC bus \+/g, "DC bus plus"],
  [/\bDC bus -/g, "DC bus minus"],
  [/\b([A-Z]+[0-9]+)\.([A-Za-z0-9]+)/g, "$1 pin $2"],
  [/[()_;:]+/g, ", "],
  [/( ,)+/g, ","],
  [/,\s*,/g, ","],
  [/\s+/g, " "],
];

export function spokenWords(line: string): string {
  return SAID.reduce((said, [sign, words]) => said.replace(sign, words), line)
    .replace(/[,\s]+$/, "")
    .trim();
}
