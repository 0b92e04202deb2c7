/**
 * An outdoor unit's inverter with single-switch boost and a three-phase module, four rails. A board of our own, composed of
 * stages with the trade's usual values; prices are invented demo data in the usual proportions.
 */
import { Composer } from "../compose/composer.ts";
import { boost } from "../compose/stages/boost.ts";
import { bus } from "../compose/stages/bus.ts";
import { controller, statusLight, thermistor } from "../compose/stages/controller.ts";
import { inrush, mainsFilter, rectifier } from "../compose/stages/mains.ts";
import { moduleInverter } from "../compose/stages/module-inverter.ts";
import { offlineSupply, regulator } from "../compose/stages/offline-supply.ts";
import { currentLoop, fanPlug, relayArray, valves } from "../compose/stages/outdoor-loads.ts";

export function outdoorUnitInverter(): Record<string, unknown> {
  const board = new Composer({
    name: "outdoor unit inverter with boost, 1.8 kW",
    family: "outdoor-inverter",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 20);
  inrush(board, "V12", "O_MAIN", 12);
  rectifier(board, "BR_P", "BR_N", 25);
  boost(board, "V15", "PFC_PWM");
  bus(board, 3, 470e-6, "BUS_SENSE");
  moduleInverter(board, "V15", "V5");
  const diodes = offlineSupply(board, [
    { rail: "V12", volts: 12, diode: "schottky", farads: 470e-6 },
    { rail: "V15", volts: 15, diode: "fast", farads: 220e-6 },
  ]);
  const five = regulator(board, "V12", "V5", 5);
  const three = regulator(board, "V5", "V33", 3.3);
  logic(board);
  relayArray(board, "V12", [
    ["D_MAIN", "O_MAIN"],
    ["D_VALVE", "O_VALVE"],
    ["D_STEP_A", "O_STEP_A"],
    ["D_STEP_B", "O_STEP_B"],
    ["D_STEP_C", "O_STEP_C"],
    ["D_STEP_D", "O_STEP_D"],
  ]);
  valves(board, "V12");
  fanPlug(board, "V15", "FAN_PWM", "FAN_TACH", "V5");
  currentLoop(board, "V5", "TX", "RX");
  for (const name of ["OUT", "COIL", "DIS"]) thermistor(board, "V33", `T_${name}`, name);
  statusLight(board, "LED_D");
  board.stage("output");
  board.part(
    "MOT",
    "motor",
    { u: "U", v: "V", w: "W" },
    { ohms: 1.1 },
    { plugged: true, minutes: { remove: 0.5, restore: 0.5 }, price: 160 },
  );
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V12", "V12", 12, 0.1, diodes.get("V12") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  board.rail("V33", "V33", 3.3, 0.03, three);
  places(board);
  return board.file();
}

function logic(board: Composer): void {
  const out = ["MAIN", "VALVE", "STEP_A", "STEP_B", "STEP_C", "STEP_D"];
  const pins: Record<string, string> = {};
  for (const signal of ["up", "vp", "wp", "un", "vn", "wn"]) pins[signal] = `M_${signal}`;
  for (const name of out) pins[name.toLowerCase()] = `D_${name}`;
  Object.assign(pins, {
    pfc: "PFC_PWM",
    ipfc: "PFC_IS",
    vbus: "BUS_SENSE",
    fo: "FO",
    tout: "T_OUT",
    tcoil: "T_COIL",
    tdis: "T_DIS",
    fan: "FAN_PWM",
    tach: "FAN_TACH",
    tx: "TX",
    rx: "RX",
    led: "LED_D",
    nrst: "NRST",
  });
  controller(board, "V33", 3.3, pins, 5);
  board.part(
    "U",
    "ic",
    { vcc: "V5", gnd: "NBUS", scl: "EE_SCL", sda: "EE_SDA" },
    { volts: 5 },
    { role: "memory", price: 0.4 },
  );
  board.ceramic("V5", "NBUS");
  board.resistor("V5", "EE_SCL", 4_700);
  board.resistor("V5", "EE_SDA", 4_700);
}

function places(board: Composer): void {
  board.point("TP_L", "L_IN", "left screw of the mains terminal");
  board.point("TP_N", "N_IN", "right screw of the mains terminal");
  board.point("TP_BP", "BR_P", "plus leg of the bridge, the chamfered corner");
  board.point("TP_BN", "BR_N", "minus leg of the bridge");
  board.point("TP_SW", "SW", "reactor spade on the boost diode's side");
  board.point("TP_P", "PBUS", "plus pin of any of the three large capacitors");
  board.point("TP_0", "NBUS", "minus pin of any of the three large capacitors");
  board.point("TP_U", "U", "compressor terminal U");
  board.point("TP_V", "V", "compressor terminal V");
  board.point("TP_W", "W", "compressor terminal W");
  board.point("TP_15", "V15", "plus pin of the capacitor beside the module's control pins");
  board.point("TP_12", "V12", "plus pin of the largest capacitor beside the small transformer");
  board.point("TP_5", "V5", "output leg of the first regulator");
  board.point("TP_33", "V33", "any small ceramic beside the largest chip");
}
