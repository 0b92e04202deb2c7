import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { percent } from "./faults-in-words.ts";
import { heldUnderLoad, lastLoadRun } from "./load-test.ts";
import type { DueStep } from "./make-safe.ts";
import { lastPower } from "./power-step.ts";

/** After so many good runs the readings that still accuse a part are outvoted. From memory. */
const MOST_RUNS = 3;

const CURES: ReadonlySet<string> = new Set(["replace", "clean", "resolder"]);

/** A job that is closed stays so; null while it is open. */
export function staysClosed(timeline: Timeline): DueStep | null {
  const closed = timeline.entries.findLast(({ event }) => event.do === "close");
  return timeline.closed && closed?.event.do === "close"
    ? close(closed.event.verdict, said`This job is closed.`)
    : null;
}

/**
 * Has the board run on its own feed since it was last worked on, and is it switched off? A lamp passes too little to prove a board: that is
 * no such run, nor is one that stopped, tripped or smoked under load.
 */
export function hasRun(board: Board, timeline: Timeline): boolean {
  const last = lastPower(board, timeline);
  if (last === null || timeline.now.powered || last.changed || !last.seen.includes("runs")) return false;
  if (last.entry.event.do === "power" && last.entry.event.feed === "lamp") return false;
  return lastLoadRun(timeline)?.end?.includes("runs") ?? true;
}

/** Has it run so often that what still accuses a part is not believed? */
export function outvoted(timeline: Timeline): boolean {
  return runs(timeline) >= MOST_RUNS;
}

/**
 * Closing a job whose board has run: `repaired` where something was cured, `no-fault` where it ran as it came.
 * @param doubt - chance that something weak is left in it
 */
export function closingStep(timeline: Timeline, doubt: number): DueStep {
  const left = percent(doubt);
  const held = heldUnderLoad(timeline);
  const cured = timeline.entries.some(({ event }) => CURES.has(event.do));
  return cured
    ? close(
        "repaired",
        held
          ? said`It ran after the repair, under load as well, and nothing has been changed since. Write it up and hand it back. What is left unproven: ${left} that something weak is still in it.`
          : said`It ran after the repair and nothing has been changed since. Load it until it is warm through (20 to 30 minutes), then write it up and hand it back. What is left unproven: ${left} that something weak is still in it.`,
      )
    : close(
        "no-fault",
        held
          ? said`It ran as it came, under load as well, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: ${left} that something weak is still in it.`
          : said`It ran as it came, with nothing replaced: no fault found on this board; look at what it is connected to. What is left unproven: ${left} that something weak is still in it.`,
      );
}

/** Power-ups at which the board ran, told to drive nothing: the run under load that follows is no vote of its own. */
function runs(timeline: Timeline): number {
  return timeline.entries.filter(
    ({ event }) =>
      event.do === "power" && event.load === undefined && [event.observed].flat().includes("runs"),
  ).length;
}

function close(
  verdict: "repaired" | "no-fault" | "not-economic" | "not-repairable" | "declined",
  why: string,
): DueStep {
  return { action: { do: "close", verdict }, row: [], why, expect: [] };
}
