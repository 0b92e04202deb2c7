/** What a SCPI instrument writes, line by line (IEEE 488.2, 8: response messages; SCPI-1999, volume 2, 21.8: the error queue). */
import { shownNumber } from "../overload.ts";

/** No answer of a multimeter is longer; more without a line end is not SCPI. */
const MOST_CHARACTERS = 4096;

/** Puts the pieces in which bytes arrive together into lines; `null` where what arrives cannot be lines of an instrument. */
export class LineSplitter {
  #rest = "";

  /** The lines that this piece completes, without their ends. */
  take(piece: string): readonly string[] | null {
    const lines = (this.#rest + piece).split("\n");
    this.#rest = lines.pop() ?? "";
    if (this.#rest.length > MOST_CHARACTERS) return null;
    return lines.map((line) => line.replace(/\r$/, "").trim()).filter((line) => line !== "");
  }
}

/** NR1, NR2 or NR3 of IEEE 488.2 (8.7.2 to 8.7.4), where wanted with a unit behind. */
const NUMBER = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[Ee][+-]?\d{1,3})?)\s*[A-Za-z\u03a9]*$/;

/**
 * The reading in an answer to `READ?`: a number in the unit of the function, `OL` over the range, null where it is garbage. Of a list
 * the first counts.
 */
export function parseScpiReading(line: string): number | "OL" | null {
  const matched = NUMBER.exec(line.split(",")[0]?.trim() ?? "");
  return matched === null ? null : shownNumber(Number(matched[1]));
}

export interface ScpiError {
  /** 0: the queue is empty */
  readonly code: number;
  readonly words: string;
}

/** `-113,"Undefined header"`; null where the line is none. */
export function parseScpiError(line: string): ScpiError | null {
  const matched = /^([+-]?\d{1,6})(?:\s*,\s*"?([^"]*)"?.*)?$/.exec(line);
  return matched === null ? null : { code: Number(matched[1]), words: (matched[2] ?? "").trim() };
}

/** Maker and model out of the answer to `*IDN?` (IEEE 488.2, 10.14: maker, model, serial number, firmware); null where it is none. */
export function parseIdentity(line: string): string | null {
  const fields = line.split(",").map((field) => field.trim());
  if (fields.length < 2 || fields.some((field) => /[^\x20-\x7e]/.test(field))) return null;
  const name = fields
    .slice(0, 2)
    .filter((field) => field !== "" && field !== "0")
    .join(" ");
  return name === "" ? null : name.slice(0, 60);
}
