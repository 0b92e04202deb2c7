/**
 * An outdoor unit with two inverters on one bus, for evaluation only: compressor on a module, fan on six discrete switches,
 * three interleaved boosts, six rails. Composed of the shipped stages; what is repeated has nets of its own.
 */
import { Composer } from "../../src/compose/composer.ts";
import { boost } from "../../src/compose/stages/boost.ts";
import { bus } from "../../src/compose/stages/bus.ts";
import {
  controller,
  currentSense,
  relayTransistor,
  statusLight,
  thermistor,
} from "../../src/compose/stages/controller.ts";
import { inrush, mainsFilter, rectifier } from "../../src/compose/stages/mains.ts";
import { moduleInverter } from "../../src/compose/stages/module-inverter.ts";
import { offlineSupply, regulator } from "../../src/compose/stages/offline-supply.ts";
import { currentLoop, relayArray, valves } from "../../src/compose/stages/outdoor-loads.ts";
import { axis } from "./axis.ts";
import { Section } from "./section.ts";

const SENSORS = ["OUT", "COIL", "DIS", "SUC", "LIQ", "SINK", "SUMP", "ROOM"] as const;
const HEATERS = ["CRANK", "PAN"] as const;
const BOOSTS = ["X", "Y", "Z"] as const;
const SECOND_VALVE = ["E", "F", "G", "H"] as const;

export function dualInverter(): Record<string, unknown> {
  const board = new Composer({
    name: "outdoor unit with two inverters, 3.5 kW",
    family: "outdoor-inverter",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 25);
  inrush(board, "V12", "O_MAIN", 12);
  rectifier(board, "BR_P", "BR_N", 35);
  for (const name of BOOSTS)
    boost(
      new Section(board, name, {
        BR_P: "BR_P",
        BR_N: "BR_N",
        PBUS: "PBUS",
        NBUS: "NBUS",
        V15: "V15",
        PFC_IS: "PFC_IS",
      }),
      "V15",
      "PFC_HOLD",
    );
  bus(board, 4, 470e-6, "BUS_SENSE");
  moduleInverter(board, "V15", "V5", { amps: 30, price: 34 });
  currentSense(board, "V5", "N_U", "I_U");
  currentSense(board, "V5", "N_V", "I_V");
  axis(board, "FAN", "V15", { ohms: 12, price: 85 });
  const diodes = offlineSupply(board, [
    { rail: "V12", volts: 12, diode: "schottky", farads: 1000e-6 },
    { rail: "V15", volts: 15, diode: "fast", farads: 470e-6 },
  ]);
  const five = regulator(board, "V12", "V5", 5);
  const three = regulator(board, "V5", "V33", 3.3);
  logic(board);
  loads(board);
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V12", "V12", 12, 0.1, diodes.get("V12") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  board.rail("V33", "V33", 3.3, 0.03, three);
  places(board);
  return board.file();
}

function logic(board: Composer): void {
  const pins: Record<string, string> = {};
  for (const signal of ["up", "vp", "wp", "un", "vn", "wn"]) pins[signal] = `M_${signal}`;
  for (const name of SENSORS) pins[`t${name.toLowerCase()}`] = `T_${name}`;
  for (const name of ["MAIN", "VALVE", "STEP_A", "STEP_B", "STEP_C", "STEP_D"])
    pins[name.toLowerCase()] = `D_${name}`;
  for (const coil of SECOND_VALVE) pins[`step_${coil.toLowerCase()}`] = `D_STEP_${coil}`;
  for (const name of HEATERS) pins[name.toLowerCase()] = `D_${name}`;
  for (const name of BOOSTS) pins[`hold${name.toLowerCase()}`] = `${name}_PFC_HOLD`;
  Object.assign(pins, {
    ipfc: "PFC_IS",
    vbus: "BUS_SENSE",
    iu: "I_U",
    iv: "I_V",
    fo: "FO",
    tx: "TX",
    rx: "RX",
    led: "LED_D",
    nrst: "NRST",
  });
  controller(board, "V33", 3.3, pins, 6);
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
  statusLight(board, "LED_D");
}

function loads(board: Composer): void {
  relayArray(board, "V12", [
    ["D_MAIN", "O_MAIN"],
    ["D_VALVE", "O_VALVE"],
    ["D_STEP_A", "O_STEP_A"],
    ["D_STEP_B", "O_STEP_B"],
    ["D_STEP_C", "O_STEP_C"],
    ["D_STEP_D", "O_STEP_D"],
  ]);
  valves(board, "V12");
  secondValve(board);
  for (const name of HEATERS) heater(board, name);
  currentLoop(board, "V5", "TX", "RX");
  for (const name of SENSORS) thermistor(board, "V33", `T_${name}`, name);
  board.stage("output");
  board.part("MOT", "motor", { u: "U", v: "V", w: "W" }, { ohms: 0.8 }, { plugged: true, price: 210 });
}

/** The stepper of a second expansion valve with an array of its own (46 ohm a phase as the first). */
function secondValve(board: Composer): void {
  relayArray(
    board,
    "V12",
    SECOND_VALVE.map((coil) => [`D_STEP_${coil}`, `O_STEP_${coil}`] as const),
  );
  for (const coil of SECOND_VALVE)
    board.resistor(
      "V12",
      `O_STEP_${coil}`,
      46,
      { tolerance: 0.07 },
      { plugged: true, role: "valve stepper coil", price: 3 },
    );
}

/** A heater switched by a relay with its transistor (coil and heater ohms from memory). */
function heater(board: Composer, name: string): void {
  relayTransistor(board, `D_${name}`, `K_${name}`);
  board.part(
    "K",
    "relay",
    { coil1: "V12", coil2: `K_${name}`, com: "L_F", no: `H_${name}` },
    { coilOhms: 400, coilVolts: 12, amps: 5 },
    { price: 1.2 },
  );
  board.diode(`K_${name}`, "V12", "signal", 100, 0.2);
  board.part(
    "R",
    "resistor",
    { "1": `H_${name}`, "2": "N_IN" },
    { ohms: 880, watts: 60, tolerance: 0.1 },
    { plugged: true, price: 14, role: "heater on its plug" },
  );
}

function places(board: Composer): void {
  board.point("TP_L", "L_IN", "left screw of the mains terminal", [0.04, 0.1]);
  board.point("TP_N", "N_IN", "right screw of the mains terminal", [0.04, 0.2]);
  board.point("TP_BP", "BR_P", "plus leg of the bridge, the chamfered corner", [0.25, 0.15]);
  board.point("TP_BN", "BR_N", "minus leg of the bridge", [0.25, 0.3]);
  board.point("TP_P", "PBUS", "plus pin of any of the four large capacitors", [0.5, 0.2]);
  board.point("TP_0", "NBUS", "minus pin of any of the four large capacitors", [0.5, 0.35]);
  board.point("TP_U", "U", "compressor terminal U", [0.95, 0.2]);
  board.point("TP_V", "V", "compressor terminal V", [0.95, 0.3]);
  board.point("TP_W", "W", "compressor terminal W", [0.95, 0.4]);
  board.point("TP_15", "V15", "plus pin of the capacitor beside the module's control pins", [0.75, 0.5]);
  board.point("TP_12", "V12", "plus pin of the largest capacitor beside the small transformer", [0.3, 0.8]);
  board.point("TP_5", "V5", "output leg of the first regulator", [0.45, 0.8]);
  board.point("TP_33", "V33", "any small ceramic beside the largest chip", [0.65, 0.8]);
}
