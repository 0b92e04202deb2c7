/**
 * A picture of a board that comes with the program, drawn from its file: both sides as SVG, and where each pin's pad is. It is the
 * board of the demo itself; of a board that somebody has on the bench only a photo tells where the parts sit.
 */
import type { Board } from "../../board/board.ts";
import { roundPad } from "./bodies.ts";
import { type Ground, type Layout, layOut, type Placed } from "./layout.ts";
import { type NamedPlace, namedPlaces } from "./named-places.ts";

export type Side = "top" | "bottom";

/** Where a probe can stand: a pin (`C5.plus`) or a net (a screw of the mains terminal), by fractions of the picture. */
export interface DrawnPad {
  readonly place: string;
  readonly side: Side;
  readonly x: number;
  readonly y: number;
}

export interface DrawnBoard {
  /** millimetres */
  readonly width: number;
  readonly height: number;
  readonly faces: readonly { readonly side: Side; readonly svg: string }[];
  /** the pads that are easiest to find first: test points, terminals, then the largest parts */
  readonly pads: readonly DrawnPad[];
  /** where the board's test points are */
  readonly named: readonly NamedPlace[];
}

/** Pins that the board's print gives a sign, not a name. */
const PIN_SIGNS: Readonly<Record<string, string>> = { plus: "+", minus: "−", ac1: "~", ac2: "~", ac3: "~" };

const MASK = "#1c4a3e";
const SILK = "#e6ece2";

/** The drawing; the same board always makes the same one. */
export function drawnBoard(board: Board): DrawnBoard {
  const layout = layOut(board);
  const { width, height } = layout;
  const placed = [...layout.placed].sort((a, b) => prominence(b) - prominence(a));
  const named = namedPlaces(board, placed, layout);
  const first = new Set(named.map(({ place }) => place));
  const pads = placed.flatMap((one) => padsOf(one, layout));
  return {
    width,
    height,
    faces: [
      {
        side: "top",
        svg: page(layout, layout.grounds.map(groundTop).join("") + layout.placed.map(partTop).join("")),
      },
      { side: "bottom", svg: page(layout, layout.placed.map((one) => partBottom(one, width)).join("")) },
    ],
    pads: [...pads.filter(({ place }) => first.has(place)), ...pads.filter(({ place }) => !first.has(place))],
    named,
  };
}

function prominence({ part, footprint }: Placed): number {
  const plug = part === null || part.kind === "motor" || part.plugged;
  return (plug ? 1e6 : 0) + footprint.width * footprint.height;
}

function padsOf({ part, footprint, x, y }: Placed, { width, height }: Layout): DrawnPad[] {
  return footprint.legs.flatMap((leg): DrawnPad[] => {
    const place = part === null ? leg.pin : `${part.ref}.${leg.pin}`;
    const [across, down] = [fraction((x + leg.x) / width), fraction((y + leg.y) / height)];
    return [
      ...(leg.open ? [{ place, side: "top" as const, x: across, y: down }] : []),
      ...(footprint.through ? [{ place, side: "bottom" as const, x: fraction(1 - across), y: down }] : []),
    ];
  });
}

const fraction = (value: number) => Number(value.toFixed(4));
const at = (value: number) => Number(value.toFixed(2));

function page({ width, height }: Layout, inside: string): string {
  const hole = (x: number, y: number) =>
    `<circle cx="${x}" cy="${y}" r="1.6" fill="#0d1513" stroke="#cdd2d0" stroke-width=".7"/>`;
  const [right, low] = [at(width - 2.6), at(height - 2.6)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${at(width)} ${at(height)}" width="${at(width * 10)}" height="${at(height * 10)}" font-family="DejaVu Sans,Arial,sans-serif" font-weight="600" text-anchor="middle">`,
    `<rect width="${at(width)}" height="${at(height)}" rx="2.4" fill="${MASK}"/>`,
    hole(2.6, 2.6) + hole(right, 2.6) + hole(2.6, low) + hole(right, low),
    inside,
    "</svg>",
  ].join("");
}

function groundTop({ stage, x, y, width, height }: Ground): string {
  return (
    `<rect x="${at(x - 0.9)}" y="${at(y - 0.4)}" width="${at(width + 1.8)}" height="${at(height + 0.8)}" rx="1.2" fill="#235546" stroke="${SILK}" stroke-opacity=".35" stroke-width=".25"/>` +
    `<text x="${at(x + 0.4)}" y="${at(y + 2.4)}" font-size="2.3" fill="${SILK}" text-anchor="start">${stage.toUpperCase()}</text>`
  );
}

function partTop({ ref, footprint, x, y }: Placed): string {
  const { name, svg } = footprint;
  return `<g transform="translate(${at(x)} ${at(y)})">${svg}<text x="${at(name.x)}" y="${at(name.y)}" font-size="${name.size}" fill="${name.on === "board" ? SILK : "#f4f6f2"}">${ref}</text></g>`;
}

/** From the solder side only what goes through the board shows: solder, the outline of the part, its reference. */
function partBottom({ ref, footprint, x, y }: Placed, boardWidth: number): string {
  if (!footprint.through) return "";
  const { width, height, legs, name } = footprint;
  const left = boardWidth - x - width;
  const pads = legs
    .map(
      ({ pin, x: legX, y: legY }) =>
        roundPad(width - legX, legY, 1.15) +
        `<text x="${at(width - legX)}" y="${at(legY + 2.6)}" font-size="1.2" fill="${SILK}">${PIN_SIGNS[pin] ?? pin.toUpperCase().slice(0, 6)}</text>`,
    )
    .join("");
  return (
    `<g transform="translate(${at(left)} ${at(y)})"><rect x=".5" y=".5" width="${at(width - 1)}" height="${at(height - 1)}" rx="1" fill="#1f5144" stroke="${SILK}" stroke-opacity=".4" stroke-width=".2"/>` +
    `${pads}<text x="${at(width - name.x)}" y="${at(name.y)}" font-size="${Math.min(2.2, name.size)}" fill="${SILK}">${ref}</text></g>`
  );
}

/** How far a test point of the file may lie from the drawing's, as a fraction of the picture: rounding. */
const SAME_SPOT = 1e-3;

/**
 * The drawing of a board whose file means it: one with test points, each where the drawing has it. Null for any other, for where the parts
 * of a board on the bench sit nobody can know from its file.
 */
export function ownDrawing(board: Board): DrawnBoard | null {
  if (board.points.length === 0 || board.points.some(({ xy }) => xy === null)) return null;
  const drawn = drawnBoard(board);
  const spots = new Map(drawn.named.map(({ point, xy }) => [point, xy]));
  const meant = board.points.every(({ name, xy }) =>
    spots.get(name)?.every((share, index) => Math.abs(share - (xy?.[index] ?? Number.NaN)) < SAME_SPOT),
  );
  return meant ? drawn : null;
}
