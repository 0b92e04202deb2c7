/**
 * A servo drive for three phases of 400 V, for evaluation only: charge resistor, discrete switches, brake chopper, six rails
 * (gate drive, 24 V of the terminals, 12 V and 5 V of the encoder, 5 V and 3.3 V of the logic). Stages as shipped; encoder input and
 * holding brake output from memory.
 */
import { Composer } from "../../src/compose/composer.ts";
import { seriesBus } from "../../src/compose/stages/bus.ts";
import { brakeChopper } from "../../src/compose/stages/chopper.ts";
import { barrier, potentiometerRail, switchedInput } from "../../src/compose/stages/control-terminals.ts";
import {
  controller,
  currentSense,
  driveSignal,
  relayTransistor,
  statusLight,
  thermistor,
} from "../../src/compose/stages/controller.ts";
import { discreteInverter, PHASES } from "../../src/compose/stages/discrete-inverter.ts";
import { chargeCircuit, rectifier, THREE_LINES, threePhaseFilter } from "../../src/compose/stages/mains.ts";
import { offlineSupply, regulator } from "../../src/compose/stages/offline-supply.ts";

const INPUTS = ["ENABLE", "LIMIT_P", "LIMIT_N", "HOME"] as const;
const TRACKS = ["A", "B", "Z"] as const;

export function servoDrive(): Record<string, unknown> {
  const board = new Composer({
    name: "servo drive, 3 kW, three-phase mains",
    family: "servo-drive",
    supply: { kind: "ac", volts: 400, hz: 50, at: THREE_LINES.map(({ terminal }) => terminal) },
    zero: "NBUS",
  });
  threePhaseFilter(board, "PE", 16);
  const lines = THREE_LINES.map(({ bridge }) => bridge);
  rectifier(board, "BR_P", "NBUS", 35, lines, 1600);
  seriesBus(board, 680e-6, "BUS_SENSE");
  chargeCircuit(board, "V15", "K_CHARGE", 1000);
  relayTransistor(board, "CHARGE", "K_CHARGE");
  discreteInverter(board, "V15");
  brakeChopper(board, "V15", "BRAKE_PWM", 1200, 68);
  const diodes = offlineSupply(
    board,
    [
      { rail: "V15", volts: 15, diode: "fast", farads: 470e-6 },
      { rail: "V24", volts: 24, diode: "fast", farads: 220e-6, against: "CCOM" },
      { rail: "V12", volts: 12, diode: "schottky", farads: 220e-6 },
    ],
    { from: "565 V" },
  );
  const five = regulator(board, "V15", "V5", 5);
  const three = regulator(board, "V5", "V33", 3.3);
  const encoder = regulator(board, "V12", "V5E", 5);
  logic(board);
  terminals(board);
  encoderInput(board);
  PHASES.forEach((phase, i) => {
    currentSense(board, "V33", `E_${phase}`, `I_${PHASES[i]}`);
  });
  thermistor(board, "V33", "T_SINK", "SINK");
  thermistor(board, "V33", "T_MOT", "MOT");
  statusLight(board, "LED_D");
  holdingBrake(board);
  board.stage("output");
  board.part("MOT", "motor", { u: "U", v: "V", w: "W" }, { ohms: 2.1 }, { plugged: true, price: 380 });
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V24", "V24", 24, 0.1, diodes.get("V24") ?? "", "CCOM");
  board.rail("V12", "V12", 12, 0.1, diodes.get("V12") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  board.rail("V33", "V33", 3.3, 0.03, three);
  board.rail("V5E", "V5E", 5, 0.05, encoder);
  places(board);
  return board.file();
}

function logic(board: Composer): void {
  const pins: Record<string, string> = {};
  for (const phase of PHASES) {
    pins[`h${phase.toLowerCase()}`] = `MH_${phase}`;
    pins[`l${phase.toLowerCase()}`] = `ML_${phase}`;
    pins[`i${phase.toLowerCase()}`] = `I_${phase}`;
    driveSignal(board, `MH_${phase}`, `HI_${phase}`);
    driveSignal(board, `ML_${phase}`, `LI_${phase}`);
  }
  for (const name of INPUTS) pins[name.toLowerCase()] = `D_${name}`;
  for (const track of TRACKS) pins[`enc${track.toLowerCase()}`] = `E_D_${track}`;
  Object.assign(pins, {
    vbus: "BUS_SENSE",
    charge: "CHARGE",
    brake: "BRAKE_PWM",
    hold: "HOLD",
    tsink: "T_SINK",
    tmot: "T_MOT",
    led: "LED_D",
    nrst: "NRST",
  });
  controller(board, "V33", 3.3, pins, 6);
  board.part(
    "U",
    "ic",
    { vcc: "V33", gnd: "NBUS", scl: "EE_SCL", sda: "EE_SDA" },
    { volts: 3.3 },
    { role: "memory", price: 0.4 },
  );
  board.ceramic("V33", "NBUS");
  board.resistor("V33", "EE_SCL", 4_700);
  board.resistor("V33", "EE_SDA", 4_700);
}

/** Everything a customer's wires reach, on the 0 V of the control terminals. */
function terminals(board: Composer): void {
  for (const name of INPUTS) switchedInput(board, name, "CCOM", "V33", `D_${name}`);
  const ten = potentiometerRail(board, "V24", "V10", "CCOM");
  board.resistor("V10", "CCOM", 10_000, {}, { role: "potentiometer on its terminals", plugged: true });
  barrier(board, "CCOM");
  board.rail("V10", "V10", 10, 0.05, ten, "CCOM");
  board.net("CCOM", "0 V of the control terminals");
  board.net("V24", "24 V of the control terminals");
}

/** Three differential tracks through a line receiver on the encoder's 5 V: 120 ohm between the wires, 1 kohm each way. */
function encoderInput(board: Composer): void {
  board.stage("sensor");
  const receiver: Record<string, string> = { vcc: "V5E", gnd: "NBUS" };
  for (const track of TRACKS) {
    receiver[`${track.toLowerCase()}p`] = `E_${track}P_IN`;
    receiver[`${track.toLowerCase()}n`] = `E_${track}N_IN`;
    receiver[`y${track.toLowerCase()}`] = `E_Y_${track}`;
    board.resistor(`E_${track}P`, `E_${track}N`, 120);
    board.resistor(`E_${track}P`, `E_${track}P_IN`, 1_000);
    board.resistor(`E_${track}N`, `E_${track}N_IN`, 1_000);
    board.ceramic(`E_${track}P_IN`, `E_${track}N_IN`, 100e-12);
    board.resistor(`E_Y_${track}`, `E_D_${track}`, 1_000);
    board.resistor(`E_D_${track}`, "NBUS", 2_200);
    board.net(`E_${track}P`, `encoder wire ${track}+`);
    board.net(`E_${track}N`, `encoder wire ${track}-`);
  }
  board.part("U", "ic", receiver, { volts: 5 }, { price: 1.1, role: "line receiver" });
  board.ceramic("V5E", "NBUS");
  board.zener("NBUS", "V5E", 5.6);
}

/** The motor's holding brake on the 24 V of the terminals, switched through an optocoupler and a small MOSFET. */
function holdingBrake(board: Composer): void {
  board.stage("output");
  board.resistor("HOLD", "HOLD_A", 470);
  board.part("OC", "opto", { a: "HOLD_A", k: "NBUS", c: "V24", e: "HOLD_G" }, {}, { price: 0.3 });
  board.resistor("HOLD_G", "CCOM", 10_000);
  board.zener("CCOM", "HOLD_G", 15);
  board.part(
    "Q",
    "mosfet",
    { g: "HOLD_G", d: "HOLD_L", s: "CCOM" },
    { channel: "n", volts: 60, amps: 5 },
    { price: 0.7, role: "holding brake switch" },
  );
  board.diode("HOLD_L", "V24", "fast", 200, 3);
  board.resistor("V24", "HOLD_L", 38, {}, { plugged: true, price: 60, role: "holding brake coil" });
  board.net("HOLD_L", "low end of the holding brake");
}

function places(board: Composer): void {
  THREE_LINES.forEach(({ terminal }, i) => {
    board.point(`TP_L${i + 1}`, terminal, `screw L${i + 1} of the power terminals`, [0.05, 0.1 + 0.08 * i]);
  });
  board.point("TP_BP", "BR_P", "leg of the cement resistor that is nearer the bridge", [0.25, 0.2]);
  board.point("TP_P", "PBUS", "plus pin of the large capacitor nearer the bridge", [0.42, 0.2]);
  board.point("TP_0", "NBUS", "minus pin of the large capacitor farther from the bridge", [0.42, 0.35]);
  board.point("TP_BR", "BRAKE", "screw of the brake terminal", [0.95, 0.1]);
  board.point("TP_U", "U", "motor terminal U", [0.95, 0.2]);
  board.point("TP_V", "V", "motor terminal V", [0.95, 0.3]);
  board.point("TP_W", "W", "motor terminal W", [0.95, 0.4]);
  board.point("TP_15", "V15", "plus pin of the capacitor beside the small transformer", [0.3, 0.7]);
  board.point("TP_5", "V5", "output leg of the first regulator", [0.5, 0.8]);
  board.point("TP_33", "V33", "any small ceramic beside the largest chip", [0.65, 0.8]);
  board.point("TP_24", "V24", "screw 24 V of the control terminals", [0.2, 0.95]);
  board.point("TP_C", "CCOM", "screw COM of the control terminals", [0.3, 0.95]);
}
