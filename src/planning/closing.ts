/** When a job ends: after the board has run on the mains, unchanged since, and has been told to work under load. */
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { faultWords } from "../board/fault-words.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { percent } from "./faults-in-words.ts";
import { lastLoadRun } from "./load-test.ts";
import type { DueStep } from "./make-safe.ts";
import { lastPower } from "./power-step.ts";
import type { Doubt } from "./working-chance.ts";

export const CLOSING = {
  /** a part this probably faulty is seen to before the board goes out; after so many good runs the readings are outvoted. From memory. */
  accused: 0.6,
  mostRuns: 3,
  /** a board is handed back without a word about it below this chance that it is weak or dead. From memory: one comeback in fifty. */
  doubt: 0.02,
  /** faults named beside the verdict, and the least chance that is worth naming */
  mostNamed: 3,
  namedLeast: 0.003,
} as const;

const CURES: ReadonlySet<string> = new Set(["replace", "clean", "resolder"]);

/** A job already closed stays so; null while it is open. */
export function closedStep(timeline: Timeline): DueStep | null {
  const closed = timeline.entries.findLast(({ event }) => event.do === "close");
  return timeline.closed && closed?.event.do === "close"
    ? close(closed.event.verdict, "This job is closed.")
    : null;
}

/**
 * Has the board, as it now is, run on the mains, and is it off again? A board may run with a part that the readings still accuse: it
 * is not done like that. Nor is one that stopped, tripped or smoked under load.
 * @param accused - the highest chance that some part has still to be cured; what a board lives with does not count
 */
export function hasRun(timeline: Timeline, accused: number): boolean {
  if (accused >= CLOSING.accused && runs(timeline) < CLOSING.mostRuns) return false;
  const last = lastPower(timeline);
  if (last === null || timeline.now.powered || last.changed || !last.seen.includes("runs")) return false;
  // a lamp passes too little to prove a board: it has to run on its own feed
  if (last.entry.event.do === "power" && last.entry.event.feed === "lamp") return false;
  const end = lastLoadRun(timeline)?.end ?? null;
  return end === null || end.includes("runs");
}

/** Was the last power-up its test under load? */
export function isLoadTested(timeline: Timeline): boolean {
  return lastLoadRun(timeline) !== null;
}

/** Power-ups at which the board ran. */
function runs(timeline: Timeline): number {
  return timeline.entries.filter(
    ({ event }) => event.do === "power" && [event.observed].flat().includes("runs"),
  ).length;
}

/** The verdict on a board that has run and been tested: `repaired` where something was cured, `no-fault` where it ran as it came. */
export function verdictStep(timeline: Timeline, doubt: Doubt, belief: Belief, board: Board): DueStep {
  const cured = timeline.entries.some(({ event }) => CURES.has(event.do));
  const doubtful = doubtWords(doubt, belief, board);
  return cured
    ? close(
        "repaired",
        `It ran after the repair, held under load, and nothing has been changed since. ${doubtful} Write it up and hand it back.`,
      )
    : close(
        "no-fault",
        `It ran as it came, under load as well, with nothing replaced: no fault found on this board; look at what it is connected to. ${doubtful}`,
      );
}

/** What is still doubted of a board that goes out. */
function doubtWords({ all, faults }: Doubt, { priors }: Belief, board: Board): string {
  if (all < CLOSING.doubt) return `Left in doubt: ${percent(all)}.`;
  const chances = new Map<string, number>();
  for (const [f, chance] of faults) {
    const words = faultWords(priors[f].fault, board);
    chances.set(words, (chances.get(words) ?? 0) + chance);
  }
  const named = [...chances]
    .filter(([, chance]) => chance >= CLOSING.namedLeast)
    .sort((a, b) => b[1] - a[1])
    .slice(0, CLOSING.mostNamed)
    .map(([words, chance]) => `${words} (${percent(chance)})`);
  const which = named.length === 0 ? "" : `, first of all ${named.join(", ")}`;
  return `That it is weak all the same and comes back: ${percent(all)}${which}; no check on this bench that pays would tell. Say so on the bill.`;
}

function close(
  verdict: "repaired" | "no-fault" | "not-economic" | "not-repairable" | "declined",
  why: string,
): DueStep {
  return { action: { do: "close", verdict }, row: [], why, expect: [] };
}
