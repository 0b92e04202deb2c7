/** The closed lists of words that the events of a log use. */
import { said } from "../messages/said.ts";
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
  diode: said`diode mode`,
  continuity: said`continuity`,
  ohms: said`ohms`,
  farads: said`capacitance`,
  dcv: said`DC volts`,
  acv: said`AC volts`,
  amps: said`amps`,
  temperature: said`temperature`,
};

/** What a look found, as the log spells it. */
export const FINDING_WORDS: Readonly<Record<Finding, string>> = {
  clean: said`clean`,
  burnt: said`burnt`,
  bulged: said`bulged`,
  cracked: said`cracked`,
  corroded: said`corroded`,
  wet: said`wet`,
  "lifted-pad": said`lifted-pad`,
  other: said`other`,
};

/** What was seen under power, as the log spells it. */
export const OBSERVED_WORDS: Readonly<Record<Observed, string>> = {
  quiet: said`quiet`,
  runs: said`runs`,
  "lamp-dark": said`lamp-dark`,
  "lamp-dim": said`lamp-dim`,
  "lamp-bright": said`lamp-bright`,
  "lamp-pulsing": said`lamp-pulsing`,
  limiting: said`limiting`,
  "fuse-blew": said`fuse-blew`,
  trip: said`trip`,
  smoke: said`smoke`,
};
