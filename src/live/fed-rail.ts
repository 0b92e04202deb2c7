/** A bench supply clipped to a rail: that rail and what is made from it live, the rest does not. */
import { railEnds } from "../board/rail-ends.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { FED_RAIL_SHARE } from "./live-models.ts";
import type { LiveView } from "./live-view.ts";
import type { PowerFeed } from "./power-feed.ts";
import type { RailState } from "./rail-state.ts";
import { RailTree } from "./rail-tree.ts";

export interface FedRail {
  readonly rails: readonly RailState[];
  readonly tree: RailTree;
  /** 1 where the supply is at its limit */
  readonly limited: number;
  readonly amps: number;
  readonly tripped: false;
}

const BISECTIONS = 40;
/** A supply shows that it limits from this share of its limit; behind a resistor the volts fall before it gets there. */
const AT_THE_LIMIT = 0.99;

/** Null where the feed is no bench supply, or not clipped to a rail and its 0 V. */
export function fedRail(view: LiveView, board: FaultedBoard, feed: PowerFeed): FedRail | null {
  if (feed.kind !== "bench") return null;
  const [plus, minus] = feed.at.map((place) => board.netAt(place));
  const rail = view.roles.rails.find((one) => railEnds(one).join() === `${plus},${minus}`);
  if (rail === undefined) return null;
  const sign = Math.sign(rail.volts);
  const tree = new RailTree(view, board, new Map());
  const { volts: set, limitAmps, ohms = 0 } = feed;
  const beyond = (volts: number) =>
    tree.draw(rail, volts) > limitAmps || volts + tree.draw(rail, volts) * ohms > set;
  let [low, high] = [0, set];
  if (beyond(set))
    for (let i = 0; i < BISECTIONS; i++) {
      const middle = (low + high) / 2;
      if (beyond(middle)) high = middle;
      else low = middle;
    }
  const volts = beyond(set) ? low : set;
  const limited = beyond(set) && tree.draw(rail, volts) > AT_THE_LIMIT * limitAmps;
  const fed = tree.settle(
    rail,
    sign * volts,
    0,
    volts < set ? FED_RAIL_SHARE.limited * Math.min(1, volts / Math.abs(rail.volts)) : FED_RAIL_SHARE.free,
  );
  const dead = tree.rails
    .filter((one) => !fed.some((state) => state.name === one.name))
    .map((one) => ({
      name: one.name,
      net: one.net,
      back: one.back,
      volts: 0,
      rippleVolts: 0,
      share: 0.02,
      steady: true,
      amps: 0,
    }));
  return {
    rails: [...fed, ...dead],
    tree,
    limited: limited ? 1 : 0,
    amps: tree.draw(rail, volts),
    tripped: false,
  };
}
