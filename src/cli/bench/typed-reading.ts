/** What a technician types off the meter: `0.47 .47 470m OL beep 10k 4k7 22u zero junction high climbing`. */
import type { MeasureMode, Reading } from "../../bench/event.ts";
import type { Parsed } from "../../units/outcome.ts";

const FACTOR: ReadonlyMap<string, number> = new Map([
  ["p", 1e-12],
  ["n", 1e-9],
  ["u", 1e-6],
  ["µ", 1e-6],
  ["μ", 1e-6],
  ["m", 1e-3],
  ["", 1],
  ["r", 1],
  ["R", 1],
  ["k", 1e3],
  ["K", 1e3],
  ["M", 1e6],
]);

const WORDS: ReadonlyMap<string, Exclude<Reading, number>> = new Map([
  ["ol", "OL"],
  ["o.l", "OL"],
  ["0l", "OL"],
  ["open", "OL"],
  ["beep", "beep"],
  ["silent", "silent"],
  ["zero", "zero"],
  ["junction", "junction"],
  ["drop", "junction"],
  ["high", "high"],
]);

const UNIT = /(?:volts?|v|ohms?|Ω|Ω|farads?|f|amps?|a|°?c)$/i;
const PLAIN = /^([+-]?(?:\d+\.?\d*|\.\d+))([pnuµμmrRkKM]?)$/;
/** `4k7`: the prefix stands where the point would */
const PREFIX_AS_POINT = /^(\d+)([pnuµμmrRkKM])(\d+)$/;

export interface TypedReading {
  readonly reading: Reading;
  readonly climbing: boolean;
}

/** A line of readings, in the order of the checks; `climbing` belongs to the reading before it, or stands for one. */
export function parseTypedReadings(
  words: readonly string[],
  mode: MeasureMode,
): Parsed<readonly TypedReading[]> {
  const readings: TypedReading[] = [];
  for (const [at, word] of words.entries()) {
    if (word.toLowerCase() === "climbing") {
      // Alone it says what the eye saw: no short and no junction, and on its way up.
      const before = at === 0 ? null : (readings.pop() ?? null);
      readings.push({ reading: before?.reading ?? "high", climbing: true });
      continue;
    }
    const reading = parseTypedReading(word, mode);
    if (!reading.ok) return reading;
    readings.push({ reading: reading.value, climbing: false });
  }
  return { ok: true, value: readings };
}

/** One reading in the unit of its mode; what a mode cannot show is for the event's own parser to refuse. */
export function parseTypedReading(word: string, mode: MeasureMode): Parsed<Reading> {
  const known = WORDS.get(word.toLowerCase());
  if (known === "OL" && mode === "continuity") return { ok: true, value: "silent" };
  if (known !== undefined) return { ok: true, value: known };
  const number = parseNumber(word) ?? parseNumber(word.replace(UNIT, ""));
  if (number === null) {
    return {
      ok: false,
      problem: `"${word}" is no reading: type 0.47, 470m, 10k, OL, beep, zero, junction, high or climbing`,
    };
  }
  if (mode === "diode" && Math.abs(number) > 10) {
    return { ok: false, problem: `"${word}": diode mode shows volts; 470 millivolts are 0.470 or 470m` };
  }
  if (mode === "farads" && Math.abs(number) >= 1) {
    return { ok: false, problem: `"${word}": whole farads? add the prefix, as in 22u, 100n, 47p` };
  }
  return { ok: true, value: number };
}

function parseNumber(word: string): number | null {
  const typed = word.replace(",", ".");
  const letter = PREFIX_AS_POINT.exec(typed);
  const [, whole = "", prefix = "", rest = ""] = letter ?? PLAIN.exec(typed) ?? [];
  if (whole === "") return null;
  const value = Number(letter === null ? whole : `${whole}.${rest}`) * (FACTOR.get(prefix) ?? Number.NaN);
  if (!Number.isFinite(value)) return null;
  // 470m is 0.47, not 0.47000000000000003; adding zero makes a typed -0 a plain one.
  return Number(value.toPrecision(12)) + 0;
}
