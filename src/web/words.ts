/** How numbers, modes, findings and verdicts are said on the page. */
import type { ActionView, CardView } from "../wire/bench-view.ts";
import { field } from "./job-event.ts";

export const MODE_WORDS: Readonly<Record<string, string>> = {
  diode: "Diode mode",
  continuity: "Continuity",
  ohms: "Ohms",
  farads: "Capacitance",
  dcv: "DC volts",
  acv: "AC volts",
  amps: "Amps",
  temperature: "Temperature",
};

export const FINDINGS: readonly { readonly finding: string; readonly words: string }[] = [
  { finding: "clean", words: "Looks clean" },
  { finding: "burnt", words: "Burnt" },
  { finding: "bulged", words: "Bulged or leaking" },
  { finding: "cracked", words: "Cracked" },
  { finding: "corroded", words: "Corroded" },
  { finding: "wet", words: "Wet" },
  { finding: "lifted-pad", words: "Lifted pad" },
  { finding: "other", words: "Something else" },
];

export const OBSERVED: readonly {
  readonly seen: string;
  readonly words: string;
  readonly feeds: readonly string[];
}[] = [
  { seen: "runs", words: "Every output runs", feeds: ["mains", "lamp", "bench"] },
  { seen: "quiet", words: "Nothing to see or hear", feeds: ["mains", "lamp", "bench"] },
  { seen: "lamp-dark", words: "Lamp dark", feeds: ["lamp"] },
  { seen: "lamp-dim", words: "Lamp dim", feeds: ["lamp"] },
  { seen: "lamp-bright", words: "Lamp bright", feeds: ["lamp"] },
  { seen: "lamp-pulsing", words: "Lamp pulsing", feeds: ["lamp"] },
  { seen: "limiting", words: "Supply at its limit", feeds: ["bench"] },
  { seen: "fuse-blew", words: "Fuse blew", feeds: ["mains", "lamp", "bench"] },
  { seen: "trip", words: "Breaker or RCD tripped", feeds: ["mains", "lamp"] },
  { seen: "smoke", words: "Smoke", feeds: ["mains", "lamp", "bench"] },
];

/** How a run under load may end, in the words of `observed`. */
export const LOAD_ENDS: readonly { readonly seen: string; readonly words: string }[] = [
  { seen: "runs", words: "It ran until I switched it off" },
  { seen: "quiet", words: "It stopped by itself" },
  { seen: "trip", words: "Breaker or RCD tripped" },
  { seen: "fuse-blew", words: "Fuse blew" },
  { seen: "smoke", words: "Smoke" },
];

/** A sight at power-up as its key says it, with what follows it: `lamp-dark, then 15 V`. Anything else as it is. */
export function sightWords(outcome: string): string {
  const [sight = "", ...rest] = outcome.split(", then ");
  const words = OBSERVED.find(({ seen }) => seen === sight)?.words;
  return words === undefined ? outcome : [words, ...rest].join(", then ");
}

export const VERDICTS: readonly { readonly verdict: string; readonly words: string }[] = [
  { verdict: "repaired", words: "Repaired" },
  { verdict: "not-economic", words: "Not worth repairing" },
  { verdict: "not-repairable", words: "Cannot be repaired" },
  { verdict: "no-fault", words: "No fault on this board" },
  { verdict: "declined", words: "Customer declined" },
];

export function verdictWords(verdict: string): string {
  return VERDICTS.find((entry) => entry.verdict === verdict)?.words ?? verdict;
}

const DO_WORDS: Readonly<Record<string, string>> = {
  look: "Look at",
  clean: "Clean",
  resolder: "Resolder",
  lift: "Lift",
  refit: "Solder back",
  remove: "Take off",
  restore: "Put back",
  replace: "Replace",
  clip: "Clip on",
  unclip: "Take the clip off",
  power: "Power up",
  unpower: "Switch off and unplug",
  close: "Close the job",
  answer: "Ask the customer",
  calibrate: "Check the meter",
  note: "Note",
};

/** Ohms that leads and tips have no part in. */
export const FOUR_WIRES = "Milliohms, four wires";

/** Short words for an action that came without a headline of its own (a row's later checks, a free entry). */
export function actionWords(action: ActionView): string {
  if (action.do === "measure") {
    const mode =
      field(action, "wires") === "4" ? FOUR_WIRES : (MODE_WORDS[field(action, "mode") ?? ""] ?? "Measure");
    const part = field(action, "part");
    if (part !== null) return `${mode} of ${part}`;
    if (field(action, "mode") === "amps") return `${mode} fed into ${field(action, "red") ?? "?"}`;
    return `${mode}, red on ${field(action, "red") ?? "?"}, black on ${field(action, "black") ?? "?"}`;
  }
  if (action.do === "close") return `Close: ${verdictWords(field(action, "verdict") ?? "")}`;
  const at = Array.isArray(action.at) ? action.at.join(" and ") : null;
  const what = field(action, "part") ?? field(action, "place") ?? field(action, "stage") ?? at ?? "";
  return `${DO_WORDS[action.do] ?? action.do} ${what}`.trim();
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
    return new Intl.NumberFormat("en", {
      style: "currency",
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(amount);
  } catch {
    // A currency that is no ISO code (the terms take any word) is written after the number.
    return `${amount.toFixed(digits)} ${currency}`;
  }
}

export function minutes(amount: number): string {
  if (amount === 0) return "0 min";
  if (amount < 1) return `${Math.max(1, Math.round(amount * 60))} s`;
  return amount < 10 && !Number.isInteger(amount) ? `${amount.toFixed(1)} min` : `${Math.round(amount)} min`;
}

export function percent(probability: number): string {
  const hundred = probability * 100;
  if (hundred > 0 && hundred < 1) return "<1 %";
  if (hundred > 99 && hundred < 100) return ">99 %";
  return `${Math.round(hundred)} %`;
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
  if (unit === "V" || unit === "") return `${value.toFixed(Math.abs(value) < 10 ? 2 : 0)} ${unit}`.trim();
  if (value === 0) return `0 ${unit}`;
  const [scale, prefix] = SCALES.find(([size]) => Math.abs(value) >= size) ?? [1e-12, "p"];
  return `${Number((value / scale).toPrecision(3))} ${prefix}${unit}`;
}

/** A figure as a display of four digits has it, each update as wide as the last. */
export function displayed(value: number, unit: string): string {
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
  return from === to ? from : `${from} to ${to}`;
}

/** At most so many parts are named: the first weigh most. */
const MOST_ASSUMED_NAMED = 4;

/** "Rests on R12, R13 and 3 more, which nobody has seen." */
export function restsOnWords(parts: readonly string[]): string {
  const named = parts.slice(0, MOST_ASSUMED_NAMED).join(", ");
  const more = parts.length - MOST_ASSUMED_NAMED;
  return `Rests on ${named}${more > 0 ? ` and ${more} more` : ""}, which nobody has seen.`;
}
