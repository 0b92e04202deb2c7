/** Power as a step to weigh: the next rung on the mains, with what may be seen and read, and what it risks. */
import { isWorkOn } from "../bench/dead-board.ts";
import type { Observed, Place, PowerEvent } from "../bench/event.ts";
import { isInjection, lastPowerUp } from "../bench/injection.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { type FeedSetup, feedSetup, outcomeChances } from "../priors/power-outcomes.ts";
import type { StageGroup } from "../priors/stage-groups.ts";
import type { PowerForecast } from "../safety/forecast.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { bestClips, clippedOn, samePlaces } from "./live-clips.ts";
import { signsPartition } from "./live-signs.ts";
import type { PlanningInput } from "./planning-input.ts";
import { FINE, mainsRung, nextOnMains, type Rung, rungOf, triedRungs } from "./power-ladder.ts";
import { clipsAlone, clipWords, STRAIGHT_ON, withReadings } from "./power-meters.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** Power is never tried only to find out when something breaks more often than this. From memory. */
export const BREAKS_MOST = 0.25;
/** The lamp is never left out where something breaks more often than this on the mains. From memory. */
const STRAIGHT_MOST = 0.06;
/** Nor after work on the path of the mains' power: solder bridges and parts put in wrong stand in no belief. Common practice. */
const POWER_PATH: ReadonlySet<string> = new Set<StageGroup>([
  "input",
  "inrush",
  "rectifier",
  "pfc",
  "bus",
  "inverter",
  "drive",
  "chopper",
  "supply",
]);
/** Power-ups of a board that is left as it is, for one more place each. From memory. */
const MOST_AS_IT_IS = 5;

/** The last power-up with what was seen, and whether the board has been worked on since; null: never powered here. */
export function lastPower(
  board: Board,
  timeline: Timeline,
): { readonly entry: TimelineEntry; readonly seen: readonly Observed[]; readonly changed: boolean } | null {
  // a low voltage fed into a dead rail is no power-up of the board
  const at = lastPowerUp(timeline);
  const entry = timeline.entries[at];
  if (entry === undefined || entry.event.do !== "power") return null;
  const { observed } = entry.event;
  const seen = observed === undefined ? [] : typeof observed === "string" ? [observed] : observed;
  const changed = timeline.entries.slice(at + 1).some(({ event: next }) => isWorkOn(board, next));
  return { entry, seen, changed };
}

/**
 * The next rung on the mains. The lamp is left out where hardly anything is believed left to break, what it could spare is worth less than
 * its minutes, and nobody has worked on the path of the power. Null where the board as it is has been powered that way already: doing it again tells nothing.
 */
function nextRung(input: PlanningInput, { perMinute, minutes }: RepairModel, risk: RiskOf): Rung | null {
  const next = nextOnMains(input);
  if (next?.id !== "E" || triedRungs(input.board, input.timeline).some(({ id }) => id === "E")) return next;
  const straight = mainsRung(input);
  const [lamp, mains] = [next, straight].map(({ action }) => risk(action));
  if (mains.anyBreaks > STRAIGHT_MOST || workedOnPowerPath(input)) return next;
  const lampMoney = (minutes.power + minutes.unpower + minutes.measure) * perMinute;
  const spares = mains.lossMoney - lamp.lossMoney;
  return spares < lampMoney ? straight : next;
}

function workedOnPowerPath({ board, timeline }: PlanningInput): boolean {
  const { groupOf } = viewOf(board);
  return timeline.entries.some(({ event }) => {
    if (!isWorkOn(board, event)) return false;
    const ref = "part" in event ? event.part : "place" in event ? pinOfPlace(event.place)?.ref : undefined;
    // a stage cleaned as a whole may be any
    return ref === undefined || POWER_PATH.has(groupOf.get(ref) ?? "other");
  });
}

/** What a power-up would break. */
type RiskOf = (power: PowerEvent) => Pick<PowerForecast, "anyBreaks" | "lossMoney">;

/** Power-up as a step that finds something out. */
export interface PowerFinding {
  readonly rung: Rung;
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
  risk: RiskOf,
  straightOn: boolean,
): PowerFinding | null {
  const fresh = nextRung(input, model, risk);
  const rung = fresh ?? powerAgain(input);
  if (rung === null) return null;
  const { action } = rung;
  const { anyBreaks, lossMoney } = risk(action);
  if (anyBreaks > BREAKS_MOST) return null;
  const clips = bestClips(input, hypotheses, action, clipsLeft(input, straightOn, fresh === null));
  if (fresh === null && clips.length === 0) return null;
  const told =
    fresh === null
      ? clipsAlone(clips)
      : withReadings(...seenAt(input, hypotheses, action), clips, signsPartition(input, hypotheses, action));
  const step: FindingStep = {
    ...told,
    ...powerMinutes(model),
    action: clips.length === 0 ? action : { ...action, meters: clips.map(({ places }) => places) },
    allMinutes: powerMinutes(model).allMinutes + model.minutes.measure * clips.length,
    lossMoney,
    lead: straightOn ? STRAIGHT_ON : clipWords(clips, rung.id === "E"),
  };
  return { rung, step, again: fresh === null };
}

/** What every power-up takes, its safe ending included. */
export function powerMinutes({
  proofMinutes,
  minutes: { power, unpower },
}: RepairModel): Pick<FindingStep, "row" | "minutes" | "allMinutes" | "inHand"> {
  return { row: [], minutes: power, allMinutes: power + unpower + proofMinutes, inHand: null };
}

/** What may be seen at this power-up, and P(seen | hypothesis), one list a hypothesis. */
export function seenAt(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
): [seen: readonly string[], chances: readonly (readonly number[])[]] {
  const setup = feedSetup(power, input.timeline.now.off);
  return [[...outcomeChances(input.board, [], setup).keys()], seenChances(input, hypotheses, setup)];
}

/** The last feed once more, where the board stood it and stays as it is: for a meter at another place. */
function powerAgain({ board, timeline }: PlanningInput): Rung | null {
  const last = lastPower(board, timeline);
  if (last === null || last.changed || last.entry.event.do !== "power") return null;
  const stood = last.seen.length > 0 && last.seen.every((seen) => FINE.has(seen));
  if (!stood || powersAsItIs(board, timeline).length >= MOST_AS_IT_IS) return null;
  const { feed, watts } = last.entry.event;
  if (feed === "bench") return null;
  const action: PowerEvent = watts === undefined ? { do: "power", feed } : { do: "power", feed, watts };
  return { id: rungOf(board, timeline.now, action), action };
}

/** The power-ups since the board was last worked on. */
function powersAsItIs(board: Board, { entries }: Timeline): readonly PowerEvent[] {
  const since = entries.slice(entries.findLastIndex(({ event }) => isWorkOn(board, event)) + 1);
  return since.flatMap(({ event }) => (event.do === "power" && !isInjection(event) ? [event] : []));
}

/**
 * Which pairs may be clipped: all of them; where the board goes straight on, those that are clipped already; at a second look, those that
 * have not been read yet; where nothing showed behind the lamp that the bus stands, the bus.
 */
function clipsLeft(
  { board, timeline }: PlanningInput,
  straightOn: boolean,
  again: boolean,
): (places: readonly [Place, Place]) => boolean {
  const { bus } = viewOf(board).roles;
  if (triedRungs(board, timeline).at(-1)?.came === "unread")
    return (places) => bus !== null && samePlaces(places, [bus.plus, bus.minus]);
  const powers = powersAsItIs(board, timeline);
  if (straightOn) {
    const stay = clippedOn(timeline);
    return (places) => stay.some((pair) => samePlaces(pair, places));
  }
  const done = again ? powers.flatMap(({ meters }) => meters ?? []) : [];
  return (places) => !done.some((pair) => samePlaces(pair, places));
}

/**
 * From the lamp straight on to the mains: the lamp showed nothing hard and the bus stands at its volts, power is off, and nobody has reached
 * inside since. Clips stay where they are, and nothing has to be proven empty for it.
 */
export function goesStraightOn(board: Board, timeline: Timeline): boolean {
  if (timeline.now.powered) return false;
  const last = triedRungs(board, timeline).at(-1);
  if (last?.id !== "E" || last.came !== "passed") return false;
  return timeline.entries
    .slice(lastPowerUp(timeline) + 1)
    .every(({ event, before }) => event.do === "unpower" || (event.do === "measure" && before.powered));
}

function seenChances(
  { board }: PlanningInput,
  hypotheses: Hypotheses,
  setup: FeedSetup,
): readonly (readonly number[])[] {
  const known = new Map<string, readonly number[]>();
  return hypotheses.list.map((hypothesis) => {
    const faults = faultsOf(hypothesis, hypotheses);
    const key = faults.join(",");
    const found =
      known.get(key) ??
      chancesOf(
        board,
        faults.map((f) => hypotheses.priors[f].fault),
        setup,
      );
    known.set(key, found);
    return found;
  });
}

function chancesOf(board: Board, faults: readonly Fault[], setup: FeedSetup): readonly number[] {
  return [...outcomeChances(board, faults, setup).values()];
}
