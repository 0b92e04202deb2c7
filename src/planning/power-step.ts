import type { Observed, PowerEvent } from "../bench/event.ts";
import { lastPowerUp } from "../bench/injection.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Fault } from "../board/fault.ts";
import { faultNameWords } from "../board/fault-words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { MINUTES } from "../money/minutes.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { outcomeChances } from "../priors/power-outcomes.ts";
import { forecastPower } from "../safety/forecast.ts";
import { firstFeed } from "../safety/limiter.ts";
import { type Outcome, refine, shownAs } from "./check-outcomes.ts";
import { percent } from "./faults-in-words.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { bestClips, type Clips, staysOn } from "./live-clips.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action, Forecast } from "./proposal.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

const CHANGES: ReadonlySet<string> = new Set([
  "replace",
  "remove",
  "restore",
  "lift",
  "refit",
  "clean",
  "resolder",
]);
/** What a lamp shows where nothing hard is wrong (common practice). */
const LAMP_FINE: ReadonlySet<Observed> = new Set(["quiet", "lamp-dark", "lamp-dim", "runs"]);
/** Power is never tried only to find out when something breaks more often than this. From memory. */
const BREAKS_MOST = 0.25;
const BREAK_LEAST = 0.005;
const MOST_BREAKS = 6;

/** The last power-up with what was seen, and whether the board has been worked on since; null: never powered here. */
export function lastPower(
  timeline: Timeline,
): { readonly entry: TimelineEntry; readonly seen: readonly Observed[]; readonly changed: boolean } | null {
  // a low voltage fed into a dead rail is no power-up of the board
  const at = lastPowerUp(timeline);
  const entry = timeline.entries[at];
  if (entry === undefined || entry.event.do !== "power") return null;
  const { observed } = entry.event;
  const seen = observed === undefined ? [] : typeof observed === "string" ? [observed] : observed;
  return { entry, seen, changed: timeline.entries.slice(at + 1).some(({ event }) => CHANGES.has(event.do)) };
}

/**
 * The next power-up this bench can do: the lamp first where it has one, mains once the lamp showed nothing hard. Null where the
 * board as it is has been powered that way already: doing it again tells nothing.
 */
export function powerAction({ timeline, equipment }: PlanningInput): Action | null {
  const first = firstFeed(equipment);
  const last = lastPower(timeline);
  const start: Action =
    first.feed === "lamp" && first.watts !== null
      ? { do: "power", feed: "lamp", watts: first.watts }
      : { do: "power", feed: "mains" };
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
  const reason = afterLamp
    ? "The lamp showed nothing hard, and it passes too little to prove the board."
    : "No cold check left is worth its minutes; power says more.";
  return `${reason} Motor unplugged where it can be. ${lead ?? "Clip the meters on first."} Then hands off.`;
}

/** The forecast shown with every power-up. */
export function powerForecast(
  input: PlanningInput,
  belief: Belief,
  priors: PriorTable,
  action: Action,
): Forecast {
  const { anyBreaks, breaks } = forecastPower(belief, priors, input.timeline.now.off);
  const lampPassed =
    action.do === "power" && action.feed === "mains" && firstFeed(input.equipment).feed === "lamp";
  return {
    anyBreaks,
    breaks: breaks
      .filter(({ probability }) => probability >= BREAK_LEAST)
      .slice(0, MOST_BREAKS)
      .map(({ part, probability, because }) => ({
        part,
        probability,
        because:
          because === null
            ? "some parts die at switch-on with nothing else wrong"
            : `${faultNameWords(because.fault, input.board)} may be left (${percent(because.probability)}), the likeliest cause`,
      })),
    advice: lampPassed ? "On the mains only through the right fuse." : firstFeed(input.equipment).advice,
  };
}

/**
 * Power-up as a step that finds something out, at its own risk: what is seen follows from the faults present, and what breaks is
 * charged to it. Null where the same power-up has been done, or where more than a quarter of the belief says that something breaks.
 */
export function powerFinding(
  input: PlanningInput,
  hypotheses: Hypotheses,
  model: RepairModel,
  anyBreaks: number,
): FindingStep | null {
  const action = powerAction(input);
  if (action === null || action.do !== "power" || anyBreaks > BREAKS_MOST) return null;
  const { board, timeline } = input;
  const seen = [...outcomeChances(board, [], { feed: action.feed, off: timeline.now.off }).keys()];
  const chances = seenChances(input, hypotheses, action);
  let lossMoney = 0;
  model.groups.forEach(({ breakMoney }, g) => {
    lossMoney += breakMoney * model.weights[g];
  });
  return {
    action,
    row: [],
    minutes: MINUTES.power,
    allMinutes: MINUTES.power + MINUTES.unpower + model.proofMinutes,
    outcomes: seen.map((word) => ({ word, low: null, high: null })),
    shares: seen.map((_, o) => Float64Array.from(chances, (chance) => chance[o])),
    inHand: null,
    lossMoney,
    lead: null,
  };
}

/** P(seen | hypothesis), one list a hypothesis. */
function seenChances(
  { board, timeline }: PlanningInput,
  hypotheses: Hypotheses,
  { feed }: PowerEvent,
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
        { feed, off: timeline.now.off },
      );
    known.set(key, found);
    return found;
  });
}

/**
 * The same power-up with the meters clipped where they will tell most, and their readings among the outcomes. For the step that is
 * taken: what a hundred sets of faults would show under power is not worked out for every step that is only weighed.
 */
export function withClips(step: FindingStep, input: PlanningInput, hypotheses: Hypotheses): FindingStep {
  const { action } = step;
  if (action.do !== "power") return step;
  const clips = bestClips(input, hypotheses, action);
  if (clips.length === 0) return step;
  const chances = seenChances(input, hypotheses, action);
  return {
    ...step,
    ...withReadings(
      step.outcomes.flatMap(({ word }) => word ?? []),
      chances,
      clips,
    ),
    action: { ...action, meters: clips.map(({ places }) => places) },
    allMinutes: step.allMinutes + MINUTES.measure * clips.length,
    lead: clipWords(clips),
  };
}

function clipWords(clips: readonly Clips[]): string {
  const where = clips.map(({ places: [red, black], what }) => `red on ${red}, black on ${black} (${what})`);
  return `Clip the meter on first, DC volts: ${where.join("; second meter ")}. What it shows tells most.`;
}

/** What is seen, and where the board stays on, what the meters then show: outcomes of both together. */
function withReadings(
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
