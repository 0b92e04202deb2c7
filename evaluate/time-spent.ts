/** What the engine's minutes were spent on, from the log of its trial. */
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Board } from "../src/board/board.ts";
import { asMarked } from "../src/job/marked.ts";
import { actionMinutes } from "../src/money/minutes.ts";
import type { Trial } from "./trial.ts";

export const SPENT_ON = [
  "proof and discharge",
  "readings and looks",
  "re-check before power",
  "freeing and putting back",
  "replacing faulty parts",
  "replacing good parts",
  "power",
] as const;
export type SpentOn = (typeof SPENT_ON)[number];

/** The proposal's own words for the readings that it takes again before power. */
const RECHECK = /^Cold re-check before power/;

function spentOn(event: JobEvent, good: ReadonlySet<string>, rechecking: boolean): SpentOn {
  switch (event.do) {
    case "measure":
      if (event.mode === "dcv") return "proof and discharge";
      return rechecking ? "re-check before power" : "readings and looks";
    case "lift":
    case "refit":
    case "remove":
    case "restore":
      return "freeing and putting back";
    case "replace":
      return good.has(event.part) ? "replacing good parts" : "replacing faulty parts";
    case "power":
      return "power";
    case "clip":
    case "unclip":
    case "unpower":
      return "proof and discharge";
    default:
      return "readings and looks";
  }
}

/** Minutes by what they were spent on; they add up to the engine's minutes. */
export function minutesSpent(trial: Trial, board: Board): Readonly<Record<SpentOn, number>> {
  const marked = asMarked(board, [], trial.log);
  const folded = foldLog(marked.board, marked.absent, trial.log);
  if (!folded.ok) throw new Error(`${trial.board} ${trial.seed}: ${folded.problem}`);
  const good = new Set(trial.outcomes.engine.goodReplaced);
  const sums: Record<SpentOn, number> = {
    "proof and discharge": 0,
    "readings and looks": 0,
    "re-check before power": 0,
    "freeing and putting back": 0,
    "replacing faulty parts": 0,
    "replacing good parts": 0,
    power: 0,
  };
  const whys = new Map(trial.steps.map(({ at, why }) => [at, why]));
  let rechecking = false;
  for (const { event, before, logIndex } of folded.value.entries) {
    const why = whys.get(logIndex);
    if (why !== undefined) rechecking = RECHECK.test(why);
    sums[spentOn(event, good, rechecking)] += actionMinutes(marked.board, before, event);
  }
  return sums;
}

/** One line: mean minutes a board by what they were spent on. */
export function timeText(trials: readonly Trial[], boards: ReadonlyMap<string, Board>): string {
  const spent = trials.flatMap((trial) => {
    const board = boards.get(trial.board);
    return board === undefined ? [] : [minutesSpent(trial, board)];
  });
  const cells = SPENT_ON.map((kind) => {
    const mean = spent.reduce((sum, one) => sum + one[kind], 0) / Math.max(1, spent.length);
    return `${kind} ${mean.toFixed(1)}`;
  });
  return `the engine's minutes a board: ${cells.join(", ")}`;
}
