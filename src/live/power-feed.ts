/** How the board is fed, and what stands between the wall and its terminals. */
import type { Place, PowerEvent } from "../bench/event.ts";
import type { Board } from "../board/board.ts";

export type PowerFeed =
  | { readonly kind: "mains" }
  | { readonly kind: "lamp"; readonly watts: number }
  | {
      readonly kind: "bench";
      readonly volts: number;
      readonly limitAmps: number;
      /** a resistor in series with it; none where absent */
      readonly ohms?: number;
      readonly at: readonly [Place, Place];
    };

export const FEED_MODEL = {
  /** resistance of the wiring up to the outlet, ohms a wire pair (IEC 60725 reference impedance 0.4 + 0.15 ohm, from memory) */
  wiringOhms: 0.4,
  /** deviation of the mains from its nominal volts, a share: 230 V +-10 % are allowed, most lie within half (common practice) */
  mainsShare: 0.025,
  /** of a bench supply and its leads (from memory) */
  benchOhms: 0.05,
  benchShare: 0.01,
  /** lamp of a job that does not say which, watts (common practice) */
  lampWatts: 100,
  /** a bench supply of a job that does not say: a low voltage with a small limit (common practice) */
  benchVolts: 30,
  benchLimitAmps: 0.2,
} as const;

/** The feed of a log's `power`; what the event leaves out is the table's. */
export function feedOf(event: Omit<PowerEvent, "observed">, board: Board): PowerFeed {
  if (event.feed === "lamp") return { kind: "lamp", watts: event.watts ?? FEED_MODEL.lampWatts };
  if (event.feed === "mains") return { kind: "mains" };
  const [plus = board.zero, minus = board.zero] = board.supply.at;
  return {
    kind: "bench",
    volts: event.volts ?? FEED_MODEL.benchVolts,
    limitAmps: event.limitAmps ?? FEED_MODEL.benchLimitAmps,
    ...(event.ohms === undefined ? {} : { ohms: event.ohms }),
    at: typeof event.at === "object" ? event.at : [plus, minus],
  };
}

/** Deviation of the feed's volts as a share. */
export function feedShare(feed: PowerFeed): number {
  return feed.kind === "bench" ? FEED_MODEL.benchShare : FEED_MODEL.mainsShare;
}
