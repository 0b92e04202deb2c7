/**
 * A washing machine's drive without boost: NTC inrush, one bus capacitor, three-phase module, triacs and relays for what holds
 * and heats the water. A board of our own, composed of stages with the trade's usual values; prices are invented demo data in
 * the usual proportions.
 */
import { Composer } from "../compose/composer.ts";
import { bus } from "../compose/stages/bus.ts";
import { controller, currentSense, thermistor } from "../compose/stages/controller.ts";
import { mainsFilter, ntcInrush, rectifier } from "../compose/stages/mains.ts";
import { moduleInverter } from "../compose/stages/module-inverter.ts";
import { offlineSupply, regulator } from "../compose/stages/offline-supply.ts";
import { relayArray } from "../compose/stages/outdoor-loads.ts";
import {
  coil,
  doorLock,
  levelInput,
  loadRelay,
  lockSense,
  tacho,
  triacOutput,
} from "../compose/stages/washer-loads.ts";

/** One washing machine's water sensor: 35.9 kohm at 0 degC and 9.7 kohm at 30 degC (published), carried to 25 degC. */
const WATER_SENSOR = { ohms: 11_850, beta: 3611 };

export function washingMachineDrive(): Record<string, unknown> {
  const board = new Composer({
    name: "washing machine drive, 700 W",
    family: "washer-drive",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 16);
  ntcInrush(board);
  rectifier(board, "PBUS", "NBUS", 10);
  bus(board, 1, 390e-6, "BUS_SENSE");
  moduleInverter(board, "V15", "V5", { amps: 8, price: 14, shuntOhms: 0.027 });
  const diodes = offlineSupply(board, [
    { rail: "V12", volts: 12, diode: "schottky", farads: 470e-6 },
    { rail: "V15", volts: 15, diode: "fast", farads: 220e-6 },
  ]);
  const five = regulator(board, "V12", "V5", 5);
  logic(board);
  loads(board);
  currentSense(board, "V5", "N_U", "I_SENSE");
  tacho(board, "V5", "TACHO_D");
  levelInput(board, "V5", "LEVEL");
  thermistor(board, "V5", "T_WATER", "WATER", WATER_SENSOR);
  board.stage("output");
  board.part(
    "MOT",
    "motor",
    { u: "U", v: "V", w: "W" },
    { ohms: 5.6 },
    { plugged: true, minutes: { remove: 0.5, restore: 0.5 }, price: 110 },
  );
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V12", "V12", 12, 0.1, diodes.get("V12") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  places(board);
  return board.file();
}

function logic(board: Composer): void {
  const pins: Record<string, string> = {};
  for (const signal of ["up", "vp", "wp", "un", "vn", "wn"]) pins[signal] = `M_${signal}`;
  Object.assign(pins, {
    vbus: "BUS_SENSE",
    isense: "I_SENSE",
    fo: "FO",
    tach: "TACHO_D",
    level: "LEVEL",
    water: "T_WATER",
    door: "LOCK_SENSE",
    lock: "D_LOCK",
    fill: "D_FILL",
    pump: "D_PUMP",
    heater: "D_HEATER",
    rinse: "D_RINSE",
    nrst: "NRST",
  });
  controller(board, "V5", 5, pins, 3);
}

/** Lock and pump hang on the fused line, what lets water in or heats it on the line behind the lock. */
function loads(board: Composer): void {
  triacOutput(board, "LOCK", "D_LOCK", "L_F");
  doorLock(board, "LOCK", "L_F", "L_LOCK");
  lockSense(board, "L_LOCK", "LOCK_SENSE");
  triacOutput(board, "PUMP", "D_PUMP", "L_F");
  coil(board, { name: "PUMP", words: "drain pump coil", ohms: 160, price: 18 });
  triacOutput(board, "FILL", "D_FILL", "L_LOCK");
  coil(board, { name: "FILL", words: "fill valve coil", ohms: 3_800, price: 9 });
  relayArray(board, "V12", [
    ["D_HEATER", "C_HEATER"],
    ["D_RINSE", "C_RINSE"],
  ]);
  loadRelay(board, "V12", "C_HEATER", "L_LOCK", 16, {
    name: "HEATER",
    words: "heating element",
    ohms: 27,
    price: 22,
  });
  loadRelay(board, "V12", "C_RINSE", "L_LOCK", 5, {
    name: "RINSE",
    words: "softener valve coil",
    ohms: 3_800,
    price: 9,
  });
}

function places(board: Composer): void {
  board.point("TP_L", "L_IN", "left blade of the mains plug socket");
  board.point("TP_N", "N_IN", "right blade of the mains plug socket");
  board.point("TP_LB", "L_B", "leg of the round disc that is nearer the bridge");
  board.point("TP_P", "PBUS", "plus pin of the one large capacitor");
  board.point("TP_0", "NBUS", "minus pin of the one large capacitor, the striped side");
  board.point("TP_U", "U", "first blade of the motor plug");
  board.point("TP_V", "V", "second blade of the motor plug");
  board.point("TP_W", "W", "third blade of the motor plug");
  board.point("TP_15", "V15", "plus pin of the capacitor beside the module's control pins");
  board.point("TP_12", "V12", "plus pin of the largest capacitor beside the small transformer");
  board.point("TP_5", "V5", "output leg of the three-legged regulator");
  board.point("TP_D", "DRAIN", "drain leg of the chip beside the small transformer");
  board.point("TP_LK", "L_LOCK", "common blade of the heater relay");
  board.point("TP_H", "O_HEATER", "blade of the heater plug");
}
