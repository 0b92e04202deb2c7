/**
 * A single-switch (quasi-resonant) induction hob, one zone, 1.8 kW. A board of our own, composed of stages with the trade's
 * usual values; prices are invented demo data in the usual proportions.
 */
import { Composer } from "../compose/composer.ts";
import { controller, statusLight, thermistor } from "../compose/stages/controller.ts";
import { keyBoard, switchedFan } from "../compose/stages/hob-loads.ts";
import { hobComparators, lineCurrentSense } from "../compose/stages/hob-sensing.ts";
import { mainsFilter, rectifier } from "../compose/stages/mains.ts";
import { offlineSupply, regulator } from "../compose/stages/offline-supply.ts";
import { resonantInverter } from "../compose/stages/resonant-inverter.ts";

export function inductionHob(): Record<string, unknown> {
  const board = new Composer({
    name: "single-switch induction hob, one zone, 1.8 kW",
    family: "induction-hob",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 12.5);
  lineCurrentSense(board, "L_C", "L_B", "I_SENSE");
  rectifier(board, "BR_P", "NBUS", 25);
  resonantInverter(board, "V18", "HOLD");
  supplyFeed(board);
  const diodes = offlineSupply(board, [{ rail: "V18", volts: 18, diode: "fast", farads: 470e-6 }], {
    feed: "SUP_IN",
  });
  const five = regulator(board, "V18", "V5", 5);
  hobComparators(board, "V18", "V5", { bus: "V_SENSE", power: "PWM", surge: "SURGE" });
  const lines = ["CLK", "DAT", "KEY"];
  controller(
    board,
    "V5",
    5,
    {
      hold: "HOLD",
      pwm: "PWM",
      surge: "SURGE",
      vbus: "V_SENSE",
      isense: "I_SENSE",
      tplate: "T_PLATE",
      tsink: "T_SINK",
      fan: "FAN",
      led: "LED_D",
      nrst: "NRST",
      ...Object.fromEntries(lines.map((line) => [line.toLowerCase(), line])),
    },
    3,
  );
  for (const name of ["PLATE", "SINK"]) thermistor(board, "V5", `T_${name}`, name);
  switchedFan(board, "V18", "FAN");
  keyBoard(board, "V5", lines);
  statusLight(board, "LED_D");
  board.rail("V18", "V18", 18, 0.1, diodes.get("V18") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  places(board);
  return board.file();
}

/** The small supply has its own two diodes from the mains: the film bus falls to nothing a hundred times a second (common practice). */
function supplyFeed(board: Composer): void {
  board.stage("supply");
  for (const ac of ["L_B", "N_C"]) board.diode(ac, "SUP_IN", "rectifier", 1000, 1, { price: 0.1 });
  board.net("SUP_IN", "feed of the small supply before its fuse resistor");
}

function places(board: Composer): void {
  board.point("TP_L", "L_IN", "left screw of the mains terminal");
  board.point("TP_N", "N_IN", "right screw of the mains terminal");
  board.point("TP_BP", "BR_P", "plus leg of the bridge, the chamfered corner");
  board.point("TP_0", "NBUS", "minus leg of the bridge");
  board.point("TP_P", "PBUS", "coil screw beside the large box capacitor");
  board.point("TP_SW", "SW", "coil screw on the side of the heatsink");
  board.point("TP_G", "G_Q", "first leg of the transistor on the heatsink");
  board.point("TP_18", "V18", "plus pin of the largest capacitor beside the small transformer");
  board.point("TP_5", "V5", "output leg of the small regulator");
  board.point(
    "TP_S",
    "SUP_P",
    "plus pin of the tall thin capacitor beside the small transformer",
    [0.2, 0.62],
  );
  board.point("TP_D", "DRAIN", "drain leg of the chip beside the small transformer");
}
