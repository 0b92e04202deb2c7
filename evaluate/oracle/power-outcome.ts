import type { Observed, PowerEvent } from "../../src/bench/event.ts";
import type { Fault } from "../../src/board/fault.ts";
import { drawOne, seededRandom } from "../../src/practice/seeded-random.ts";
import type { OracleBoard } from "./oracle-board.ts";
import { BENCH_OUTCOMES, type Chances, FULL_RUN_SECONDS, LOAD_ENDS, POWER_OUTCOMES } from "./power-table.ts";
import { conditionOf, shortBetween } from "./power-truth.ts";

function chancesOf(
  { board }: OracleBoard,
  faults: readonly Fault[],
  event: Omit<PowerEvent, "observed">,
  off: ReadonlySet<string>,
): Chances {
  if (event.feed !== "bench") return POWER_OUTCOMES[conditionOf(board, faults, off)][event.feed];
  const at = typeof event.at === "object" ? event.at : null;
  const there = faults.filter((fault) => fault.of === "nets" || !off.has(fault.part));
  const shorted = at !== null && shortBetween(board, there, at[0], at[1]);
  return shorted ? BENCH_OUTCOMES.short : BENCH_OUTCOMES.clear;
}

/**
 * What a run under load had done when it was switched off after so many seconds: one word, the same each time that a board with these
 * faults is loaded so; what has not shown by then ran.
 */
export function loadEnd(
  oracle: OracleBoard,
  faults: readonly Fault[],
  off: ReadonlySet<string>,
  seconds: number,
): Observed {
  const condition = conditionOf(oracle.board, faults, off);
  const chances = Object.entries(LOAD_ENDS[condition]) as [Observed, number][];
  const random = seededRandom(oracle.seed, `load end ${JSON.stringify(faults)} ${[...off].sort().join(",")}`);
  const drawn = drawOne(
    chances.map(([word]) => word),
    chances.map(([, chance]) => chance),
    random,
  );
  // only what has to warm up first takes its time
  const showsAfter = condition === "weak" || condition === "works" ? random() * FULL_RUN_SECONDS : 0;
  return drawn === null || seconds < showsAfter ? "runs" : drawn;
}

/** What is seen when power comes on: one word, the same each time that a board with these faults is powered so. */
export function observed(
  oracle: OracleBoard,
  faults: readonly Fault[],
  event: Omit<PowerEvent, "observed">,
  off: ReadonlySet<string>,
): Observed {
  const chances = Object.entries(chancesOf(oracle, faults, event, off)) as [Observed, number][];
  const drawn = drawOne(
    chances.map(([word]) => word),
    chances.map(([, chance]) => chance),
    seededRandom(oracle.seed, `power ${event.feed} ${JSON.stringify(faults)} ${[...off].sort().join(",")}`),
  );
  return drawn ?? "quiet";
}
