/** The rungs of a limited power-up: what each proves, when to go on and when to stop. Common practice, after the trade's ladder. */
import type { Mark } from "../units/mark.ts";

export type RungId = "A" | "B" | "C" | "D" | "E" | "F" | "H";

export interface RungWords {
  readonly id: RungId;
  readonly name: string;
  readonly proves: string;
  readonly goOn: string;
  readonly stop: string;
  readonly mark: Mark;
}

const rung = (id: RungId, name: string, proves: string, goOn: string, stop: string): RungWords => ({
  id,
  name,
  proves,
  goOn,
  stop,
  mark: "common practice",
});

export const RUNGS: Readonly<Record<RungId, RungWords>> = {
  A: rung(
    "A",
    "bench supply into the drive rail",
    "the rail, the drivers and the control side of the module, with no mains near",
    "20 to 100 mA and steady",
    "over 200 mA or rising, the limit reached, or any part hot",
  ),
  B: rung(
    "B",
    "bench supply into a logic rail",
    "the regulator and the controller behind it, with no mains near",
    "10 to 80 mA, and a light or the crystal alive",
    "the limit reached, or the controller warm",
  ),
  C: rung(
    "C",
    "low volts across the bus",
    "no short across the bus at some volts, and no switch that conducts by itself",
    "the current falls to a few milliamps once the bus is charged",
    "the current stays at the limit; clipped on the wrong way round, the body diodes conduct",
  ),
  D: rung(
    "D",
    "100 to 150 V isolated across the bus",
    "the small supply starts and makes its rails",
    "the rails come up and stay",
    "hiccup, heat, or the limit reached",
  ),
  E: rung(
    "E",
    "mains through a series lamp",
    "inrush, bridge, bus, the relay's click, and the small supply at full volts",
    "the lamp flashes, then goes dark, the bus stands at its volts and the rails are right",
    "bright and staying so: a hard short. Dark with no bus proves nothing: the feed is open, or a short hides behind a hot PTC",
  ),
  F: rung(
    "F",
    "mains without the lamp, no motor",
    "the drive at full energy: gate signals, no cross conduction, three phases equal",
    "it runs with nothing hot; where three equal lamps in star are at hand in the motor's place, they glow alike",
    "the fuse blows, something smokes, or a phase differs",
  ),
  H: rung(
    "H",
    "mains with its motor and load",
    "everything, once it is warm through",
    "20 to 60 minutes at load without a trip",
    "a trip, heat, or noise: off at once",
  ),
};

/** Figures of the rungs. Common practice: 30 to 60 V with 0.1 to 0.3 A, then 100 to 150 V isolated with 0.2 A. */
export const RUNG_FEEDS = {
  bus: { volts: 30, limitAmps: 0.1 },
  isolatedBus: { volts: 120, limitAmps: 0.2 },
  /** a supply of the bus from these volts on is the isolated one that starts the small supply */
  leastIsolatedVolts: 100,
  /** rails above these volts feed drivers, those up to them logic */
  driveVolts: 12,
  /** no rail above these volts is fed from a common bench supply */
  mostRailVolts: 30,
} as const;
