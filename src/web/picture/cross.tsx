/** Pointing at the picture by keys alone: arrows move a cross, Enter taps where it stands. */
import { type KeyboardEvent, useState } from "react";
import type { Look } from "./board-viewer.tsx";
import { type Point, pointShownAt, shownSize } from "./turned.ts";
import type { ShownFace } from "./use-board-picture.ts";

/** Of what is seen, by one press of an arrow; with Shift. */
const STEP = 0.01;
const LONG_STEP = 0.08;

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const between = (least: number, value: number, most: number): number =>
  Math.min(most, Math.max(least, value));

/** The cross stands in the middle of what is seen once the picture has the focus by a key; what is seen moves with it. */
export function useCross(
  face: ShownFace,
  look: Look,
  onLook: (next: Look) => void,
  onTap: ((at: Point) => void) | undefined,
) {
  /** fractions of the picture as shown; null: no key has been pressed yet */
  const [share, setShare] = useState<Point | null>(null);
  const size = shownSize(face);
  const pointAt = ({ x, y }: Point): Point => pointShownAt(face, { x: x * size.width, y: y * size.height });
  const move = (by: Point) => {
    const from = share ?? look.middle;
    const to = { x: between(0, from.x + by.x, 1), y: between(0, from.y + by.y, 1) };
    const half = 0.5 / look.times;
    const middle = {
      x: between(to.x - half, look.middle.x, to.x + half),
      y: between(to.y - half, look.middle.y, to.y + half),
    };
    setShare(to);
    if (middle.x !== look.middle.x || middle.y !== look.middle.y) onLook({ times: look.times, middle });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const arrow = ARROWS[event.key];
    const pins = event.key === "Enter" || event.key === " ";
    if (arrow === undefined && !pins) return;
    // the bench's own keys stay out of it
    event.preventDefault();
    event.stopPropagation();
    if (arrow !== undefined) {
      const step = (event.shiftKey ? LONG_STEP : STEP) / look.times;
      move({ x: arrow.x * step, y: arrow.y * step });
    } else if (!event.repeat && share !== null) onTap?.(pointAt(share));
    else if (share === null) setShare(look.middle);
  };
  return { at: share === null ? null : pointAt(share), share: share ?? look.middle, keys: { onKeyDown } };
}

export function CrossShape({ at: { x, y }, size }: { readonly at: Point; readonly size: number }) {
  const lines = `M${x - size} ${y}H${x + size}M${x} ${y - size}V${y + size}`;
  return (
    <g>
      <path className="tick-case" d={lines} strokeWidth={size * 0.24} />
      <path className="tick-here" d={lines} strokeWidth={size * 0.1} />
    </g>
  );
}
