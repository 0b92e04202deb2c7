/** A reading as it is typed off the meter, with what its mode can show: one set of rules for the page and the terminal. */
import { said } from "../messages/said.ts";
import { quoted } from "./nearest.ts";
import type { Parsed } from "./outcome.ts";
import { parseQuantity, type QuantityWord } from "./quantity.ts";

/** The mode the meter is in, as the job file spells it. */
export type ReadingMode = "diode" | "continuity" | "ohms" | "farads" | "dcv" | "acv" | "amps" | "temperature";

/** Above this a diode reading was meant in millivolts; above that a capacitance lacks its prefix. */
const MOST_DIODE_VOLTS = 10;
const MOST_FARADS = 1;
const COLD: readonly ReadingMode[] = ["diode", "continuity", "ohms", "farads"];

/**
 * `0.47`, `.47`, `470m`, `10k`, `OL`, `beep` and the coarse words, in the unit of the mode. A problem says what to type
 * instead.
 */
export function parseReadingText(text: string, mode: ReadingMode): Parsed<number | QuantityWord> {
  const typed = text.trim();
  if (typed === "") return refuse(said`Type what the meter shows, for example 0.47, 470m, OL or 10k.`);
  const parsed = parseQuantity(typed);
  if (!parsed.ok) return parsed;
  return typeof parsed.value === "number"
    ? checkRange(parsed.value, typed, mode)
    : wordFor(parsed.value, mode);
}

function wordFor(word: QuantityWord, mode: ReadingMode): Parsed<QuantityWord> {
  if (mode === "continuity") return { ok: true, value: word === "OL" ? "silent" : word };
  if (word === "beep" || word === "silent")
    return refuse(said`The meter is in ${mode} here: type its digits, or OL.`);
  if (mode === "temperature") return refuse(said`A temperature is a number in degrees Celsius.`);
  if (word !== "OL" && !COLD.includes(mode)) return refuse(said`${mode} wants the meter's digits.`);
  return { ok: true, value: word };
}

function checkRange(value: number, typed: string, mode: ReadingMode): Parsed<number> {
  if (mode === "diode" && Math.abs(value) > MOST_DIODE_VOLTS)
    return refuse(
      said`${quoted(typed)}: in diode mode the meter shows volts; 470 millivolts are 0.470 or 470m.`,
    );
  if (mode === "farads" && value >= MOST_FARADS)
    return refuse(
      said`${quoted(typed)}: that would be whole farads; add the prefix, as in 22u, 100n or 47p.`,
    );
  if (mode !== "diode" && COLD.includes(mode) && value < 0)
    return refuse(said`A negative value here means that charge is left: discharge, wait, and measure again.`);
  return { ok: true, value };
}

function refuse(problem: string): { ok: false; problem: string } {
  return { ok: false, problem };
}
