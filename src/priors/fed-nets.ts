/** Where a bench supply is clipped on, and what it feeds from there. */
import type { Place } from "../bench/event.ts";
import { netOfPlace } from "../bench/place.ts";
import type { Board } from "../board/board.ts";
import { railEnds } from "../board/rail-ends.ts";
import type { RailRole } from "../board/roles.ts";
import { viewOf } from "./circuit-view.ts";

/** The nets that a bench supply feeds. */
export interface FedNets {
  /** the rail it is clipped to; null: the bus, or somewhere else */
  readonly rail: RailRole | null;
  /** is it clipped across the bus */
  readonly bus: boolean;
  /** 0 V of the rail, else the net of the minus clip */
  readonly back: string;
  /** the rail, else what the plus clip is on, with the rails that are made from it */
  readonly nets: ReadonlySet<string>;
}

/** What a bench supply clipped there (plus, minus) feeds: its rail and every rail made from that one by a regulator or chip. */
export function feedNets(board: Board, [plus, minus]: readonly [Place, Place]): FedNets {
  const { bus, rails } = viewOf(board).roles;
  const [red, black] = [netOfPlace(board, plus), netOfPlace(board, minus)];
  const rail = rails.find((one) => railEnds(one).join() === `${red},${black}`) ?? null;
  return {
    rail,
    back: rail?.back ?? black,
    bus: bus !== null && red === bus.plus && black === bus.minus,
    nets: rail === null ? new Set([red]) : railsFrom(board, rail),
  };
}

function railsFrom(board: Board, from: RailRole): ReadonlySet<string> {
  const { rails } = viewOf(board).roles;
  const nets = new Set([from.net]);
  for (let before = 0; before < nets.size; ) {
    before = nets.size;
    for (const rail of rails) {
      const maker = rail.from === null ? undefined : board.parts.get(rail.from);
      if (maker === undefined || maker.kind === "transformer" || rail.net === from.net) continue;
      const input = maker.kind === "regulator" ? maker.pins.get("in") : undefined;
      const fedBy = input === undefined ? [...maker.pins.values()] : [input];
      if (fedBy.some((net) => nets.has(net) && net !== rail.net)) nets.add(rail.net);
    }
  }
  return nets;
}
