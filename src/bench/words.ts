/** The closed lists of words that the events of a log use. */
import type {
  CoarseReading,
  ColdMode,
  Feed,
  Finding,
  LiveMode,
  MeasureMode,
  Observed,
  OfferName,
  Overruled,
  PartMark,
  QuoteAnswer,
  Verdict,
  WaitsFor,
} from "./event.ts";

export const COLD_MODES: readonly ColdMode[] = ["diode", "continuity", "ohms", "farads"];
export const LIVE_MODES: readonly LiveMode[] = ["dcv", "acv", "amps", "temperature"];
export const MEASURE_MODES: readonly MeasureMode[] = [...COLD_MODES, ...LIVE_MODES];
export const COARSE_READINGS: readonly CoarseReading[] = ["zero", "junction", "high"];
export const FINDINGS: readonly Finding[] = [
  "clean",
  "burnt",
  "bulged",
  "cracked",
  "corroded",
  "wet",
  "lifted-pad",
  "other",
];
export const FEEDS: readonly Feed[] = ["mains", "lamp", "bench"];
export const OBSERVED: readonly Observed[] = [
  "quiet",
  "runs",
  "lamp-dark",
  "lamp-dim",
  "lamp-bright",
  "lamp-pulsing",
  "limiting",
  "fuse-blew",
  "trip",
  "smoke",
];
export const VERDICTS: readonly Verdict[] = [
  "repaired",
  "not-economic",
  "not-repairable",
  "no-fault",
  "declined",
];

export const PART_MARKS: readonly PartMark[] = ["absent", "different", "unsure", "as-drawn"];

export const WAITS_FOR: readonly WaitsFor[] = ["drying", "part", "answer"];

export const OFFERS: readonly OfferName[] = ["repair", "replace", "decline"];
export const QUOTE_ANSWERS: readonly QuoteAnswer[] = ["accepted", "refused"];

export const OVERRULED: readonly Overruled[] = ["proof", "resistor", "motor", "proposal"];

/** Is this mode for a board without power? */
export function isColdMode(mode: MeasureMode): mode is ColdMode {
  return COLD_MODES.some((cold) => cold === mode);
}

/** A mode as it is said in a sentence, and as the meter is turned to it. */
export const MODE_WORDS: Readonly<Record<MeasureMode, string>> = {
  diode: "diode mode",
  continuity: "continuity",
  ohms: "ohms",
  farads: "capacitance",
  dcv: "DC volts",
  acv: "AC volts",
  amps: "amps",
  temperature: "temperature",
};
