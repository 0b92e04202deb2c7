/** A board's references with further ones, and further readings, as one; a pin's place is its net's. */
import type { Board, ReferenceReading } from "../board/board.ts";
import { type GoodReading, pooledReferences } from "../learning/references.ts";
import { netOfPlace } from "../meter/good-readings.ts";

export function pooledWith(
  board: Board,
  more: readonly ReferenceReading[],
  readings: readonly GoodReading[],
): readonly ReferenceReading[] {
  const byNet = <T extends GoodReading>(one: T): T => ({
    ...one,
    red: netOfPlace(board, one.red),
    black: netOfPlace(board, one.black),
  });
  return pooledReferences([...(board.references ?? []), ...more].map(byNet), readings.map(byNet));
}
