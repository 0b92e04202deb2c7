/** A powered board that was told to run: its bus with the load on, sagging behind what is in the way, or held up by its boost. */

import type { PowerEvent } from "../bench/event.ts";
import type { Found } from "./found.ts";
import { type Front, meanBetween } from "./front.ts";
import type { Potential } from "./potentials.ts";
import type { BoardLoad, LoadedRun, Running } from "./run-state.ts";
import { OWN_LOAD } from "./running.ts";

export const LOAD_DOUBT = {
  /** what a motor draws on the bench is guessed within a factor of two, a dummy's watts are known: deviation of what it costs the bus (from memory) */
  own: 0.5,
  dummy: 0.2,
  /** a boost holds its bus to about this share (350 to 390 V of one kind of board, common practice) */
  boosted: 0.03,
  /** deviation of a boosted bus's ripple as a share: load and remaining capacitance are guessed (from memory) */
  ripple: 0.6,
} as const;

/** The load of a log's `power`; null where it was told to drive nothing. */
export function loadOf({ load }: Pick<PowerEvent, "load">): BoardLoad | null {
  if (load === undefined) return null;
  return load === "own" ? OWN_LOAD : { watts: load, dummy: true };
}

/** The board as found at rest, once it has been told to run. One that trips, or does nothing, stands as before. */
export function underLoad(
  found: Found,
  { run, front }: { readonly run: Running; readonly front: Front | null },
  load: BoardLoad,
): Found {
  const draws = run.does === "runs" || run.does === "weak";
  if (!draws || front === null) return { ...found, run: { ...run, load, sagDoubt: 0 } };
  const rest = found.front === null ? null : busMean(found, found.front);
  const sag = rest === null || rest <= 0 ? 0 : Math.max(0, 1 - (busMean(found, front) ?? rest) / rest);
  const sagDoubt = (load.dummy ? LOAD_DOUBT.dummy : LOAD_DOUBT.own) * sag;
  return { ...found, front, run: { ...run, load, sagDoubt } };
}

/** Deviation of the ripple that a load makes, as a share of it. */
export function rippleDoubt(run: LoadedRun | undefined): number {
  return run === undefined ? 0 : run.load.dummy ? LOAD_DOUBT.dummy : LOAD_DOUBT.ripple;
}

function busMean({ view }: Found, { path, rough }: Front): number | null {
  const { bus } = view.roles;
  return bus === null ? null : meanBetween(path, rough, view.board.zero, bus.plus, bus.minus);
}

/** Capacitance straight across two nets of the path, farads. */
function faradsBetween(front: Front, plus: string, minus: string, zero: string): number {
  const { path } = front;
  const number = (net: string) => (net === zero ? -1 : path.nets.get(net));
  const ends = [number(plus), number(minus)];
  return path.circuit.capacitors.reduce(
    (sum, { from, to, farads }) => (ends.includes(from) && ends.includes(to) ? sum + farads : sum),
    0,
  );
}

/**
 * Bus plus of a board whose boost holds it, against the board's zero; null where it does not. Its ripple is that of a sine-shaped
 * input current: peak to peak watts / (2 pi 2f volts farads) (textbook of single-phase boost correction, from memory).
 */
export function boostedBus({ run, front, view }: Found): Potential | null {
  const { bus } = view.roles;
  if (run === undefined || run.does !== "runs" || run.boost !== "holds") return null;
  if (run.busVolts === null || bus === null || front === null) return null;
  const { zero, supply } = view.board;
  const farads = Math.max(faradsBetween(front, bus.plus, bus.minus, zero), 1e-6);
  const peakToPeak = run.load.watts / (2 * Math.PI * 2 * (supply.hz ?? 50) * run.busVolts * farads);
  const rippleVolts = Math.min(peakToPeak, 0.5 * run.busVolts) / (2 * Math.SQRT2);
  return {
    domain: zero,
    dcVolts: run.busVolts,
    dcSpread: LOAD_DOUBT.boosted * run.busVolts,
    wave: null,
    rippleVolts,
    rippleSpread: LOAD_DOUBT.ripple * rippleVolts,
  };
}
