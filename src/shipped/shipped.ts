/** The boards that come with Faultwright: composed in code, written to `boards/` by `npm run boards`. */
import { parseBoard } from "../board/parse-board.ts";
import { drawnBoard } from "./drawing/drawn-board.ts";
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

/** The board with its test points where the drawing has them. */
function onItsPicture(content: Record<string, unknown>): Record<string, unknown> {
  const board = parseBoard(content);
  if (!board.ok) throw new Error(board.problem);
  const points = content.points as Readonly<Record<string, object>>;
  const found = new Map(drawnBoard(board.value).named.map(({ point, xy }) => [point, xy]));
  const placed = Object.entries(points).map(([name, point]) => {
    const xy = found.get(name);
    return [name, xy === undefined ? point : { ...point, xy }];
  });
  return { ...content, points: Object.fromEntries(placed) };
}

/** Composed and drawn when first asked for: most commands need none of them. */
function shipped(id: string, title: string, compose: () => Record<string, unknown>): ShippedBoard {
  let made: Record<string, unknown> | null = null;
  return {
    id,
    title,
    get board() {
      made ??= onItsPicture(compose());
      return made;
    },
  };
}

export const SHIPPED: readonly ShippedBoard[] = [
  shipped(
    "greenhouse-fan-drive",
    "Greenhouse ventilation fan drive, 1.5 kW, six discrete switches",
    greenhouseFanDrive,
  ),
  shipped(
    "outdoor-unit-inverter",
    "Outdoor unit inverter with single-switch boost, 1.8 kW, power module",
    outdoorUnitInverter,
  ),
  shipped(
    "washing-machine-drive",
    "Washing machine drive without boost, 700 W, power module, door lock, valves and heater",
    washingMachineDrive,
  ),
  shipped(
    "small-frequency-drive",
    "Small frequency drive, 1.1 kW, single-phase mains, charge resistor and brake chopper",
    smallFrequencyDrive,
  ),
  shipped(
    "small-frequency-drive-3ph",
    "Small frequency drive, 2.2 kW, three-phase mains, charge resistor and brake chopper",
    smallFrequencyDriveThreePhase,
  ),
  shipped("induction-hob", "Single-switch induction hob, one zone, 1.8 kW", inductionHob),
];
