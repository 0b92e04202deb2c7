import type {
  CalibrateEvent,
  ColdMode,
  JobEvent,
  LookEvent,
  MeasureEvent,
  Observed,
  PowerEvent,
  Reading,
} from "../bench/event.ts";
import { isInjection, lastPowerUp } from "../bench/injection.ts";
import { railAtPins } from "../bench/rail-at-pins.ts";
import { staysOn } from "../bench/stays-on.ts";
import type { Timeline } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { liveStates, liveWhenPowered } from "../live/live-of-log.ts";
import { signChance, signsOf } from "../live/signs.ts";
import { said } from "../messages/said.ts";
import type { MakePredictor } from "../meter/prediction.ts";
import { findingChances } from "../priors/look-findings.ts";
import { boardEffect } from "../priors/power-effects.ts";
import { MOTOR_INSULATION } from "../priors/told.ts";
import { restVolts } from "./charge.ts";
import {
  endAt,
  faultsAfter,
  faultsUnderPower,
  observedAt,
  outOfCircuit,
  type PracticeJob,
} from "./hidden-course.ts";
import type { HiddenFault } from "./hide-faults.ts";
import { liveAnswer } from "./live-answer.ts";
import { noisyReading } from "./meter-noise.ts";
import { alongRailOhms, injectionSights } from "./rail-answer.ts";
import { drawOne, normalDeviate, seededRandom } from "./seeded-random.ts";

/** An event whose outcome the practice bench is asked for. */
export type Asked =
  | Omit<MeasureEvent, "reading">
  | Omit<LookEvent, "finding">
  | Omit<PowerEvent, "observed">
  | Omit<CalibrateEvent, "reading">
  | Exclude<JobEvent, MeasureEvent | LookEvent | PowerEvent | CalibrateEvent>;

/** The event with its outcome, or one sentence why this bench has none. */
export type Answer =
  | { readonly ok: true; readonly event: JobEvent }
  | { readonly ok: false; readonly problem: string };

/** Seconds after touching at which a climbing reading is taken: the file format's rule. */
const CLIMBING_SECONDS = 2;

/**
 * What the hidden board shows for an event that would be appended to the log of `timeline`. A pure function of the job, its
 * seed and the log: asked again it answers alike, on any machine.
 */
export function answer(
  practice: PracticeJob,
  timeline: Timeline,
  asked: Asked,
  makePredictor: MakePredictor,
): Answer {
  const present = faultsAfter(practice, timeline);
  switch (asked.do) {
    case "measure":
      return answerMeasure(practice, timeline, asked, present, makePredictor);
    case "look":
      return answerLook(practice, asked, present);
    case "power": {
      const on = isInjection(asked) ? present : faultsUnderPower(practice, timeline, asked);
      const seen = seenAtPower(practice, timeline, asked, on);
      const only = seen.length === 1 ? seen[0] : undefined;
      const signs = signsAtPower(practice, timeline, asked, on, seen);
      return { ok: true, event: { ...asked, observed: only ?? seen, ...signs } };
    }
    case "unpower": {
      const seen = endAt(practice, present, timeline, asked.afterPower);
      return { ok: true, event: seen === null ? asked : { ...asked, observed: seen } };
    }
    case "calibrate": {
      const reading = asked.known * (1 + METER_SHARE * meterError(practice.seed));
      return { ok: true, event: { ...asked, reading: Number(reading.toPrecision(4)) } };
    }
    case "answer":
      // the motors of practice boards hold to earth; what is wrong with them shows in their windings
      return {
        ok: true,
        event:
          asked.question === MOTOR_INSULATION.question ? { ...asked, answer: MOTOR_INSULATION.good } : asked,
      };
    default:
      return { ok: true, event: asked };
  }
}

function seenAtPower(
  practice: PracticeJob,
  timeline: Timeline,
  asked: Omit<PowerEvent, "observed">,
  present: readonly HiddenFault[],
): readonly Observed[] {
  if (isInjection(asked)) {
    const faults = present.map(({ fault }) => fault);
    return injectionSights(practice.job.board, timeline, asked, faults);
  }
  const off = outOfCircuit({ before: timeline.now });
  return observedAt(practice, present, asked, off, nextIndex(timeline));
}

/** What comes on by itself, where the board stays on long enough to be looked at; nothing for a low voltage into a dead rail. */
function signsAtPower(
  { job: { board }, seed }: PracticeJob,
  timeline: Timeline,
  asked: Omit<PowerEvent, "observed">,
  present: readonly HiddenFault[],
  seen: readonly Observed[],
): Pick<PowerEvent, "signs"> {
  if (isInjection(asked) || !seen.every(staysOn)) return {};
  const bench = { ...timeline.now, powered: true };
  const state = liveStates(board, bench, asked).state(present.map(({ fault }) => fault));
  const signs = signsOf(board).flatMap((sign): [string, boolean][] => {
    const given = state.givesSign(sign);
    if (given === null) return [];
    const random = seededRandom(seed, `sign ${sign.part} ${given}`);
    return [[sign.part, random() < signChance(sign.kind, true, given)]];
  });
  return signs.length === 0 ? {} : { signs: Object.fromEntries(signs) };
}

/** Gain error of the practice meter, one standard deviation. `from memory`. */
const METER_SHARE = 0.01;

const meterError = (seed: number): number => normalDeviate(seededRandom(seed, "meter"));

/** The log index that the next event gets, as far as the events that count tell. */
function nextIndex(timeline: Timeline): number {
  return (timeline.entries.at(-1)?.logIndex ?? -1) + 1;
}

function answerMeasure(
  practice: PracticeJob,
  timeline: Timeline,
  asked: Omit<MeasureEvent, "reading">,
  present: readonly HiddenFault[],
  makePredictor: MakePredictor,
): Answer {
  const { mode, red, black } = asked;
  if (!isColdMode(mode) && timeline.now.powered) {
    const bench = {
      board: practice.job.board,
      seed: practice.seed,
      meterShare: METER_SHARE * meterError(practice.seed),
    };
    const faults = present.map(({ fault }) => fault);
    const live = liveAnswer(bench, timeline, { ...asked, mode }, faults);
    return live.ok ? filled(asked, live.reading) : live;
  }
  if (red === undefined || black === undefined)
    return { ok: false, problem: said`the practice bench has no answer to ${mode} without two places` };
  if (mode === "dcv") return restingVolts(practice, timeline, asked, red, black, present);
  if (!isColdMode(mode)) return { ok: false, problem: said`the practice bench has no answer to ${mode}` };
  if (timeline.now.powered)
    return { ok: false, problem: said`${mode} is a cold mode; unpower the board first` };
  const { job, seed } = practice;
  const predictor = makePredictor(job.board, timeline.now, job.meter);
  const check = { mode: mode satisfies ColdMode, red, black };
  const predicted = predictor.predict(
    asked.settling === "climbing" ? { ...check, seconds: CLIMBING_SECONDS } : check,
    present.map(({ fault }) => fault),
  );
  if (!predicted.solved) return { ok: false, problem: said`no reading: ${predicted.why}` };
  const random = seededRandom(seed, `read ${mode} ${red} ${black} ${nextIndex(timeline)}`);
  const along = railAtPins(job.board, timeline.now, asked);
  if (along !== null && Number.isFinite(predicted.raw)) {
    const faults = present.map(({ fault }) => fault);
    return filled(asked, alongRailOhms(along, predicted.raw, faults, seed, random));
  }
  return filled(asked, noisyReading(mode, predicted, job.meter, meterError(seed), random));
}

function filled(asked: Omit<MeasureEvent, "reading">, reading: Reading): Answer {
  return { ok: true, event: { ...asked, reading } };
}

/** From switching off to the first touch of a lead, seconds. `from memory`. */
const TOUCH_SECONDS = 40;

/** What the last power-up has left on the bus; null where there was none. A low voltage into a dead rail leaves nothing there. */
function leftOnBus(board: Board, timeline: Timeline, faults: readonly Fault[]): number | null {
  const until = { ...timeline, entries: timeline.entries.slice(0, lastPowerUp(timeline) + 1) };
  return liveWhenPowered(board, until, faults)?.busAfter(TOUCH_SECONDS) ?? null;
}

/** DC volts at rest: what charge is left. */
function restingVolts(
  { job, seed }: PracticeJob,
  timeline: Timeline,
  asked: Omit<MeasureEvent, "reading">,
  red: string,
  black: string,
  present: readonly HiddenFault[],
): Answer {
  const faults = present.map(({ fault }) => fault);
  const effect = boardEffect(job.board, faults, outOfCircuit({ before: timeline.now }));
  const shorted = effect === "bus-short" || effect === "bus-leak";
  const left = leftOnBus(job.board, timeline, faults);
  return filled(asked, Number(restVolts(job.board, timeline, seed, red, black, shorted, left).toFixed(2)));
}

function answerLook(
  { job, seed }: PracticeJob,
  asked: Omit<LookEvent, "finding">,
  present: readonly HiddenFault[],
): Answer {
  const part = job.board.parts.get(asked.part);
  if (part === undefined) return { ok: false, problem: said`there is no part ${asked.part}` };
  const nets = new Set(part.pins.values());
  const own = present.filter(({ fault }) =>
    fault.of === "part" ? fault.part === part.ref : fault.nets.every((net) => nets.has(net)),
  );
  const chances = [
    ...findingChances(
      part,
      own.map(({ fault }) => fault),
      job.cause,
    ),
  ];
  const salt = `look ${part.ref} ${own.map(({ row }) => row).join(",")}`;
  const finding = drawOne(
    chances.map(([word]) => word),
    chances.map(([, chance]) => chance),
    seededRandom(seed, salt),
  );
  return { ok: true, event: { ...asked, finding: finding ?? "clean" } };
}
