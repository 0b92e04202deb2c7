/** The boards that come with Faultwright: composed in code, written to `boards/` by `npm run boards`. */
import { greenhouseFanDrive } from "./greenhouse-fan-drive.ts";
import { inductionHob } from "./induction-hob.ts";
import { outdoorUnitInverter } from "./outdoor-unit-inverter.ts";

export interface ShippedBoard {
  readonly id: string;
  readonly title: string;
  readonly board: Record<string, unknown>;
}

export const SHIPPED: readonly ShippedBoard[] = [
  {
    id: "greenhouse-fan-drive",
    title: "Greenhouse ventilation fan drive, 1.5 kW, six discrete switches",
    board: greenhouseFanDrive(),
  },
  {
    id: "outdoor-unit-inverter",
    title: "Outdoor unit inverter with single-switch boost, 1.8 kW, power module",
    board: outdoorUnitInverter(),
  },
  {
    id: "induction-hob",
    title: "Single-switch induction hob, one zone, 1.8 kW",
    board: inductionHob(),
  },
];
