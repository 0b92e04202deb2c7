/**
 * What the oracle's boards do under power: coarse rules of its own, worst condition first. That a lamp is bright on a short and
 * flashes on a healthy bus is common practice; every chance is from memory.
 */
import type { Feed, Observed } from "../../src/bench/event.ts";
import type { Symptom } from "../../src/priors/cause.ts";

/** The state of a board with all its faults; the first that holds. */
export const CONDITIONS = [
  "input-open",
  "line-short",
  "earth-short",
  "bus-short",
  "supply-dead",
  "rail-short",
  "half-leg",
  "no-run",
  "weak",
  "works",
] as const;
export type Condition = (typeof CONDITIONS)[number];

export type Chances = Readonly<Partial<Record<Observed, number>>>;

export const POWER_OUTCOMES: Readonly<Record<Condition, Readonly<Record<Exclude<Feed, "bench">, Chances>>>> =
  {
    "input-open": { mains: { quiet: 1 }, lamp: { "lamp-dark": 0.8, quiet: 0.2 } },
    "line-short": {
      mains: { "fuse-blew": 0.55, trip: 0.35, smoke: 0.1 },
      lamp: { "lamp-bright": 1 },
    },
    "earth-short": {
      mains: { trip: 0.85, "fuse-blew": 0.1, quiet: 0.05 },
      lamp: { trip: 0.8, "lamp-dark": 0.15, "lamp-bright": 0.05 },
    },
    "bus-short": {
      mains: { "fuse-blew": 0.4, trip: 0.2, smoke: 0.2, quiet: 0.2 },
      lamp: { "lamp-bright": 0.9, "lamp-dim": 0.1 },
    },
    "supply-dead": {
      mains: { quiet: 0.92, smoke: 0.05, "fuse-blew": 0.03 },
      lamp: { "lamp-dark": 0.7, "lamp-dim": 0.15, quiet: 0.15 },
    },
    "rail-short": {
      mains: { quiet: 0.85, smoke: 0.15 },
      lamp: { "lamp-pulsing": 0.55, "lamp-dark": 0.2, "lamp-dim": 0.15, quiet: 0.1 },
    },
    "half-leg": {
      mains: { quiet: 0.45, trip: 0.15, "fuse-blew": 0.15, smoke: 0.25 },
      lamp: { "lamp-dark": 0.5, "lamp-bright": 0.25, "lamp-dim": 0.25 },
    },
    "no-run": { mains: { quiet: 1 }, lamp: { "lamp-dark": 0.7, "lamp-dim": 0.2, quiet: 0.1 } },
    weak: {
      mains: { quiet: 0.3, runs: 0.7 },
      lamp: { "lamp-dim": 0.15, "lamp-pulsing": 0.1, quiet: 0.1, runs: 0.65 },
    },
    works: { mains: { runs: 0.99, quiet: 0.01 }, lamp: { runs: 0.96, quiet: 0.04 } },
  };

/**
 * How a full run under load ends (`runs`: it ran until it was switched off). A weak board is one that runs and comes back: one thermal
 * cycle under load shows about half of them, as the load test of the trade is meant to. From memory.
 */
export const LOAD_ENDS: Readonly<Record<Condition, Chances>> = {
  "input-open": { quiet: 1 },
  "line-short": { "fuse-blew": 0.6, trip: 0.4 },
  "earth-short": { trip: 1 },
  "bus-short": { "fuse-blew": 0.6, smoke: 0.2, trip: 0.2 },
  "supply-dead": { quiet: 1 },
  "rail-short": { quiet: 0.8, smoke: 0.2 },
  "half-leg": { trip: 0.4, "fuse-blew": 0.3, smoke: 0.3 },
  "no-run": { quiet: 1 },
  weak: { runs: 0.5, quiet: 0.35, trip: 0.1, smoke: 0.05 },
  works: { runs: 0.99, quiet: 0.01 },
};

/** A full run, seconds; what a weak board does under load it does at any time of it. From memory. */
export const FULL_RUN_SECONDS = 1200;

/** With a bench supply across a short it stands at its limit; elsewhere nothing is seen. */
export const BENCH_OUTCOMES = {
  short: { limiting: 0.97, quiet: 0.03 },
  clear: { quiet: 0.97, limiting: 0.03 },
} as const satisfies Record<string, Chances>;

/** What the customer says of a board in this condition. */
export const SYMPTOM_CHANCES: Readonly<Record<Condition, Readonly<Partial<Record<Symptom, number>>>>> = {
  "input-open": { dead: 1 },
  "line-short": { dead: 0.4, "trips-supply": 0.6 },
  "earth-short": { "trips-supply": 0.9, dead: 0.1 },
  "bus-short": { dead: 0.6, "trips-supply": 0.4 },
  "supply-dead": { dead: 0.95, other: 0.05 },
  "rail-short": { dead: 0.85, "starts-then-stops": 0.1, other: 0.05 },
  "half-leg": { "no-output": 0.4, "trips-supply": 0.3, dead: 0.3 },
  "no-run": { "no-output": 0.7, "starts-then-stops": 0.25, other: 0.05 },
  weak: { "starts-then-stops": 0.75, other: 0.25 },
  works: { other: 1 },
};

/**
 * Share of the cascades that a power-up with this feed still sets off, by what does the harm, and of fresh faults a board. A lamp holds back
 * current, and neither the volts of rails whose feedback is lost nor what leaks into logic (common practice; the shares from memory).
 */
export const POWER_BREAKS: Readonly<
  Record<Feed, { readonly byAmps: number; readonly byVolts: number; readonly fresh: number }>
> = {
  mains: { byAmps: 0.8, byVolts: 0.8, fresh: 0.015 },
  lamp: { byAmps: 0.12, byVolts: 0.6, fresh: 0.004 },
  bench: { byAmps: 0.02, byVolts: 0.02, fresh: 0.001 },
};

/** A fitted part that is bad: new, pulled from a donor, or put in wrong on top of either. */
export const FITTED_BAD = { new: 0.008, used: 0.12, wrong: 0.015 } as const;

/** Share of opens that are a joint, by whether the part is heavy; resoldering closes those. */
export const JOINT_OPENS = { heavy: 0.5, light: 0.2, fuse: 0 } as const;

/** Shorts and leaks of less ohms than this, between two poles, hold them together. */
export const HOLDS_OHMS = { line: 100, bus: 150, rail: 120 } as const;
