/** How numbers, modes, findings and verdicts are said on the page; words that stand as constants are told where they are shown. */
import { writingOf } from "../messages/language.ts";
import { said, saidCount } from "../messages/said.ts";
import type { ActionView, CardView } from "../wire/bench-view.ts";
import { field } from "./job-event.ts";
import { forms, language, say } from "./say.ts";

export const MODE_WORDS: Readonly<Record<string, string>> = {
  diode: said`Diode mode`,
  continuity: said`Continuity`,
  ohms: said`Ohms`,
  farads: said`Capacitance`,
  dcv: said`DC volts`,
  acv: said`AC volts`,
  amps: said`Amps`,
  temperature: said`Temperature`,
};

export const FINDINGS: readonly { readonly finding: string; readonly words: string }[] = [
  { finding: "clean", words: said`Looks clean` },
  { finding: "burnt", words: said`Burnt` },
  { finding: "bulged", words: said`Bulged or leaking` },
  { finding: "cracked", words: said`Cracked` },
  { finding: "corroded", words: said`Corroded` },
  { finding: "wet", words: said`Wet` },
  { finding: "lifted-pad", words: said`Lifted pad` },
  { finding: "other", words: said`Something else` },
];

export const OBSERVED: readonly {
  readonly seen: string;
  readonly words: string;
  readonly feeds: readonly string[];
}[] = [
  { seen: "runs", words: said`Every output runs`, feeds: ["mains", "lamp", "bench"] },
  { seen: "quiet", words: said`No output runs`, feeds: ["mains", "lamp", "bench"] },
  { seen: "lamp-dark", words: said`Lamp dark`, feeds: ["lamp"] },
  { seen: "lamp-dim", words: said`Lamp dim`, feeds: ["lamp"] },
  { seen: "lamp-bright", words: said`Lamp bright`, feeds: ["lamp"] },
  { seen: "lamp-pulsing", words: said`Lamp pulsing`, feeds: ["lamp"] },
  { seen: "limiting", words: said`Supply at its limit`, feeds: ["bench"] },
  { seen: "fuse-blew", words: said`Fuse blew`, feeds: ["mains", "lamp", "bench"] },
  { seen: "trip", words: said`Breaker or RCD tripped`, feeds: ["mains", "lamp"] },
  { seen: "smoke", words: said`Smoke`, feeds: ["mains", "lamp", "bench"] },
];

/** How a run under load may end, in the words of `observed`. */
export const LOAD_ENDS: readonly { readonly seen: string; readonly words: string }[] = [
  { seen: "runs", words: said`It ran until I switched it off` },
  { seen: "quiet", words: said`It stopped by itself` },
  { seen: "trip", words: said`Breaker or RCD tripped` },
  { seen: "fuse-blew", words: said`Fuse blew` },
  { seen: "smoke", words: said`Smoke` },
];

/** A sight at power-up as its key says it, with what follows it: `lamp-dark, then 15 V`. Anything else as it is told. */
export function sightWords(outcome: string): string {
  const [sight = "", ...rest] = outcome.split(", then ");
  const words = OBSERVED.find(({ seen }) => seen === sight)?.words;
  return say(
    words === undefined ? outcome : rest.reduce((before, then) => said`${before}, then ${then}`, words),
  );
}

export const VERDICTS: readonly { readonly verdict: string; readonly words: string }[] = [
  { verdict: "repaired", words: said`Repaired` },
  { verdict: "not-economic", words: said`Not worth repairing` },
  { verdict: "not-repairable", words: said`Cannot be repaired` },
  { verdict: "no-fault", words: said`No fault on this board` },
  { verdict: "declined", words: said`Customer declined` },
];

export function verdictWords(verdict: string): string {
  return say(saidVerdict(verdict));
}

function saidVerdict(verdict: string): string {
  return VERDICTS.find((entry) => entry.verdict === verdict)?.words ?? verdict;
}

/** What is done, to what: the one word of it is the part, the place or the stage. */
const DO_WORDS: Readonly<Record<string, (what: string) => string>> = {
  look: (what) => said`Look at ${what}`,
  clean: (what) => said`Clean ${what}`,
  resolder: (what) => said`Resolder ${what}`,
  lift: (what) => said`Lift ${what}`,
  refit: (what) => said`Solder back ${what}`,
  remove: (what) => said`Take off ${what}`,
  restore: (what) => said`Put back ${what}`,
  replace: (what) => said`Replace ${what}`,
  clip: (what) => said`Clip on ${what}`,
  unclip: (what) => said`Take the clip off ${what}`,
  power: (what) => (what === "" ? said`Power up` : said`Power up ${what}`),
  unpower: () => said`Switch off and unplug`,
  answer: () => said`Ask the customer`,
  calibrate: () => said`Check the meter`,
  note: () => said`Note`,
};

/** Ohms that leads and tips have no part in. */
export const FOUR_WIRES = said`Milliohms, four wires`;

/** Short words for an action that came without a headline of its own (a row's later checks, a free entry), to be told where they are shown. */
export function actionWords(action: ActionView): string {
  if (action.do === "measure") return measureWords(action);
  if (action.do === "close") return said`Close: ${saidVerdict(field(action, "verdict") ?? "")}`;
  const [from, to] = Array.isArray(action.at) ? action.at.map(String) : [];
  const at = from === undefined || to === undefined ? from : said`${from} and ${to}`;
  const what = field(action, "part") ?? field(action, "place") ?? field(action, "stage") ?? at ?? "";
  return DO_WORDS[action.do]?.(what) ?? `${action.do} ${what}`.trim();
}

function measureWords(action: ActionView): string {
  const mode =
    field(action, "wires") === "4" ? FOUR_WIRES : (MODE_WORDS[field(action, "mode") ?? ""] ?? said`Measure`);
  const part = field(action, "part");
  if (part !== null)
    return field(action, "mode") === "temperature" ? said`Temperature of ${part}` : said`${mode} of ${part}`;
  const red = field(action, "red") ?? "?";
  if (field(action, "mode") === "amps") return said`${mode} fed into ${red}`;
  return said`${mode}, red on ${red}, black on ${field(action, "black") ?? "?"}`;
}

/** A card for an action that stands without the engine's reasons: the later checks of a row, a free entry. */
export function bareCard(action: ActionView): CardView {
  return {
    action,
    gate: null,
    answers: [],
    headline: actionWords(action),
    red: field(action, "red"),
    black: field(action, "black"),
    mode: field(action, "mode"),
    clipModes: [],
    probesOn: null,
    row: [],
    rowWords: [],
    minutes: 0,
    money: 0,
    why: "",
    expect: [],
    cautions: [],
    wait: null,
    good: null,
    restsOn: [],
    atStake: null,
    forecast: null,
    firstMinute: null,
    others: [],
    outlook: { expectedMargin: 0, repairProbability: 0 },
  };
}

export function money(amount: number, currency: string): string {
  const digits = Number.isInteger(amount) || Math.abs(amount) >= 100 ? 0 : 2;
  try {
    return new Intl.NumberFormat(language() === "en" ? "en" : writingOf(language()).locale, {
      style: "currency",
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(amount);
  } catch {
    // A currency that is no ISO code (the terms take any word) is written after the number.
    return forms().shown(`${amount.toFixed(digits)} ${currency}`);
  }
}

export function minutes(amount: number): string {
  return forms().shown(minutesInFigures(amount));
}

function minutesInFigures(amount: number): string {
  if (amount === 0) return "0 min";
  if (amount < 1) return `${Math.max(1, Math.round(amount * 60))} s`;
  return amount < 10 && !Number.isInteger(amount) ? `${amount.toFixed(1)} min` : `${Math.round(amount)} min`;
}

export function percent(probability: number): string {
  const hundred = probability * 100;
  if (hundred > 0 && hundred < 1) return say`<1 %`;
  if (hundred > 99 && hundred < 100) return say`>99 %`;
  return say`${Math.round(hundred)} %`;
}

/** `14:05`. */
export function timeOfDay(at: string): string {
  const locale = language() === "en" ? [] : writingOf(language()).locale;
  return new Date(at).toLocaleTimeString(locale, { hour: "2-digit", minute: "2-digit" });
}

/** Several names, figures or words in one line. */
export function listed(items: readonly string[]): string {
  return items.join(forms().direction === "rtl" ? "، " : ", ");
}

const SCALES: readonly (readonly [number, string])[] = [
  [1e6, "M"],
  [1e3, "k"],
  [1, ""],
  [1e-3, "m"],
  [1e-6, "µ"],
  [1e-9, "n"],
  [1e-12, "p"],
];

/** A quantity with its prefix: volts stay plain to the millivolt, ohms and farads take a letter. */
export function quantity(value: number, unit: string): string {
  return forms().shown(quantityInFigures(value, unit));
}

function quantityInFigures(value: number, unit: string): string {
  if (unit === "V" || unit === "") return `${value.toFixed(Math.abs(value) < 10 ? 2 : 0)} ${unit}`.trim();
  if (value === 0) return `0 ${unit}`;
  const [scale, prefix] = SCALES.find(([size]) => Math.abs(value) >= size) ?? [1e-12, "p"];
  return `${Number((value / scale).toPrecision(3))} ${prefix}${unit}`;
}

/** A figure as a display of four digits has it, each update as wide as the last. */
export function displayed(value: number, unit: string): string {
  return forms().shown(displayedFigures(value, unit));
}

function displayedFigures(value: number, unit: string): string {
  const size = Math.abs(value);
  if (unit.startsWith("V") || unit === "°C")
    return `${value.toFixed(size < 10 ? 3 : size < 100 ? 2 : 1)} ${unit}`;
  const [scale, prefix] = SCALES.find(([least]) => size >= least) ?? [1, ""];
  return `${(value / scale).toPrecision(4)} ${prefix}${unit}`;
}

/** The span a reading would fall in: one figure where both ends round alike. */
export function range(low: number | null, high: number | null, unit: string): string | null {
  if (low === null || high === null) return null;
  const from = quantity(low, unit);
  const to = quantity(high, unit);
  return from === to ? from : say`${from} to ${to}`;
}

/** At most so many parts are named: the first weigh most. */
const MOST_ASSUMED_NAMED = 4;

/** "Rests on R12, R13 and 3 more, which nobody has seen." */
export function restsOnWords(parts: readonly string[]): string {
  const named = listed(parts.slice(0, MOST_ASSUMED_NAMED));
  const more = parts.length - MOST_ASSUMED_NAMED;
  if (more <= 0) return say`Rests on ${named}, which nobody has seen.`;
  return say(
    saidCount(
      more,
      "Rests on {1} and {0} more, which nobody has seen.",
      "Rests on {1} and {0} more, which nobody has seen.",
      named,
    ),
  );
}
