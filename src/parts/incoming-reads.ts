/**
 * The readings of an incoming check, pin by pin: what can be written down before a part goes in, and held against the board afterwards. Ranges
 * are those of the words in `incoming-check.ts`, which name their sources; drops at about 1 mA and 25 degC.
 */
import type { ColdMode, Reading } from "../bench/event.ts";
import type { PartKind } from "../board/board.ts";
import type { Ratings } from "./ratings.ts";

/** What a good part shows: over range, or a figure between two; null: only to be written down. */
export type GoodRead = "OL" | readonly [low: number, high: number] | null;

export interface IncomingRead {
  readonly mode: ColdMode;
  /** pins by the kind's names */
  readonly red: string;
  readonly black: string;
  readonly good: GoodRead;
}

const ANY = Number.POSITIVE_INFINITY;

function diode(red: string, black: string, good: GoodRead): IncomingRead {
  return { mode: "diode", red, black, good };
}

function bothWays(red: string, black: string, good: GoodRead = "OL"): readonly IncomingRead[] {
  return [diode(red, black, good), diode(black, red, good)];
}

/** A share of the rating around it; nothing to hold to where the rating is not known. */
function around(value: number | undefined, below: number, above: number): GoodRead {
  return value === undefined ? null : [value * (1 - below), value * (1 + above)];
}

const LEGS = ["u", "v", "w"] as const;
const MODULE: GoodRead = [0.3, 0.7];

const OF_KIND: Readonly<Partial<Record<PartKind, (ratings: Ratings) => readonly IncomingRead[]>>> = {
  igbt: ({ copack }) => [
    diode("c", "e", "OL"),
    diode("e", "c", copack === undefined ? null : copack ? [0.35, 0.55] : "OL"),
    ...bothWays("g", "e"),
    ...bothWays("g", "c"),
  ],
  mosfet: () => [
    diode("d", "s", "OL"),
    diode("s", "d", [0.4, 0.7]),
    ...bothWays("g", "s"),
    ...bothWays("g", "d"),
  ],
  module: () => [
    ...LEGS.map((leg) => diode(leg, "p", MODULE)),
    ...LEGS.map((leg) => diode(`n${leg}`, leg, MODULE)),
    ...LEGS.map((leg) => diode("p", leg, "OL")),
    ...LEGS.map((leg) => diode(leg, `n${leg}`, "OL")),
    ...bothWays("vcc", "com", null),
  ],
  diode: ({ type }) => [
    diode("a", "k", type === "schottky" ? [0.1, 0.45] : type === "sic" ? [0.75, 0.85] : [0.4, 0.8]),
    diode("k", "a", type === "schottky" ? null : "OL"),
  ],
  bridge: () => [
    ...["ac1", "ac2", "ac3"].map((ac) => diode(ac, "plus", [0.2, 0.8])),
    ...["ac1", "ac2", "ac3"].map((ac) => diode("minus", ac, [0.2, 0.8])),
    ...["ac1", "ac2", "ac3"].map((ac) => diode("plus", ac, "OL")),
    ...["ac1", "ac2", "ac3"].map((ac) => diode(ac, "minus", "OL")),
    ...bothWays("ac1", "ac2"),
  ],
  zener: () => [diode("a", "k", [0.6, 0.8])],
  bjt: ({ polarity }) => {
    const pairs = ["e", "c"].map((other): readonly [string, string] =>
      polarity === "pnp" ? [other, "b"] : ["b", other],
    );
    return [...pairs.map(([red, black]) => diode(red, black, [0.55, 0.75])), ...bothWays("c", "e")];
  },
  switcher: () => [diode("s", "d", [0.4, 0.6]), diode("d", "s", "OL"), ...bothWays("vcc", "s", null)],
  opto: () => [diode("a", "k", [0.95, 1.2]), diode("k", "a", "OL"), ...bothWays("c", "e")],
  regulator: () => [...bothWays("in", "out", null), ...bothWays("out", "gnd", null)],
  capacitor: ({ farads, tolerance }) => [
    { mode: "farads", red: "plus", black: "minus", good: around(farads, 0.2, tolerance ?? 0.2) },
  ],
  varistor: () => [{ mode: "ohms", red: "1", black: "2", good: [10e6, ANY] }],
  ntc: ({ ohms }) => [{ mode: "ohms", red: "1", black: "2", good: around(ohms, 0.2, 0.2) }],
  ptc: ({ ohms }) => [{ mode: "ohms", red: "1", black: "2", good: around(ohms, 0.2, 0.2) }],
  // the leads read a few tenths of their own
  fuse: () => [{ mode: "ohms", red: "1", black: "2", good: [0, 0.6] }],
  resistor: ({ ohms, tolerance }) => [
    {
      mode: "ohms",
      red: "1",
      black: "2",
      // leads again, which weigh on small values only
      good:
        ohms === undefined
          ? null
          : [ohms * (1 - (tolerance ?? 0.05)), ohms * (1 + (tolerance ?? 0.05)) + 0.5],
    },
  ],
  relay: ({ coilOhms }) => [
    { mode: "ohms", red: "coil1", black: "coil2", good: around(coilOhms, 0.1, 0.1) },
    { mode: "ohms", red: "com", black: "no", good: "OL" },
  ],
  controller: () => bothWays("gnd", "vdd", null),
  ic: () => bothWays("gnd", "vcc", null),
};

/** The readings of one part, in the order in which they are taken, between pins that the place has. */
export function incomingReads(
  kind: PartKind,
  ratings: Ratings,
  pins: Iterable<string>,
): readonly IncomingRead[] {
  const has = new Set(pins);
  // a module with one N pin has it for all three legs
  const own = (pin: string) => (!has.has(pin) && /^n[uvw]$/.test(pin) && has.has("n") ? "n" : pin);
  return (OF_KIND[kind]?.(ratings) ?? [])
    .map((read) => ({ ...read, red: own(read.red), black: own(read.black) }))
    .filter(({ red, black }) => has.has(red) && has.has(black));
}

/** Is it what a good part shows? Null where there is nothing to hold to, or the eye caught too little to say. */
export function readsGood({ mode, good }: IncomingRead, reading: Reading): boolean | null {
  if (good === null) return null;
  if (good === "OL") return reading === "OL" || reading === "high" || reading === "silent";
  const [low, high] = good;
  if (reading === "OL") return high === ANY;
  if (typeof reading === "number") return low <= reading && reading <= high;
  if (reading === "zero") return low === 0;
  if (mode !== "diode") return null;
  return reading === "junction";
}
