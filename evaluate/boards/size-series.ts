/**
 * Boards of growing size for the plot of cost against parts: a supply alone, a drive of one axis, and drives of more and more
 * axes on one bus. Real stages repeated as real multi-axis drives repeat them, not random graphs.
 */
import { Composer } from "../../src/compose/composer.ts";
import { bus } from "../../src/compose/stages/bus.ts";
import {
  controller,
  currentSense,
  relayTransistor,
  statusLight,
  thermistor,
} from "../../src/compose/stages/controller.ts";
import { inrush, mainsFilter, ntcInrush, rectifier } from "../../src/compose/stages/mains.ts";
import { moduleInverter } from "../../src/compose/stages/module-inverter.ts";
import { offlineSupply, regulator } from "../../src/compose/stages/offline-supply.ts";
import { axis } from "./axis.ts";
import { Section } from "./section.ts";

/** Parts aimed at by each board of the series; each holds within 5 % of it. */
export const SIZES = [50, 100, 300, 600, 1200] as const;
export type Size = (typeof SIZES)[number];

/** Axes on the bus; a small supply serves four. */
const AXES: Readonly<Record<Size, number>> = { 50: 0, 100: 0, 300: 3, 600: 7, 1200: 14 };
const AXES_PER_SUPPLY = 4;

export function sizedBoard(size: Size): Record<string, unknown> {
  if (size === 50) return supplyBoard();
  return size === 100 ? moduleDrive() : multiAxisDrive(size);
}

function head(name: string, family: string): Composer {
  return new Composer({
    name,
    family,
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
}

function commonPlaces(board: Composer): void {
  board.point("TP_L", "L_IN", "left screw of the mains terminal", [0.05, 0.1]);
  board.point("TP_N", "N_IN", "right screw of the mains terminal", [0.05, 0.2]);
  board.point("TP_P", "PBUS", "plus pin of a large capacitor", [0.4, 0.2]);
  board.point("TP_0", "NBUS", "minus pin of a large capacitor", [0.4, 0.35]);
}

/** A standby supply: mains filter, bus, small supply, one regulator. */
function supplyBoard(): Record<string, unknown> {
  const board = head("standby supply", "supply");
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 3.15);
  ntcInrush(board);
  rectifier(board, "PBUS", "NBUS", 4);
  bus(board, 1, 47e-6, "BUS_SENSE");
  const diodes = offlineSupply(board, [{ rail: "V12", volts: 12, diode: "schottky", farads: 470e-6 }]);
  const five = regulator(board, "V12", "V5", 5);
  board.link("V5", "OUT_5", { plugged: true });
  board.zener("NBUS", "OUT_5", 6.2);
  board.ceramic("OUT_5", "NBUS");
  board.rail("V12", "V12", 12, 0.1, diodes.get("V12") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  commonPlaces(board);
  return board.file();
}

/** One module on one bus, with the least logic round it. */
function moduleDrive(): Record<string, unknown> {
  const board = head("pump drive, 400 W", "pump-drive");
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 6.3);
  inrush(board, "V15", "K_LOW", 12);
  rectifier(board, "PBUS", "NBUS", 8);
  bus(board, 1, 220e-6, "BUS_SENSE");
  moduleInverter(board, "V15", "V5", { amps: 5, price: 11 });
  const diodes = offlineSupply(board, [{ rail: "V15", volts: 15, diode: "fast", farads: 220e-6 }]);
  const five = regulator(board, "V15", "V5", 5);
  const pins: Record<string, string> = {};
  for (const signal of ["up", "vp", "wp", "un", "vn", "wn"]) pins[signal] = `M_${signal}`;
  controller(
    board,
    "V5",
    5,
    {
      ...pins,
      vbus: "BUS_SENSE",
      isense: "I_SENSE",
      temp: "T_SINK",
      fo: "FO",
      relay: "RLY",
      led: "LED_D",
      nrst: "NRST",
    },
    2,
  );
  currentSense(board, "V5", "N_U", "I_SENSE");
  thermistor(board, "V5", "T_SINK", "SINK");
  relayTransistor(board, "RLY", "K_LOW");
  statusLight(board, "LED_D");
  board.stage("output");
  board.part("MOT", "motor", { u: "U", v: "V", w: "W" }, { ohms: 7.5 }, { plugged: true, price: 70 });
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  commonPlaces(board);
  return board.file();
}

/** Axes side by side on one bus, one small supply for every four, and a controller that leads them. */
function multiAxisDrive(size: Size): Record<string, unknown> {
  const axes = AXES[size];
  const board = head(`drive of ${axes} axes`, "multi-axis-drive");
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 25);
  inrush(board, "PS1_V15", "K_LOW", 12);
  rectifier(board, "PBUS", "NBUS", 50);
  bus(board, 2 + Math.ceil(axes / 2), 470e-6, "BUS_SENSE");
  for (let supply = 1; supply <= Math.ceil(axes / AXES_PER_SUPPLY); supply++) {
    const own = new Section(board, `PS${supply}`, { PBUS: "PBUS", NBUS: "NBUS" });
    const diodes = offlineSupply(own, [{ rail: "V15", volts: 15, diode: "fast", farads: 1000e-6 }]);
    own.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  }
  for (let n = 1; n <= axes; n++)
    axis(board, `A${n}`, `PS${Math.ceil(n / AXES_PER_SUPPLY)}_V15`, { ohms: 2.4, price: 140 });
  const five = regulator(board, "PS1_V15", "V5", 5);
  controller(
    board,
    "V5",
    5,
    { vbus: "BUS_SENSE", temp: "T_IN", relay: "RLY", led: "LED_D", nrst: "NRST" },
    3,
  );
  relayTransistor(board, "RLY", "K_LOW");
  thermistor(board, "V5", "T_IN", "IN");
  statusLight(board, "LED_D");
  board.rail("V5", "V5", 5, 0.05, five);
  commonPlaces(board);
  return board.file();
}
