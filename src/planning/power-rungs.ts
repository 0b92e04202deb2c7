/** The rungs of a limited power-up: what each proves, when to go on and when to stop. Common practice, after the trade's ladder. */
import { said } from "../messages/said.ts";
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
    said`bench supply into the drive rail`,
    said`the rail, the drivers and the control side of the module, with no mains near`,
    said`20 to 100 mA and steady`,
    said`over 200 mA or rising, the limit reached, or any part hot`,
  ),
  B: rung(
    "B",
    said`bench supply into a logic rail`,
    said`the regulator and the controller behind it, with no mains near`,
    said`10 to 80 mA, and a light or the crystal alive`,
    said`the limit reached, or the controller warm`,
  ),
  C: rung(
    "C",
    said`low volts across the bus`,
    said`no short across the bus at some volts, and no switch that conducts by itself`,
    said`the current falls to a few milliamps once the bus is charged`,
    said`the current stays at the limit; clipped on the wrong way round, the body diodes conduct`,
  ),
  D: rung(
    "D",
    said`100 to 150 V isolated across the bus`,
    said`the small supply starts and makes its rails`,
    said`the rails come up and stay`,
    said`hiccup, heat, or the limit reached`,
  ),
  E: rung(
    "E",
    said`mains through a series lamp`,
    said`inrush, bridge, bus, the relay's click, and the small supply at full volts`,
    said`the lamp flashes, then goes dark, the bus stands at its volts and the rails are right`,
    said`bright and staying so: a hard short. Dark with no bus proves nothing: the feed is open, or a short hides behind a hot PTC`,
  ),
  F: rung(
    "F",
    said`mains without the lamp, no motor`,
    said`the drive at full energy: gate signals, no cross conduction, three phases equal`,
    said`it runs with nothing hot; where three equal lamps in star are at hand in the motor's place, they glow alike`,
    said`the fuse blows, something smokes, or a phase differs`,
  ),
  H: rung(
    "H",
    said`mains with its motor and load`,
    said`everything, once it is warm through`,
    said`20 to 60 minutes at load without a trip`,
    said`a trip, heat, or noise: off at once`,
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
