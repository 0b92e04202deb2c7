/** The protective earth, as board files name it. */
import type { Board } from "./board.ts";

/** Is the net the protective earth: called PE, or said to be it by its label? */
export function isEarth(board: Board, net: string): boolean {
  return /^(PE|EARTH)$/i.test(net) || /protective earth/i.test(board.nets.get(net) ?? "");
}
