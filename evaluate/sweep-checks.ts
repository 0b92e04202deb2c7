/** The four-minute sweep: the twelve readings a technician takes of any board before deciding anything. Common practice. */
import type { ColdMode } from "../src/bench/event.ts";
import type { Board } from "../src/board/board.ts";
import { viewOf } from "../src/priors/circuit-view.ts";

export interface SweepCheck {
  readonly mode: ColdMode;
  readonly red: string;
  readonly black: string;
}

export const SWEEP_READINGS = 12;

/** Fuse, bus both ways, phases, low rails, the supply's switch, then what is left of the phases: the first twelve. */
export function sweepChecks(board: Board): readonly SweepCheck[] {
  const view = viewOf(board);
  const { bus } = view.roles;
  const list: SweepCheck[] = [];
  const add = (mode: ColdMode, red: string | undefined, black: string | undefined): void => {
    if (red === undefined || black === undefined || red === black) return;
    if (!list.some((one) => one.mode === mode && one.red === red && one.black === black))
      list.push({ mode, red, black });
  };
  for (const part of [...view.lineFuses, ...view.inrushLimiters].slice(0, 2)) {
    const [a, b] = part.pins.values();
    add("ohms", a, b);
  }
  if (bus !== null) {
    add("diode", bus.plus, bus.minus);
    add("diode", bus.minus, bus.plus);
  }
  const switches = [...view.otherSwitches, ...view.motorSwitches];
  for (const rail of board.rails) add("diode", rail.net, rail.against ?? board.zero);
  for (const { high, low } of view.supplySwitches) add("diode", high, low);
  for (const { high, low } of switches) add("diode", high, low);
  for (const { high, low } of switches) add("diode", low, high);
  return list.slice(0, SWEEP_READINGS);
}
