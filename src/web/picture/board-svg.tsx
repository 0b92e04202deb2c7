/** A piece of a board's picture with marks on it. Red is round and black is square, so that they differ without colour too. */
import type { ReactNode } from "react";
import { said } from "../../messages/said.ts";
import { say } from "../say.ts";
import { type Point, shownPoint, turnTransform } from "./turned.ts";
import type { ShownFace } from "./use-board-picture.ts";

export type Tone = "red" | "black" | "here" | "pin";

export interface Mark {
  readonly key: string;
  readonly tone: Tone;
  /** fractions of the picture */
  readonly at: Point;
  /** stands beside a pin */
  readonly letter?: string;
}

/** What is seen of the picture, in its pixels as shown. */
export interface Window extends Point {
  readonly width: number;
  readonly height: number;
}

interface Props {
  readonly face: ShownFace;
  readonly window: Window;
  readonly words: string;
  readonly fill?: boolean;
  readonly children?: ReactNode;
}

export function BoardSvg({ face, window: seen, words, fill = false, children }: Props) {
  return (
    <svg
      className="board-svg"
      viewBox={`${seen.x} ${seen.y} ${seen.width} ${seen.height}`}
      preserveAspectRatio={fill ? "xMidYMid slice" : "xMidYMid meet"}
      role="img"
      aria-label={words}
    >
      <g transform={turnTransform(face)}>
        <image href={face.picture} width={face.width} height={face.height} />
      </g>
      {children}
    </svg>
  );
}

/** `size`: radius, in pixels of the picture as shown. */
export function MarkShape({
  face,
  mark,
  size,
}: {
  readonly face: ShownFace;
  readonly mark: Mark;
  readonly size: number;
}) {
  const { x, y } = shownPoint(face, mark.at);
  const width = size * 0.42;
  if (mark.tone === "pin")
    return (
      <g>
        <circle className="mark-pin" cx={x} cy={y} r={size * 0.45} strokeWidth={width / 2} />
        {mark.letter !== undefined && (
          <text className="mark-letter mark-letter-black" x={x} y={y - size * 0.7} fontSize={size * 1.7}>
            {mark.letter}
          </text>
        )}
      </g>
    );
  const shape = (name: string, stroke: number) =>
    mark.tone === "black" ? (
      <rect
        className={name}
        x={x - size}
        y={y - size}
        width={2 * size}
        height={2 * size}
        strokeWidth={stroke}
      />
    ) : (
      <circle className={name} cx={x} cy={y} r={size} strokeWidth={stroke} />
    );
  return (
    <g>
      {shape("mark-case", width * 2.4)}
      {shape(`mark-${mark.tone}`, width)}
      <text className={`mark-letter mark-letter-${mark.tone}`} x={x} y={y - size * 1.6} fontSize={size * 1.7}>
        {{ red: say`R`, black: say`B`, here: "" }[mark.tone]}
      </text>
    </g>
  );
}

/** Rows from the upper edge, each from the left: a picture is not turned round for a reader from right to left. */
const FIELDS = [
  [said`upper left`, said`upper middle`, said`upper right`],
  [said`left`, said`middle`, said`right`],
  [said`lower left`, said`lower middle`, said`lower right`],
] as const;

/** `upper left`, `middle`, for who cannot see the picture. */
export function fieldWords(face: ShownFace, at: Point): string {
  const { x, y } = shownPoint(face, at);
  const third = (share: number) => Math.min(2, Math.floor(share * 3)) as 0 | 1 | 2;
  const turned = face.turn % 180 !== 0;
  const row = FIELDS[third(y / (turned ? face.width : face.height))];
  return row[third(x / (turned ? face.height : face.width))];
}

export function sideWords(side: ShownFace["side"]): string {
  return side === "top" ? said`parts side` : said`solder side`;
}
