import type { Board } from "./board.ts";

/** A pin on the net that the eye finds: of the part with the fewest, so that a resistor stands before a chip. */
function firstPin(board: Board, net: string): string | null {
  let best: string | null = null;
  let fewest = Number.POSITIVE_INFINITY;
  for (const part of board.parts.values())
    for (const [pin, on] of part.pins)
      if (on === net && part.pins.size < fewest) {
        fewest = part.pins.size;
        best = `${part.ref} pin ${pin}`;
      }
  return best;
}

/** A net by its label; one without a label has its name from nobody's board, so a pin on it is named first: `C36 pin plus (net REF_K)`. */
export function netWords(board: Board, net: string): string {
  const label = board.nets.get(net);
  if (label !== null && label !== undefined) return label;
  const pin = firstPin(board, net);
  return pin === null ? net : `${pin} (net ${net})`;
}

/** The same with a place to put the probe: `DC bus + (plus pin of the one large capacitor)`. */
export function netPlaceWords(board: Board, net: string): string {
  const words = netWords(board, net);
  const point = board.points.find((candidate) => candidate.net === net && candidate.at !== null);
  const label = board.nets.get(net);
  const named = label !== null && label !== undefined;
  const where = point?.at ?? (named ? firstPin(board, net) : null);
  if (where === null) return words;
  return named ? `${words} (${where})` : `${where} (net ${net})`;
}
