/** How parts get rid of heat: kelvin a watt to the air of the room, and the seconds in which they get there. */
import type { Part } from "../board/board.ts";

export interface Thermal {
  readonly kelvinPerWatt: number;
  readonly seconds: number;
  /** how wide it is to a thermometer, millimetres */
  readonly millimetres: number;
}

function row(kelvinPerWatt: number, seconds: number, millimetres: number): Thermal {
  return { kelvinPerWatt, seconds, millimetres };
}

/**
 * Without a heatsink unless the kind always has one. TO-220 62 K/W and small axial diodes 60 to 75 K/W are data-sheet figures; NTC
 * discs give off 15 to 20 mW/K; the rest from memory.
 */
const BY_KIND: Readonly<Partial<Record<Part["kind"], Thermal>>> = {
  fuse: row(80, 15, 5),
  link: row(60, 15, 3),
  ntc: row(60, 70, 11),
  ptc: row(55, 60, 12),
  varistor: row(40, 60, 14),
  inductor: row(18, 300, 25),
  choke: row(18, 300, 25),
  transformer: row(22, 400, 25),
  relay: row(55, 300, 20),
  diode: row(70, 15, 5),
  zener: row(250, 8, 3),
  led: row(250, 8, 4),
  bridge: row(21, 60, 20),
  bjt: row(180, 12, 4),
  mosfet: row(3, 300, 15),
  igbt: row(3, 300, 15),
  module: row(2, 400, 35),
  opto: row(180, 12, 6),
  regulator: row(62, 40, 10),
  switcher: row(60, 30, 9),
  shuntref: row(180, 12, 4),
  controller: row(45, 25, 12),
  ic: row(90, 15, 8),
};

/** A resistor at its rating is about this much over the room (pulse-free derating curves, from memory). */
const RESISTOR_RISE_KELVIN = 110;
const RESISTOR_WATTS = 0.25;

export function thermalOf(part: Part): Thermal {
  if (part.kind === "resistor") {
    const watts = part.value.watts ?? RESISTOR_WATTS;
    return row(RESISTOR_RISE_KELVIN / watts, 8 + 20 * Math.min(watts, 10), 2 + 4 * Math.sqrt(watts));
  }
  if (part.kind === "capacitor") {
    if (part.value.type === "film") return row(40, 90, 12);
    return part.value.type === "electrolytic" ? row(35, 150, 10) : row(110, 6, 2);
  }
  return BY_KIND[part.kind] ?? row(80, 30, 6);
}

/** Nothing stays on a board that is this much over the room: solder melts, chips shut down, parts burn open (from memory). */
export const MOST_RISE_KELVIN = 200;

/** A part that gets warm warms what is soldered beside it: share of its rise, with the board's own slowness (from memory). */
export const COUPLING = { share: 0.12, seconds: 60, mostPins: 8 } as const;

/**
 * How a temperature is taken: share of the rise that is seen, width of the spot in millimetres, deviation in kelvin. A contact
 * cools what it touches; a spot wider than the part averages it with the board; a camera sees shiny metal too cold. From memory.
 */
export const THERMOMETERS = {
  contact: { share: 0.92, spotMillimetres: 0, kelvin: 2 },
  spot: { share: 0.95, spotMillimetres: 12, kelvin: 3 },
  camera: { share: 0.95, spotMillimetres: 1.5, kelvin: 2 },
} as const;

/** Deviation of a rise as a share of itself: losses and thermal resistances are both known poorly (from memory). */
export const RISE_SHARE = 0.4;
/** Room of a job that does not say, and its deviation. */
export const ROOM = { celsius: 23, spread: 4 } as const;
