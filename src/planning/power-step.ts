/** Power as steps to weigh: the rungs this bench can do, each with what may be seen and what it risks. */
import type { Observed, PowerEvent } from "../bench/event.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Fault } from "../board/fault.ts";
import { MINUTES } from "../money/minutes.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { type FeedHarm, knockOnHarm } from "../priors/feed-harm.ts";
import { type FeedSetup, feedSetup, outcomeChances } from "../priors/power-outcomes.ts";
import { lastPowerIndex } from "../safety/discharge.ts";
import type { PowerRisks } from "../safety/forecast.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { unplugFirst } from "./motor-first.ts";
import type { PlanningInput } from "./planning-input.ts";
import { ladderOf, type Rung } from "./power-ladder.ts";
import { breakingCost, breakMoneyByFault, type RepairModel } from "./repair-model.ts";
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
/** Power is never tried only to find out when something breaks more often than this. From memory. */
const BREAKS_MOST = 0.25;
/** A rung that says stop on fewer of the boards believed in than this tells nothing. From memory. */
const LEAST_STOPPED = 0.005;

/** The last power-up with what was seen, and whether the board has been worked on since; null: never powered here. */
export function lastPower(
  timeline: Timeline,
): { readonly entry: TimelineEntry; readonly seen: readonly Observed[]; readonly changed: boolean } | null {
  const at = lastPowerIndex(timeline);
  const entry = timeline.entries[at];
  if (entry === undefined || entry.event.do !== "power") return null;
  const { observed } = entry.event;
  const seen = observed === undefined ? [] : typeof observed === "string" ? [observed] : observed;
  return { entry, seen, changed: timeline.entries.slice(at + 1).some(({ event }) => CHANGES.has(event.do)) };
}

/** A rung as a step, with what the choice between rungs goes by. */
export interface PowerStep extends FindingStep {
  readonly action: PowerEvent;
  readonly rung: Rung;
  /** money lost at this rung under each hypothesis */
  readonly losses: Float64Array;
}

/** Power as it may be proposed now. */
export interface PowerSteps {
  /** rungs that may be taken to find something out */
  readonly finding: readonly PowerStep[];
  /** the rung to take where nothing cold pays; null where there is none, or none without too much risk */
  readonly due: PowerStep | null;
}

interface Weighed {
  readonly step: PowerStep;
  readonly anyBreaks: number;
  readonly lossMoney: number;
}

/**
 * The rungs that this bench can do next. Of those without mains only the ones that would say stop on some board still believed in; the
 * next rung on the mains only where no lower one saves more than it costs: that one is then due.
 */
export function powerSteps(
  input: PlanningInput,
  risks: PowerRisks,
  priors: PriorTable,
  hypotheses: Hypotheses,
  model: RepairModel,
): PowerSteps {
  const { lower, top } = ladderOf(input);
  const cost = breakingCost(input.board, input.timeline.now, input.terms);
  const money = { of: cost, most: input.terms.agreedPrice };
  const weigh = (rung: Rung): Weighed => {
    const { anyBreaks, lossMoney } = risks.under(rung.harm, money);
    const losses = lossesOf(rung.harm, priors, hypotheses, cost, money.most);
    const step = { ...stepOf(input, rung, hypotheses, model), rung, losses, lossMoney };
    return { step, anyBreaks, lossMoney };
  };
  const below = lower.map(weigh).filter(({ step, anyBreaks }) => {
    return anyBreaks <= BREAKS_MOST && stopChance(step, hypotheses) >= LEAST_STOPPED;
  });
  const next = top === null ? null : weigh(top);
  const first = next === null ? null : lowerFirst(next, below, hypotheses, model);
  const allowed = next !== null && first === null && next.anyBreaks <= BREAKS_MOST ? next : null;
  const steps = [...below, ...(allowed === null ? [] : [allowed])].map(({ step }) => step);
  return { finding: steps, due: (first ?? allowed)?.step ?? null };
}

/**
 * The rung below that goes before the next one on the mains: the one that saves most above its own cost, if any does. What it saves is
 * the loss above it on boards where it says stop. Straight on the mains, without a lamp in the bench, all of the difference
 * between the losses is weighed for rungs on the power path: nothing there is tried at full energy that a smaller one would have borne.
 */
function lowerFirst(
  next: Weighed,
  below: readonly Weighed[],
  hypotheses: Hypotheses,
  model: RepairModel,
): Weighed | null {
  let best: Weighed | null = null;
  let most = 0;
  for (const one of below) {
    const path = next.step.action.feed === "mains" && ["C", "D"].includes(one.step.rung.id);
    const saved = path ? next.lossMoney - one.lossMoney : averted(one, next, hypotheses);
    const net = saved - one.step.allMinutes * model.perMinute;
    if (net <= most) continue;
    most = net;
    best = one;
  }
  return best;
}

/** Money that the higher rung would lose on boards where the lower one says stop, less what the lower one loses there. */
function averted(lower: Weighed, higher: Weighed, { list }: Hypotheses): number {
  const stops = stopShares(lower.step);
  let total = 0;
  let saved = 0;
  list.forEach(({ weight }, h) => {
    total += weight;
    saved += weight * stops[h] * Math.max(0, higher.step.losses[h] - lower.step.losses[h]);
  });
  return total > 0 ? saved / total : 0;
}

/** Sights after which the next rung does not come. */
const STOPS: ReadonlySet<string> = new Set([
  "limiting",
  "lamp-bright",
  "lamp-pulsing",
  "fuse-blew",
  "trip",
  "smoke",
]);

function stopShares({ outcomes, shares }: FindingStep): Float64Array {
  const stops = new Float64Array(shares[0]?.length ?? 0);
  outcomes.forEach(({ word }, o) => {
    if (word !== null && STOPS.has(word)) for (let h = 0; h < stops.length; h++) stops[h] += shares[o][h];
  });
  return stops;
}

/** How much likelier it is to say stop on some board believed in than on one where nothing is wrong for it. */
function stopChance(step: FindingStep, { list }: Hypotheses): number {
  const stops = stopShares(step);
  const least = stops.reduce((low, share) => Math.min(low, share), 1);
  return list.reduce((sum, { weight }, h) => sum + weight * (stops[h] - least), 0);
}

/** Money that each hypothesis loses at this feed. */
function lossesOf(
  harm: FeedHarm,
  priors: PriorTable,
  hypotheses: Hypotheses,
  cost: (name: string) => number,
  most: number,
): Float64Array {
  const byFault = breakMoneyByFault(priors, cost, (knock) => knockOnHarm(harm, knock, priors.faults));
  return Float64Array.from(hypotheses.list, (hypothesis) =>
    Math.min(
      most,
      faultsOf(hypothesis, hypotheses).reduce((sum, f) => sum + byFault[f], 0),
    ),
  );
}

function stepOf(
  input: PlanningInput,
  rung: Rung,
  hypotheses: Hypotheses,
  model: RepairModel,
): FindingStep & { readonly action: PowerEvent } {
  const { board, timeline } = input;
  const { action } = rung;
  const setup = feedSetup(action, timeline.now.off);
  const seen = [...outcomeChances(board, [], setup).keys()];
  const chances = seenChances(input, hypotheses, setup);
  const unplugged = action.feed !== "bench" && unplugFirst(input) !== null ? 2 * MINUTES.plug : 0;
  return {
    action,
    row: [],
    minutes: MINUTES.power,
    allMinutes: MINUTES.power + MINUTES.unpower + model.proofMinutes + unplugged,
    outcomes: seen.map((word) => ({ word, low: null, high: null })),
    shares: seen.map((_, o) => Float64Array.from(chances, (chance) => chance[o])),
    inHand: null,
    lossMoney: 0,
    lead: null,
  };
}

/** P(seen | hypothesis), one list a hypothesis. */
export function seenChances(
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

function chancesOf(
  board: PlanningInput["board"],
  faults: readonly Fault[],
  setup: FeedSetup,
): readonly number[] {
  return [...outcomeChances(board, faults, setup).values()];
}
