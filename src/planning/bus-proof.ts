/**
 * What shows, behind a lamp, that the bus stands at its volts: the bus itself read. A rail that the small supply makes from it says so only
 * with the lamp dark as well, for the supply runs from a third of the bus, and then the lamp glows with what holds the rest down; and not behind
 * a PTC, which takes those volts itself once it is hot. Dark alone proves nothing: the feed may be open, or a short hide behind a hot limiter
 * (common practice).
 */
import type { MeasureEvent, Observed, Place } from "../bench/event.ts";
import { netOfPlace } from "../bench/place.ts";
import type { Board } from "../board/board.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { lampBusVolts, lampGoesDark } from "./board-idle.ts";

/** Under this share of what a good board shows the place is not at its volts. From memory. */
const STANDING_SHARE = 0.75;

interface Proof {
  readonly places: readonly [Place, Place];
  /** of the rail; null: of the bus, which depends on the lamp */
  readonly volts: number | null;
}

/**
 * The bus first; no rail where the small supply may hang on the line before the bus, as on boards with a resonant switch; none where the
 * board has no off-line switch, or a PTC in its feed.
 * @param dark - the lamp has gone dark
 */
function proofsOf(board: Board, dark: boolean): readonly Proof[] {
  const { roles, resonantSwitches, inrushLimiters } = viewOf(board);
  if (roles.bus === null) return [];
  const { plus, minus } = roles.bus;
  const bus: Proof = { places: [plus, minus], volts: null };
  const behindPtc = inrushLimiters.some(({ kind }) => kind === "ptc");
  if (!dark || behindPtc || resonantSwitches.length > 0 || roles.switchers.length === 0) return [bus];
  const rails = roles.rails.map(({ net, back, volts }): Proof => ({ places: [net, back], volts }));
  return [bus, ...rails];
}

/** Would a good reading between these places, behind a lamp of these watts, show that the bus of a good board stands? */
export function couldProveBus(board: Board, watts: number, [red, black]: readonly [Place, Place]): boolean {
  return proofsOf(board, lampGoesDark(board, watts)).some(
    ({ places }) => places.includes(red) && places.includes(black),
  );
}

/** Is there a bus that has to be shown to stand? */
export function hasBus(board: Board): boolean {
  return viewOf(board).roles.bus !== null;
}

/**
 * What these readings under power say: `stands`, `missing` where the bus itself read too little, `unread`. The last reading of the bus counts
 * before any of a rail; a dead rail says nothing of the bus.
 * @param watts - of the lamp
 * @param seen - of the lamp, in the order in which it was seen
 */
export function busShown(
  board: Board,
  watts: number,
  seen: readonly Observed[],
  readings: readonly MeasureEvent[],
): "stands" | "missing" | "unread" {
  const proofs = proofsOf(board, seen.findLast((one) => one.startsWith("lamp-")) === "lamp-dark");
  let rail = false;
  for (const { mode, red, black, reading } of readings.toReversed()) {
    if (mode !== "dcv" || typeof reading !== "number" || red === undefined || black === undefined) continue;
    const nets = [netOfPlace(board, red), netOfPlace(board, black)];
    const proof = proofs.find(({ places }) => places.every((place) => nets.includes(place)));
    if (proof === undefined) continue;
    const good = proof.volts ?? lampBusVolts(board, watts);
    const stands = Math.abs(reading) >= STANDING_SHARE * Math.abs(good);
    if (proof.volts === null) return stands ? "stands" : "missing";
    rail ||= stands;
  }
  return rail ? "stands" : "unread";
}
