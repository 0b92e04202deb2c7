/** Slips: what a technician does wrong now and then with the probes. */
import type { Place } from "../../src/bench/event.ts";
import { pinOfPlace } from "../../src/bench/place.ts";
import type { Board } from "../../src/board/board.ts";
import { drawOne, type Random } from "../../src/practice/seeded-random.ts";
import { pick } from "./draw.ts";
import { SLIPS } from "./fault-table.ts";
import type { OracleCheck } from "./meter-run.ts";

/** Read too early: the value this long after touching. */
const TOO_EARLY_SECONDS = 0.4;

/** A net beside the one a place is on: of another pin of the same part, or of a part on the same net. */
function besides(board: Board, place: Place, random: Random): Place | undefined {
  const pin = pinOfPlace(place);
  const near = [...board.parts.values()].filter((part) =>
    pin === null ? [...part.pins.values()].includes(place) : part.ref === pin.ref,
  );
  const own = pin === null ? place : (board.parts.get(pin.ref)?.pins.get(pin.pin) ?? place);
  return pick(
    random,
    near.flatMap((part) => [...part.pins.values()].filter((net) => net !== own)),
  );
}

/**
 * The check that was really made, or null where the hand was sure.
 * @param random - the chance of this one reading
 */
export function slipOf(board: Board, check: OracleCheck, share: number, random: Random): OracleCheck | null {
  if (random() >= share) return null;
  const kind = drawOne(
    ["neighbour", "polarity", "unsettled"] as const,
    [SLIPS.neighbour, SLIPS.polarity, SLIPS.unsettled],
    random,
  );
  if (kind === "polarity") return { ...check, red: check.black, black: check.red };
  if (kind === "unsettled" && check.mode !== "farads") return { ...check, seconds: TOO_EARLY_SECONDS };
  const wrong = besides(board, check.red, random);
  return wrong === undefined || wrong === check.black ? null : { ...check, red: wrong };
}
