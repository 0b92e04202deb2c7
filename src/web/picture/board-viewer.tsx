/** The board's picture to look into: moved by a finger, enlarged by two or by keys. A tap tells where it was. */
import { type PointerEvent, type ReactNode, useRef, useState } from "react";
import { say } from "../say.ts";
import { BoardSvg, type Mark, MarkShape, sideWords } from "./board-svg.tsx";
import { CrossInWords, CrossShape, type Look, useCross } from "./cross.tsx";
import { type Point, pointShownAt, shownPoint, shownSize } from "./turned.ts";
import type { ShownFace } from "./use-board-picture.ts";

interface Props {
  readonly face: ShownFace;
  readonly marks: readonly Mark[];
  /** left out: a tap does nothing */
  onTap?: ((at: Point) => void) | undefined;
  /** what a tap would pin, for who works by keys */
  readonly pins?: string;
  readonly children?: ReactNode;
}

const WHOLE: Look = { times: 1, middle: { x: 0.5, y: 0.5 } };
const MOST_TIMES = 12;
const STEP = 1.6;
/** Of the screen's height, per cent. */
const MOST_HEIGHT = 68;
/** A finger that moved no farther than this has tapped, pixels of the screen. */
const TAP_PIXELS = 8;
/** Radius of a mark, pixels of the screen for a picture 400 wide. */
const MARK = 0.02;

/** Nothing beside the picture is shown. */
function within({ times, middle }: Look): Look {
  const held = Math.min(MOST_TIMES, Math.max(1, times));
  const inside = (share: number) => Math.min(1 - 0.5 / held, Math.max(0.5 / held, share));
  return { times: held, middle: { x: inside(middle.x), y: inside(middle.y) } };
}

export function BoardViewer({ face, marks, onTap, pins = "", children }: Props) {
  const [look, setLook] = useState(WHOLE);
  const size = shownSize(face);
  const seen = {
    width: size.width / look.times,
    height: size.height / look.times,
    x: look.middle.x * size.width - size.width / look.times / 2,
    y: look.middle.y * size.height - size.height / look.times / 2,
  };
  const fingers = useFingers(
    look,
    (next) => setLook(within(next)),
    (share) =>
      onTap?.(pointShownAt(face, { x: seen.x + share.x * seen.width, y: seen.y + share.y * seen.height })),
  );
  const cross = useCross({ face, look, onLook: (next) => setLook(within(next)), onTap, pins });
  const closer = (times: number, middle = look.middle) => setLook(within({ times, middle }));
  const closeTo = (mark: Mark) => {
    const { x, y } = shownPoint(face, mark.at);
    closer(Math.max(look.times, 3.5), { x: x / size.width, y: y / size.height });
  };
  return (
    <div className="board-viewer">
      <div
        className="board-window"
        data-close={look.times > 1}
        data-tappable={onTap !== undefined}
        style={{
          aspectRatio: `${size.width} / ${size.height}`,
          // as wide as there is room for the whole height: a tap counts by its share of this box
          width: `min(100%, ${(MOST_HEIGHT * size.width) / size.height}vh)`,
        }}
        {...fingers}
        {...cross.keys}
      >
        <BoardSvg face={face} window={seen} words={say`The board, ${sideWords(face.side)}`}>
          {marks.map((mark) => (
            <MarkShape key={mark.key} face={face} mark={mark} size={MARK * seen.width} />
          ))}
          {cross.at !== null && <CrossShape at={shownPoint(face, cross.at)} size={2 * MARK * seen.width} />}
        </BoardSvg>
      </div>
      {cross.at !== null && <CrossInWords face={face} at={cross.at} />}
      <div className="board-keys">
        <button
          type="button"
          aria-label={say`Closer`}
          disabled={look.times >= MOST_TIMES}
          onClick={() => closer(look.times * STEP)}
        >
          +
        </button>
        <button
          type="button"
          aria-label={say`Farther`}
          disabled={look.times <= 1}
          onClick={() => closer(look.times / STEP)}
        >
          −
        </button>
        <button type="button" disabled={look.times <= 1} onClick={() => setLook(WHOLE)}>
          {say`Whole`}
        </button>
        <ToMarks marks={marks} onMark={closeTo} />
        {children}
      </div>
    </div>
  );
}

/** A key for each probe, red first: the marks are in the order in which they are drawn, red on top. */
function ToMarks({ marks, onMark }: { readonly marks: readonly Mark[]; onMark(mark: Mark): void }) {
  return [...marks]
    .reverse()
    .filter(({ tone }) => tone !== "pin")
    .map((mark) => (
      <button type="button" key={mark.key} onClick={() => onMark(mark)}>
        {{ red: say`To red`, black: say`To black`, here: say`To the place`, pin: "" }[mark.tone]}
      </button>
    ));
}

/** One finger moves what is seen, two enlarge it; one that stayed where it was has tapped. */
function useFingers(look: Look, onLook: (next: Look) => void, onTap: (share: Point) => void) {
  const down = useRef(new Map<number, Point>());
  const moved = useRef(0);
  const shareOf = (event: PointerEvent<HTMLElement>): Point => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
  };
  const lift = (event: PointerEvent<HTMLElement>) => down.current.delete(event.pointerId);
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      if (down.current.size === 0) moved.current = 0;
      down.current.set(event.pointerId, shareOf(event));
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const before = down.current.get(event.pointerId);
      if (before === undefined) return;
      const now = shareOf(event);
      const [other] = [...down.current].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
      down.current.set(event.pointerId, now);
      const [dx, dy] = [now.x - before.x, now.y - before.y];
      moved.current += Math.hypot(dx, dy) * event.currentTarget.clientWidth;
      const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
      // Under two fingers each moves the picture half as far, and their distance enlarges it.
      const times =
        other === undefined
          ? look.times
          : (look.times * distance(now, other)) / Math.max(0.01, distance(before, other));
      const part = (other === undefined ? 1 : 0.5) / look.times;
      onLook({ times, middle: { x: look.middle.x - dx * part, y: look.middle.y - dy * part } });
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) => {
      if (down.current.size === 1 && moved.current <= TAP_PIXELS) onTap(shareOf(event));
      lift(event);
    },
    onPointerCancel: lift,
  };
}
