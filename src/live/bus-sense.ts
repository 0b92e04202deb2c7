/** The chain of high resistors by which a controller sees its bus. */
import type { Board, Part } from "../board/board.ts";
import type { Bus } from "../board/bus.ts";
import type { FaultedBoard } from "./faulted-board.ts";

export interface BusSense {
  readonly controller: string;
  readonly pin: string;
  readonly net: string;
  /** resistors from the bus to the controller's pin */
  readonly chain: readonly string[];
}

/** Resistors of a sense chain start here (common practice: 300 kohm to 1 Mohm each). */
const CHAIN_OHMS = 50_000;
const MOST_IN_A_ROW = 6;

function far(part: Part, net: string): string {
  return [...part.pins.values()].find((one) => one !== net) ?? net;
}

/** Chains from the bus plus to a controller's pin, every resistor of them high. */
export function busSenses(board: Board, bus: Bus | null): readonly BusSense[] {
  if (bus === null) return [];
  const parts = [...board.parts.values()];
  const found: BusSense[] = [];
  const walk = (net: string, chain: readonly string[]): void => {
    for (const part of parts) {
      if (part.kind !== "controller" || chain.length === 0) continue;
      const pin = [...part.pins].find(([, at]) => at === net)?.[0];
      if (pin !== undefined) found.push({ controller: part.ref, pin, net, chain });
    }
    if (chain.length >= MOST_IN_A_ROW) return;
    for (const part of parts) {
      const high = part.kind === "resistor" && (part.value.ohms ?? 0) >= CHAIN_OHMS;
      if (!high || chain.includes(part.ref) || ![...part.pins.values()].includes(net)) continue;
      const next = far(part, net);
      if (next !== board.zero && next !== bus.minus) walk(next, [...chain, part.ref]);
    }
  };
  walk(bus.plus, []);
  return found;
}

/** A chain tells the truth: nothing in it is open, far off or shorted, and nothing holds its end. */
export function seesBus(board: FaultedBoard, { controller, pin, net, chain }: BusSense): boolean {
  const good = chain.every((ref) => board.part(ref) !== null && board.fault(ref) === null);
  if (!good || Number.isFinite(board.acrossOhms(controller, pin)) || board.isOpen(controller, pin))
    return false;
  return board
    .parts()
    .every(
      (part) =>
        part.kind !== "capacitor" ||
        ![...part.pins.values()].includes(net) ||
        !board.isShort(part.ref, null, 5000),
    );
}
