/**
 * The demo: a greenhouse ventilation fan drive, 1.5 kW, 230 V, six discrete switches. A board of our own, composed of stages
 * with the trade's usual values; prices are invented demo data in the usual proportions.
 */
import { Composer } from "../compose/composer.ts";
import { bus } from "../compose/stages/bus.ts";
import {
  controller,
  currentSense,
  driveSignal,
  relayTransistor,
  statusLight,
  thermistor,
} from "../compose/stages/controller.ts";
import { discreteInverter, PHASES } from "../compose/stages/discrete-inverter.ts";
import { inrush, mainsFilter, rectifier } from "../compose/stages/mains.ts";
import { offlineSupply, regulator } from "../compose/stages/offline-supply.ts";

export function greenhouseFanDrive(): Record<string, unknown> {
  const board = new Composer({
    name: "greenhouse fan drive, 1.5 kW",
    family: "fan-drive",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 10);
  inrush(board, "V15", "K_LOW", 12);
  rectifier(board, "PBUS", "NBUS", 15);
  bus(board, 2, 470e-6, "BUS_SENSE");
  discreteInverter(board, "V15");
  const diodes = offlineSupply(board, [{ rail: "V15", volts: 15, diode: "fast", farads: 470e-6 }]);
  const fiveVolts = regulator(board, "V15", "V5", 5);
  const signals = Object.fromEntries(
    PHASES.flatMap((phase) => [
      [`h${phase.toLowerCase()}`, `MH_${phase}`],
      [`l${phase.toLowerCase()}`, `ML_${phase}`],
    ]),
  );
  controller(
    board,
    "V5",
    5,
    {
      ...signals,
      vbus: "BUS_SENSE",
      isense: "I_SENSE",
      temp: "T_SINK",
      speed: "SPEED",
      relay: "RLY",
      led: "LED_D",
      nrst: "NRST",
    },
    4,
  );
  for (const phase of PHASES) {
    driveSignal(board, `MH_${phase}`, `HI_${phase}`);
    driveSignal(board, `ML_${phase}`, `LI_${phase}`);
  }
  currentSense(board, "V5", "E_U", "I_SENSE");
  thermistor(board, "V5", "T_SINK", "SINK");
  speedInput(board);
  relayTransistor(board, "RLY", "K_LOW");
  statusLight(board, "LED_D");
  output(board);
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V5", "V5", 5, 0.05, fiveVolts);
  places(board);
  return board.file();
}

/** 0-10 V speed command: divider, clamp, filter (from memory). */
function speedInput(board: Composer): void {
  board.stage("sensor");
  board.link("SPEED_IN", "SPEED_J", { plugged: true });
  board.resistor("SPEED_J", "SPEED", 10_000);
  board.resistor("SPEED", "NBUS", 10_000);
  board.zener("NBUS", "SPEED", 5.1);
  board.ceramic("SPEED", "NBUS");
  board.ceramic("SPEED_IN", "NBUS", 10e-9);
  board.net("SPEED_IN", "speed input");
}

/** The motor on its plug. */
function output(board: Composer): void {
  board.stage("output");
  board.part(
    "M",
    "motor",
    { u: "U", v: "V", w: "W" },
    { ohms: 3.2 },
    { plugged: true, minutes: { remove: 0.5, restore: 0.5 }, price: 90 },
  );
}

function places(board: Composer): void {
  board.point("TP_L", "L_IN", "left screw of the mains terminal");
  board.point("TP_N", "N_IN", "right screw of the mains terminal");
  board.point("TP_P", "PBUS", "plus pin of either large capacitor");
  board.point("TP_0", "NBUS", "minus pin of either large capacitor");
  board.point("TP_U", "U", "motor terminal U");
  board.point("TP_V", "V", "motor terminal V");
  board.point("TP_W", "W", "motor terminal W");
  board.point("TP_15", "V15", "plus pin of the capacitor beside the small transformer");
  board.point("TP_5", "V5", "any small ceramic beside the largest chip");
  board.point("TP_D", "DRAIN", "drain leg of the chip beside the small transformer");
}
