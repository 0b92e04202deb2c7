/** For tests of substitution: one original of every role with all its ratings known, invented but such as are sold. */
import type { PartKind } from "../board/board.ts";
import type { CatalogueType } from "./catalogue.ts";
import type { PartRole } from "./part-role.ts";
import type { Ratings } from "./ratings.ts";
import type { Wanted } from "./wanted.ts";

interface Original {
  readonly kind: PartKind;
  readonly ratings: Ratings;
}

const TO_247: Ratings = { package: "TO-247", pinOrder: "G C E" };
const AXIAL: Ratings = { package: "DO-41" };

const MOTOR_IGBT: Ratings = {
  ...TO_247,
  volts: 600,
  amps: 40,
  hotAmps: 20,
  shortCircuitSeconds: 10e-6,
  gateCoulombs: 100e-9,
  dropVolts: 1.9,
  copack: true,
  speed: "motor",
  tab: "isolated",
};

const FAST: Ratings = { ...AXIAL, volts: 600, amps: 1, recoverySeconds: 75e-9, type: "fast" };
const WET: Ratings = { type: "electrolytic", degC: 105 };

export const ORIGINALS = {
  "motor switch": { kind: "igbt", ratings: MOTOR_IGBT },
  "boost switch": { kind: "igbt", ratings: { ...MOTOR_IGBT, volts: 650, speed: "high-speed" } },
  "resonant switch": { kind: "igbt", ratings: { ...MOTOR_IGBT, volts: 1350, speed: "resonant" } },
  "power module": {
    kind: "module",
    ratings: {
      volts: 600,
      amps: 20,
      pinMap: "DIP27-A",
      bootDiode: true,
      logic: "high",
      shunt: "outside",
      tripVolts: 0.48,
      sensor: "47k-4050",
      openEmitters: true,
      heightMm: 4,
    },
  },
  "off-line switch": {
    kind: "mosfet",
    ratings: {
      volts: 800,
      amps: 3,
      ohmsOn: 3.5,
      gateCoulombs: 20e-9,
      package: "TO-220F",
      pinOrder: "G D S",
      tab: "isolated",
    },
  },
  bridge: {
    kind: "bridge",
    ratings: {
      volts: 600,
      amps: 15,
      surgeAmps: 300,
      meltingAmps2Seconds: 375,
      package: "GBJ",
      pinOrder: "+ ~ ~ -",
    },
  },
  "boost diode": {
    kind: "diode",
    ratings: {
      volts: 600,
      amps: 20,
      recoverySeconds: 30e-9,
      type: "fast",
      package: "TO-220-2",
      pinOrder: "K A",
      tab: "isolated",
    },
  },
  "secondary diode": {
    kind: "diode",
    ratings: { ...AXIAL, volts: 40, amps: 3, type: "schottky", dropVolts: 0.525, recoverySeconds: 0 },
  },
  "clamp diode": { kind: "diode", ratings: { ...FAST, volts: 1000, recoverySeconds: 500e-9 } },
  "bootstrap diode": { kind: "diode", ratings: FAST },
  "mains diode": {
    kind: "diode",
    ratings: { ...AXIAL, volts: 1000, amps: 1, surgeAmps: 30, type: "rectifier" },
  },
  "gate clamp": { kind: "zener", ratings: { volts: 18, watts: 0.5 } },
  "bus capacitor": {
    kind: "capacitor",
    ratings: { ...WET, farads: 470e-6, volts: 400, rippleAmps: 2.1, heightMm: 40, pitchMm: 10 },
  },
  "rail capacitor": { kind: "capacitor", ratings: { ...WET, farads: 470e-6, volts: 25, esrOhms: 0.06 } },
  "supply pin capacitor": { kind: "capacitor", ratings: { ...WET, farads: 33e-6, volts: 35, esrOhms: 0.5 } },
  ceramic: { kind: "capacitor", ratings: { farads: 1e-7, volts: 50, type: "ceramic" } },
  "X capacitor": {
    kind: "capacitor",
    ratings: { farads: 4.7e-7, volts: 275, safety: "X2", type: "film", pitchMm: 15 },
  },
  "Y capacitor": {
    kind: "capacitor",
    ratings: { farads: 3.3e-9, volts: 300, safety: "Y2", type: "ceramic" },
  },
  "resonant capacitor": {
    kind: "capacitor",
    ratings: { farads: 2.7e-7, volts: 1200, type: "film", rippleAmps: 12 },
  },
  varistor: { kind: "varistor", ratings: { volts: 470, acVolts: 300, discMm: 14, cutout: true } },
  "inrush part": { kind: "ptc", ratings: { ohms: 47, amps: 1, joules: 80 } },
  fuse: {
    kind: "fuse",
    ratings: { amps: 10, volts: 250, blow: "T", breakingAmps: 1500, body: "ceramic", package: "5x20" },
  },
  "fuse resistor": { kind: "resistor", ratings: { ohms: 4.7, watts: 1, fusible: true } },
  shunt: { kind: "resistor", ratings: { ohms: 0.02, watts: 3, kelvinDrift: 50, fourTerminal: false } },
  "high-voltage resistor": { kind: "resistor", ratings: { ohms: 470e3, watts: 0.25, volts: 200 } },
  optocoupler: {
    kind: "opto",
    ratings: {
      use: "feedback",
      transferLow: 0.8,
      transferHigh: 1.6,
      isolationVolts: 5000,
      recoverySeconds: 4e-6,
      package: "DIP-4",
    },
  },
  regulator: { kind: "regulator", ratings: { volts: 5, amps: 1, pinOrder: "IN GND OUT", package: "TO-220" } },
  relay: { kind: "relay", ratings: { coilVolts: 12, coilOhms: 360, amps: 20, pinMap: "four legs, 10 mm" } },
  controller: { kind: "controller", ratings: { program: "board 0151-C" } },
  "signal diode": {
    kind: "diode",
    ratings: { volts: 100, amps: 0.2, recoverySeconds: 4e-9, type: "signal", package: "DO-35" },
  },
  zener: { kind: "zener", ratings: { volts: 5.1, watts: 0.5 } },
  "film capacitor": { kind: "capacitor", ratings: { farads: 2.2e-7, volts: 630, type: "film" } },
  resistor: { kind: "resistor", ratings: { ohms: 1000, watts: 0.25 } },
  chip: { kind: "ic", ratings: {} },
  other: { kind: "choke", ratings: {} },
  transistor: { kind: "bjt", ratings: { polarity: "npn", volts: 40, amps: 1, pinOrder: "E B C" } },
} as const satisfies Readonly<Partial<Record<PartRole, Original>>>;

export type KnownRole = keyof typeof ORIGINALS;

/** The place that one of these originals leaves empty. */
export function placeOf(role: KnownRole, more: Partial<Wanted> = {}): Wanted {
  const { kind, ratings }: Original = ORIGINALS[role];
  return { ref: "X1", kind, role, name: "the original", ratings, parallel: [], alike: [], ...more };
}

/** The original again, with some ratings changed, under its own name. */
export function likeOriginal(role: KnownRole, change: Ratings = {}, kind?: PartKind): CatalogueType {
  const original: Original = ORIGINALS[role];
  return {
    name: "the original",
    kind: kind ?? original.kind,
    ratings: { ...original.ratings, ...change },
    source: null,
  };
}
