import { knownWords } from "../messages/known-words.ts";
import { said } from "../messages/said.ts";
import type { Board } from "./board.ts";

/** A pin on the net that the eye finds: of the part with the fewest, so that a resistor stands before a chip. */
function firstPin(board: Board, net: string): string | null {
  let best: string | null = null;
  let fewest = Number.POSITIVE_INFINITY;
  for (const part of board.parts.values())
    for (const [pin, on] of part.pins)
      if (on === net && part.pins.size < fewest) {
        fewest = part.pins.size;
        best = said`${part.ref} pin ${pin}`;
      }
  return best;
}

/** What a net is called: by its label, else as the rail it carries; null where only the file has a name for it. */
function calledNet(board: Board, net: string): string | null {
  const label = board.nets.get(net);
  if (label !== null && label !== undefined) return knownWords(label);
  const rail = board.rails.find((one) => one.net === net);
  return rail === undefined ? null : said`${rail.name} rail`;
}

/** A net as it is called; one that only the file has a name for by a pin on it: `C36 pin plus (net REF_K)`. */
export function netWords(board: Board, net: string): string {
  const called = calledNet(board, net);
  if (called !== null) return called;
  const pin = firstPin(board, net);
  return pin === null ? net : said`${pin} (net ${net})`;
}

/** The same with a place to put the probe: `DC bus + (plus pin of the one large capacitor)`. */
export function netPlaceWords(board: Board, net: string): string {
  const called = calledNet(board, net);
  const point = board.points.find((candidate) => candidate.net === net && candidate.at !== null);
  const at = typeof point?.at === "string" ? knownWords(point.at) : null;
  if (called === null) return at === null ? netWords(board, net) : said`${at} (net ${net})`;
  const where = at ?? firstPin(board, net);
  return where === null ? called : said`${called} (${where})`;
}
