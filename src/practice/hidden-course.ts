import type { CleanEvent, Observed, PowerEvent, ReplaceEvent } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import { poweredNow } from "../bench/last-power.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { type Fault, faultName } from "../board/fault.ts";
import type { Job } from "../job/job.ts";
import { viewOf } from "../priors/circuit-view.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { type FeedHarm, feedHarm, ownHarm } from "../priors/feed-harm.ts";
import { jointShare } from "../priors/joint-share.ts";
import { loadEndShares } from "../priors/load-outcomes.ts";
import { boardEffect } from "../priors/power-effects.ts";
import { feedSetup, outcomeChances } from "../priors/power-outcomes.ts";
import { priorTable } from "../priors/prior-table.ts";
import { drawFaults, type HiddenFault, hideFaults, knockOnRates } from "./hide-faults.ts";
import { drawOne, seededRandom } from "./seeded-random.ts";

/** A practice job: an ordinary job, the table its faults are drawn from, and the seed that hides them. */
export interface PracticeJob {
  readonly job: Pick<Job, "board" | "cause" | "symptom" | "absent" | "meter">;
  readonly table: PriorTable;
  readonly seed: number;
  /** faults that the board came in with, where they are not drawn but known: a case of somebody's */
  readonly arrived?: readonly Fault[];
  /** what a power-up broke where it was recorded, of a board in the same state by the same feed; null: not recorded, so it is drawn */
  readonly brokenBy?: (entries: readonly TimelineEntry[], entry: TimelineEntry) => readonly Fault[] | null;
}

/**
 * The practice side of a job: what was marked on its board while working on it changes what is believed, not what is hidden.
 * @param priors - of the job as it stands, which serve where nothing is marked
 */
export function practiceJobOf(job: Job, priors: PriorTable, seed: number): PracticeJob {
  const { board, absent } = job.asBrought;
  if (job.board === board) return { job: { ...job, absent }, table: priors, seed };
  const key = `${job.cause} ${job.symptom} ${job.told.poweredWet}`;
  const ofBoard = tables.get(board) ?? new Map<string, PriorTable>();
  tables.set(board, ofBoard);
  const table = ofBoard.get(key) ?? priorTable(board, job.cause, job.symptom, job.told);
  ofBoard.set(key, table);
  return { job: { ...job, board, absent }, table, seed };
}

const tables = new WeakMap<Board, Map<string, PriorTable>>();

/** Remembered by the object: a job that plays on asks for its faults at every answer. */
const arrivals = new WeakMap<PracticeJob, readonly HiddenFault[]>();

/** The faults a practice board comes in with. A pure function of the job and its seed. */
export function faultsOnArrival(practice: PracticeJob): readonly HiddenFault[] {
  const known = arrivals.get(practice);
  if (known !== undefined) return known;
  const { job, table, seed, arrived } = practice;
  if (arrived !== undefined) return arrived.map((fault) => ({ row: rowOf(table, fault), fault }));
  const hidden = hideFaults(job.board, table, job.symptom, job.absent, seededRandom(seed, "arrival"));
  arrivals.set(practice, hidden);
  return hidden;
}

/** The row of the table that is nearest to a known fault; none (-1) where the table has no such place and mode. */
function rowOf(table: PriorTable, fault: Fault): number {
  const name = faultName({ ...fault, value: null });
  return table.faults.findIndex((row) => faultName({ ...row.fault, value: null }) === name);
}

/**
 * The faults present after the first `count` entries of the timeline: those the board came with, less what was replaced,
 * cleaned or resoldered, plus what power broke and what was fitted bad. A pure function of job, seed and log.
 */
export function faultsAfter(
  practice: PracticeJob,
  timeline: Timeline,
  count = timeline.entries.length,
): HiddenFault[] {
  let present = [...faultsOnArrival(practice)];
  for (const [at, entry] of timeline.entries.slice(0, count).entries())
    present = afterEntry(practice, present, entry, timeline.entries.slice(0, at));
  return present;
}

function afterEntry(
  practice: PracticeJob,
  present: HiddenFault[],
  entry: TimelineEntry,
  before: readonly TimelineEntry[],
): HiddenFault[] {
  const { event } = entry;
  switch (event.do) {
    case "power":
      if (isInjection(event)) return present;
      return afterPower(practice, present, event, entry, before);
    case "replace":
      return afterReplace(practice, present, event, entry.logIndex);
    case "clean":
    case "resolder":
      return afterHands(practice, present, event);
    default:
      return present;
  }
}

/** Parts off the board or with a pin lifted: they take no part in what power does. */
export function outOfCircuit(entry: Pick<TimelineEntry, "before">): ReadonlySet<string> {
  const lifted = [...entry.before.lifted].map((place) => place.split(".")[0] ?? "");
  return new Set([...entry.before.off, ...lifted]);
}

/** What is seen when power comes on: the log's own word where it has one, else drawn. */
export function observedAt(
  { job, seed }: PracticeJob,
  present: readonly HiddenFault[],
  event: Omit<PowerEvent, "observed"> & Pick<PowerEvent, "observed">,
  off: ReadonlySet<string>,
  logIndex: number,
): readonly Observed[] {
  if (event.observed !== undefined) return [event.observed].flat();
  const setup = feedSetup(event, off);
  const faults = present.map(({ fault }) => fault);
  const chances = [...outcomeChances(job.board, faults, setup)].filter(([, chance]) => chance > LEAST_CHANCE);
  const words = chances.map(([word]) => word);
  const drawn = drawOne(
    words,
    chances.map(([, chance]) => chance),
    seededRandom(seed, `power ${logIndex}`),
  );
  return drawn === null ? [] : [drawn];
}

/** How the run under load that is on ends when it is switched off now; null where the board was told to drive nothing. */
export function endAt(
  { job, seed }: PracticeJob,
  present: readonly HiddenFault[],
  timeline: Timeline,
  afterPower: number | undefined,
): Observed | null {
  const on = poweredNow(timeline);
  if (on === null || on.power.load === undefined) return null;
  const seconds = timeline.entries
    .slice(on.at)
    .reduce(
      (most, { event }) => (event.do === "measure" ? Math.max(most, event.afterPower ?? 0) : most),
      afterPower ?? 0,
    );
  const faults = present.map(({ fault }) => fault);
  const chances = [...loadEndShares(job.board, faults, outOfCircuit(on.entry), seconds)];
  return drawOne(
    chances.map(([word]) => word),
    chances.map(([, chance]) => chance),
    seededRandom(seed, `load end ${on.entry.logIndex}`),
  );
}

/** A practice bench shows only what its rule says, not the stray words that keep the likelihood honest. */
const LEAST_CHANCE = 0.01;

function afterPower(
  practice: PracticeJob,
  present: HiddenFault[],
  event: PowerEvent,
  entry: TimelineEntry,
  before: readonly TimelineEntry[],
): HiddenFault[] {
  const { faults, recorded } = withBroken(practice, present, event, entry, before);
  // a recorded power-up has its fuse among what it broke
  if (recorded) return faults;
  const { table, job } = practice;
  const off = outOfCircuit(entry);
  const seen = observedAt(practice, faults, event, off, entry.logIndex);
  if (!seen.includes("fuse-blew")) return faults;
  return [...faults, ...blownFuses(table, faults, lineFusesOf(job.board), off)];
}

/**
 * The faults while power is on: what a switch-on breaks it breaks at once, so that it is among what is seen then. A fuse blows by what is
 * seen.
 */
export function faultsUnderPower(
  practice: PracticeJob,
  timeline: Timeline,
  asked: PowerEvent,
): HiddenFault[] {
  const { now, entries, spans } = timeline;
  const logIndex = (entries.at(-1)?.logIndex ?? -1) + 1;
  const after = { ...now, powered: true };
  const entry = { logIndex, event: asked, before: now, after, span: spans.length };
  return withBroken(practice, faultsAfter(practice, timeline), asked, entry, entries).faults;
}

function withBroken(
  { job, table, seed, brokenBy }: PracticeJob,
  present: HiddenFault[],
  event: PowerEvent,
  entry: TimelineEntry,
  before: readonly TimelineEntry[],
): { readonly faults: HiddenFault[]; readonly recorded: boolean } {
  const recorded = brokenBy?.(before, entry) ?? null;
  if (recorded !== null) {
    const broken = recorded.map((fault) => ({ row: rowOf(table, fault), fault }));
    return { faults: [...present, ...notYetThere(table, present, broken)], recorded: true };
  }
  const off = outOfCircuit(entry);
  const inCircuit = present.filter(({ fault }) => fault.of === "nets" || !off.has(fault.part));
  const effect = boardEffect(
    job.board,
    inCircuit.map(({ fault }) => fault),
    off,
  );
  // nothing gets past an open line, but a bench supply comes in behind it
  const harm = effect === "input-open" && event.feed !== "bench" ? null : feedHarm(job.board, event);
  const rates = powerRates(table, inCircuit, harm);
  const fuses = lineFusesOf(job.board);
  for (const row of rates.keys()) {
    const part = table.faults[row]?.part ?? "";
    if (off.has(part) || fuses.has(part)) rates.delete(row);
  }
  const random = seededRandom(seed, `broken ${entry.logIndex}`);
  return { faults: [...present, ...drawFaults(job.board, table, rates, present, random)], recorded: false };
}

function lineFusesOf(board: Board): ReadonlySet<string> {
  return new Set(viewOf(board).lineFuses.map((part) => part.ref));
}

/** Of the faults that were recorded, those in places that are whole still. */
function notYetThere(
  { faults: rows }: PriorTable,
  present: readonly HiddenFault[],
  recorded: readonly HiddenFault[],
): HiddenFault[] {
  const placeOf = ({ row, fault }: HiddenFault) => rows[row]?.site ?? faultName(fault);
  const taken = new Set(present.map(placeOf));
  return recorded.filter((one) => !taken.has(placeOf(one)));
}

/** Rates at which a power-up breaks something: knock-ons of what is present, and what breaks by itself. */
function powerRates(
  table: PriorTable,
  inCircuit: readonly HiddenFault[],
  harm: FeedHarm | null,
): Map<number, number> {
  if (harm === null) return new Map();
  const rates = knockOnRates(table, inCircuit, harm);
  for (const [row, rate] of table.breaksAtPower.entries())
    rates.set(row, (rates.get(row) ?? 0) + rate * ownHarm(harm, table.faults[row]));
  return rates;
}

/** A fuse seen to blow is open from then on. */
function blownFuses(
  table: PriorTable,
  present: readonly HiddenFault[],
  fuses: ReadonlySet<string>,
  off: ReadonlySet<string>,
): HiddenFault[] {
  const taken = new Set(present.map(({ row }) => table.faults[row]?.site));
  return table.faults.flatMap(({ fault, part, site }, row) =>
    fuses.has(part) && !off.has(part) && !taken.has(site) && fault.mode === "open" ? [{ row, fault }] : [],
  );
}

function afterReplace(
  { job, table, seed }: PracticeJob,
  present: HiddenFault[],
  event: ReplaceEvent,
  logIndex: number,
): HiddenFault[] {
  const kept = present.filter(({ fault }) => fault.of === "nets" || fault.part !== event.part);
  const random = seededRandom(seed, `fitted ${logIndex}`);
  const bad = table.fittedBad[event.used === true ? "used" : "new"] + table.fittedBad.fittedWrong;
  if (random() >= bad) return kept;
  const own = table.faults.flatMap((row, index) => (row.part === event.part ? [index] : []));
  const total = own.reduce((sum, row) => sum + (table.faults[row]?.rate ?? 0), 0);
  const row = drawOne(
    own,
    own.map((index) => (table.faults[index]?.rate ?? 0) / total),
    random,
  );
  const prior = row === null ? undefined : table.faults[row];
  if (row === null || prior === undefined) return kept;
  return [...kept, ...drawFaults(job.board, table, new Map([[row, 1e6]]), kept, random)];
}

/** Does cleaning or soldering there reach one of these nets? */
function reaches(board: Board, event: CleanEvent, nets: readonly string[]): boolean {
  if (event.part === undefined && event.stage === undefined) return true;
  return [...board.parts.values()].some(
    (part) =>
      (part.ref === event.part || (event.stage !== undefined && part.stage === event.stage)) &&
      [...part.pins.values()].some((net) => nets.includes(net)),
  );
}

/** Cleaning takes away dirt between nets that it reaches; resoldering closes those opens that are a joint. */
function afterHands({ job, seed }: PracticeJob, present: HiddenFault[], event: CleanEvent): HiddenFault[] {
  return present.filter(({ fault, row }) => {
    if (fault.of === "nets") return event.do !== "clean" || !reaches(job.board, event, fault.nets);
    if (event.do !== "resolder" || fault.mode !== "open") return true;
    const there = fault.part === event.part || job.board.parts.get(fault.part)?.stage === event.stage;
    return (
      !there || seededRandom(seed, `joint ${row}`)() >= jointShare(job.board.parts.get(fault.part)?.kind)
    );
  });
}
