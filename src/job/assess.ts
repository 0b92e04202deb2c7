/**
 * From a job to what is believed and what is proposed. State is a function of board and log; a session only remembers
 * costly answers between calls.
 */
import { type BenchState, benchKey } from "../bench/bench-state.ts";
import type { PowerEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { believe } from "../diagnosis/believe.ts";
import { EvidenceMemory } from "../diagnosis/cold-evidence.ts";
import { liveKey, liveStates } from "../live/live-of-log.ts";
import type { LiveStates } from "../live/live-states.ts";
import type { MakePredictor, Predictor } from "../meter/prediction.ts";
import type { PlanningInput } from "../planning/planning-input.ts";
import type { Proposal } from "../planning/proposal.ts";
import { propose } from "../planning/propose.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { priorTable } from "../priors/prior-table.ts";
import type { Parsed } from "../units/outcome.ts";
import { type Assumptions, assumptionsBehind } from "./assumptions.ts";
import type { Job } from "./job.ts";
import { predictorsAfter } from "./predictor-of-job.ts";

export interface Assessment {
  readonly job: Job;
  readonly timeline: Timeline;
  readonly priors: PriorTable;
  readonly belief: Belief;
  readonly proposal: Proposal;
  readonly predictor: Predictor;
  /** readings that rest on parts nobody has seen */
  readonly assumptions: Assumptions;
}

/** An assessment before anything is proposed. */
export type Believed = Omit<Assessment, "proposal">;

/** Entries that change no belief by themselves: volts that prove a board dead, words, and hands that only free a pin. */
function speaksOfFaults({ event, before }: TimelineEntry): boolean {
  switch (event.do) {
    case "measure":
      return isColdMode(event.mode) || before.powered;
    // what a good one read is in the board's references, which make it another board
    case "beside":
    case "note":
    case "answer":
    case "mark":
    case "overrule":
    case "quote":
    case "incoming":
    case "wait":
    case "resume":
    case "clip":
    case "unclip":
    case "lift":
    case "remove":
      return false;
    case "unpower":
      return event.observed !== undefined;
    default:
      return true;
  }
}

/** Predictors kept at once: those of a log are all asked at every reading, and each holds its own cache. */
const PREDICTORS_KEPT = 24;
/** Power-ups whose live states are kept: a log asks for all of its own at every reading. */
const LIVE_KEPT = 8;
/** Beliefs kept: of the log as it is, without its last reading, and with the likely next ones. */
const BELIEFS_KEPT = 6;
/** Assessments kept: what was worked out ahead for the next event, and the one before. */
const ASSESSED_KEPT = 4;

/** All that an assessment depends on beside what a session is fitted to; when an event was written, and by whom, is no part of it. */
function assessedFrom({ absent, equipment, terms, log }: Job): string {
  // `at` is a time, or the two places of a clip or a feed
  const events = log.map(({ id, who, at, ...event }) => ({
    ...event,
    ...(Array.isArray(at) ? { at } : {}),
    ...("instrument" in event ? { instrument: undefined } : {}),
  }));
  return JSON.stringify([absent, equipment, terms, [...terms.atHand], events]);
}

/** A few costly things by name; what was asked for longest ago makes place. */
class LastAsked<T extends object> {
  readonly #kept = new Map<string, T>();
  readonly #most: number;

  constructor(most: number) {
    this.#most = most;
  }

  of(key: string, make: () => T): T {
    const known = this.#kept.get(key);
    const value = known ?? make();
    // the newest stands last
    this.#kept.delete(key);
    const oldest = this.#kept.keys().next();
    if (this.#kept.size >= this.#most && !oldest.done) this.#kept.delete(oldest.value);
    this.#kept.set(key, value);
    return value;
  }

  clear(): void {
    this.#kept.clear();
  }
}

/** What one board's assessments share: only speed depends on it, never an answer. */
export class AssessmentSession {
  #for: Pick<Job, "board" | "cause" | "symptom" | "told" | "meter" | "learned"> | null = null;
  #priors: PriorTable | null = null;
  #memory = new EvidenceMemory();
  /** the last few, newest first: one looks back to what was believed before the last reading */
  #formed: readonly { readonly key: string; readonly belief: Belief }[] = [];
  #make: MakePredictor | null = null;
  readonly #predictors = new LastAsked<Predictor>(PREDICTORS_KEPT);
  readonly #live = new LastAsked<LiveStates>(LIVE_KEPT);
  readonly #assessed = new Map<string, Assessment>();

  /** The assessment of this job, made by `form` where it is not known. */
  assessed(job: Job, form: () => Parsed<Assessment>): Parsed<Assessment> {
    this.#fit(job);
    const key = assessedFrom(job);
    const known = this.#assessed.get(key);
    if (known !== undefined) {
      // the newest stands last, and the log that is shown is the one that was written
      this.#assessed.delete(key);
      this.#assessed.set(key, known);
      const timeline = foldLog(job.board, job.absent, job.log);
      return timeline.ok ? { ok: true, value: { ...known, job, timeline: timeline.value } } : timeline;
    }
    const made = form();
    if (!made.ok) return made;
    const oldest = this.#assessed.keys().next();
    if (this.#assessed.size >= ASSESSED_KEPT && !oldest.done) this.#assessed.delete(oldest.value);
    this.#assessed.set(key, made.value);
    return made;
  }

  priors(job: Job): PriorTable {
    this.#fit(job);
    this.#priors ??= priorTable(job.board, job.cause, job.symptom, job.told, job.learned);
    return this.#priors;
  }

  memory(job: Job): EvidenceMemory {
    this.#fit(job);
    return this.#memory;
  }

  /** The belief, formed anew only where the log holds something new that speaks of faults. */
  belief(job: Job, timeline: Timeline, form: () => Belief): Belief {
    this.#fit(job);
    const key = [
      job.absent.join(","),
      ...timeline.entries
        .filter(speaksOfFaults)
        // what a reading tells depends on what was lifted, out or clipped on while it was taken
        .map(({ logIndex, event, before }) => `${logIndex} ${benchKey(before)} ${JSON.stringify(event)}`),
    ].join("\n");
    const known = this.#formed.find((one) => one.key === key);
    const belief = known?.belief ?? form();
    if (known === undefined) this.#formed = [{ key, belief }, ...this.#formed].slice(0, BELIEFS_KEPT);
    return belief;
  }

  predictor(job: Job, bench: BenchState): Predictor {
    this.#fit(job);
    const key = benchKey(bench);
    return this.#predictors.of(key, () => {
      this.#make ??= predictorsAfter(job.cause);
      return this.#make(job.board, bench, job.meter);
    });
  }

  /** What the board shows under one power-up. */
  live(job: Job, bench: BenchState, power: PowerEvent): LiveStates {
    this.#fit(job);
    const key = liveKey(job.board, bench, power);
    return this.#live.of(key, () => liveStates(job.board, bench, power));
  }

  #fit(job: Job): void {
    const was = this.#for;
    const same =
      was !== null &&
      was.board === job.board &&
      was.cause === job.cause &&
      was.symptom === job.symptom &&
      was.told.poweredWet === job.told.poweredWet &&
      JSON.stringify([was.meter, was.learned]) === JSON.stringify([job.meter, job.learned]);
    if (same) return;
    const { board, cause, symptom, told, meter, learned } = job;
    this.#for = { board, cause, symptom, told, meter, learned };
    this.#priors = null;
    this.#memory = new EvidenceMemory();
    this.#formed = [];
    this.#make = null;
    this.#predictors.clear();
    this.#live.clear();
    this.#assessed.clear();
  }
}

/** Folds the log and forms the belief; refused, with one line, where the log is impossible. */
export function beliefOf(job: Job, session: AssessmentSession): Parsed<Believed> {
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return timeline;
  const priors = session.priors(job);
  const belief = session.belief(job, timeline.value, () =>
    believe({
      board: job.board,
      timeline: timeline.value,
      cause: job.cause,
      symptom: job.symptom,
      priors,
      absent: job.absent,
      predictorFor: (bench) => session.predictor(job, bench),
      liveFor: (bench, power) => session.live(job, bench, power),
      memory: session.memory(job),
    }),
  );
  const predictor = session.predictor(job, timeline.value.now);
  const predictorFor = (bench: BenchState) => session.predictor(job, bench);
  const assumptions = assumptionsBehind(job.board, timeline.value, belief, predictorFor);
  return { ok: true, value: { job, timeline: timeline.value, priors, belief, predictor, assumptions } };
}

/** What the planner knows of a job beside the belief. */
export function planningInput(job: Job, timeline: Timeline): PlanningInput {
  const { board, terms, equipment, cause } = job;
  return { board, bench: timeline.now, timeline, terms, equipment, cause };
}

/** Belief and proposal. Pass the same session again for the next event of the same job. */
export function assess(job: Job, session: AssessmentSession = new AssessmentSession()): Parsed<Assessment> {
  return session.assessed(job, () => assessAnew(job, session));
}

function assessAnew(job: Job, session: AssessmentSession): Parsed<Assessment> {
  const believed = beliefOf(job, session);
  if (!believed.ok) return believed;
  const { timeline, priors, belief, predictor } = believed.value;
  const proposal = propose(
    {
      ...planningInput(job, timeline),
      liveFor: (bench, power) => session.live(job, bench, power),
      predictorFor: (bench) => session.predictor(job, bench),
    },
    belief,
    priors,
    predictor,
  );
  return { ok: true, value: { ...believed.value, proposal } };
}
