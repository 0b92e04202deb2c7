/**
 * A small frequency drive for any three-phase motor, for one phase of 230 V or three of 400 V: charge resistor with its relay
 * behind the bridge, module, brake chopper, isolated control terminals. Boards of our own, composed of stages with the trade's
 * usual values; prices are invented demo data in the usual proportions.
 */
import { Composer } from "../compose/composer.ts";
import { bus, seriesBus } from "../compose/stages/bus.ts";
import { brakeChopper } from "../compose/stages/chopper.ts";
import {
  barrier,
  contactTerminal,
  potentiometerRail,
  speedTerminal,
  switchedInput,
} from "../compose/stages/control-terminals.ts";
import {
  controller,
  currentSense,
  relayTransistor,
  statusLight,
  thermistor,
} from "../compose/stages/controller.ts";
import {
  chargeCircuit,
  mainsFilter,
  rectifier,
  THREE_LINES,
  threePhaseFilter,
} from "../compose/stages/mains.ts";
import { moduleInverter } from "../compose/stages/module-inverter.ts";
import { offlineSupply, regulator, type SupplyBus } from "../compose/stages/offline-supply.ts";

const INPUTS = ["RUN", "REV"] as const;

/** What differs between the two boards beside their mains filter and bus capacitors. */
interface Size {
  /** rating of the switches, volts */
  readonly volts: number;
  readonly amps: number;
  readonly modulePrice: number;
  readonly filmVolts: number;
  readonly brakeOhms: number;
  readonly motorOhms: number;
  readonly supplyBus: SupplyBus;
}

const ONE_PHASE: Size = {
  volts: 600,
  amps: 15,
  modulePrice: 22,
  filmVolts: 630,
  brakeOhms: 100,
  motorOhms: 5.2,
  supplyBus: "325 V",
};
const THREE_PHASE: Size = {
  volts: 1200,
  amps: 10,
  modulePrice: 38,
  filmVolts: 1000,
  brakeOhms: 200,
  motorOhms: 9.5,
  supplyBus: "565 V",
};

/** 230 V single-phase mains in, 1.1 kW out. */
export function smallFrequencyDrive(): Record<string, unknown> {
  const board = new Composer({
    name: "small frequency drive, 1.1 kW, single-phase mains",
    family: "frequency-drive",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 16);
  rectifier(board, "BR_P", "NBUS", 25, ["L_C", "N_C"]);
  bus(board, 2, 470e-6, "BUS_SENSE");
  behindTheBus(board, ONE_PHASE);
  board.point("TP_L", "L_IN", "screw L of the power terminals");
  board.point("TP_N", "N_IN", "screw N of the power terminals");
  board.point("TP_P", "PBUS", "plus pin of either large capacitor");
  board.point("TP_0", "NBUS", "minus pin of either large capacitor");
  return board.file();
}

/** 400 V three-phase mains in, 2.2 kW out. */
export function smallFrequencyDriveThreePhase(): Record<string, unknown> {
  const board = new Composer({
    name: "small frequency drive, 2.2 kW, three-phase mains",
    family: "frequency-drive",
    supply: { kind: "ac", volts: 400, hz: 50, at: THREE_LINES.map(({ terminal }) => terminal) },
    zero: "NBUS",
  });
  threePhaseFilter(board, "PE", 12);
  rectifier(
    board,
    "BR_P",
    "NBUS",
    25,
    THREE_LINES.map(({ bridge }) => bridge),
    1600,
  );
  seriesBus(board, 470e-6, "BUS_SENSE");
  behindTheBus(board, THREE_PHASE);
  THREE_LINES.forEach(({ terminal }, i) => {
    board.point(`TP_L${i + 1}`, terminal, `screw L${i + 1} of the power terminals`);
  });
  board.point("TP_P", "PBUS", "plus pin of the large capacitor nearer the bridge");
  board.point("TP_M", "BUS_M", "where the two large capacitors meet");
  board.point("TP_0", "NBUS", "minus pin of the large capacitor farther from the bridge");
  return board.file();
}

function behindTheBus(board: Composer, size: Size): void {
  const { volts, amps, filmVolts } = size;
  chargeCircuit(board, "V15", "K_CHARGE", filmVolts);
  relayTransistor(board, "CHARGE", "K_CHARGE");
  moduleInverter(board, "V15", "V5", { volts, amps, price: size.modulePrice, snubberVolts: filmVolts });
  brakeChopper(board, "V15", "BRAKE_PWM", volts, size.brakeOhms);
  const diodes = offlineSupply(
    board,
    [
      { rail: "V15", volts: 15, diode: "fast", farads: 470e-6 },
      { rail: "V24", volts: 24, diode: "fast", farads: 220e-6, against: "CCOM" },
    ],
    { from: size.supplyBus },
  );
  const five = regulator(board, "V15", "V5", 5);
  logic(board);
  const ten = terminals(board);
  currentSense(board, "V5", "N_U", "I_SENSE");
  thermistor(board, "V5", "T_SINK", "SINK");
  statusLight(board, "LED_D");
  board.stage("output");
  board.part(
    "FAN",
    "ic",
    { vcc: "V15", gnd: "NBUS" },
    { volts: 15 },
    { plugged: true, role: "heatsink fan", price: 6 },
  );
  board.part(
    "MOT",
    "motor",
    { u: "U", v: "V", w: "W" },
    { ohms: size.motorOhms },
    { plugged: true, minutes: { remove: 0.5, restore: 0.5 }, price: 120 },
  );
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V5", "V5", 5, 0.05, five);
  board.rail("V24", "V24", 24, 0.1, diodes.get("V24") ?? "", "CCOM");
  board.rail("V10", "V10", 10, 0.05, ten, "CCOM");
  places(board);
}

function logic(board: Composer): void {
  const pins: Record<string, string> = {};
  for (const signal of ["up", "vp", "wp", "un", "vn", "wn"]) pins[signal] = `M_${signal}`;
  for (const name of INPUTS) pins[name.toLowerCase()] = `D_${name}`;
  Object.assign(pins, {
    vbus: "BUS_SENSE",
    isense: "I_SENSE",
    fo: "FO",
    temp: "T_SINK",
    speed: "SPEED",
    charge: "CHARGE",
    brake: "BRAKE_PWM",
    ready: "READY",
    led: "LED_D",
    nrst: "NRST",
  });
  controller(board, "V5", 5, pins, 2);
}

/** Everything a customer's wires reach, on the 0 V of the control terminals. Returns what feeds the 10 V. */
function terminals(board: Composer): string {
  for (const name of INPUTS) switchedInput(board, name, "CCOM", "V5", `D_${name}`);
  const ten = potentiometerRail(board, "V24", "V10", "CCOM");
  speedTerminal(board, "V10", "CCOM", "V5", "SPEED");
  contactTerminal(board, "V15", "K_READY", "V24", "CCOM");
  barrier(board, "CCOM");
  relayTransistor(board, "READY", "K_READY");
  board.net("CCOM", "0 V of the control terminals");
  board.net("V24", "24 V of the control terminals");
  return ten;
}

function places(board: Composer): void {
  board.point("TP_BP", "BR_P", "leg of the cement resistor that is nearer the bridge");
  board.point("TP_BR", "BRAKE", "screw of the brake terminal");
  board.point("TP_U", "U", "motor terminal U");
  board.point("TP_V", "V", "motor terminal V");
  board.point("TP_W", "W", "motor terminal W");
  board.point("TP_15", "V15", "plus pin of the capacitor beside the module's control pins");
  board.point("TP_5", "V5", "any small ceramic beside the largest chip");
  board.point("TP_24", "V24", "screw 24 V of the control terminals");
  board.point("TP_10", "V10", "screw 10 V of the control terminals");
  board.point("TP_C", "CCOM", "screw COM of the control terminals");
  board.point("TP_D", "DRAIN", "drain leg of the chip beside the small transformer");
}
