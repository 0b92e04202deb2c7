/** Pointing at the picture by keys alone: arrows move a cross, Enter taps where it stands. */
import { type KeyboardEvent, useState } from "react";
import { say } from "../say.ts";
import { fieldWords, sideWords } from "./board-svg.tsx";
import { type Point, pointShownAt, shownPoint, shownSize } from "./turned.ts";
import type { ShownFace } from "./use-board-picture.ts";

/** How much is enlarged, and the middle of what is seen, by fractions of the picture as shown. */
export interface Look {
  readonly times: number;
  readonly middle: Point;
}

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

interface CrossProps {
  readonly face: ShownFace;
  readonly look: Look;
  onLook(next: Look): void;
  /** left out: nothing is pinned, and there is no cross */
  readonly onTap: ((at: Point) => void) | undefined;
  /** what a tap would pin */
  readonly pins: string;
}

/** The cross stands in the middle of what is seen at the first key pressed on the picture; what is seen moves with it. */
export function useCross({ face, look, onLook, onTap, pins }: CrossProps) {
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
    const taps = event.key === "Enter" || event.key === " ";
    if (arrow === undefined && !taps) return;
    // the bench's own keys stay out of it
    event.preventDefault();
    event.stopPropagation();
    if (arrow !== undefined) {
      const step = (event.shiftKey ? LONG_STEP : STEP) / look.times;
      move({ x: arrow.x * step, y: arrow.y * step });
    } else if (!event.repeat && share !== null) onTap?.(pointAt(share));
    else if (share === null) setShare(look.middle);
  };
  if (onTap === undefined) return { at: null, keys: {} };
  return {
    at: share === null ? null : pointAt(share),
    keys: {
      onKeyDown,
      role: "application",
      tabIndex: 0,
      "aria-label": say`Photo, ${sideWords(face.side)}: arrow keys move the cross, with Shift in longer steps; Enter pins ${pins}`,
    },
  };
}

/** Where the cross stands, for who cannot see it. */
export function CrossInWords({ face, at }: { readonly face: ShownFace; readonly at: Point }) {
  const { x, y } = shownPoint(face, at);
  const { width, height } = shownSize(face);
  const percent = (share: number) => Math.round(100 * share);
  return (
    <p className="for-readers" role="status">
      {say`The cross: ${fieldWords(face, at)}, ${percent(x / width)} % from the left, ${percent(y / height)} % from the top.`}
    </p>
  );
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
