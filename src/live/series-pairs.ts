/** Capacitors that stand in series two by two between nets that carry power, each pair seen as one. */
import type { Part } from "../board/board.ts";
import type { FaultedBoard } from "./faulted-board.ts";
import type { LiveView } from "./live-view.ts";

export interface SeriesPair {
  readonly from: string;
  readonly to: string;
  readonly farads: number;
  /** of both where both leak or are shorted; infinite otherwise */
  readonly ohms: number;
}

/** Farads of one half and its leak: a shorted half is a wire to the other. */
interface Half {
  readonly end: string;
  readonly farads: number;
  readonly ohms: number;
}

/** The net between two halves, and the capacitors of each. */
interface Middle {
  readonly halves: readonly [Side, Side];
}

interface Side {
  readonly end: string;
  readonly parts: readonly Part[];
}

function halfOf(board: FaultedBoard, end: string, parts: readonly Part[]): Half {
  let farads = 0;
  let siemens = 0;
  for (const part of parts) {
    farads += board.farads(part, part.value.farads ?? 0);
    siemens += 1 / board.acrossOhms(part.ref);
  }
  return { end, farads, ohms: 1 / siemens };
}

function endsOf(board: FaultedBoard, part: Part): readonly [string, string] | null {
  const [plus, minus] = [board.netOf(part.ref, "plus"), board.netOf(part.ref, "minus")];
  return plus === null || minus === null ? null : [plus, minus];
}

/** Nets outside the power path that capacitors of the path meet at, from two sides. No fault changes them. */
function middlesOf(view: LiveView, board: FaultedBoard): readonly Middle[] {
  const sides = new Map<string, Map<string, Part[]>>();
  for (const part of board.parts()) {
    const ends = part.kind === "capacitor" ? endsOf(board, part) : null;
    if (ends === null) continue;
    for (const [middle, end] of [ends, [ends[1], ends[0]]] as const) {
      if (view.powerNets.has(middle) || !view.powerNets.has(end)) continue;
      const halves = sides.get(middle) ?? new Map<string, Part[]>();
      sides.set(middle, halves.set(end, [...(halves.get(end) ?? []), part]));
    }
  }
  return [...sides.values()].flatMap((halves) => {
    const [one, far, third] = [...halves].map(([end, parts]) => ({ end, parts }));
    return one === undefined || far === undefined || third !== undefined
      ? []
      : [{ halves: [one, far] as const }];
  });
}

/** By the parts on the board as they lie on one bench. */
const known = new WeakMap<readonly Part[], readonly Middle[]>();

/** A half of fewer ohms than this is no capacitor any more: the other half sees the whole. */
const WIRE_OHMS = 100;

export function seriesPairs(view: LiveView, board: FaultedBoard): readonly SeriesPair[] {
  const middles = known.get(board.parts()) ?? middlesOf(view, board);
  known.set(board.parts(), middles);
  return middles.map(({ halves: [one, far] }) => {
    const [upper, lower] = [halfOf(board, one.end, one.parts), halfOf(board, far.end, far.parts)];
    const above = upper.ohms < WIRE_OHMS ? Number.POSITIVE_INFINITY : upper.farads;
    const below = lower.ohms < WIRE_OHMS ? Number.POSITIVE_INFINITY : lower.farads;
    const farads = 1 / (1 / above + 1 / below);
    return {
      from: upper.end,
      to: lower.end,
      farads: Number.isFinite(farads) ? farads : 0,
      ohms: upper.ohms + lower.ohms,
    };
  });
}
