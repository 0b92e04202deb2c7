/** How SCPI calls the modes of a meter. */

import type { MeasureMode } from "../../bench/event.ts";
import { said } from "../../messages/said.ts";
import type { Sourced } from "../../units/mark.ts";
import type { WantedReading } from "../instrument-reading.ts";

interface ScpiFunction extends Sourced {
  /** behind `CONFigure:`, each word in its short form */
  readonly header: string;
  readonly modes: readonly MeasureMode[];
  /** what the instrument is set to, in words */
  readonly setTo: string;
  /** of its figures, as on a display */
  readonly unit: string;
}

const STANDARD = [
  "from memory",
  "SCPI-1999, volume 2, chapters 3 and 18: MEASure, CONFigure and SENSe:FUNCtion",
] as const;
const MAKERS = [
  "common practice",
  "not in SCPI-1999; makers of bench multimeters agree on the word",
] as const;

function row(
  header: string,
  modes: readonly MeasureMode[],
  setTo: string,
  unit: string,
  [mark, words]: readonly [Sourced["mark"], string],
): ScpiFunction {
  return { id: header, header, modes, setTo, unit, mark, words };
}

export const SCPI_FUNCTIONS: readonly ScpiFunction[] = [
  row("VOLT:DC", ["dcv"], said`DC volts`, "V", STANDARD),
  row("VOLT:AC", ["acv"], said`AC volts`, "V", STANDARD),
  row("CURR:DC", ["amps"], said`DC amps`, "A", STANDARD),
  row("CURR:AC", ["amps"], said`AC amps`, "A", STANDARD),
  row("RES", ["ohms"], said`ohms`, "Ω", STANDARD),
  row("FRES", ["ohms"], said`ohms by four wires`, "Ω", STANDARD),
  row("TEMP", ["temperature"], said`temperature`, "°C", STANDARD),
  row("FREQ", [], said`frequency`, "Hz", STANDARD),
  row("PER", [], said`period`, "s", STANDARD),
  row("DIOD", ["diode"], said`diode mode`, "V", MAKERS),
  row("CONT", ["continuity"], said`continuity`, "Ω", MAKERS),
  row("CAP", ["farads"], said`capacitance`, "F", MAKERS),
];

/**
 * What to put behind `CONF:` for a check; null where the program does not set the instrument: amps are read off the supply, and the
 * meter's leads may lie on the board, where a meter set to amps is a short.
 */
export function headerFor({ mode, wires }: WantedReading): string | null {
  if (mode === "amps") return null;
  if (wires === 4) return "FRES";
  return SCPI_FUNCTIONS.find(({ modes }) => modes.includes(mode))?.header ?? null;
}

/** A word of a header in its short form: four letters, or three where the fourth is a vowel (SCPI-1999, volume 1, 6.2.1). */
function shortForm(word: string): string {
  if (word.length <= 4) return word;
  return /[AEIOU]/.test(word[3] ?? "") ? word.slice(0, 3) : word.slice(0, 4);
}

/** The function in an answer to `FUNC?` or `CONF?`: `"VOLT:DC"`, `"RES +1.0E+03,+1.0E-03"`, `VOLTAGE`; null where it is none. */
export function functionIn(answer: string): ScpiFunction | null {
  const named = /^"?\s*(?:SENS(?:E)?\d*:)?([A-Za-z]+)\d*(?::([A-Za-z]+))?/.exec(answer);
  if (named === null) return null;
  const [first = "", second = ""] = [named[1], named[2]].map((word) => shortForm((word ?? "").toUpperCase()));
  const base = first === "DIO" ? "DIOD" : first;
  const wanted = base === "VOLT" || base === "CURR" ? `${base}:${second === "AC" ? "AC" : "DC"}` : base;
  return SCPI_FUNCTIONS.find(({ header }) => header === wanted) ?? null;
}
