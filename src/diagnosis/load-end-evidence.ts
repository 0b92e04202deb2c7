/** How runs under load ended, as evidence: what standing at idle does not show. */
import type { BenchState } from "../bench/bench-state.ts";
import { isWork } from "../bench/dead-board.ts";
import type { Observed } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { FULL_RUN_SECONDS, loadEndChances, loadEndLikelihood } from "../priors/load-outcomes.ts";
import type { EvidenceMemory } from "./cold-evidence.ts";
import { boardEvidence } from "./event-evidence.ts";
import type { Piece } from "./evidence.ts";

/** A run whose end nobody timed is taken for this long, seconds: as good as none. From memory. */
const UNTIMED_SECONDS = 60;

/** A run under load that ended; the same end once more, on a board left as it is, tells nothing new. */
interface LoadEnd {
  readonly off: ReadonlySet<string>;
  readonly observed: Observed | readonly Observed[];
  readonly logIndexes: readonly number[];
  readonly seconds: number;
}

/**
 * One piece for each way in which the board, as it was then, ended under load; of several runs the longest counts.
 * @param outOfCircuit - parts that power could not reach on such a bench
 */
export function loadEndPieces(
  board: Board,
  timeline: Timeline,
  priors: readonly FaultPrior[],
  outOfCircuit: (bench: BenchState) => ReadonlySet<string>,
  memory: EvidenceMemory,
): readonly Piece[] {
  return loadEnds(timeline, outOfCircuit).map(({ off, observed, logIndexes, seconds }) => {
    const likelihood = (faults: readonly Fault[]): number =>
      loadEndLikelihood(observed, loadEndChances(board, faults, off, seconds));
    const key = `load|${JSON.stringify([[...off], observed, seconds])}`;
    const evidence = boardEvidence(logIndexes[0], likelihood, priors, observed, { key, memory });
    return { evidence, logIndexes };
  });
}

function loadEnds(
  { entries }: Timeline,
  outOfCircuit: (bench: BenchState) => ReadonlySet<string>,
): readonly LoadEnd[] {
  const ends: LoadEnd[] = [];
  let since = 0;
  let run: { readonly off: ReadonlySet<string>; seconds: number } | null = null;
  for (const { event, logIndex, before } of entries) {
    if (isWork(event.do)) since = ends.length;
    if (event.do === "power")
      run = event.load === undefined ? null : { off: outOfCircuit(before), seconds: UNTIMED_SECONDS };
    if (run !== null && event.do === "measure" && before.powered)
      run.seconds = Math.max(run.seconds, event.afterPower ?? 0);
    if (event.do !== "unpower") continue;
    if (run !== null && event.observed !== undefined) {
      const { observed, afterPower } = event;
      // one that stopped by itself took all the time that it needed
      const ran = [observed].flat().includes("runs");
      const seconds = ran ? Math.max(run.seconds, afterPower ?? 0) : FULL_RUN_SECONDS;
      const at = ends.findIndex(
        (end, index) => index >= since && [end.observed].flat().join() === [observed].flat().join(),
      );
      const before = at < 0 ? null : ends[at];
      if (before === null) ends.push({ off: run.off, observed, logIndexes: [logIndex], seconds });
      else
        ends[at] = {
          ...before,
          logIndexes: [...before.logIndexes, logIndex],
          seconds: Math.max(before.seconds, seconds),
        };
    }
    run = null;
  }
  return ends;
}
