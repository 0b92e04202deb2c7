/** Which steps of the page put a hand inside, or the meter's own volts on the board. */
import { needsDeadBoard } from "../bench/dead-board.ts";
import type { MeasureMode } from "../bench/event.ts";
import { MEASURE_MODES } from "../bench/words.ts";
import type { ActionView } from "./bench-view.ts";

export function wantsDeadBoard(action: ActionView): boolean {
  const mode: MeasureMode | undefined = MEASURE_MODES.find((known) => known === action.mode);
  return needsDeadBoard({ do: action.do, mode });
}
