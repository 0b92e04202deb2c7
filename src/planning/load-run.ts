/**
 * The run under load as steps that are weighed by what they tell. A short one with the customer's own load is done with every board before
 * it goes back; a dummy, clips at another place, more readings and a whole thermal cycle are done where what they find is worth their minutes.
 */

import type { Place, PowerEvent } from "../bench/event.ts";
import { staysOn } from "../bench/stays-on.ts";
import type { Board } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { loadEndShares } from "../priors/load-outcomes.ts";
import { minutesOf } from "./action-minutes.ts";
import { type Draft, dueProposal } from "./cards.ts";
import { expectations } from "./expectations.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { netGain, type Onward } from "./last-looks.ts";
import { bestClips, type Clips, clipAt, clippedOn, samePlaces } from "./live-clips.ts";
import { livePartition } from "./live-partition.ts";
import { liveProposal, momentWords } from "./live-proposal.ts";
import { LOAD_TEST, type LoadRun, lastLoadRun, testLoad } from "./load-test.ts";
import { minutesOfMotorGate, motorGate } from "./motor-first.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import { metersWords, withReadings } from "./power-meters.ts";
import { lastPower } from "./power-step.ts";
import type { RepairModel } from "./repair-model.ts";
import { type FindingStep, plainStep, toldBy } from "./steps.ts";
import { type LiveMeasure, warmthChecks } from "./warmth-checks.ts";

/** Any end but that it ran until it was switched off. */
const STOPPED: Onward = {
  minutes: LOAD_TEST.onwardMinutes,
  after: ({ word }) => word !== "runs",
};

/** The short run before a board goes back. */
export interface ShortRun {
  readonly step: FindingStep;
  /** money that it is worth, its own cost taken off */
  readonly net: number;
  /** any conscientious technician does it, whatever it is worth */
  readonly always: boolean;
  /** a hand goes inside for it: to wire up a dummy, to plug a motor back, or to clip the meters elsewhere */
  readonly inside: boolean;
}

/**
 * The short run as it is best done from here; null where the board has nothing to drive, or did not run on the mains.
 * @param proven - every store of charge is proven empty: the meters may be clipped anywhere
 */
export function shortRun(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  proven: boolean,
): ShortRun | null {
  const load = testLoad(input);
  const last = lastPower(input.board, input.timeline)?.entry.event;
  if (load === null || last?.do !== "power" || last.feed !== "mains") return null;
  const power: PowerEvent = { do: "power", feed: "mains", load };
  const always = load === "own";
  const run = (inside: boolean): ShortRun => {
    const stay = clippedOn(input.timeline);
    const stays = (places: Clips["places"]) => stay.some((pair) => samePlaces(pair, places));
    const clips = bestClips(input, hypotheses, power, inside ? () => true : stays);
    const meters = inside ? clips.map(({ places }) => places) : stay;
    const before =
      (load === "own" ? minutesOfMotorGate(input) : LOAD_TEST.dummyMinutes) +
      (inside && !proven ? model.proofMinutes : 0);
    const { power: on, unpower: off, measure } = model.minutes;
    const minutes = before + on + off + measure * meters.length;
    const step = plainStep(
      meters.length === 0 ? power : { ...power, meters },
      endsOf(input, hypotheses, LOAD_TEST.warmSeconds, clips),
      on,
      minutes,
    );
    return { step, net: netGain(step, model, hypotheses, STOPPED), always, inside };
  };
  if (proven || !always || motorGate(input) !== null) return run(true);
  const [here, elsewhere] = [run(false), run(true)];
  return elsewhere.net > here.net ? elsewhere : here;
}

/** The card of the short run. */
export function shortRunDraft(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  { step, inside }: ShortRun,
): Draft {
  const { action } = step;
  return {
    ...dueProposal(
      input,
      { action, row: [], why: whyShortRun(input.board, step, inside), expect: [] },
      model,
    ),
    expect: expectations(step, hypotheses, input.board, null),
  };
}

function whyShortRun(board: Board, { action }: FindingStep, inside: boolean): string {
  const { load, meters = [] } = action.do === "power" ? action : {};
  const moment = momentWords(LOAD_TEST.warmSeconds);
  const sentences = [
    typeof load === "number"
      ? said`It ran at idle, and that proves little: ${moment} with a dummy load of about ${`${load} W`} (three equal lamps in a star) show a boost that never starts, an inrush part left in the way, a supply that gives in.`
      : said`It ran at idle, and that proves little: ${moment} with its own load, held fast, show a boost that never starts, an inrush part left in the way, a supply that gives in.`,
  ];
  if (!inside) sentences.push(said`Nobody reaches inside: a meter that is clipped on stays where it is.`);
  else if (meters.length > 0)
    sentences.push(
      said`Clip the meter on first: ${metersWords(meters.map((places) => clipAt(board, places)))}.`,
    );
  if (load === "own" && [...board.parts.values()].some(({ kind }) => kind === "motor"))
    sentences.push(said`A motor that was unplugged goes back on only once every store is proven empty.`);
  sentences.push(said`Heatsink on, cover or barrier in place, then hands off.`);
  return sentences.join(" ");
}

/** P(end of a run of so many seconds, and what the clips show meanwhile | hypothesis). */
function endsOf(
  input: PlanningInput,
  hypotheses: Hypotheses,
  seconds: number,
  clips: readonly Clips[],
): Pick<FindingStep, "outcomes" | "shares"> {
  const { board, timeline } = input;
  const known = new Map<string, ReadonlyMap<string, number>>();
  const chances = hypotheses.list.map((hypothesis) => {
    const faults = faultsOf(hypothesis, hypotheses);
    const key = faults.join(",");
    const ends =
      known.get(key) ??
      loadEndShares(
        board,
        faults.map((f) => hypotheses.priors[f].fault),
        timeline.now.off,
        seconds,
      );
    known.set(key, ends);
    return ends;
  });
  const seen = [...(chances[0]?.keys() ?? [])];
  return withReadings(
    seen,
    chances.map((ends) => [...ends.values()]),
    clips,
  );
}

/** What is done while the board is on under load: its meters are read, then what else pays, then it is switched off; null elsewhere. */
export function whileUnderLoad(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
): Draft | null {
  const run = lastLoadRun(input.timeline);
  if (run === null || !run.on || !run.seen.every((word) => staysOn(word))) return null;
  const reading = unreadMeter(input.board, run) ?? payingReading(input, hypotheses, model, run);
  if (reading !== null) return liveProposal(input, reading, hypotheses, model);
  const runs = run.seen.length === 0 || run.seen.includes("runs");
  const seconds = runs && keepsOn(input, hypotheses, model) ? LOAD_TEST.endSeconds : LOAD_TEST.warmSeconds;
  const why =
    seconds === LOAD_TEST.warmSeconds
      ? said`Once it has run for ${momentWords(seconds)}, or stopped before: switch off, pull the plug, and write down what it did until then.`
      : said`What is doubted of it is worth the wait: let it get warm through, in sight, for ${momentWords(seconds)}, or until it stops: switch off, pull the plug, and write down what it did until then.`;
  return dueProposal(
    input,
    {
      action: { do: "unpower", afterPower: seconds },
      row: [],
      why,
      expect: [],
    },
    model,
  );
}

function wasRead({ readings }: LoadRun, { mode, red, black, part }: LiveMeasure): boolean {
  return readings.some(
    (one) => one.mode === mode && one.red === red && one.black === black && one.part === part,
  );
}

function unreadMeter(board: Board, run: LoadRun): LiveMeasure | null {
  const asked = (run.power.meters ?? []).map((pair) => volts(clipAt(board, pair).mode, pair));
  return asked.find((one) => !wasRead(run, one)) ?? null;
}

function volts(mode: "dcv" | "acv", [red, black]: readonly [Place, Place]) {
  return { do: "measure", mode, red, black, afterPower: LOAD_TEST.soonSeconds } as const;
}

/** A ripple at the clips or the warmth of a part, the one that is worth most for its minutes; null where none is worth them. */
function payingReading(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  run: LoadRun,
): LiveMeasure | null {
  const asked = [
    ...(run.power.meters ?? []).map((pair) => volts("acv", pair)),
    ...warmthChecks(input, hypotheses, LOAD_TEST.warmSeconds),
  ];
  let best: LiveMeasure | null = null;
  let most = PLANNING_RATES.leastGainMinutes * model.perMinute;
  for (const action of asked) {
    const partition = wasRead(run, action) ? null : livePartition(input, hypotheses, run.power, action);
    if (partition === null || partition.outcomes.length < 2) continue;
    const step = plainStep(action, toldBy(partition), model.minutes.measure);
    const net = netGain(step, model, hypotheses);
    if (net <= most) continue;
    most = net;
    best = action;
  }
  return best;
}

/** Is a whole thermal cycle worth its minutes beyond the short run? */
function keepsOn(input: PlanningInput, hypotheses: Hypotheses, model: RepairModel): boolean {
  const net = (afterPower: number): number => {
    const action = { do: "unpower", afterPower } as const;
    const told = endsOf(input, hypotheses, afterPower, []);
    const step = plainStep(action, told, minutesOf(input.board, input.timeline.now, action));
    return netGain(step, model, hypotheses, STOPPED);
  };
  const least = PLANNING_RATES.leastGainMinutes * model.perMinute;
  return net(LOAD_TEST.endSeconds) - net(LOAD_TEST.warmSeconds) > least;
}
