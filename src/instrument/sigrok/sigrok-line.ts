/**
 * What `sigrok-cli --output-format analog` writes: one line a figure, `P1: 471.230 mV DC DIODE`. Units and flags are those of libsigrok 0.5
 * (`sr_analog_unit_to_string`); over the range the figure is `inf`, and the prefix before its unit then means nothing.
 */

import type { MeasureMode } from "../../bench/event.ts";
import { said } from "../../messages/said.ts";
import type { InstrumentReading } from "../instrument-reading.ts";
import { shownNumber } from "../overload.ts";

export interface SigrokLine {
  /** as the driver calls it: `P1` is a multimeter's main display */
  readonly channel: string;
  readonly reading: InstrumentReading;
}

const LINE = /^([^:\s][^:]*): (-?(?:\d+(?:\.\d+)?|inf|nan))(?: (.*))?$/;
const POWERS: Readonly<Record<string, number>> = {
  f: -15,
  p: -12,
  n: -9,
  "\u00b5": -6,
  m: -3,
  "": 0,
  k: 3,
  M: 6,
  G: 9,
  T: 12,
};
/** Units that a prefix may stand before. */
const PREFIXED = /^([fpn\u00b5mkMGT]?)(V|A|\u2126|\u03a9|F|K|Hz|s|S|W)$/;
/** The figures come as single-precision numbers: more digits than this are noise. */
const DIGITS = 6;

const DOUBTS: readonly (readonly [string, string])[] = [
  ["HOLD", said`HOLD is on: the figure stands still whatever the probes touch`],
  ["REL", said`REL is on: the figure is a difference`],
  ["MAX", said`MAX is on: the figure is the largest so far`],
  ["MIN", said`MIN is on: the figure is the smallest so far`],
  ["AVG", said`AVG is on: the figure is a mean`],
];

/** One line of the stream; null where it holds no figure (frame marks, a header, noise). */
export function parseSigrokLine(line: string): SigrokLine | null {
  const [, channel = "", digits = "", rest = ""] = LINE.exec(line.trimEnd()) ?? [];
  if (channel === "") return null;
  const [first = "", ...others] = rest.split(" ");
  const bare = isFlag(first) ? "" : first;
  const flags = new Set(bare === "" ? [first, ...others] : others);
  const [, prefix = "", base = bare] = PREFIXED.exec(bare) ?? [];
  const scaled = digits.includes("inf") ? Number.POSITIVE_INFINITY : scale(digits, POWERS[prefix] ?? 0);
  const shown = shownNumber(scaled);
  if (shown === null) return null;
  const unit = base === "\u03a9" ? "\u2126" : base;
  const doubt = DOUBTS.find(([flag]) => flags.has(flag))?.[1] ?? null;
  return { channel, reading: { ...meaning(unit, flags, shown), doubt } };
}

function isFlag(word: string): boolean {
  return /^(AC|DC|RMS|DIODE|HOLD|MAX|MIN|AUTO|REL|AVG|REF|UNSTABLE|4-WIRE|DURATION)$/.test(word);
}

/** Joined as text, so that `471.23 m` is exactly 0.47123. */
function scale(digits: string, power: number): number {
  return digits === "nan" ? Number.NaN : Number(Number(`${digits}e${power}`).toPrecision(DIGITS));
}

type Meaning = Omit<InstrumentReading, "doubt">;

function meaning(unit: string, flags: ReadonlySet<string>, value: number | "OL"): Meaning {
  const as = (modes: readonly MeasureMode[], setTo: string): Meaning => ({
    modes,
    setTo,
    value,
    unit: unit === "\u2126" ? "\u03a9" : unit,
  });
  switch (unit) {
    case "V":
      return voltsOf(flags, as);
    case "A":
      return as(["amps"], said`amps`);
    case "\u2126":
      // A tester of continuity shows its ohms like any other; the figure answers both.
      return flags.has("4-WIRE")
        ? as(["ohms"], said`ohms by four wires`)
        : as(["ohms", "continuity"], said`ohms`);
    case "F":
      return as(["farads"], said`capacitance`);
    case "\u00b0C":
      return as(["temperature"], said`temperature`);
    case "\u00b0F":
      return {
        ...as(["temperature"], said`temperature`),
        value: converted(value, (f) => ((f - 32) * 5) / 9),
        unit: "°C",
      };
    case "K":
      return {
        ...as(["temperature"], said`temperature`),
        value: converted(value, (kelvin) => kelvin - 273.15),
        unit: "°C",
      };
    case "":
      // libsigrok's beep: a figure without a unit, 1 or 0
      if (value === 0 || value === 1)
        return {
          modes: ["continuity"],
          setTo: said`continuity`,
          value: value === 1 ? "beep" : "silent",
          unit,
        };
      return as([], said`a figure without a unit`);
    case "Hz":
      return as([], said`frequency`);
    default:
      return as([], unit);
  }
}

function voltsOf(flags: ReadonlySet<string>, as: (modes: readonly MeasureMode[], setTo: string) => Meaning) {
  if (flags.has("DIODE")) return as(["diode"], said`diode mode`);
  if (flags.has("AC"))
    return flags.has("DC") ? as([], said`AC and DC volts together`) : as(["acv"], said`AC volts`);
  return as(["dcv"], said`DC volts`);
}

function converted(value: number | "OL", into: (value: number) => number): number | "OL" {
  return value === "OL" ? value : Number(into(value).toFixed(2));
}
