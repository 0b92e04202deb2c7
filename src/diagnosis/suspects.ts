/** Probability of each part being faulty now, its modes, and the readings that speak for and against it. */
import type { Board } from "../board/board.ts";
import type { PriorTable } from "../priors/fault-prior.ts";
import type { Because, Suspect, SuspectMode } from "./belief.ts";
import type { Piece } from "./evidence.ts";
import type { Core } from "./posterior.ts";
import { type ReasonInput, reasonsFor } from "./reasons.ts";
import { presentAt, type Universe } from "./universe.ts";

export interface SuspectInput {
  readonly board: Board;
  readonly priors: PriorTable;
  readonly universe: Universe;
  readonly cores: readonly Core[];
  readonly pieces: readonly Piece[];
  readonly logWeights: Float64Array;
  readonly now: number;
  readonly absent: readonly string[];
}

/** Every part of the board and every leak between nets that has any weight, most probable first. */
export function suspectsOf(input: SuspectInput): Suspect[] {
  const marginals = faultMarginals(input);
  const byPart = new Map<string, number[]>();
  for (const ref of input.board.parts.keys()) byPart.set(ref, []);
  input.priors.faults.forEach((prior, index) => {
    byPart.set(prior.part, [...(byPart.get(prior.part) ?? []), index]);
  });
  const reasons: ReasonInput = { ...input, elementOfFault: latestElements(input) };
  const suspects: Suspect[] = [];
  for (const [part, faults] of byPart) {
    const probability = input.absent.includes(part) ? 0 : (marginals.part.get(part) ?? 0);
    const isLeak = !input.board.parts.has(part);
    if (isLeak && probability < 1e-4) continue;
    let because: Because | null = null;
    suspects.push({
      part,
      probability,
      modes: modesOf(input, faults, marginals.fault),
      because: () => {
        because ??= reasonsFor(reasons, part, faults, marginals.fault);
        return because;
      },
    });
  }
  return suspects.sort((a, b) => b.probability - a.probability || (a.part < b.part ? -1 : 1));
}

/** Levels of one mode are summed under its nominal spelling. */
function modesOf(input: SuspectInput, faults: readonly number[], marginal: Float64Array): SuspectMode[] {
  const sums = new Map<string, number>();
  for (const fault of faults) {
    const name = input.priors.faults[fault].reportAs;
    sums.set(name, (sums.get(name) ?? 0) + marginal[fault]);
  }
  return [...sums]
    .map(([fault, probability]) => ({ fault, probability: Math.min(1, probability) }))
    .sort((a, b) => b.probability - a.probability || (a.fault < b.fault ? -1 : 1));
}

/** P(fault present now) and P(any fault of the part present now), over all cores. */
function faultMarginals(input: SuspectInput): { fault: Float64Array; part: Map<string, number> } {
  const { universe, priors, cores, now } = input;
  const fault = new Float64Array(priors.faults.length);
  const part = new Map<string, number>();
  const partOf = priors.faults.map((prior) => prior.part);
  const presentNow = Array.from(universe.fault, (_, element) => presentAt(universe, element, now));
  for (const core of cores) {
    const unseen = new Map<string, number[]>();
    for (let e = 0; e < core.beside.length; e++) {
      if (core.beside[e] === 0 || !presentNow[e]) continue;
      fault[universe.fault[e]] += core.probability * core.beside[e];
      const name = partOf[universe.fault[e]];
      const ofPart = unseen.get(name);
      if (ofPart === undefined) unseen.set(name, [e]);
      else ofPart.push(e);
    }
    const add = (name: string, share: number) =>
      part.set(name, (part.get(name) ?? 0) + core.probability * share);
    const certain = new Set(core.presentNow.map((element) => partOf[universe.fault[element]]));
    for (const element of core.presentNow) fault[universe.fault[element]] += core.probability;
    for (const name of certain) add(name, 1);
    for (const [name, elements] of unseen) if (!certain.has(name)) add(name, core.anyBeside(elements));
  }
  return { fault, part };
}

/** For each fault of the prior table its element that is on the board now (-1 where none is). */
function latestElements(input: SuspectInput): Int32Array {
  const latest = new Int32Array(input.priors.faults.length).fill(-1);
  input.universe.fault.forEach((fault, element) => {
    if (latest[fault] < 0 && presentAt(input.universe, element, input.now)) latest[fault] = element;
  });
  return latest;
}
