import type { Part } from "../board/board.ts";
import type { FaultMode } from "../board/fault.ts";
import type { Shape } from "./mode-shares.ts";

/** One value at which a mode is listed; `value` null is the nominal one. Shares of one mode sum to one. */
export interface Level {
  readonly value: number | null;
  readonly share: number;
  readonly spreadLn: number;
}

const EXACT: readonly Level[] = [{ value: null, share: 1, spreadLn: 0 }];
const SHORT: readonly Level[] = [{ value: null, share: 1, spreadLn: 1.4 }];
/** Silicon and electrolytics: melted through for the most part, some ohms now and then. In levels, so that the same reading taken thrice counts once. */
const PART_SHORT: readonly Level[] = [
  { value: null, share: 0.65, spreadLn: 1.0 },
  { value: 3, share: 0.35, spreadLn: 0.9 },
];
/** A cracked or punched ceramic: 0.1 to 5 ohm, the same both ways (common practice). */
const CERAMIC_SHORT: readonly Level[] = [
  { value: null, share: 0.5, spreadLn: 0.8 },
  { value: 1.5, share: 0.5, spreadLn: 0.8 },
];
/** A chip that loads its own supply: 2 to 50 ohm (common practice); now and then one burnt through to a wire (from memory). */
const CHIP_SHORT: readonly Level[] = [
  { value: null, share: 0.15, spreadLn: 1.0 },
  { value: 10, share: 0.85, spreadLn: 1.0 },
];
const WIDE_LEAK: readonly Level[] = [
  { value: 100, share: 0.2, spreadLn: 0.8 },
  { value: null, share: 0.3, spreadLn: 0.8 },
  { value: 10_000, share: 0.3, spreadLn: 0.8 },
  { value: 100_000, share: 0.2, spreadLn: 0.8 },
];
const NEAR_LEAK: readonly Level[] = [
  { value: 100, share: 0.45, spreadLn: 0.9 },
  { value: null, share: 0.55, spreadLn: 0.9 },
];
const CHIP_LEAK: readonly Level[] = [
  { value: 100, share: 0.4, spreadLn: 0.8 },
  { value: null, share: 0.35, spreadLn: 0.8 },
  { value: 10_000, share: 0.25, spreadLn: 0.8 },
];
/** One level over the decades about a kilo-ohm, where finer ones would crowd the table. */
const ONE_LEAK: readonly Level[] = [{ value: null, share: 1, spreadLn: 1.3 }];

/** Leaks between neighbouring nets: wet dirt is kilo-ohms, dried dirt tens of them. `from memory`. */
export const NET_LEAK: readonly Level[] = [
  { value: null, share: 0.45, spreadLn: 1.0 },
  { value: 20_000, share: 0.55, spreadLn: 1.0 },
];

const WIDE: ReadonlySet<Shape> = new Set(["switch", "electrolytic", "varistor"]);
const NEAR: ReadonlySet<Shape> = new Set([
  "diode",
  "rectifier-diode",
  "zener",
  "thyristor",
  "gate",
  "bootstrap",
]);
const SHORTS: Partial<Readonly<Record<Shape, readonly Level[]>>> = {
  ceramic: CERAMIC_SHORT,
  "chip-supply": CHIP_SHORT,
  electrolytic: PART_SHORT,
  switch: PART_SHORT,
  diode: PART_SHORT,
  "rectifier-diode": PART_SHORT,
  zener: PART_SHORT,
};

/** A dried-out electrolytic keeps anything from most of its farads down to a tenth. `from memory`. */
const DRIED_OUT: readonly Level[] = [{ value: null, share: 1, spreadLn: 0.7 }];

/** Resistances above this in a chain on high voltage creep upwards by more than double. `common practice`. */
const HIGH_OHMS = 100_000;

function driftLevels(shape: Shape, part: Part): readonly Level[] {
  if (shape === "resistor") {
    const ohms = part.value.ohms;
    if (ohms === undefined || ohms < HIGH_OHMS) return [{ value: null, share: 1, spreadLn: 0.4 }];
    return [
      { value: null, share: 0.6, spreadLn: 0.4 },
      { value: ohms * 10, share: 0.4, spreadLn: 0.8 },
    ];
  }
  if (shape === "electrolytic") return DRIED_OUT;
  return [{ value: null, share: 1, spreadLn: 0.4 }];
}

/** The values at which `mode` of this shape is listed, with their shares (`from memory`, one decade a level). */
export function levelsOf(shape: Shape, mode: FaultMode, part: Part): readonly Level[] {
  switch (mode) {
    case "open":
      return EXACT;
    case "drift":
      return driftLevels(shape, part);
    case "short":
      return SHORTS[shape] ?? SHORT;
    case "leaky":
      if (WIDE.has(shape)) return WIDE_LEAK;
      if (shape === "chip-supply") return CHIP_LEAK;
      return NEAR.has(shape) ? NEAR_LEAK : ONE_LEAK;
  }
}
