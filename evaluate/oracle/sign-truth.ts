/**
 * Which signs of life somebody beside a powered oracle board notes, by rules of the oracle's own: what keeps the whole board dark, and
 * what stands between the controller and the part. Every chance is from memory.
 */

import type { Board, Part } from "../../src/board/board.ts";
import type { Fault } from "../../src/board/fault.ts";
import { supplyPin } from "../../src/board/kinds.ts";
import { type Sign, signsOf } from "../../src/live/signs.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import type { OracleBoard } from "./oracle-board.ts";
import type { Condition } from "./power-table.ts";
import { conditionOf } from "./power-truth.ts";

/** Chance that signs come on at all, by the condition of the board. */
const COMES_ON: Readonly<Record<Condition, number>> = {
  "input-open": 0,
  "line-short": 0,
  "earth-short": 0.05,
  "bus-short": 0,
  "supply-dead": 0.02,
  "rail-short": 0.05,
  "half-leg": 0.9,
  "no-run": 0.95,
  weak: 0.9,
  works: 0.97,
};
/** The same with something broken between the controller and the part, and with the controller itself broken somewhere. */
const PATH_BROKEN = 0.06;
const CONTROLLER_BROKEN = 0.4;
/** Leaks above this change nothing on the way, ohms. */
const HARMLESS_OHMS = 8000;
/** Parts between controller and sign, at most. */
const DEEP = 3;

/**
 * What was noted, by part: a click that was missed once may be heard the next time.
 * @param at - log index of the power-up
 */
export function signsNoted(
  { board, seed }: OracleBoard,
  faults: readonly Fault[],
  off: ReadonlySet<string>,
  at: number,
): Readonly<Record<string, boolean>> {
  const condition = conditionOf(board, faults, off);
  return Object.fromEntries(
    signsOf(board).flatMap((sign): [string, boolean][] => {
      if (off.has(sign.part)) return [];
      const random = seededRandom(seed, `sign ${sign.part} ${at}`);
      return [[sign.part, random() < chanceOf(board, sign, faults, condition)]];
    }),
  );
}

function chanceOf(board: Board, sign: Sign, faults: readonly Fault[], condition: Condition): number {
  const way = wayTo(board, sign);
  const counts = (fault: Fault): boolean =>
    !(fault.mode === "leaky" && (fault.value ?? 1000) > HARMLESS_OHMS);
  const broken = faults.some(
    (fault) =>
      fault.of === "part" &&
      counts(fault) &&
      way.parts.has(fault.part) &&
      !(sign.kind === "relay" && fault.part === sign.part && fault.junction === "contact"),
  );
  const atController = faults.filter(
    (fault) => fault.of === "part" && board.parts.get(fault.part)?.kind === "controller" && counts(fault),
  );
  const ownPin = atController.some((fault) => {
    const pin = fault.of === "part" ? (fault.junction ?? "").split(".")[0] : "";
    const part = fault.of === "part" ? board.parts.get(fault.part) : undefined;
    return pin === "supply" || way.nets.has(part?.pins.get(pin ?? "") ?? "");
  });
  const share = broken || ownPin ? PATH_BROKEN : atController.length > 0 ? CONTROLLER_BROKEN : 1;
  return share * COMES_ON[condition];
}

/** Parts and nets from the sign's part to the controller; rails and ground end the way. */
function wayTo(board: Board, sign: Sign): { readonly parts: Set<string>; readonly nets: Set<string> } {
  const ends = new Set([board.zero, ...board.rails.map(({ net }) => net), ...board.supply.at]);
  const parts = new Set([sign.part]);
  const nets = new Set<string>();
  let front = inner(board.parts.get(sign.part), sign, ends);
  for (let depth = 0; depth < DEEP && front.length > 0; depth++) {
    for (const net of front) nets.add(net);
    const next: string[] = [];
    for (const part of board.parts.values()) {
      // nothing goes on through the part itself: a relay's contact is no way to its coil
      if (
        part.ref === sign.part ||
        part.kind === "controller" ||
        ![...part.pins.values()].some((net) => front.includes(net))
      )
        continue;
      parts.add(part.ref);
      next.push(...[...part.pins.values()].filter((net) => !ends.has(net) && !nets.has(net)));
    }
    front = next;
  }
  return { parts, nets };
}

/** Nets by which the part is driven: of a relay its coil's, of a fan its supply's. */
function inner(part: Part | undefined, { kind }: Sign, ends: ReadonlySet<string>): string[] {
  if (part === undefined) return [];
  const pins =
    kind === "relay" ? ["coil1", "coil2"] : kind === "fan" ? [supplyPin("ic")] : [...part.pins.keys()];
  return pins.flatMap((pin) => part.pins.get(pin) ?? []).filter((net) => !ends.has(net));
}
