import { REFERENCE_MODES } from "../board/parse-references.ts";
import { said } from "../messages/said.ts";
import { type Fields, found, type Problems, present, readNumber } from "../units/fields.ts";
import { quoted } from "../units/nearest.ts";
import type { BesideEvent, MeasureEvent, MeasureMode, Reading } from "./event.ts";
import { readPlace } from "./place.ts";
import { COARSE_READINGS, isColdMode, MEASURE_MODES } from "./words.ts";

/** The words a mode can show or be answered with, beside a number. */
function readingWords(mode: MeasureMode): readonly Exclude<Reading, number>[] {
  if (mode === "temperature") return [];
  if (mode === "continuity") return ["OL", "beep", "silent", ...COARSE_READINGS];
  return isColdMode(mode) ? ["OL", ...COARSE_READINGS] : ["OL"];
}

/** What the meter showed, with the words that the mode can show. */
export function readReading(problems: Problems, measure: Fields, mode: MeasureMode): Reading {
  const input = measure.raw("reading");
  const path = measure.at("reading");
  if (typeof input === "number") return readNumber(problems, path, input);
  const words = readingWords(mode);
  const word = words.find((known) => known === input);
  if (word === undefined) {
    const right = [said`a number`, ...words].join(", ");
    problems.add(path, said`${found(input)} is no reading in ${mode} mode; expected ${right}`);
  }
  return word ?? 0;
}

/** Fields that only some modes carry. */
function checkModeFields(measure: Fields, mode: MeasureMode): void {
  const wrongHere = (key: string, belongs: string) => {
    if (measure.has(key)) measure.complain(key, said`belongs to ${belongs}, not to ${mode} mode`);
  };
  if (mode === "temperature") {
    measure.require("part");
    wrongHere("red", said`a reading between two places`);
    wrongHere("black", said`a reading between two places`);
  } else {
    measure.require("red", "black");
    wrongHere("part", said`temperature mode`);
    wrongHere("ambient", said`temperature mode`);
    wrongHere("by", said`temperature mode`);
  }
  if (isColdMode(mode)) wrongHere("afterPower", said`a live mode`);
  else wrongHere("settling", said`a cold mode`);
  if (mode !== "ohms") wrongHere("wires", said`ohms mode`);
}

function readWires(measure: Fields): 4 | undefined {
  if (!measure.has("wires")) return undefined;
  if (measure.raw("wires") !== 4)
    measure.complain("wires", said`expected 4, or no such field, found ${found(measure.raw("wires"))}`);
  return 4;
}

/** A `beside` event: what the good board reads, settled; `stampFields` and `stamp` as for `readMeasure`. */
export function readBeside(
  problems: Problems,
  beside: Fields,
  stampFields: readonly string[],
  stamp: { readonly id?: string; readonly at?: string; readonly who?: string },
): BesideEvent {
  beside.only([...stampFields, "mode", "red", "black", "reading"], "beside");
  beside.require("mode", "red", "black", "reading");
  const place = (key: "red" | "black") => readPlace(problems, beside.at(key), beside.raw(key));
  const reading = beside.raw("reading") === "OL" ? "OL" : (beside.number("reading", { least: 0 }) ?? 0);
  return {
    do: "beside",
    mode: beside.word("mode", REFERENCE_MODES) ?? "ohms",
    red: place("red"),
    black: place("black"),
    reading,
    ...stamp,
  };
}

const OWN_FIELDS = [
  "mode",
  "red",
  "black",
  "part",
  "ambient",
  "by",
  "reading",
  "settling",
  "afterPower",
  "wires",
  "instrument",
];
/** An instrument's name on one line. */
const INSTRUMENT_NAME = /^[\x20-\x7e]{1,80}$/;

function readInstrument(measure: Fields): string | undefined {
  const name = measure.text("instrument");
  if (name !== undefined && !INSTRUMENT_NAME.test(name))
    measure.complain("instrument", said`${quoted(name)} is no name: 1 to 80 plain characters`);
  return name;
}

/** A `measure` event; `stampFields` are the fields any event may carry and `stamp` their values. */
export function readMeasure(
  problems: Problems,
  measure: Fields,
  stampFields: readonly string[],
  stamp: { readonly id?: string; readonly at?: string; readonly who?: string },
): MeasureEvent {
  measure.only([...stampFields, ...OWN_FIELDS], "measure");
  measure.require("mode", "reading");
  const mode = measure.word("mode", MEASURE_MODES) ?? "ohms";
  if (problems.first === null) checkModeFields(measure, mode);
  const part = measure.text("part");
  if (part === "") measure.complain("part", said`${quoted(part)} names no part`);
  const place = (key: string) =>
    measure.has(key) ? readPlace(problems, measure.at(key), measure.raw(key)) : undefined;
  return {
    ...present<Omit<MeasureEvent, keyof typeof stamp>>({
      do: "measure",
      mode,
      red: place("red"),
      black: place("black"),
      part,
      ambient: measure.number("ambient", { least: -60, most: 100 }),
      by: measure.word("by", ["contact", "spot", "camera"] as const),
      reading: readReading(problems, measure, mode),
      settling: measure.word("settling", ["climbing"] as const),
      afterPower: measure.number("afterPower", { least: 0 }),
      wires: readWires(measure),
      instrument: readInstrument(measure),
    }),
    ...stamp,
  };
}
