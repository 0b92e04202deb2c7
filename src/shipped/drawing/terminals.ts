/** Where wires come in and go out that are no part of the board file. */
import type { Board } from "../../board/board.ts";

/** Words of what a wire is screwed or plugged to. */
export const SCREWS = /screw|blade|terminal|socket|plug/;

/** Nets that the words put on a terminal which is no part of the board file. */
export function terminalNets(board: Board): readonly string[] {
  const plugs = [...board.parts.values()].filter((part) => part.kind === "motor" || part.plugged);
  const plugged = new Set([...board.supply.at, ...plugs.flatMap((part) => [...part.pins.values()])]);
  return board.points
    .filter(({ at, net }) => SCREWS.test(at ?? "") && !/relay|coil screw/.test(at ?? "") && !plugged.has(net))
    .map(({ net }) => net);
}
