/**
 * What is believed of the board: the log's evidence weighed over sets of dated faults. The entry of this layer.
 */

import type { BenchState } from "../bench/bench-state.ts";
import { isWorkOn } from "../bench/dead-board.ts";
import type { PowerEvent } from "../bench/event.ts";
import { neverFitted } from "../bench/never-fitted.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Predictor } from "../meter/prediction.ts";
import type { Cause, Symptom } from "../priors/cause.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import { bringsIn } from "../priors/symptom-effects.ts";
import type { Belief, Explanation } from "./belief.ts";
import { commonLogWeights } from "./calibration.ts";
import { coldEvidence, coldGroups, type EvidenceMemory } from "./cold-evidence.ts";
import { datedFaults } from "./dated-faults.ts";
import { lookEvidence, powerEvidence } from "./event-evidence.ts";
import type { Piece } from "./evidence.ts";
import { type LivePredictor, liveCheckOf, liveEvidence } from "./live-evidence.ts";
import { loadEndPieces } from "./load-end-evidence.ts";
import { type Core, pieceLogLikelihoods, posteriorCores } from "./posterior.ts";
import { ofRails } from "./rail-evidence.ts";
import { limitsFor, type SearchLimits } from "./search-limits.ts";
import { signPieces } from "./sign-evidence.ts";
import { suspectsOf } from "./suspects.ts";
import { presentAt, type Universe } from "./universe.ts";

export interface BelieveInput {
  readonly board: Board;
  readonly timeline: Timeline;
  readonly cause: Cause;
  readonly symptom: Symptom;
  readonly priors: PriorTable;
  /** parts that never came with the board */
  readonly absent: readonly string[];
  readonly predictorFor: (bench: BenchState) => Predictor;
  /** what the board under a power-up shows; absent: readings under power are no evidence */
  readonly liveFor?: (bench: BenchState, power: PowerEvent) => LivePredictor;
  /** kept by the caller between assessments of the same board, cause and meter: only speed depends on it */
  readonly memory: EvidenceMemory;
  readonly limits?: SearchLimits;
}

/** Explanations listed; the mass of the rest is the remainder. */
const EXPLANATIONS_LISTED = 160;

export function believe(input: BelieveInput): Belief {
  const { board, timeline, priors, absent } = input;
  const universe = input.memory.universe(universeKey(timeline, absent), () =>
    datedFaults(board, timeline, priors, absent),
  );
  const notSolved = new Set<string>();
  const pieces = gatherEvidence(input, notSolved);
  const logWeights = commonLogWeights(timeline);
  const now = 1 + timeline.entries.reduce((last, entry) => Math.max(last, entry.logIndex), -1);
  const evidence = pieces.map((piece) => piece.evidence);
  const cores = posteriorCores(
    universe,
    evidence,
    logWeights,
    input.limits ?? limitsFor(timeline.replacedIn.size),
    now,
    bringsIn(board, input.symptom, priors.faults),
  );
  const explanations = cores
    .slice(0, EXPLANATIONS_LISTED)
    .map((core) => explanationOf(core, universe, priors, pieces, logWeights, now));
  return {
    priors: priors.faults,
    suspects: suspectsOf({ board, priors, universe, cores, pieces, logWeights, now, absent }),
    healthyProbability: cores.reduce(
      (sum, core) => sum + (core.presentNow.length > 0 ? 0 : core.probability * core.nothingBeside),
      0,
    ),
    explanations,
    remainder: Math.max(0, 1 - explanations.reduce((sum, explanation) => sum + explanation.probability, 0)),
    unexplained: unexplainedReadings(cores, pieces, logWeights),
    notSolved: [...notSolved].sort(),
  };
}

/** What happened to the board that may have broken or cured something: elements depend on nothing else of the log. */
function universeKey({ entries, spans }: Timeline, absent: readonly string[]): string {
  const events = entries.flatMap(({ event, logIndex }) => {
    if (!MAKES_ELEMENTS.has(event.do)) return [];
    const { id: _, ...what } = event;
    return [[logIndex, what]];
  });
  return JSON.stringify([absent, spans.map(({ openedBy }) => openedBy), events]);
}

const MAKES_ELEMENTS: ReadonlySet<string> = new Set([
  "power",
  "replace",
  "restore",
  "refit",
  "clean",
  "resolder",
]);

function gatherEvidence(input: BelieveInput, notSolved: Set<string>): Piece[] {
  const { board, timeline, priors, memory } = input;
  const rails = ofRails(board, timeline, priors.faults, memory);
  const cold = coldGroups(timeline, rails.said).map((group) => ({
    evidence: coldEvidence(group, input.predictorFor(group.entry.before), priors.faults, memory, notSolved),
    logIndexes: group.logIndexes,
  }));
  const never = neverFitted(timeline);
  const looks: Piece[] = [];
  const powers: Piece[] = [];
  // the same sight at the same feed on a board left as it is tells nothing new, whatever made it: one piece for all of them
  const seen = new Map<string, number>();
  for (const entry of timeline.entries) {
    if (isWorkOn(board, entry.event)) seen.clear();
    if (entry.event.do === "look")
      looks.push({
        evidence: lookEvidence(board, input.cause, entry.event, entry.logIndex, priors.faults, memory),
        logIndexes: [entry.logIndex],
      });
    if (rails.said.has(entry.logIndex)) continue;
    if (entry.event.do === "power" && entry.event.observed !== undefined) {
      const { feed, watts, at, observed } = entry.event;
      const sight = JSON.stringify([feed, watts, at, observed]);
      const before = seen.get(sight);
      if (before !== undefined) {
        const { evidence, logIndexes } = powers[before];
        powers[before] = { evidence, logIndexes: [...logIndexes, entry.logIndex] };
        continue;
      }
      seen.set(sight, powers.length);
      powers.push({
        evidence: powerEvidence(
          board,
          entry.event,
          entry.logIndex,
          outOfCircuit(entry.before, never),
          priors.faults,
          memory,
        ),
        logIndexes: [entry.logIndex],
      });
    }
  }
  return [
    ...cold,
    ...looks,
    ...powers,
    ...loadEndPieces(board, timeline, priors.faults, (bench) => outOfCircuit(bench, never), memory),
    ...livePieces(input, rails.said),
    ...(input.liveFor === undefined ? [] : signPieces(board, timeline, input.liveFor, priors.faults, memory)),
    ...rails.pieces,
  ];
}

/** Readings under power, in an order that does not depend on when each was taken after its power-up. */
function livePieces(
  { timeline, priors, memory, liveFor }: BelieveInput,
  saidElsewhere: ReadonlySet<number>,
): readonly Piece[] {
  if (liveFor === undefined) return [];
  const found: { readonly at: string; readonly piece: Piece }[] = [];
  let power: { readonly event: PowerEvent; readonly logIndex: number } | null = null;
  for (const { event, logIndex, before } of timeline.entries) {
    if (event.do === "power") power = { event, logIndex };
    const taken = event.do === "measure" && before.powered ? liveCheckOf(event) : null;
    if (taken === null || power === null || saidElsewhere.has(logIndex)) continue;
    const evidence = liveEvidence(taken, logIndex, liveFor(before, power.event), priors.faults, memory);
    const at = `${String(power.logIndex).padStart(6, "0")} ${JSON.stringify(taken)}`;
    found.push({ at, piece: { evidence, logIndexes: [logIndex] } });
  }
  return found.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0)).map(({ piece }) => piece);
}

/** Parts that power could not reach and that the board misses: off it (unless it never had them), or with a pin lifted. */
function outOfCircuit(bench: BenchState, never: ReadonlySet<string>): ReadonlySet<string> {
  const off = [...bench.off].filter((part) => !never.has(part));
  return new Set([...off, ...[...bench.lifted].map((place) => place.split(".")[0])]);
}

function explanationOf(
  core: Core,
  universe: Universe,
  priors: PriorTable,
  pieces: readonly Piece[],
  logWeights: Float64Array,
  now: number,
): Explanation {
  const silent = new Float64Array(priors.faults.length);
  for (let e = 0; e < core.beside.length; e++)
    if (presentAt(universe, e, now)) silent[universe.fault[e]] += core.beside[e];
  const likelihoods = pieceLogLikelihoods(core, logWeights);
  const readingLogLikelihood = new Map<number, number>();
  pieces.forEach((piece, i) => {
    for (const logIndex of piece.logIndexes) readingLogLikelihood.set(logIndex, likelihoods[i]);
  });
  return {
    faults: core.set.map((element) => ({ fault: universe.fault[element], since: universe.from[element] })),
    presentNow: core.presentNow.map((element) => universe.fault[element]),
    probability: core.probability,
    silent,
    nothingBeside: core.nothingBeside,
    arrivedBeside: () => arrivedBeside(core, universe, priors.faults.length),
    readingLogLikelihood,
  };
}

function arrivedBeside(core: Core, universe: Universe, faults: number): Float64Array {
  const arrived = new Float64Array(faults);
  for (let e = 0; e < core.beside.length; e++)
    if (universe.from[e] < 0) arrived[universe.fault[e]] += core.beside[e];
  return arrived;
}

/** A core accounts for a piece when something better than a slip says so. */
const BETTER_THAN_A_SLIP = Math.log(2);
/** A reading is unexplained when the cores that account for it hold less than this share. */
const ACCOUNTED_SHARE = 0.1;

function unexplainedReadings(
  cores: readonly Core[],
  pieces: readonly Piece[],
  logWeights: Float64Array,
): number[] {
  const accounted = new Float64Array(pieces.length);
  for (const core of cores)
    pieceLogLikelihoods(core, logWeights).forEach((log, i) => {
      if (log > pieces[i].evidence.slip + BETTER_THAN_A_SLIP) accounted[i] += core.probability;
    });
  return pieces
    .flatMap((piece, i) => (accounted[i] < ACCOUNTED_SHARE ? [...piece.logIndexes] : []))
    .sort((a, b) => a - b);
}
