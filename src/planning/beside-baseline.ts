/**
 * The cold re-check held against what each part read before it went in. What lies across a part on the board can only lower a voltage in
 * diode mode or a resistance, and only raise a capacitance; so a reading on the wrong side of the baseline accuses the joint or the part, and
 * one on the right side is held against a good board. Physics of a passive circuit; the tolerances are from memory.
 */
import type { ColdMode, IncomingEvent, Reading } from "../bench/event.ts";
import { baselineOf } from "../bench/incoming.ts";
import { lastPowerUp } from "../bench/injection.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { READING_MODEL } from "../diagnosis/reading-model.ts";
import { said } from "../messages/said.ts";
import type { ColdCheck, Predictor } from "../meter/prediction.ts";
import { placeOf } from "./candidate-checks.ts";
import type { DueStep } from "./make-safe.ts";
import type { PlanningInput } from "./planning-input.ts";

/** Two readings of one part, warm from soldering and cold: this far apart they are the same. From memory. */
const SAME = {
  volts: 0.03,
  ohms: 0.5,
  farads: 1e-10,
  share: 0.05,
  /** spreads of a good board's reading */
  spreads: 3,
} as const;

export type Beside = "as before" | "as the board has it" | "lower" | "higher" | "short";

export interface BesideBaseline {
  readonly part: string;
  readonly check: ColdCheck;
  readonly before: Reading;
  /** null: not read again yet */
  readonly after: Reading | null;
  readonly says: Beside | null;
  /** how often it was read since the part went in */
  readonly times: number;
}

/** What a baseline reading is on the board: the same mode between the places of its pins; null where both are one net. */
export function checkOnBoard(
  board: Board,
  { now }: Pick<Timeline, "now">,
  { part: ref, mode, red, black }: IncomingEvent,
): ColdCheck | null {
  const part = board.parts.get(ref);
  if (part === undefined) return null;
  const check = { mode, red: placeOf(now, part, red), black: placeOf(now, part, black) };
  return check.red === check.black ? null : check;
}

/** Every baseline reading of the parts fitted since power was last on. */
export function besideBaseline(
  { board, timeline }: Pick<PlanningInput, "board" | "timeline">,
  predictor: Predictor,
): readonly BesideBaseline[] {
  const { entries } = timeline;
  const from = lastPowerUp(timeline) + 1;
  const fitted = new Map<string, number>();
  entries.forEach(({ event }, at) => {
    if (at >= from && event.do === "replace") fitted.set(event.part, at);
  });
  return [...fitted].flatMap(([part, at]) =>
    baselineOf(entries, part).flatMap((incoming): readonly BesideBaseline[] => {
      const check = checkOnBoard(board, timeline, incoming);
      if (check === null) return [];
      const probeOn = (place: string | undefined, pin: string, onBoard: string) =>
        place === onBoard || place === `${part}.${pin}`;
      const again = entries.slice(at + 1).flatMap(({ event }) => {
        const same =
          event.do === "measure" &&
          event.mode === check.mode &&
          probeOn(event.red, incoming.red, check.red) &&
          probeOn(event.black, incoming.black, check.black);
        return same ? [event.reading] : [];
      });
      const after = again.at(-1) ?? null;
      const before = incoming.reading;
      const says = after === null ? null : compared(check, before, after, predictor);
      return [{ part, check, before, after, says, times: again.length }];
    }),
  );
}

type Stretch = readonly [number, number];

/** What a reading leaves possible, in the mode's unit. */
function stretchOf(mode: ColdMode, reading: Reading): Stretch {
  const top = Number.POSITIVE_INFINITY;
  const { diodeZeroVolts, diodeHighVolts, ohmsZero, ohmsHigh, faradsZero, faradsHigh } = READING_MODEL;
  const [zero, high] =
    mode === "diode"
      ? [diodeZeroVolts, diodeHighVolts]
      : mode === "farads"
        ? [faradsZero, faradsHigh]
        : [ohmsZero, ohmsHigh];
  switch (reading) {
    case "OL":
      return [top, top];
    case "high":
    case "silent":
      return [high, top];
    case "junction":
      return [zero, high];
    case "zero":
    case "beep":
      return [0, zero];
    default:
      return [reading, reading];
  }
}

function tolerance(mode: ColdMode, reading: number): number {
  const least = mode === "diode" ? SAME.volts : mode === "farads" ? SAME.farads : SAME.ohms;
  return Number.isFinite(reading) ? Math.max(least, SAME.share * Math.abs(reading)) : least;
}

function compared(check: ColdCheck, before: Reading, after: Reading, predictor: Predictor): Beside {
  const { mode } = check;
  const [was, is] = [stretchOf(mode, before), stretchOf(mode, after)];
  const slack = Math.max(tolerance(mode, was[1]), tolerance(mode, is[1]));
  const higher = is[0] > was[1] + slack;
  if (!higher && !(is[1] < was[0] - slack)) return "as before";
  // what is put across a capacitor adds to it
  const possible = mode === "farads" ? higher : !higher;
  if (possible && onGoodBoard(check, is, predictor)) return "as the board has it";
  if (higher) return "higher";
  return mode !== "farads" && is[0] < READING_MODEL[mode === "diode" ? "diodeZeroVolts" : "ohmsZero"]
    ? "short"
    : "lower";
}

function onGoodBoard(check: ColdCheck, [low, high]: Stretch, predictor: Predictor): boolean {
  const good = predictor.predict(check, []);
  if (!good.solved) return false;
  if (good.shown === "OL" || good.shown === "silent") return high === Number.POSITIVE_INFINITY;
  const slack = SAME.spreads * good.spread + tolerance(check.mode, good.centre);
  return low <= good.centre + slack && high >= good.centre - slack;
}

const AMISS: Readonly<Record<Beside, string | null>> = {
  "as before": null,
  "as the board has it": null,
  lower: said`lower than before it went in and than the board explains: something lies across it, or it took harm`,
  higher: said`higher than before it went in, which nothing across it can do: a joint is poor, or it is another part`,
  short: said`a short where there was none before it went in: a bridge of solder, or it died in fitting`,
};

/** What is amiss with a reading that the part did not have before and the board does not explain; null where nothing is. */
export function amissWords({ says }: BesideBaseline): string | null {
  return says === null ? null : AMISS[says];
}

/** The first such reading is taken once more before power; null where there is none, or each was taken twice. */
export function baselineAgain(input: PlanningInput, predictor: Predictor): DueStep | null {
  const again = besideBaseline(input, predictor).find((one) => amissWords(one) !== null && one.times === 1);
  const amiss = again === undefined ? null : amissWords(again);
  if (again === undefined || amiss === null) return null;
  const { part, check } = again;
  return {
    action: { do: "measure", ...check },
    row: [],
    why: said`${part} reads ${amiss}. Take this one again before power, on clean metal.`,
    expect: [],
  };
}
