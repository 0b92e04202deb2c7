/** The cold checks by which parts of a board are told apart: few enough to work through, enough to lose none. */
import type { Board } from "../board/board.ts";
import type { ColdCheck } from "../meter/prediction.ts";

type Pair = readonly [string, string];

/** Every way a meter can be put on two places. Ohms are read below a junction's drop, so one way round is enough. */
export function waysAcross([one, other]: Pair): readonly ColdCheck[] {
  return [
    { mode: "diode", red: one, black: other },
    { mode: "diode", red: other, black: one },
    { mode: "ohms", red: one, black: other },
    { mode: "farads", red: one, black: other },
  ];
}

/** A part of more pins than this is probed pin by pin against those alone. */
const MOST_PINS = 6;

/** Across every small part, and from every net to the rails and the net they are measured against. */
export function tellingChecks(board: Board): readonly ColdCheck[] {
  const pairs = new Map<string, Pair>();
  const add = (one: string, other: string) => {
    if (one !== other) pairs.set([one, other].sort().join(" "), [one, other]);
  };
  const hubs = [board.zero, ...board.rails.map((rail) => rail.net)];
  for (const net of board.nets.keys()) for (const hub of hubs) add(net, hub);
  for (const part of board.parts.values()) {
    const own = [...new Set(part.pins.values())];
    if (own.length > MOST_PINS) continue;
    own.forEach((one, i) => {
      for (const other of own.slice(i + 1)) add(one, other);
    });
  }
  return [...pairs.values()].flatMap(waysAcross);
}
