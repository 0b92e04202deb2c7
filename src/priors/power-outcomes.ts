import type { Feed, Observed, Place, PowerEvent } from "../bench/event.ts";
import { OBSERVED } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { Sourced } from "../units/mark.ts";
import { limitsSupply } from "./bench-load.ts";
import { limitsShorts, viewOf } from "./circuit-view.ts";
import { boardEffect, type PowerEffect } from "./power-effects.ts";

/** What the technician sees at power-up, as shares, by what feeds the board. */
interface OutcomeRow extends Sourced {
  readonly mains: Readonly<Partial<Record<Observed, number>>>;
  readonly lamp: Readonly<Partial<Record<Observed, number>>>;
}

const row = (
  id: PowerEffect,
  mains: OutcomeRow["mains"],
  lamp: OutcomeRow["lamp"],
  words: string,
): OutcomeRow => ({
  id: `O-${id}`,
  mark: "common practice",
  words,
  mains,
  lamp,
});

/** Which sight goes with which effect is common practice for the series lamp; the shares are judged `from memory`. */
export const OUTCOME_ROWS: Readonly<Record<PowerEffect, OutcomeRow>> = {
  "input-open": row(
    "input-open",
    { quiet: 1 },
    { "lamp-dark": 0.85, quiet: 0.15 },
    "dark at once and no bus: the feed is open",
  ),
  "line-short": row(
    "line-short",
    { "fuse-blew": 0.7, trip: 0.22, smoke: 0.08 },
    { "lamp-bright": 0.94, "fuse-blew": 0.06 },
    "bright and stays: a hard short on the line",
  ),
  "earth-short": row(
    "earth-short",
    { trip: 0.75, "fuse-blew": 0.1, quiet: 0.05, runs: 0.1 },
    { trip: 0.7, "lamp-bright": 0.1, "lamp-dark": 0.15, runs: 0.05 },
    "the residual-current breaker trips: a wire of the mains is joined to earth",
  ),
  "feed-open": row(
    "feed-open",
    { quiet: 1 },
    { "lamp-dark": 0.85, quiet: 0.15 },
    "limiter or path open behind the filter",
  ),
  "bus-short": row(
    "bus-short",
    { "fuse-blew": 0.6, trip: 0.15, smoke: 0.13, quiet: 0.12 },
    { "lamp-bright": 0.93, "lamp-dim": 0.05, "fuse-blew": 0.02 },
    "bright and stays; behind a PTC bright for a while, then dark",
  ),
  "supply-short": row(
    "supply-short",
    { "fuse-blew": 0.5, smoke: 0.25, quiet: 0.25 },
    { "lamp-bright": 0.8, "lamp-dim": 0.12, "lamp-dark": 0.08 },
    "the bus through a winding of a few ohms",
  ),
  "bus-leak": row(
    "bus-leak",
    { quiet: 0.45, runs: 0.3, smoke: 0.25 },
    { "lamp-dim": 0.8, "lamp-bright": 0.12, "lamp-dark": 0.08 },
    "dim glow steady: a leak across the bus",
  ),
  "supply-dead": row("supply-dead", { quiet: 1 }, { "lamp-dark": 0.75, quiet: 0.25 }, "bus there, no rail"),
  "rail-short": row(
    "rail-short",
    { quiet: 0.95, smoke: 0.05 },
    { "lamp-pulsing": 0.6, "lamp-dark": 0.2, "lamp-dim": 0.1, quiet: 0.1 },
    "slow pulsing: the small supply hiccups",
  ),
  "leg-half": row(
    "leg-half",
    { "fuse-blew": 0.35, smoke: 0.2, quiet: 0.35, trip: 0.1 },
    { "lamp-dark": 0.55, "lamp-bright": 0.25, "lamp-dim": 0.12, quiet: 0.08 },
    "whole until its partner is told to switch",
  ),
  "no-run": row(
    "no-run",
    { quiet: 0.9, runs: 0.1 },
    { "lamp-dark": 0.7, quiet: 0.22, "lamp-dim": 0.05, runs: 0.03 },
    "rails live, no output, or no sign of it",
  ),
  weak: row(
    "weak",
    { runs: 0.55, quiet: 0.45 },
    { "lamp-dark": 0.5, "lamp-dim": 0.2, runs: 0.15, quiet: 0.15 },
    "works poorly or not for long",
  ),
  none: row(
    "none",
    { runs: 0.97, quiet: 0.03 },
    { "lamp-dark": 0.5, runs: 0.4, "lamp-dim": 0.08, quiet: 0.02 },
    "bright for a second, then dark: normal",
  ),
};

/** Share of sights that follow no rule, spread over all words. `from memory`. */
const STRAY = 0.03;

/** How the board is fed. */
export interface FeedSetup {
  readonly feed: Feed;
  /** for `bench`: the places it is clipped to */
  readonly at?: readonly [Place, Place];
  /** for `bench`: its volts and the amps it stops at */
  readonly volts?: number;
  readonly limitAmps?: number;
  /** parts off the board or with a lifted pin */
  readonly off?: ReadonlySet<string>;
}

function shares(
  board: Board,
  faults: readonly Fault[],
  setup: FeedSetup,
): Readonly<Partial<Record<Observed, number>>> {
  if (setup.feed !== "bench") {
    const effect = boardEffect(board, faults, setup.off);
    const limited = effect === "bus-short" && limitsShorts(viewOf(board));
    if (limited && setup.feed === "mains") return { quiet: 0.35, "fuse-blew": 0.4, trip: 0.1, smoke: 0.15 };
    return OUTCOME_ROWS[effect][setup.feed];
  }
  const there = faults.filter((fault) => fault.of === "nets" || setup.off?.has(fault.part) !== true);
  return limitsSupply(board, there, setup)
    ? { limiting: 0.97, quiet: 0.03 }
    : { quiet: 0.9, runs: 0.05, limiting: 0.05 };
}

/** The setup of a power-up as the log has it. */
export function feedSetup(
  { feed, at, volts, limitAmps }: Omit<PowerEvent, "observed">,
  off: ReadonlySet<string>,
): FeedSetup {
  return {
    feed,
    off,
    ...(typeof at === "object" ? { at } : {}),
    ...(volts === undefined ? {} : { volts }),
    ...(limitAmps === undefined ? {} : { limitAmps }),
  };
}

function smoothed(share: number | undefined): number {
  return (1 - STRAY) * (share ?? 0) + STRAY / OBSERVED.length;
}

/** No lamp glows where none is in circuit, and only a bench supply limits. */
function canBeSeen(word: Observed, feed: Feed): boolean {
  if (word.startsWith("lamp-")) return feed === "lamp";
  return word !== "limiting" || feed === "bench";
}

/** Chance of each word for what can be seen with this feed, summing to one. */
export function outcomeChances(
  board: Board,
  faults: readonly Fault[],
  setup: FeedSetup,
): ReadonlyMap<Observed, number> {
  const rule = shares(board, faults, setup);
  const seen = OBSERVED.filter((word) => canBeSeen(word, setup.feed));
  const total = seen.reduce((sum, word) => sum + smoothed(rule[word]), 0);
  return new Map(seen.map((word) => [word, smoothed(rule[word]) / total]));
}

/**
 * P(observed | these faults present, this feed). A list of words (several things seen at once) counts as the geometric mean of
 * its words, so that telling more never weighs a set of faults down by itself.
 */
export function observedLikelihood(
  board: Board,
  faults: readonly Fault[],
  setup: FeedSetup,
  observed: Observed | readonly Observed[],
): number {
  const words = typeof observed === "string" ? [observed] : observed;
  if (words.length === 0) return 1;
  const rule = shares(board, faults, setup);
  const only = words.length === 1 ? words[0] : undefined;
  if (only !== undefined) return smoothed(rule[only]);
  const logs = words.reduce((sum, word) => sum + Math.log(smoothed(rule[word])), 0);
  return Math.exp(logs / words.length);
}
