/**
 * Has the figure come to rest? While a capacitor charges through the meter the display climbs; a check wants the figure at rest, or the one
 * two seconds after touching with the word that it still climbs. Both come out of the run of readings alone.
 */
import type { MeasureMode } from "../bench/event.ts";
import { isColdMode } from "../bench/words.ts";
import type { Sourced } from "../units/mark.ts";
import type { InstrumentReading } from "./instrument-reading.ts";

interface SettlingRule extends Sourced {
  readonly figure: number;
}

/** Every figure of the rule. */
export const SETTLING_RULES = {
  climbingSeconds: {
    id: "climbing after",
    figure: 2,
    mark: "common practice",
    words: "seconds after touching at which a climbing figure is read: docs/formats.md, `settling`",
  },
  restSeconds: {
    id: "at rest for",
    figure: 0.8,
    mark: "from memory",
    words:
      "seconds that a display is watched before its figure is called still: two or three updates of a hand-held meter",
  },
  restShare: {
    id: "share of the figure",
    figure: 0.005,
    mark: "from memory",
    words: "a still figure moves by no more than the half per cent that such meters are specified to",
  },
  freshShare: {
    id: "a new touch",
    figure: 0.1,
    mark: "from memory",
    words: "a charging capacitor only climbs: a figure that falls by a tenth is another pair of places",
  },
} as const satisfies Readonly<Record<string, SettlingRule>>;

/** What the last digits of a display of 2,000 to 6,000 counts flicker by, in the unit of the mode. */
const FLICKER: Readonly<Record<MeasureMode, number>> = {
  diode: 0.003,
  continuity: 0.3,
  ohms: 0.3,
  farads: 2e-11,
  dcv: 0.02,
  acv: 0.3,
  amps: 0.005,
  temperature: 0.3,
};

export type Settling =
  /** nothing to take yet */
  | { readonly state: "moving" }
  /** at rest: the figure may be taken */
  | { readonly state: "settled" }
  /** still rising two seconds after touching; what it showed then */
  | { readonly state: "climbing"; readonly atTwoSeconds: number };

interface Sample {
  readonly seconds: number;
  readonly value: number;
}

/** Follows the figures of one instrument. Time is handed in: seconds on any clock that only goes forward. */
export class SettlingWatch {
  #samples: Sample[] = [];
  #setTo = "";
  /** the word shown in place of a figure, and since when */
  #word: { readonly shown: string; readonly since: number } | null = null;
  /** the probes were seen to touch: before the first sample there was an open display, or another figure */
  #touchSeen = false;
  #touches = 0;

  /** Grows by one whenever the probes are put to another pair of places, as far as the figures tell. */
  get touches(): number {
    return this.#touches;
  }

  take({ value, setTo, modes }: InstrumentReading, seconds: number): Settling {
    const mode = modes[0] ?? null;
    if (setTo !== this.#setTo) this.#begin(setTo, false);
    if (typeof value !== "number") return this.#takeWord(value, seconds);
    const flicker = mode === null ? 0 : FLICKER[mode];
    if (this.#word !== null || this.#fell(value, flicker)) this.#begin(setTo, true);
    this.#samples.push({ seconds, value });
    return this.#judge(flicker, mode !== null && isColdMode(mode));
  }

  #takeWord(shown: string, seconds: number): Settling {
    if (this.#word === null || this.#word.shown !== shown) {
      if (this.#word === null) this.#touches++;
      this.#word = { shown, since: seconds };
      this.#samples = [];
    }
    return { state: seconds - this.#word.since >= SETTLING_RULES.restSeconds.figure ? "settled" : "moving" };
  }

  #begin(setTo: string, touchSeen: boolean): void {
    this.#setTo = setTo;
    this.#samples = [];
    this.#word = null;
    this.#touchSeen = touchSeen;
    this.#touches++;
  }

  #fell(value: number, flicker: number): boolean {
    const last = this.#samples.at(-1)?.value;
    if (last === undefined) return false;
    const fall = Math.abs(last) - Math.abs(value);
    return fall > Math.max(SETTLING_RULES.freshShare.figure * Math.abs(last), 3 * flicker);
  }

  #judge(flicker: number, cold: boolean): Settling {
    const now = this.#samples.at(-1);
    const first = this.#samples[0];
    if (now === undefined || first === undefined) return { state: "moving" };
    const from = now.seconds - SETTLING_RULES.restSeconds.figure;
    // what stood at the beginning of the figures counts too
    const begin = this.#samples.findLastIndex(({ seconds }) => seconds <= from);
    const figures = this.#samples.slice(Math.max(begin, 0)).map(({ value }) => value);
    const span = Math.max(...figures) - Math.min(...figures);
    const band = Math.max(2 * flicker, SETTLING_RULES.restShare.figure * Math.abs(now.value));
    if (begin >= 0 && span <= band) return { state: "settled" };
    const due = first.seconds + SETTLING_RULES.climbingSeconds.figure;
    const rising = Math.abs(now.value) > Math.abs(figures[0] ?? now.value);
    if (!cold || !this.#touchSeen || !rising || now.seconds < due) return { state: "moving" };
    return { state: "climbing", atTwoSeconds: valueAt(this.#samples, due) };
  }
}

/** The figure at a moment, on the line between the samples around it. */
function valueAt(samples: readonly Sample[], seconds: number): number {
  const after = samples.find((sample) => sample.seconds >= seconds);
  const before = samples.findLast((sample) => sample.seconds <= seconds);
  if (after === undefined || before === undefined || after === before)
    return (after ?? before)?.value ?? Number.NaN;
  const share = (seconds - before.seconds) / (after.seconds - before.seconds);
  return Number((before.value + share * (after.value - before.value)).toPrecision(4));
}
