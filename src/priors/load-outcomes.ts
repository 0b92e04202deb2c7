/** What a board has done by the end of a run under load: a run that was long enough tells what a minute at idle cannot. */
import type { Observed } from "../bench/event.ts";
import { OBSERVED } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { Mark } from "../units/mark.ts";
import { boardEffect, type PowerEffect } from "./power-effects.ts";

type EndRow = Readonly<Partial<Record<Observed, number>>>;

const WEAK: EndRow = { runs: 0.35, quiet: 0.45, trip: 0.1, smoke: 0.1 };

/**
 * Shares of how a full run under load ends, by the worst of what is wrong: `runs` where it ran until it was switched off. That a weak
 * board shows within one thermal cycle under load, and a leak across the bus smokes, is common practice; the shares are from memory. Only a
 * board that has come on is loaded: what would have kept it quiet then, and did not, is no more than weak.
 */
export const LOAD_ENDS: Readonly<Record<PowerEffect, EndRow>> = {
  "input-open": WEAK,
  "line-short": { "fuse-blew": 0.7, trip: 0.3 },
  "earth-short": { trip: 0.9, "fuse-blew": 0.1 },
  "feed-open": WEAK,
  "bus-short": { "fuse-blew": 0.6, trip: 0.2, smoke: 0.2 },
  "supply-short": { "fuse-blew": 0.5, smoke: 0.3, quiet: 0.2 },
  "bus-leak": { smoke: 0.6, quiet: 0.22, trip: 0.1, runs: 0.08 },
  "supply-dead": WEAK,
  "rail-short": WEAK,
  "leg-half": { trip: 0.4, "fuse-blew": 0.3, smoke: 0.2, quiet: 0.1 },
  "no-run": WEAK,
  weak: WEAK,
  none: { runs: 0.985, quiet: 0.01, trip: 0.005 },
};
export const LOAD_ENDS_MARK: Mark = "from memory";

/** A full run: one thermal cycle, seconds; and how fast what is weak shows on the way there (common practice: 20 to 30 minutes). */
export const FULL_RUN_SECONDS = 1200;
const SHOWS_SECONDS = 600;

/** Share of sights that follow no rule, spread over all words. From memory. */
const STRAY = 0.01;

/** What shows as soon as the load is on; all else has to warm up first. Common practice. */
const AT_ONCE: ReadonlySet<PowerEffect> = new Set([
  "line-short",
  "earth-short",
  "bus-short",
  "supply-short",
  "leg-half",
]);

/** Of what a full run would have shown, the share that shows within so many seconds. */
function shownBy(effect: PowerEffect, seconds: number): number {
  if (AT_ONCE.has(effect)) return 1;
  return Math.min(1, Math.expm1(-seconds / SHOWS_SECONDS) / Math.expm1(-FULL_RUN_SECONDS / SHOWS_SECONDS));
}

/** Words that a run under load may end with by rule. */
const ENDS = OBSERVED.filter((word) => Object.values(LOAD_ENDS).some((row) => (row[word] ?? 0) > 0));

/**
 * Share of each way in which a run of so many seconds under load ends by rule, summing to one; `runs`: it ran until it was switched off.
 * @param off - parts off the board or with a lifted pin
 */
export function loadEndShares(
  board: Board,
  faults: readonly Fault[],
  off: ReadonlySet<string>,
  seconds: number,
): ReadonlyMap<Observed, number> {
  const effect = boardEffect(board, faults, off);
  const ends = LOAD_ENDS[effect];
  const shown = shownBy(effect, seconds);
  return new Map(ENDS.map((word) => [word, shown * (ends[word] ?? 0) + (word === "runs" ? 1 - shown : 0)]));
}

/** The same with what follows no rule, over all words: what a log may say. */
export function loadEndChances(...asked: Parameters<typeof loadEndShares>): ReadonlyMap<Observed, number> {
  const shares = loadEndShares(...asked);
  return new Map(
    OBSERVED.map((word) => [word, (1 - STRAY) * (shares.get(word) ?? 0) + STRAY / OBSERVED.length]),
  );
}

/** P(what it had done when it was switched off | these faults). A list counts as the geometric mean of its words. */
export function loadEndLikelihood(
  observed: Observed | readonly Observed[],
  chances: ReadonlyMap<Observed, number>,
): number {
  const words = [observed].flat();
  const logs = words.reduce((sum, word) => sum + Math.log(chances.get(word) ?? 1), 0);
  return words.length === 0 ? 1 : Math.exp(logs / words.length);
}
