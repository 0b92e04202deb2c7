/** What the practice bench shows of a shorted rail: milliohms along its copper, and a supply that feeds it a low voltage. */
import type { Observed, PowerEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { RailGroup } from "../board/rail-groups.ts";
import { railShort } from "../board/rail-groups.ts";
import { LiveBoard } from "../live/live-board.ts";
import { feedOf } from "../live/power-feed.ts";
import { FOUR_WIRE, fourWireSpread } from "../meter/four-wire.ts";
import { normalDeviate, type Random, seededRandom } from "./seeded-random.ts";

/** The copper from the rail to this part and back, drawn once for the board. */
function trackOhms(seed: number, ref: string): number {
  return (
    FOUR_WIRE.trackOhms *
    Math.exp(FOUR_WIRE.trackSpreadLn * normalDeviate(seededRandom(seed, `track ${ref}`)))
  );
}

/**
 * Ohms at a part's own pins by four wires: those of the rail, and the copper from there to the short, which is none at the short itself.
 * @param railOhms - what the circuit has across the rail, without copper
 */
export function alongRailOhms(
  { group, part }: { readonly group: RailGroup; readonly part: string },
  railOhms: number,
  faults: readonly Fault[],
  seed: number,
  random: Random,
): number {
  const [short] = faults
    .flatMap((fault) => railShort(group, fault) ?? [])
    .sort((one, other) => one.ohms - other.ohms);
  const at = short?.member?.part.ref;
  const copper = at === part ? 0 : trackOhms(seed, part) + (at === undefined ? 0 : trackOhms(seed, at));
  const ohms = railOhms + copper;
  return Number(Math.max(0, ohms + fourWireSpread(ohms) * normalDeviate(random)).toFixed(4));
}

/** What a low voltage fed into a rail shows: the supply at its limit or not. */
export function injectionSights(
  board: Board,
  { now }: Timeline,
  power: Omit<PowerEvent, "observed">,
  faults: readonly Fault[],
): readonly Observed[] {
  return new LiveBoard(board, { ...now, powered: true }, feedOf(power, board)).state(faults).observed;
}
