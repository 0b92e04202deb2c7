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

function halvesAt(view: LiveView, board: FaultedBoard, middle: string): ReadonlyMap<string, Half> {
  const halves = new Map<string, Half>();
  for (const part of board.parts()) {
    if (part.kind !== "capacitor") continue;
    const ends = endsOf(board, part);
    const end = ends?.find((net) => net !== middle);
    if (ends?.includes(middle) !== true || end === undefined || !view.powerNets.has(end)) continue;
    const before = halves.get(end) ?? { end, farads: 0, ohms: Number.POSITIVE_INFINITY };
    halves.set(end, {
      end,
      farads: before.farads + board.farads(part, part.value.farads ?? 0),
      ohms: 1 / (1 / before.ohms + 1 / board.acrossOhms(part.ref)),
    });
  }
  return halves;
}

function endsOf(board: FaultedBoard, part: Part): readonly [string, string] | null {
  const [plus, minus] = [board.netOf(part.ref, "plus"), board.netOf(part.ref, "minus")];
  return plus === null || minus === null ? null : [plus, minus];
}

/** A half of fewer ohms than this is no capacitor any more: the other half sees the whole. */
const WIRE_OHMS = 100;

/** Middles are nets outside the power path that two capacitors of the path meet at. */
export function seriesPairs(view: LiveView, board: FaultedBoard): readonly SeriesPair[] {
  const middles = new Set<string>();
  for (const part of board.parts()) {
    if (part.kind !== "capacitor") continue;
    const ends = endsOf(board, part);
    if (ends === null || ends.every((net) => !view.powerNets.has(net))) continue;
    for (const net of ends) if (!view.powerNets.has(net)) middles.add(net);
  }
  return [...middles].flatMap((middle) => {
    const halves = [...halvesAt(view, board, middle).values()];
    if (halves.length !== 2) return [];
    const [upper, lower] = halves;
    const one = upper.ohms < WIRE_OHMS ? Number.POSITIVE_INFINITY : upper.farads;
    const other = lower.ohms < WIRE_OHMS ? Number.POSITIVE_INFINITY : lower.farads;
    const farads = 1 / (1 / one + 1 / other);
    return [
      {
        from: upper.end,
        to: lower.end,
        farads: Number.isFinite(farads) ? farads : 0,
        ohms: upper.ohms + lower.ohms,
      },
    ];
  });
}
