/** Which leg on the drawing a test point of the board file means: the one that its words describe, else the easiest to find. */
import type { Board, Part, PartKind, TestPoint } from "../../board/board.ts";
import type { Layout, Placed } from "./layout.ts";
import { SCREWS } from "./terminals.ts";

/** Words of a place, and the parts that they can mean; the first that fits counts. */
const MEANT: readonly { readonly words: RegExp; readonly is: (part: Part | null) => boolean }[] = [
  { words: /relay/, is: (part) => isOf(part, "relay") && part?.plugged === false },
  { words: /coil screw|reactor/, is: (part) => isOf(part, "inductor") },
  { words: SCREWS, is: (part) => part === null || part.kind === "motor" || part.plugged },
  {
    words: /ceramic beside the largest chip/,
    is: (part) => isOf(part, "capacitor") && part?.stage === "logic",
  },
  { words: /large capacitor|the one large/, is: (part) => isOf(part, "capacitor") && part?.stage === "bus" },
  {
    words: /capacitor beside the module/,
    is: (part) => isOf(part, "capacitor") && part?.stage === "drive",
  },
  { words: /capacitor/, is: (part) => isOf(part, "capacitor") },
  { words: /disc/, is: (part) => isOf(part, "ptc", "ntc") },
  { words: /resistor/, is: (part) => isOf(part, "resistor") },
  { words: /bridge/, is: (part) => isOf(part, "bridge") },
  { words: /regulator/, is: (part) => isOf(part, "regulator") },
  { words: /chip/, is: (part) => isOf(part, "switcher") },
  { words: /transistor/, is: (part) => isOf(part, "igbt", "mosfet") },
];

const isOf = (part: Part | null, ...kinds: readonly PartKind[]) => part !== null && kinds.includes(part.kind);

export interface NamedPlace {
  readonly point: string;
  readonly net: string;
  /** as the pads of the drawing name it: a pin, or a net at the mains terminal */
  readonly place: string;
  /** fractions of the picture of the parts' side */
  readonly xy: readonly [number, number];
}

/** The places of the board's test points; a net without a leg on the drawing has none. `placed`: the easiest to find first. */
export function namedPlaces(
  board: Board,
  placed: readonly Placed[],
  layout: Pick<Layout, "width" | "height">,
): readonly NamedPlace[] {
  return board.points.flatMap((point) => {
    const legs = placed.flatMap((one) =>
      one.footprint.legs
        .filter(({ pin }) => (one.part?.pins.get(pin) ?? (one.part === null ? pin : null)) === point.net)
        .map((leg) => ({ one, leg })),
    );
    const found = legs.find(({ one }) => meantBy(point)(one.part)) ?? legs[0];
    if (found === undefined) return [];
    const { one, leg } = found;
    const place = one.part === null ? leg.pin : `${one.ref}.${leg.pin}`;
    const xy = [(one.x + leg.x) / layout.width, (one.y + leg.y) / layout.height].map((value) =>
      Number(value.toFixed(4)),
    );
    return [{ point: point.name, net: point.net, place, xy: [xy[0] ?? 0, xy[1] ?? 0] as const }];
  });
}

function meantBy({ at }: TestPoint): (part: Part | null) => boolean {
  return MEANT.find(({ words }) => words.test(at ?? ""))?.is ?? (() => false);
}
