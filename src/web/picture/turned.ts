/** A picture turned by quarters: where its points come to lie, in pixels of what is shown. */
import type { BoardFace } from "../../wire/job-api.ts";

export type Turnable = Pick<BoardFace, "width" | "height" | "turn">;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Width and height of what is shown. */
export function shownSize({ width, height, turn }: Turnable): { width: number; height: number } {
  return turn % 180 === 0 ? { width, height } : { width: height, height: width };
}

/** Where a point of the picture (by fractions) is shown. */
export function shownPoint({ width, height, turn }: Turnable, { x, y }: Point): Point {
  const [across, down] = [x * width, y * height];
  switch (turn) {
    case 0:
      return { x: across, y: down };
    case 90:
      return { x: height - down, y: across };
    case 180:
      return { x: width - across, y: height - down };
    case 270:
      return { x: down, y: width - across };
  }
}

/** The inverse of `shownPoint`, in fractions of the picture. */
export function pointShownAt({ width, height, turn }: Turnable, { x, y }: Point): Point {
  const [across, down] = {
    0: [x, y],
    90: [y, height - x],
    180: [width - x, height - y],
    270: [width - y, x],
  }[turn] as [number, number];
  return { x: across / width, y: down / height };
}

/** The same turn, as SVG writes it. */
export function turnTransform({ width, height, turn }: Turnable): string {
  return {
    0: "",
    90: `translate(${height} 0) rotate(90)`,
    180: `translate(${width} ${height}) rotate(180)`,
    270: `translate(0 ${width}) rotate(270)`,
  }[turn];
}
