/**
 * Why a part is suspected or cleared: the likelihood of each reading with its best fault against that without, taken from
 * the evidence that the verdict itself was made of; and who hides whom.
 */
import type { PriorTable } from "../priors/fault-prior.ts";
import type { Because, Reason } from "./belief.ts";
import { overCommon, type Piece } from "./evidence.ts";
import type { Core } from "./posterior.ts";
import { presentAt, type Universe } from "./universe.ts";

export interface ReasonInput {
  readonly priors: PriorTable;
  readonly universe: Universe;
  readonly cores: readonly Core[];
  readonly pieces: readonly Piece[];
  readonly logWeights: Float64Array;
  readonly elementOfFault: Int32Array;
}

/** Below this many nats a reading says nothing worth telling. */
const TELLING = 0.7;
/** Most readings named on each side. */
const MOST_REASONS = 4;

export function reasonsFor(
  input: ReasonInput,
  part: string,
  faults: readonly number[],
  marginal: Float64Array,
): Because {
  const best = strongest(input, faults, marginal);
  const leading = input.cores[0];
  if (best < 0 || leading === undefined)
    return { speaksFor: [], speaksAgainst: [], maskedBy: [], untested: true };
  const isOf = (element: number): boolean => input.priors.faults[input.universe.fault[element]].part === part;
  const withPart = input.cores.find((core) => core.presentNow.some(isOf));
  const without = input.cores.find((core) => !core.set.some(isOf));
  const ratios =
    withPart === undefined
      ? ratiosOfAddition(input, without ?? leading, best)
      : without === undefined
        ? ratiosOfRemoval(input, withPart, part)
        : ratiosOfCores(input, withPart, without);
  const reasons = ratios.filter((reason) => Math.abs(reason.logRatio) >= TELLING);
  const heard = input.pieces.some((piece) => piece.evidence.audible([])[input.universe.fault[best]] === 1);
  return {
    speaksFor: reasons
      .filter((reason) => reason.logRatio > 0)
      .sort(byWeight)
      .slice(0, MOST_REASONS),
    speaksAgainst: reasons
      .filter((reason) => reason.logRatio < 0)
      .sort(byWeight)
      .slice(0, MOST_REASONS),
    maskedBy: leading.set.some(isOf) ? [] : maskersOf(input, leading, input.universe.fault[best]),
    untested: !heard && reasons.length === 0,
  };
}

function byWeight(a: Reason, b: Reason): number {
  return Math.abs(b.logRatio) - Math.abs(a.logRatio) || a.logIndex - b.logIndex;
}

/** The element of the part's most probable fault; by prior where the readings have cleared them all. */
function strongest(input: ReasonInput, faults: readonly number[], marginal: Float64Array): number {
  let best = -1;
  let most = -1;
  for (const fault of faults) {
    if (input.elementOfFault[fault] < 0) continue;
    const weight = marginal[fault] > 1e-6 ? 1 + marginal[fault] : input.priors.faults[fault].rate;
    if (weight > most) {
      most = weight;
      best = input.elementOfFault[fault];
    }
  }
  return best;
}

function ratiosOfCores(input: ReasonInput, withPart: Core, without: Core): Reason[] {
  return input.pieces.flatMap((piece, i) => {
    const a = overCommon(withPart.scored.hearings[i].vector, input.logWeights);
    const b = overCommon(without.scored.hearings[i].vector, input.logWeights);
    return toReasons(
      piece,
      a - b,
      withPart.scored.hearings[i].heard.faults,
      without.scored.hearings[i].heard.faults,
    );
  });
}

/** The part is in no core: what would its fault, added to the leading explanation, have changed? */
function ratiosOfAddition(input: ReasonInput, core: Core, element: number): Reason[] {
  const fault = input.universe.fault[element];
  return input.pieces.flatMap((piece, i) => {
    const hearing = core.scored.hearings[i];
    if (!presentAt(input.universe, element, piece.evidence.logIndex)) return [];
    if (!hearing.heard.hears(fault)) return [];
    const grown = hearing.heard.with(fault);
    const ratio = grown.log(input.logWeights) - overCommon(hearing.vector, input.logWeights);
    return toReasons(piece, ratio, grown.faults, hearing.heard.faults);
  });
}

/** Every core has the part: what would have been read with its faults taken away? */
function ratiosOfRemoval(input: ReasonInput, core: Core, part: string): Reason[] {
  return input.pieces.flatMap((piece, i) => {
    const { heard, vector } = core.scored.hearings[i];
    const { faults } = heard;
    const rest = faults.filter((fault) => input.priors.faults[fault].part !== part);
    if (rest.length === faults.length) return [];
    const ratio =
      overCommon(vector, input.logWeights) - overCommon(piece.evidence.logLikelihood(rest), input.logWeights);
    return toReasons(piece, ratio, faults, rest);
  });
}

function toReasons(
  piece: Piece,
  logRatio: number,
  withFaults: readonly number[],
  withoutFaults: readonly number[],
): Reason[] {
  if (!Number.isFinite(logRatio)) return [];
  const withFault = piece.evidence.wouldShow(withFaults);
  const without = piece.evidence.wouldShow(withoutFaults);
  return piece.logIndexes.map((logIndex) => ({ logIndex, logRatio, withFault, without }));
}

/** Members of the core, still on the board, without which some reading taken would hear the fault. */
function maskersOf(input: ReasonInput, core: Core, fault: number): string[] {
  const maskers = new Set<string>();
  const still = new Set(core.presentNow.map((element) => input.universe.fault[element]));
  input.pieces.forEach((piece, i) => {
    const { heard } = core.scored.hearings[i];
    const { faults } = heard;
    if (heard.hears(fault)) return;
    for (const member of faults) {
      if (!still.has(member)) continue;
      const rest = faults.filter((other) => other !== member);
      if (piece.evidence.hears(rest, fault)) maskers.add(input.priors.faults[member].part);
    }
  });
  return [...maskers].sort();
}
