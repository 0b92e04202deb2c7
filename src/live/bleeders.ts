/** Resistors, one or several in a row, that only bleed: between two nets of the power path, off it in between. */
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
  readonly ohms: number;
}

/** Longest row followed: sense chains have three or four resistors and the lower one. */
const MOST_IN_A_ROW = 6;

function linksOf(board: FaultedBoard): readonly Link[] {
  const links: Link[] = [];
  for (const part of board.parts()) {
    if (part.kind !== "resistor" || carriesPower(part)) continue;
    const [one, far] = [board.netOf(part.ref, "1"), board.netOf(part.ref, "2")];
    const ohms = board.throughOhms(part.ref, null, part.value.ohms ?? Number.POSITIVE_INFINITY);
    if (one !== null && far !== null && Number.isFinite(ohms))
      links.push({ ref: part.ref, ends: [one, far], ohms });
  }
  return links;
}

/** Every such row once. A net where rows part is followed one way only: the current there is small either way. */
export function bleeders(view: LiveView, board: FaultedBoard): readonly Bleeder[] {
  const links = linksOf(board);
  const { zero, rails } = view.board;
  const stops = new Set(rails.map((rail) => rail.net));
  const inPath = (net: string) => net === zero || view.powerNets.has(net);
  const used = new Set<string>();
  const found: Bleeder[] = [];
  for (const first of links) {
    const from = first.ends.find((net) => inPath(net) && net !== zero);
    if (from === undefined || used.has(first.ref)) continue;
    let at = first.ends[0] === from ? first.ends[1] : first.ends[0];
    let ohms = first.ohms;
    used.add(first.ref);
    for (let count = 1; count < MOST_IN_A_ROW && !inPath(at) && !stops.has(at); count++) {
      const next = links.find((link) => !used.has(link.ref) && link.ends.includes(at));
      if (next === undefined) break;
      used.add(next.ref);
      ohms += next.ohms;
      at = next.ends[0] === at ? next.ends[1] : next.ends[0];
    }
    if (inPath(at) && at !== from) found.push({ from, to: at, ohms });
  }
  return found;
}
