/** The bodies that parts come in, drawn once each. Lengths in millimetres, from the upper left corner. */
import type { Footprint, Leg } from "./footprint-shape.ts";

const TIN = "#cdd2d0";
const HOLE = "#3a3f3d";
/** height of the line above a body that the reference is written on */
const NAME_LINE = 2.2;
const NAME_SIZE = 1.7;

const at = (value: number) => Number(value.toFixed(2));

function rect(x: number, y: number, width: number, height: number, fill: string, more = ""): string {
  return `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="${fill}"${more}/>`;
}

function circle(x: number, y: number, r: number, fill: string, more = ""): string {
  return `<circle cx="${at(x)}" cy="${at(y)}" r="${at(r)}" fill="${fill}"${more}/>`;
}

/** A pad with the leg through it. */
export function roundPad(x: number, y: number, r = 1.05): string {
  return circle(x, y, r, TIN) + circle(x, y, r * 0.42, HOLE);
}

const padsOf = (legs: readonly Leg[], r?: number) => legs.map(({ x, y }) => roundPad(x, y, r)).join("");

function legRow(pins: readonly string[], x: number, y: number, pitch: number, open: boolean): Leg[] {
  return pins.map((pin, index) => ({ pin, x: x + index * pitch, y, open }));
}

const nameAbove = (width: number, size = NAME_SIZE): Footprint["name"] => ({
  x: width / 2,
  y: NAME_LINE - 0.5,
  size,
  on: "board",
});

/** Two or three pads under a chip on the surface. `mark`: a cathode band, a light's dot, or nothing. */
export function chipBody(pins: readonly string[], fill: string, mark: "band" | "dot" | ""): Footprint {
  const width = 6.4;
  const top = NAME_LINE;
  const legs: Leg[] =
    pins.length === 2
      ? pins.map((pin, index) => ({ pin, x: index === 0 ? 1.5 : 4.9, y: top + 1.1, open: true }))
      : pins.map((pin, index) => ({
          pin,
          x: [2, 4.4, 3.2, 5.6][index] ?? 3.2,
          y: index === 2 ? top + 0.6 : top + 3.2,
          open: true,
        }));
  const pads = legs.map(({ x, y }) => rect(x - 0.7, y - 0.8, 1.4, 1.6, TIN, ' rx=".2"')).join("");
  const two = pins.length === 2;
  const body = two
    ? rect(1.7, top + 0.35, 3, 1.5, fill, ' rx=".2"')
    : rect(1.4, top + 1.1, 3.6, 1.6, fill, ' rx=".2"');
  const sign =
    mark === "band"
      ? rect(3.9, top + 0.35, 0.4, 1.5, "#d8dadb")
      : mark === "dot"
        ? circle(3.2, top + 1.1, 0.5, "#7fae5a")
        : "";
  return {
    width,
    height: top + (two ? 2.4 : 4.2),
    svg: pads + body + sign,
    legs,
    name: nameAbove(width),
    through: false,
  };
}

interface AxialLook {
  readonly band?: string;
  readonly caps?: string;
  readonly glass?: boolean;
}

/** A body lying between its two leads. */
export function axialBody(
  pins: readonly string[],
  length: number,
  thick: number,
  fill: string,
  { band, caps, glass = false }: AxialLook = {},
): Footprint {
  const width = length + 7.5;
  const middle = NAME_LINE + Math.max(thick, 2.2) / 2;
  const legs = legRow(pins, 1.6, middle, width - 3.2, true);
  const x = (width - length) / 2;
  const y = middle - thick / 2;
  const svg =
    padsOf(legs) +
    rect(1.6, middle - 0.3, width - 3.2, 0.6, "#b4b9b8") +
    rect(
      x,
      y,
      length,
      thick,
      fill,
      ` rx="${at(Math.min(1, thick / 2))}"${glass ? ' fill-opacity=".8"' : ""}`,
    ) +
    (glass ? rect(x + 3, middle - 0.15, length - 6, 0.3, "#6b7376") : "") +
    (caps === undefined ? "" : rect(x, y, 4, thick, caps) + rect(x + length - 4, y, 4, thick, caps)) +
    (band === undefined ? "" : rect(x + length - 2, y, 0.9, thick, band));
  return {
    width,
    height: NAME_LINE + Math.max(thick, 2.2) + 0.4,
    svg,
    legs,
    name: nameAbove(width),
    through: true,
  };
}

/** An electrolytic from above: the stripe is its minus side, and its leads are under it. */
export function canBody(pins: readonly string[], diameter: number): Footprint {
  const r = diameter / 2;
  const [cx, cy] = [r + 0.8, NAME_LINE + r];
  const half = Math.max(1.3, diameter * 0.17);
  const legs = legRow(pins, cx - half, cy, 2 * half, false);
  const edge = at(Math.sqrt(r * r - (r * 0.62) ** 2));
  const stripe = `<path d="M${at(cx + r * 0.62)} ${at(cy - edge)}A${at(r)} ${at(r)} 0 0 1 ${at(cx + r * 0.62)} ${at(cy + edge)}Z" fill="#aeb6bd"/>`;
  const cross = `<path d="M${at(cx - r * 0.35)} ${at(cy)}h${at(r * 0.7)}M${at(cx)} ${at(cy - r * 0.35)}v${at(r * 0.7)}" stroke="#5b646c" stroke-width=".3"/>`;
  return {
    width: diameter + 1.6,
    height: NAME_LINE + diameter + 0.6,
    svg: circle(cx, cy, r, "#20262d") + circle(cx, cy, r * 0.82, "#39424b") + stripe + cross,
    legs,
    name: nameAbove(diameter + 1.6, diameter > 14 ? 2.4 : NAME_SIZE),
    through: true,
  };
}

/** A box over its legs, which stand in two rows; `core` shows the iron of a transformer. */
export function boxBody(
  pins: readonly string[],
  length: number,
  depth: number,
  fill: string,
  look: "core" | "" = "",
): Footprint {
  const width = length + 1.6;
  const first = Math.ceil(pins.length / 2);
  const rows = pins.length === 2 ? [pins] : [pins.slice(0, first), pins.slice(first)];
  const legs = rows.flatMap((row, index) => {
    const pitch = (length - 5) / Math.max(1, row.length - 1);
    const y = NAME_LINE + (rows.length === 1 ? depth / 2 : index === 0 ? 2.2 : depth - 2.2);
    return legRow(row, 3.3, y, pitch, false);
  });
  const body = rect(0.8, NAME_LINE, length, depth, fill, ' rx=".8"');
  const iron =
    look === "core"
      ? rect(0.8, NAME_LINE + depth * 0.3, length, depth * 0.4, "#2b2e30") +
        rect(0.8 + length * 0.3, NAME_LINE + 1, length * 0.4, depth - 2, "#33373a")
      : rect(1.8, NAME_LINE + 1, length - 2, depth - 2, "#ffffff", ' fill-opacity=".08" rx=".5"');
  return {
    width,
    height: NAME_LINE + depth + 0.6,
    svg: body + iron,
    legs,
    name: { x: width / 2, y: NAME_LINE + depth / 2 + 0.9, size: 2.4, on: "body" },
    through: true,
  };
}

/** A disc on edge, its two legs in front of it. */
export function discBody(pins: readonly string[], diameter: number, fill: string): Footprint {
  const width = diameter + 1.6;
  const y = NAME_LINE;
  const legs = legRow(pins, width / 2 - diameter * 0.25, y + 5.4, diameter * 0.5, true);
  return {
    width,
    height: y + 7,
    svg: padsOf(legs) + rect(0.8, y, diameter, 4, fill, ' rx="2"'),
    legs,
    name: nameAbove(width),
    through: true,
  };
}

/** A wound ring with its leads at the corners. */
export function toroidBody(pins: readonly string[], diameter: number, wire: string): Footprint {
  const width = diameter + 4;
  const [cx, cy, r] = [width / 2, NAME_LINE + diameter / 2 + 1, diameter / 2];
  const spots = [
    [1.6, cy - r * 0.8],
    [1.6, cy + r * 0.8],
    [width - 1.6, cy - r * 0.8],
    [width - 1.6, cy + r * 0.8],
  ] as const;
  // two windings stand on either side of the ring, one has its ends on both
  const order = pins.length === 2 ? [0, 3] : [0, 1, 2, 3];
  const legs = pins.map((pin, index) => {
    const [x, y] = spots[order[index] ?? 0] ?? spots[0];
    return { pin, x, y, open: true };
  });
  const turns = `<circle cx="${at(cx)}" cy="${at(cy)}" r="${at(r * 0.72)}" fill="none" stroke="${wire}" stroke-width="${at(r * 0.5)}" stroke-dasharray="1.1 .35"/>`;
  return {
    width,
    height: NAME_LINE + diameter + 2.4,
    svg: circle(cx, cy, r, "#1d2422") + turns + padsOf(legs),
    legs,
    name: { x: cx, y: cy + 0.9, size: 2.4, on: "body" },
    through: true,
  };
}

/** A body standing up, its legs in a row in front: bridges, and what is screwed to the heatsink. */
export function legsIn(pins: readonly string[], length: number, depth: number, pitch: number): Footprint {
  const width = length + 1.6;
  const legs = legRow(pins, width / 2 - ((pins.length - 1) * pitch) / 2, depth + 2.4, pitch, true);
  const strips = legs.map(({ x }) => rect(x - 0.5, depth, 1, 2.4, "#b4b9b8")).join("");
  return {
    width,
    height: depth + 4.2,
    svg: rect(0.8, 0.6, length, depth, "#16181a", ' rx=".5"') + strips + padsOf(legs, 1.2),
    legs,
    name: { x: width / 2, y: 0.6 + depth / 2 + 0.8, size: 2.2, on: "body" },
    through: true,
  };
}

interface FlatLook {
  /** across, between the rows of pins */
  readonly body: number;
  /** left out: half the pins on either side */
  readonly rows?: readonly [readonly string[], readonly string[]];
}

/** A chip with two rows of pins: counted along the lower row, back along the upper, as seen from above. */
export function flatBody(pins: readonly string[], { body, rows }: FlatLook): Footprint {
  const half = Math.ceil(pins.length / 2);
  const [lower, upper] =
    rows === undefined ? [pins.slice(0, half), pins.slice(half).reverse()] : [rows[1], rows[0]];
  const longest = Math.max(lower.length, upper.length, 2);
  const pitch = 2.5;
  const length = Math.max(longest * pitch + 1, 6);
  const width = length + 1;
  const row = (names: readonly string[], y: number) => {
    const spread = names.length > 1 ? (length - pitch) / (names.length - 1) : 0;
    return legRow(names, 0.5 + pitch / 2, y, spread, true);
  };
  const top = 1.2;
  const legs = [...row(upper, top), ...row(lower, top + body + 1.6)];
  const pads = legs.map(({ x, y }) => rect(x - 0.6, y - 1, 1.2, 2, TIN, ' rx=".2"')).join("");
  const box = rect(0.5, top + 0.4, length, body + 0.8, "#15181b", ' rx=".5"');
  return {
    width,
    height: body + 4,
    svg: pads + box + circle(1.7, top + body, 0.5, "#4b5359"),
    legs,
    name: {
      x: width / 2,
      y: top + 0.8 + body / 2 + 0.7,
      size: Math.min(2.6, Math.max(1.7, body * 0.3)),
      on: "body",
    },
    through: body > 10,
  };
}

/** A chip with pins on four sides. */
export function squareBody(pins: readonly string[]): Footprint {
  const side = Math.ceil(pins.length / 4);
  const pitch = 1.9;
  const body = Math.max(side * pitch + 1.2, 9);
  const size = body + 4;
  const start = (size - (side - 1) * pitch) / 2;
  const legs = pins.map((pin, index): Leg => {
    const along = start + (index % side) * pitch;
    const spots = [
      [1, along],
      [along, size - 1],
      [size - 1, size - along],
      [size - along, 1],
    ] as const;
    const [x, y] = spots[Math.floor(index / side)] ?? spots[0];
    return { pin, x, y, open: true };
  });
  const pads = legs
    .map(({ x, y }) => {
      const flat = x < 1.5 || x > size - 1.5;
      return rect(x - (flat ? 1 : 0.5), y - (flat ? 0.5 : 1), flat ? 2 : 1, flat ? 1 : 2, TIN, ' rx=".2"');
    })
    .join("");
  const box = rect(1.7, 1.7, size - 3.4, size - 3.4, "#15181b", ' rx=".5"');
  return {
    width: size,
    height: size,
    svg: pads + box + circle(3.2, 3.2, 0.6, "#4b5359"),
    legs,
    name: { x: size / 2, y: size / 2 + 0.9, size: 2.6, on: "body" },
    through: false,
  };
}

/** Screws or blades in a row; a probe stands on each. */
export function connectorBody(pins: readonly string[]): Footprint {
  const pitch = 6;
  const length = pins.length * pitch + 1;
  const width = length + 1.6;
  const legs = legRow(pins, 0.8 + 0.5 + pitch / 2, NAME_LINE + 4.4, pitch, true);
  const screws = legs
    .map(
      ({ pin, x, y }) =>
        circle(x, y, 2.1, "#cfd4d6") +
        rect(x - 1.6, y - 0.3, 3.2, 0.6, "#6d7477") +
        `<text x="${at(x)}" y="${at(y + 4.2)}" font-size="1.7" fill="#eef3ea">${pin.toUpperCase().slice(0, 6)}</text>`,
    )
    .join("");
  return {
    width,
    height: NAME_LINE + 9.4,
    svg: rect(0.8, NAME_LINE, length, 9, "#2d6a52", ' rx=".6"') + screws,
    legs,
    name: nameAbove(width),
    through: true,
  };
}
