/** Where along a rail a four-wire reading was taken. */
import type { Board } from "../board/board.ts";
import { type RailGroup, railGroups } from "../board/rail-groups.ts";
import type { BenchState } from "./bench-state.ts";
import type { MeasureEvent } from "./event.ts";
import { pinOfPlace } from "./place.ts";

/** The part at whose own two pins, both soldered, a four-wire reading was taken, and the rail that it lies across; null elsewhere. */
export function railAtPins(
  board: Board,
  bench: BenchState,
  event: Pick<MeasureEvent, "mode" | "wires" | "red" | "black">,
): { readonly group: RailGroup; readonly part: string } | null {
  if (event.mode !== "ohms" || event.wires !== 4) return null;
  const [red, black] = [pinOfPlace(event.red ?? ""), pinOfPlace(event.black ?? "")];
  if (red === null || black === null || red.ref !== black.ref || bench.off.has(red.ref)) return null;
  if ([event.red, event.black].some((place) => bench.lifted.has(place ?? ""))) return null;
  for (const group of railGroups(board)) {
    const member = group.members.find(({ part }) => part.ref === red.ref);
    const pins = [red.pin, black.pin];
    if (member !== undefined && pins.includes(member.plus) && pins.includes(member.minus))
      return { group, part: red.ref };
  }
  return null;
}
