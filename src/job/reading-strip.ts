/** What a check would read on a good board and with each of the main suspects, and where the reading came to lie. */

import type { MeasureEvent } from "../bench/event.ts";
import type { Fault } from "../board/fault.ts";
import { faultNameWords } from "../board/fault-words.ts";
import { parseFault } from "../board/parse-fault.ts";
import { coldCheckOf } from "../diagnosis/cold-evidence.ts";
import { said } from "../messages/said.ts";
import type { ColdCheck, MeterReading, Predictor } from "../meter/prediction.ts";
import { rangesOf } from "../meter/ranges.ts";
import { semicolonList } from "../planning/faults-in-words.ts";
import type { Believed } from "./assess.ts";
import { readingWords } from "./event-words.ts";
import type { ClimbRow, StripRow, StripView } from "./reading-strip-shape.ts";

/** Faults asked about, the likeliest first, and rows shown of what they would read. */
const FAULTS_ASKED = 12;
const ROWS_SHOWN = 5;
/** A fault less likely than this is no main suspect (from memory). */
const LEAST_CHANCE = 0.01;
/** Deviations to either side that a band shows. */
const BAND = 2;
/** Coarse readings, as the keys of the page say them: ends in volts, of ohms in ohms. */
const COARSE = {
  diode: { zero: [0, 0.1], junction: [0.1, 1], high: null },
  ohms: { zero: [0, 1], junction: [1, 1e5], high: null },
} as const;
const CLIMB_SECONDS = [0.25, 0.5, 1, 2, 4, 8, 16];
/** A reading that has this share of its settled value after two seconds stands. */
const STANDS = 0.9;
const EARLY_SECONDS = 2;

type Check = Omit<MeasureEvent, "reading">;

interface Scale {
  readonly unit: StripView["unit"];
  readonly scale: StripView["scale"];
  readonly from: number;
  readonly to: number;
}

/** The strip of a check before its reading, or with it; null where no cold prediction is made of numbers. */
export function stripView(
  believed: Believed,
  check: Check,
  reading?: MeasureEvent["reading"],
): StripView | null {
  const cold = coldCheckOf(check);
  if (cold === null || cold.mode === "continuity") return null;
  const { predictor } = believed;
  const good = predictor.predict(cold, []);
  if (!good.solved) return null;
  const scale = scaleOf(cold, predictor);
  const cases: readonly Case[] = [
    { words: said`a good board`, good: true, faults: [], reading: good },
    ...suspectCases(believed, cold, good),
  ];
  return {
    ...scale,
    rows: cases.map(({ words, good: isGood, reading: shown }) => ({
      words,
      good: isGood,
      ...bandOf(cold, shown, scale),
    })),
    reading: reading === undefined ? null : placed(check, reading),
    climb: climbOf(predictor, cold, cases, reading),
  };
}

interface Case {
  readonly words: string;
  readonly good: boolean;
  readonly faults: readonly Fault[];
  readonly reading: MeterReading;
}

/** With each of the main suspects, beside what is believed to be there already; those that read alike in one row. */
function suspectCases(
  { job: { board }, belief, predictor }: Believed,
  check: ColdCheck,
  good: MeterReading,
): readonly Case[] {
  const there = belief.explanations[0]?.presentNow.map((fault) => belief.priors[fault]) ?? [];
  const modes = belief.suspects
    .flatMap(({ modes }) => modes)
    .filter(({ probability }) => probability >= LEAST_CHANCE)
    .sort((a, b) => b.probability - a.probability)
    .slice(0, FAULTS_ASKED);
  const rows: (Case & { readonly names: string[] })[] = [];
  for (const { fault: name } of modes) {
    const fault = parseFault(name, board);
    if (!fault.ok) continue;
    const part = name.split(/[.:]/)[0];
    const others = there.filter((other) => other.part !== part).map((other) => other.fault);
    const faults = [...others, fault.value];
    const reading = predictor.predict(check, faults);
    if (!reading.solved) continue;
    const words = faultNameWords(name, board);
    const alike = rows.find((row) => readAlike(row.reading, reading));
    if (alike !== undefined) alike.names.push(words);
    else rows.push({ words, names: [words], good: false, faults, reading });
  }
  const apart = rows.filter((row) => !readAlike(row.reading, good));
  const like = rows.filter((row) => !apart.includes(row));
  return [...apart, ...like].slice(0, ROWS_SHOWN).map((row) => ({ ...row, words: namesInWords(row.names) }));
}

const NAMES_SHOWN = 2;

function namesInWords(names: readonly string[]): string {
  const more = names.length - NAMES_SHOWN;
  const shown = semicolonList(names.slice(0, NAMES_SHOWN));
  return more > 0 ? said`${shown}; ${more} more` : shown;
}

/** Would nobody tell the two readings apart? */
function readAlike(a: MeterReading, b: MeterReading): boolean {
  if (typeof a.shown === "string" || typeof b.shown === "string") return a.shown === b.shown;
  return Math.abs(a.raw - b.raw) <= Math.max(a.spread, b.spread);
}

function scaleOf({ mode }: ColdCheck, { meter }: Predictor): Scale {
  if (mode === "farads") return { unit: "F", scale: "log", from: 1e-11, to: 1e-2 };
  const to = rangesOf(mode, meter).at(-1)?.limit ?? 0;
  return mode === "ohms"
    ? { unit: "ohm", scale: "log", from: 0.1, to }
    : { unit: "V", scale: "linear", from: 0, to };
}

function bandOf(
  { mode }: ColdCheck,
  { raw, shown, spread }: MeterReading,
  { from }: Scale,
): Omit<StripRow, "words" | "good"> {
  if (typeof shown === "string") return { value: null, low: null, high: null };
  const value = Math.abs(raw);
  if (mode === "diode")
    return { value, low: Math.max(0, value - BAND * spread), high: value + BAND * spread };
  // steep quantities: the deviation is one of the logarithm
  const factor = Math.exp((BAND * spread) / Math.max(value, from));
  return { value, low: value / factor, high: value * factor };
}

function placed(check: Check, reading: MeasureEvent["reading"]): StripView["reading"] {
  const words = readingWords({ ...check, reading });
  if (typeof reading === "number") return { words, low: Math.abs(reading), high: Math.abs(reading) };
  const spans = check.mode === "ohms" ? COARSE.ohms : COARSE.diode;
  const span = reading === "zero" || reading === "junction" ? spans[reading] : null;
  return { words, low: span?.[0] ?? null, high: span?.[1] ?? null };
}

/** The way of a reading that is still far from its end after two seconds; null where each of them stands by then. */
function climbOf(
  predictor: Predictor,
  { mode, red, black }: ColdCheck,
  cases: readonly Case[],
  reading: MeasureEvent["reading"] | undefined,
): StripView["climb"] {
  if (mode === "farads") return null;
  const at = (faults: readonly Fault[], seconds: number) =>
    predictor.predict({ mode, red, black, seconds }, faults);
  const [good] = cases;
  const early = at([], EARLY_SECONDS);
  const settled = predictor.predict({ mode, red, black }, []);
  if (good === undefined || !early.solved || !settled.solved || early.raw >= STANDS * settled.raw)
    return null;
  const rows = cases.slice(0, 3).map(
    ({ words, good: isGood, faults }): ClimbRow => ({
      words,
      good: isGood,
      points: CLIMB_SECONDS.flatMap((seconds) => {
        const there = at(faults, seconds);
        return there.solved ? [{ seconds, value: Math.abs(there.raw) }] : [];
      }),
    }),
  );
  return {
    rows,
    reading: typeof reading === "number" ? { seconds: EARLY_SECONDS, value: Math.abs(reading) } : null,
  };
}
