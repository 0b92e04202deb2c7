/** A low voltage fed into a dead rail so that its short shows itself: what counts as one, and with what it is done. */
import type { PowerEvent } from "./event.ts";
import type { Timeline } from "./timeline.ts";

/**
 * Volts and amps of it (common practice: 0.3 to 0.4 V first, where healthy silicon stays off and all current flows in the short; limit
 * 1 A; then up to 1 V; never above the rail's own volts). A bench without a supply takes a rechargeable cell through 1 ohm.
 */
export const INJECTION = {
  firstVolts: 0.35,
  nextVolts: 1,
  limitAmps: 1,
  cellVolts: 1.2,
  cellOhms: 1,
  /** a bench feed of no more than this is an injection; more is a rail fed to make it work (a fresh cell has 1.4 V) */
  mostVolts: 1.4,
} as const;

/** Is this power-up a low voltage into a rail? It moves no charge to speak of and breaks nothing that was whole. */
export function isInjection(event: {
  readonly do: string;
  readonly feed?: PowerEvent["feed"];
  readonly volts?: number;
  readonly at?: unknown;
}): boolean {
  return (
    event.do === "power" &&
    event.feed === "bench" &&
    event.volts !== undefined &&
    event.volts <= INJECTION.mostVolts &&
    typeof event.at === "object"
  );
}

/** Position in `entries` of the last power-up of the board, injections left out; -1 where it has not been powered on this bench. */
export function lastPowerUp({ entries }: Timeline): number {
  return entries.findLastIndex(({ event }) => event.do === "power" && !isInjection(event));
}
