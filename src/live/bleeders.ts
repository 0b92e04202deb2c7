/** Resistors, one or several in a row, that only bleed: between two nets of the power path, off it in between. */
import type { Part } from "../board/board.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import { carriesPower, type LiveView } from "./live-view.ts";

export interface Bleeder {
  readonly from: string;
  readonly to: string;
  readonly ohms: number;
}

interface Link {
  readonly ref: string;
  readonly ends: readonly [string, string];
  readonly nominal: number;
}

/** Longest row followed: sense chains have three or four resistors and the lower one. */
const MOST_IN_A_ROW = 6;

function linksOf(board: FaultedBoard): readonly Link[] {
  const links: Link[] = [];
  for (const part of board.parts()) {
    if (part.kind !== "resistor" || carriesPower(part)) continue;
    const [one, far] = [board.netOf(part.ref, "1"), board.netOf(part.ref, "2")];
    if (one !== null && far !== null)
      links.push({ ref: part.ref, ends: [one, far], nominal: part.value.ohms ?? Number.POSITIVE_INFINITY });
  }
  return links;
}

/** By the parts on the board as they lie on one bench: no fault changes what is joined to what. */
const known = new WeakMap<readonly Part[], readonly Link[]>();

/** Every such row once. A net where rows part is followed one way only: the current there is small either way. */
export function bleeders(view: LiveView, board: FaultedBoard): readonly Bleeder[] {
  const links = known.get(board.parts()) ?? linksOf(board);
  known.set(board.parts(), links);
  const { zero, rails } = view.board;
  const stops = new Set(rails.map((rail) => rail.net));
  const inPath = (net: string) => net === zero || view.powerNets.has(net);
  // Only links that a row comes to are asked for their ohms: faults of all others cannot matter here.
  const ohmsOf = ({ ref, nominal }: Link) => board.throughOhms(ref, null, nominal);
  const used = new Set<string>();
  const found: Bleeder[] = [];
  for (const first of links) {
    const from = first.ends.find((net) => inPath(net) && net !== zero);
    if (from === undefined || used.has(first.ref)) continue;
    let at = first.ends[0] === from ? first.ends[1] : first.ends[0];
    let ohms = ohmsOf(first);
    if (!Number.isFinite(ohms)) continue;
    used.add(first.ref);
    for (let count = 1; count < MOST_IN_A_ROW && !inPath(at) && !stops.has(at); count++) {
      const next = links.find(
        (link) => link.ends.includes(at) && !used.has(link.ref) && Number.isFinite(ohmsOf(link)),
      );
      if (next === undefined) break;
      used.add(next.ref);
      ohms += ohmsOf(next);
      at = next.ends[0] === at ? next.ends[1] : next.ends[0];
    }
    if (inPath(at) && at !== from) found.push({ from, to: at, ohms });
  }
  return found;
}
