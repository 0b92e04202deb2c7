import type { Observed, PowerEvent } from "../../src/bench/event.ts";
import type { Fault } from "../../src/board/fault.ts";
import { drawOne, seededRandom } from "../../src/practice/seeded-random.ts";
import type { OracleBoard } from "./oracle-board.ts";
import { BENCH_OUTCOMES, type Chances, LOAD_ENDS, POWER_OUTCOMES } from "./power-table.ts";
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

/** What a run under load had done when it was switched off: one word, the same for this run of the log. */
export function loadEnd(
  oracle: OracleBoard,
  faults: readonly Fault[],
  off: ReadonlySet<string>,
  powerIndex: number,
): Observed {
  const chances = Object.entries(LOAD_ENDS[conditionOf(oracle.board, faults, off)]) as [Observed, number][];
  const drawn = drawOne(
    chances.map(([word]) => word),
    chances.map(([, chance]) => chance),
    seededRandom(oracle.seed, `load end ${powerIndex}`),
  );
  return drawn ?? "runs";
}

/** What is seen when power comes on: one word, the same each time it is asked at this place of the log. */
export function observed(
  oracle: OracleBoard,
  faults: readonly Fault[],
  event: Omit<PowerEvent, "observed">,
  off: ReadonlySet<string>,
  logIndex: number,
): Observed {
  const chances = Object.entries(chancesOf(oracle, faults, event, off)) as [Observed, number][];
  const drawn = drawOne(
    chances.map(([word]) => word),
    chances.map(([, chance]) => chance),
    seededRandom(oracle.seed, `power ${logIndex}`),
  );
  return drawn ?? "quiet";
}
