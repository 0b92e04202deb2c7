import { isWork } from "../bench/dead-board.ts";
import type { Observed, Place, PowerEvent } from "../bench/event.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Fault } from "../board/fault.ts";
import { MINUTES } from "../money/minutes.ts";
import { outcomeChances } from "../priors/power-outcomes.ts";
import { lastPowerIndex } from "../safety/discharge.ts";
import type { PowerForecast } from "../safety/forecast.ts";
import { IDLE_WATTS, lampFor } from "../safety/limiter.ts";
import { type Outcome, refine, shownAs } from "./check-outcomes.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { bestClips, type Clips, clippedOn, samePlaces, staysOn } from "./live-clips.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import { type FindingStep, partitionShares } from "./steps.ts";

/** What a lamp shows where nothing hard is wrong (common practice). */
const LAMP_FINE: ReadonlySet<Observed> = new Set(["quiet", "lamp-dark", "lamp-dim", "runs"]);
/** Power is never tried only to find out when something breaks more often than this. From memory. */
const BREAKS_MOST = 0.25;
/** Power-ups of a board that is left as it is, for one more place each. From memory. */
const MOST_AS_IT_IS = 5;

/** The last power-up with what was seen, and whether the board has been worked on since; null: never powered here. */
export function lastPower(
  timeline: Timeline,
): { readonly entry: TimelineEntry; readonly seen: readonly Observed[]; readonly changed: boolean } | null {
  const at = lastPowerIndex(timeline);
  const entry = timeline.entries[at];
  if (entry === undefined || entry.event.do !== "power") return null;
  const { observed } = entry.event;
  const seen = observed === undefined ? [] : typeof observed === "string" ? [observed] : observed;
  return { entry, seen, changed: timeline.entries.slice(at + 1).some(({ event }) => isWork(event.do)) };
}

/**
 * The next power-up this bench can do: the lamp first where it has one, mains once the lamp showed nothing hard. Null where the
 * board as it is has been powered that way already: doing it again tells nothing.
 */
export function powerAction({ timeline, equipment }: PlanningInput): Action | null {
  const lamp = lampFor(equipment, IDLE_WATTS);
  const last = lastPower(timeline);
  const start: Action =
    lamp === null ? { do: "power", feed: "mains" } : { do: "power", feed: "lamp", watts: lamp.watts };
  if (last === null || last.changed || last.entry.event.do !== "power") return start;
  const fine = last.seen.length > 0 && last.seen.every((seen) => LAMP_FINE.has(seen));
  return last.entry.event.feed === "lamp" && fine ? { do: "power", feed: "mains" } : null;
}

/**
 * Why power comes now: through the lamp first, on the mains when the lamp showed nothing hard.
 * @param lead - where the meters go first; null where no place is better than another
 */
export function whyPower({ timeline }: PlanningInput, lead: string | null): string {
  const last = lastPower(timeline);
  const afterLamp =
    last !== null && !last.changed && last.entry.event.do === "power" && last.entry.event.feed === "lamp";
  const again = last !== null && !last.changed && !afterLamp;
  const reason = afterLamp
    ? "The lamp showed nothing hard, and it passes too little to prove the board."
    : again
      ? "The board bears power and shows no more by itself: once more, with the meter at another place."
      : "No cold check left is worth its minutes; power says more.";
  return `${reason} Motor unplugged where it can be. ${lead ?? "Clip the meters on first."} Then hands off.`;
}

/** Power-up as a step that finds something out. */
export interface PowerFinding {
  readonly step: FindingStep;
  /** the board is as it was at the last power-up: only the places of the meters are others, and it will not run this time either */
  readonly again: boolean;
}

/**
 * Power-up at its own risk, with the meters clipped where they will tell most: what is seen and what the meters then show follow from the
 * faults present, and what breaks is charged to it. Where the board as it is has been powered that way already, the same once more for
 * another place. Null where that tells nothing, or where more than a quarter of the belief says that something breaks.
 * @param risk - what each power-up would break
 * @param straightOn - the clips stay where the last power-up had them
 */
export function powerFinding(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  risk: (power: PowerEvent) => Pick<PowerForecast, "anyBreaks" | "lossMoney">,
  straightOn: boolean,
): PowerFinding | null {
  const fresh = powerAction(input);
  const action = fresh ?? powerAgain(input);
  if (action === null || action.do !== "power") return null;
  const { anyBreaks, lossMoney } = risk(action);
  if (anyBreaks > BREAKS_MOST) return null;
  const clips = bestClips(input, hypotheses, action, clipsLeft(input, straightOn, fresh === null));
  if (fresh === null && clips.length === 0) return null;
  const chances = fresh === null ? null : seenChances(input, hypotheses, action);
  const seen = [...outcomeChances(input.board, [], setUp(input, action)).keys()];
  const told = chances === null ? clipsAlone(clips) : withReadings(seen, chances, clips);
  const step: FindingStep = {
    ...told,
    action: clips.length === 0 ? action : { ...action, meters: clips.map(({ places }) => places) },
    row: [],
    minutes: MINUTES.power,
    allMinutes: MINUTES.power + MINUTES.unpower + model.proofMinutes + MINUTES.measure * clips.length,
    inHand: null,
    lossMoney,
    lead: straightOn ? STRAIGHT_ON : clips.length === 0 ? null : clipWords(clips),
  };
  return { step, again: fresh === null };
}

/** The last feed once more, where the board stood it and stays as it is: for a meter at another place. */
function powerAgain({ timeline }: PlanningInput): Action | null {
  const last = lastPower(timeline);
  if (last === null || last.changed || last.entry.event.do !== "power") return null;
  const stood = last.seen.length > 0 && last.seen.every((seen) => LAMP_FINE.has(seen));
  if (!stood || powersAsItIs(timeline).length >= MOST_AS_IT_IS) return null;
  const { feed, watts } = last.entry.event;
  if (feed === "bench") return null;
  return watts === undefined ? { do: "power", feed } : { do: "power", feed, watts };
}

/** The power-ups since the board was last worked on. */
function powersAsItIs({ entries }: Timeline): readonly PowerEvent[] {
  const since = entries.slice(entries.findLastIndex(({ event }) => isWork(event.do)) + 1);
  return since.flatMap(({ event }) => (event.do === "power" ? [event] : []));
}

/**
 * Which pairs may be clipped: all of them; where the board goes straight on, those that are clipped already; at a second look, those that
 * have not been read yet.
 */
function clipsLeft(
  { timeline }: PlanningInput,
  straightOn: boolean,
  again: boolean,
): (places: readonly [Place, Place]) => boolean {
  const powers = powersAsItIs(timeline);
  if (straightOn) {
    const stay = clippedOn(timeline);
    return (places) => stay.some((pair) => samePlaces(pair, places));
  }
  const done = again ? powers.flatMap(({ meters }) => meters ?? []) : [];
  return (places) => !done.some((pair) => samePlaces(pair, places));
}

/**
 * From the lamp straight on to the mains: the lamp showed nothing hard, power is off, and nobody has reached inside since. Clips stay where
 * they are, and nothing has to be proven empty for it.
 */
export function goesStraightOn(timeline: Timeline): boolean {
  const last = lastPower(timeline);
  if (last === null || timeline.now.powered || last.entry.event.do !== "power") return false;
  if (last.entry.event.feed !== "lamp" || last.seen.length === 0) return false;
  if (!last.seen.every((seen) => LAMP_FINE.has(seen))) return false;
  return timeline.entries
    .slice(lastPowerIndex(timeline) + 1)
    .every(({ event, before }) => event.do === "unpower" || (event.do === "measure" && before.powered));
}

function setUp({ timeline }: PlanningInput, { feed }: PowerEvent) {
  return { feed, off: timeline.now.off };
}

function clipsAlone(clips: readonly Clips[]): Pick<FindingStep, "outcomes" | "shares"> {
  const [first, ...rest] = clips.map(({ partition }) => partition);
  if (first === undefined) return { outcomes: [], shares: [] };
  const joint = rest.reduce(refine, first);
  return { outcomes: joint.outcomes, shares: partitionShares(joint) };
}

/** P(seen | hypothesis), one list a hypothesis. */
function seenChances(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
): readonly (readonly number[])[] {
  const known = new Map<string, readonly number[]>();
  return hypotheses.list.map((hypothesis) => {
    const faults = faultsOf(hypothesis, hypotheses);
    const key = faults.join(",");
    const found =
      known.get(key) ??
      chancesOf(
        input.board,
        faults.map((f) => hypotheses.priors[f].fault),
        setUp(input, power),
      );
    known.set(key, found);
    return found;
  });
}

const STRAIGHT_ON = "Nobody reaches inside: the meter, if one is clipped on, stays where it is.";

function clipWords(clips: readonly Clips[]): string {
  const where = clips.map(({ places: [red, black], what }) => `red on ${red}, black on ${black} (${what})`);
  return `Clip the meter on first, DC volts: ${where.join("; second meter ")}. What it shows tells most.`;
}

/** What is seen, and where the board stays on, what the meters then show: outcomes of both together. */
export function withReadings(
  seen: readonly string[],
  chances: readonly (readonly number[])[],
  clips: readonly Clips[],
): Pick<FindingStep, "outcomes" | "shares"> {
  const [first, ...rest] = clips.map(({ partition }) => partition);
  const joint = first === undefined ? null : rest.reduce(refine, first);
  const outcomes: Outcome[] = [];
  const shares: Float64Array[] = [];
  const add = (word: string, share: (h: number) => number): void => {
    const row = Float64Array.from(chances, (_, h) => share(h));
    if (row.every((one) => one === 0)) return;
    outcomes.push({ word, low: null, high: null });
    shares.push(row);
  };
  seen.forEach((word, o) => {
    if (joint === null || !staysOn(word)) add(word, (h) => chances[h][o]);
    else
      joint.outcomes.forEach((outcome, c) => {
        add(`${word}, then ${shownAs(outcome)} V`, (h) => (joint.classOf[h] === c ? chances[h][o] : 0));
      });
  });
  return { outcomes, shares };
}

function chancesOf(
  board: PlanningInput["board"],
  faults: readonly Fault[],
  setup: Parameters<typeof outcomeChances>[2],
): readonly number[] {
  return [...outcomeChances(board, faults, setup).values()];
}
