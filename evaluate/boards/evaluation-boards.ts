/** Boards made for evaluation only: none comes with the program, so nothing of it was tuned on them. */
import type { Board } from "../../src/board/board.ts";
import { parseBoard } from "../../src/board/parse-board.ts";
import { batteryCharger } from "./battery-charger.ts";
import { dualInverter } from "./dual-inverter.ts";
import { servoDrive } from "./servo-drive.ts";
import { SIZES, type Size, sizedBoard } from "./size-series.ts";

export interface NamedBoard {
  readonly id: string;
  readonly board: Board;
}

function named(id: string, content: Record<string, unknown>): NamedBoard {
  const parsed = parseBoard(content);
  if (!parsed.ok) throw new Error(`${id}: ${parsed.problem}`);
  return { id, board: parsed.value };
}

/** Boards of other kinds than the shipped ones, one of 300 parts and more. */
export function evaluationBoards(): readonly NamedBoard[] {
  return [
    named("battery-charger", batteryCharger()),
    named("dual-inverter", dualInverter()),
    named("servo-drive", servoDrive()),
  ];
}

/** The boards of growing size that speed is plotted over, smallest first. */
export function sizeSeries(): readonly (NamedBoard & { readonly size: Size })[] {
  return SIZES.map((size) => ({ size, ...named(`size-${size}`, sizedBoard(size)) }));
}
