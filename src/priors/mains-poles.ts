/** Which wire of the mains each net of the filter hangs on. */
import type { Board, Part, PartKind } from "../board/board.ts";
import { throughPairs } from "../board/net-groups.ts";
import type { StageGroup } from "./stage-groups.ts";

const IN_LINE: ReadonlySet<PartKind> = new Set(["fuse", "link", "choke", "inductor", "ntc", "ptc", "relay"]);
/** A resistor up to this may be the inrush limiter. Common practice, as in `board/bus.ts`. */
const INRUSH_OHMS = 100;
const FRONT: ReadonlySet<StageGroup> = new Set(["input", "inrush", "rectifier"]);

function isInLine(part: Part, group: StageGroup | undefined): boolean {
  if (group === undefined || !FRONT.has(group)) return false;
  const resistor = part.kind === "resistor" && (part.value.ohms ?? Number.MAX_VALUE) <= INRUSH_OHMS;
  return resistor || IN_LINE.has(part.kind);
}

/**
 * Net -> index of the supply's place it is joined to by what stands in line before the bridge. Loads that hang on the line (a
 * valve's coil, a heating element) are not followed: they would make the wires one. Empty for a dc supply.
 */
export function mainsPoles(
  board: Board,
  groupOf: ReadonlyMap<string, StageGroup>,
): ReadonlyMap<string, number> {
  const poles = new Map<string, number>();
  if (board.supply.kind !== "ac") return poles;
  board.supply.at.forEach((net, pole) => {
    poles.set(net, pole);
  });
  const pairs = [...board.parts.values()]
    .filter((part) => isInLine(part, groupOf.get(part.ref)))
    .flatMap(throughPairs);
  for (let before = -1; before < poles.size; ) {
    before = poles.size;
    for (const [one, other] of pairs) {
      const pole = poles.get(one) ?? poles.get(other);
      if (pole === undefined) continue;
      if (!poles.has(one)) poles.set(one, pole);
      if (!poles.has(other)) poles.set(other, pole);
    }
  }
  return poles;
}
