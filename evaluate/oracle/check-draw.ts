/** Checks that a technician might take: the pins of a part, or two of the nets that everybody measures. */
import type { ColdMode } from "../../src/bench/event.ts";
import type { Board } from "../../src/board/board.ts";
import type { ColdCheck } from "../../src/meter/prediction.ts";
import { drawOne, type Random } from "../../src/practice/seeded-random.ts";
import { pick } from "./draw.ts";
import { rolesOf } from "./oracle-cascades.ts";

const MODES: readonly ColdMode[] = ["diode", "ohms", "farads", "continuity"];
const MODE_SHARES = [0.42, 0.34, 0.16, 0.08];
/** Share of checks between the nets that everybody measures. */
const KEY_SHARE = 0.35;

function keyNets(board: Board): readonly string[] {
  const roles = rolesOf(board);
  return [
    ...new Set([
      ...(roles.bus === null ? [] : [roles.bus.plus, roles.bus.minus]),
      ...roles.phases,
      ...board.supply.at,
      ...board.rails.map((rail) => rail.net),
      board.zero,
    ]),
  ];
}

function drawPair(board: Board, random: Random): readonly [string, string] | null {
  if (random() < KEY_SHARE) {
    const nets = keyNets(board);
    const [red, black] = [pick(random, nets), pick(random, nets)];
    return red === undefined || black === undefined || red === black ? null : [red, black];
  }
  const part = pick(random, [...board.parts.values()]);
  const nets = part === undefined ? [] : [...part.pins.values()];
  const [red, black] = [pick(random, nets), pick(random, nets)];
  return red === undefined || black === undefined || red === black ? null : [red, black];
}

/** So many different checks of the file's own places. */
export function drawChecks(file: Board, count: number, random: Random): readonly ColdCheck[] {
  const found = new Map<string, ColdCheck>();
  for (let tries = 0; found.size < count && tries < 100 * count; tries++) {
    const pair = drawPair(file, random);
    const mode = drawOne(MODES, MODE_SHARES, random);
    if (pair === null || mode === null) continue;
    const [red, black] = pair;
    found.set(`${mode} ${red} ${black}`, { mode, red, black });
  }
  return [...found.values()];
}
