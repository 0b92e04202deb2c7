/** What opens at switch-on: the fuse, a resistor that burns, the outlet's breaker. Rules and figures: `PROTECTION_MODEL`. */
import type { FaultedBoard } from "./faulted-board.ts";
import { PROTECTION_MODEL } from "./live-models.ts";
import type { PowerFeed } from "./power-feed.ts";
import type { PowerPath } from "./power-path.ts";
import type { Totals } from "./settle.ts";

export interface GivenWay {
  /** null: the outlet's breaker */
  readonly part: string | null;
  readonly how: "fuse" | "burnt" | "trip";
}

/** How far a branch is over what opens it: 1 and more opens. */
interface Excess {
  readonly part: string;
  readonly times: number;
}

/** Two in one loop carry the same: of those closer than this, as a share, the first one is taken. */
const ALIKE = 1e-6;

function worst(found: readonly Excess[]): Excess | null {
  const over = found.filter(({ times }) => times >= 1);
  if (over.length === 0) return null;
  return over.reduce((most, one) => (one.times > most.times * (1 + ALIKE) ? one : most));
}

function excesses(
  board: FaultedBoard,
  { circuit }: PowerPath,
  cycle: Totals,
  kind: "fuse" | "resistor",
): readonly Excess[] {
  return circuit.resistors.flatMap((branch, i) => {
    const part = branch.part === null ? null : board.part(branch.part);
    if (part?.kind !== kind) return [];
    if (kind === "fuse") {
      const most = (part.value.amps ?? PROTECTION_MODEL.fuseAmps) * PROTECTION_MODEL.fuseTimes;
      return [{ part: part.ref, times: cycle.resistorAmps[i] / most }];
    }
    const most = (part.value.watts ?? PROTECTION_MODEL.resistorWatts) * PROTECTION_MODEL.resistorTimes;
    return [{ part: part.ref, times: cycle.resistorWatts[i] / most }];
  });
}

/**
 * The first thing to give way in `cycle`, some cycles after switch-on with everything still cold; null where all holds. A fuse in
 * the way is quicker than what it protects, and the outlet's breaker slower than either.
 */
export function givesWay(
  board: FaultedBoard,
  feed: PowerFeed,
  path: PowerPath,
  cycle: Totals,
): GivenWay | null {
  const fuse = worst(excesses(board, path, cycle, "fuse"));
  if (fuse !== null) return { part: fuse.part, how: "fuse" };
  const burnt = worst(excesses(board, path, cycle, "resistor"));
  if (burnt !== null) return { part: burnt.part, how: "burnt" };
  const most = cycle.sourceAmps.reduce((sum, amps) => Math.max(sum, amps), 0);
  return feed.kind === "mains" && most > PROTECTION_MODEL.breakerAmps ? { part: null, how: "trip" } : null;
}
