/** The boards that come with Faultwright: composed in code, written to `boards/` by `npm run boards`. */
import { greenhouseFanDrive } from "./greenhouse-fan-drive.ts";
import { inductionHob } from "./induction-hob.ts";
import { outdoorUnitInverter } from "./outdoor-unit-inverter.ts";
import { smallFrequencyDrive, smallFrequencyDriveThreePhase } from "./small-frequency-drive.ts";
import { washingMachineDrive } from "./washing-machine-drive.ts";

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
    id: "washing-machine-drive",
    title: "Washing machine drive without boost, 700 W, power module, door lock, valves and heater",
    board: washingMachineDrive(),
  },
  {
    id: "small-frequency-drive",
    title: "Small frequency drive, 1.1 kW, single-phase mains, charge resistor and brake chopper",
    board: smallFrequencyDrive(),
  },
  {
    id: "small-frequency-drive-3ph",
    title: "Small frequency drive, 2.2 kW, three-phase mains, charge resistor and brake chopper",
    board: smallFrequencyDriveThreePhase(),
  },
  {
    id: "induction-hob",
    title: "Single-switch induction hob, one zone, 1.8 kW",
    board: inductionHob(),
  },
];
