/** The board of a case as a figure for each way: where every step was done, by its number, and the parts that were found faulty, ringed. */
import type { Board } from "../board/board.ts";
import { plain } from "../messages/said.ts";
import type { NamedWay } from "./side-by-side.ts";

/** A picture of the board from above, and where its places are on it by fractions. */
export interface CasePicture {
  /** millimetres */
  readonly width: number;
  readonly height: number;
  readonly faces: readonly { readonly side: "top" | "bottom"; readonly svg: string }[];
  /** the pads that are easiest to find first */
  readonly pads: readonly {
    readonly place: string;
    readonly side: "top" | "bottom";
    readonly x: number;
    readonly y: number;
  }[];
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Units of the figure for each millimetre: those in which the picture gives its own size. */
const UNITS_PER_MM = 10;
/** Size of a number against the width of the figure: legible on a printed page. */
const NUMBER_SIZE = 1 / 75;

/** Where a pin, a part or a net is on the picture; null where it is not drawn. */
function spotOf({ width, height, pads }: CasePicture, board: Board, place: string): Spot | null {
  const on = (fits: (pad: string) => boolean) =>
    pads
      .filter((pad) => fits(pad.place))
      // what is soldered beneath is marked where it lies under the part
      .map(({ side, x, y }) => ({
        x: (side === "top" ? x : 1 - x) * width * UNITS_PER_MM,
        y: y * height * UNITS_PER_MM,
      }));
  const [itself] = on((pad) => pad === place);
  if (itself !== undefined) return itself;
  const ofPart = on((pad) => pad.startsWith(`${place}.`));
  if (ofPart.length > 0)
    return {
      x: ofPart.reduce((sum, { x }) => sum + x, 0) / ofPart.length,
      y: ofPart.reduce((sum, { y }) => sum + y, 0) / ofPart.length,
    };
  const netOf = (pad: string) => {
    const dot = pad.indexOf(".");
    return dot < 0 ? null : board.parts.get(pad.slice(0, dot))?.pins.get(pad.slice(dot + 1));
  };
  return on((pad) => netOf(pad) === place)[0] ?? null;
}

function ringed({ x, y }: Spot, ref: string, size: number): string {
  return `<circle class="found" cx="${x.toFixed(0)}" cy="${y.toFixed(0)}" r="${(2.2 * size).toFixed(0)}"><title>${ref}</title></circle>`;
}

/** Numbers of the steps at a spot: the first few, then how many more. */
function stepsAt({ x, y }: Spot, steps: readonly number[], size: number): string {
  const shown = steps.slice(0, NUMBERS_SHOWN).join(" ");
  const text = steps.length > NUMBERS_SHOWN ? `${shown} +${steps.length - NUMBERS_SHOWN}` : shown;
  return `<g class="at"><circle cx="${x.toFixed(0)}" cy="${y.toFixed(0)}" r="${(0.35 * size).toFixed(0)}"/><text x="${(x + 0.5 * size).toFixed(0)}" y="${(y - 0.3 * size).toFixed(0)}">${text}</text></g>`;
}
const NUMBERS_SHOWN = 4;

/** One figure a way. `found`: references of the faulty parts. What is not on the picture is left out of it; the table holds every step. */
export function caseFigures(
  picture: CasePicture,
  board: Board,
  found: readonly string[],
  ways: readonly NamedWay[],
): readonly string[] {
  const [width, height] = [picture.width * UNITS_PER_MM, picture.height * UNITS_PER_MM];
  const size = width * NUMBER_SIZE;
  // within a page a drawing needs no name for its language, and a page that loads nothing has no address in it
  const top = (picture.faces.find(({ side }) => side === "top")?.svg ?? "").replace(/ xmlns="[^"]*"/, "");
  const rings = found
    .map((ref) => {
      const spot = spotOf(picture, board, ref);
      return spot === null ? "" : ringed(spot, ref, size);
    })
    .join("");
  return ways.map(({ name, steps }) => {
    const at = new Map<string, number[]>();
    for (const [step, { places = [] }] of steps.entries())
      for (const place of places) at.set(place, [...(at.get(place) ?? []), step + 1]);
    const marks = [...at].map(([place, numbers]) => {
      const spot = spotOf(picture, board, place);
      return spot === null ? "" : stepsAt(spot, numbers, size);
    });
    const words = `The way "${plain(name)}": the number of each step where it was done; what was found is ringed.`;
    return `<figure><svg role="img" aria-label="${attribute(words)}" viewBox="0 0 ${width.toFixed(0)} ${height.toFixed(0)}" font-size="${size.toFixed(1)}">${top}${rings}${marks.join("")}</svg><figcaption>${attribute(words)}</figcaption></figure>`;
  });
}

const attribute = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
