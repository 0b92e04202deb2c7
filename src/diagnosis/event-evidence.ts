/**
 * Looks and power-ups as evidence: what was seen depends on the faults present through a table of the prior layer, without
 * tolerance and without a slip of its own (those tables are already smooth).
 */

import type { LookEvent, Observed, PowerEvent } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { Cause } from "../priors/cause.ts";
import { viewOf } from "../priors/circuit-view.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { findingLikelihood } from "../priors/look-findings.ts";
import { type FeedSetup, feedSetup, observedLikelihood } from "../priors/power-outcomes.ts";
import type { EvidenceMemory } from "./cold-evidence.ts";
import { COMMON_POINTS, type Evidence } from "./evidence.ts";

/** What the eye found on one part: only its own faults, and leaks between the nets at its pins, can change it. */
export function lookEvidence(
  board: Board,
  cause: Cause,
  event: LookEvent,
  logIndex: number,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): Evidence {
  const part = board.parts.get(event.part);
  const nets = new Set(part?.pins.values() ?? []);
  const shows = (fault: Fault): boolean =>
    fault.of === "part" ? fault.part === event.part : fault.nets.every((net) => nets.has(net));
  const own = Uint8Array.from(priors, (prior) => (shows(prior.fault) ? 1 : 0));
  return discreteEvidence(
    logIndex,
    (faults) =>
      part === undefined ? 1 : findingLikelihood(event.finding, part, faults.filter(shows), cause),
    () => own,
    priors,
    event.finding,
    { key: `look|${event.part}|${event.finding}`, memory },
  );
}

/** What a power-up showed. Parts that were off the board then could not show anything. */
export function powerEvidence(
  board: Board,
  event: PowerEvent,
  logIndex: number,
  off: ReadonlySet<string>,
  priors: readonly FaultPrior[],
  memory: EvidenceMemory,
): Evidence {
  const setup = feedSetup(event, off);
  const seen = [event.observed ?? []].flat();
  const likelihood = seen.includes("fuse-blew")
    ? (faults: readonly Fault[]) => blownLikelihood(board, faults, setup, seen)
    : (faults: readonly Fault[]) => observedLikelihood(board, faults, setup, seen);
  const key = `power|${JSON.stringify([{ ...setup, off: [...off] }, event.observed])}`;
  return boardEvidence(logIndex, likelihood, priors, event.observed ?? [], { key, memory });
}

/** What was seen was another part, or the fuse only looked blown. From memory. */
const NO_FUSE_OPEN = 0.01;

/** A fuse that was seen to blow was whole when power came, and is open from then on. */
function blownLikelihood(
  board: Board,
  faults: readonly Fault[],
  setup: FeedSetup,
  seen: readonly Observed[],
): number {
  const fuses = new Set(viewOf(board).lineFuses.map(({ ref }) => ref));
  const open = (fault: Fault): boolean =>
    fault.of === "part" && fault.mode === "open" && fuses.has(fault.part);
  const before = faults.filter((fault) => !open(fault));
  const isOpen = fuses.size === 0 || before.length < faults.length;
  return observedLikelihood(board, before, setup, seen) * (isOpen ? 1 : NO_FUSE_OPEN);
}

/** What the whole board did, of which any fault may be the reason. */
export function boardEvidence(
  logIndex: number,
  likelihood: (faults: readonly Fault[]) => number,
  priors: readonly FaultPrior[],
  observed: Observed | readonly Observed[],
  kept: Kept,
): Evidence {
  return discreteEvidence(
    logIndex,
    likelihood,
    (indexes) => {
      const present = indexes.map((index) => priors[index].fault);
      const before = likelihood(present);
      return Uint8Array.from(priors, (prior) => {
        const after = likelihood([...present, prior.fault]);
        return Math.abs(after - before) > 1e-9 * Math.max(after, before) ? 1 : 0;
      });
    },
    priors,
    [observed].flat().join(", "),
    kept,
  );
}

/** Where answers are kept, under a name that says all that they depend on. */
interface Kept {
  readonly key: string;
  readonly memory: EvidenceMemory;
}

function discreteEvidence(
  logIndex: number,
  likelihood: (faults: readonly Fault[]) => number,
  audible: (indexes: readonly number[]) => Uint8Array,
  priors: readonly FaultPrior[],
  shown: string,
  { key, memory }: Kept,
): Evidence {
  const mask = (indexes: readonly number[]): Uint8Array =>
    memory.mask(`${key}#${indexes.join(",")}`, () => audible(indexes));
  return memory.remembering(key, {
    logIndex,
    best: 0,
    slip: Math.log(1e-3),
    logLikelihood: (indexes) =>
      memory.vector(key, indexes.join(","), () => {
        const log = Math.log(likelihood(indexes.map((index) => priors[index].fault)));
        return new Float64Array(COMMON_POINTS.length).fill(log);
      }),
    wouldShow: () => shown,
    hears: (indexes, fault) => mask(indexes)[fault] === 1,
    audible: mask,
  });
}
