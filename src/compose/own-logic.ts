/** The controller with the signals of the stages that are there, sensors, relays, motor. */
import type { Composer } from "./composer.ts";
import type { OwnBoard } from "./own-board.ts";
import { controller, currentSense, driveSignal, statusLight, thermistor } from "./stages/controller.ts";
import { PHASES } from "./stages/discrete-inverter.ts";
import { loadRelays } from "./stages/load-relays.ts";
import { SIGNALS } from "./stages/module-inverter.ts";

/** One pair of a small motor's terminals. From memory: 1 to 10 ohm between 2 and 0.5 kW. */
const MOTOR_OHMS = 3;
/** Ceramics beside a controller. Common practice: one a supply pin. */
const CERAMICS = 3;

/** Adds controller, sensors, relays and motor, wired to the stages that are there already. */
export function addLogic(board: Composer, own: OwnBoard): void {
  const pins: Record<string, string> = { ...addDriveSignals(board, own), vbus: "BUS_SENSE", nrst: "NRST" };
  if (own.boosted) Object.assign(pins, { pfc: "PFC_PWM", ipfc: "PFC_IS" });
  if (own.inrushRelay) pins.inrush = "INRUSH";
  if (own.answer("brake") === "yes") pins.brake = "BRAKE_PWM";
  addSensing(board, own, pins);
  addRelays(board, own, pins);
  addController(board, own, pins);
  addMotor(board);
}

function addDriveSignals(board: Composer, own: OwnBoard): Record<string, string> {
  const pins: Record<string, string> = {};
  if (!own.discrete) {
    for (const signal of SIGNALS) pins[signal] = `M_${signal}`;
    pins.fo = "FO";
    return pins;
  }
  board.doubting(own.doubtOf("gates", "switches"), () => {
    for (const phase of PHASES)
      for (const [side, driver] of [
        ["H", "HI"],
        ["L", "LI"],
      ] as const) {
        pins[`${side}${phase}`.toLowerCase()] = `M${side}_${phase}`;
        driveSignal(board, `M${side}_${phase}`, `${driver}_${phase}`);
      }
  });
  return pins;
}

function addSensing(board: Composer, own: OwnBoard, pins: Record<string, string>): void {
  const logic = own.logicRail.name;
  if (own.answer("sensing") === "bus-current") {
    board.doubting(own.doubtOf("sensing"), () => currentSense(board, logic, own.shuntNet, "I_SENSE"));
    pins.isense = "I_SENSE";
  }
  board.doubting(own.doubtOf("thermistors"), () => {
    for (let n = 1; n <= own.number("thermistors"); n++) {
      thermistor(board, logic, `T_${n}`, `${n}`);
      pins[`temp${n}`] = `T_${n}`;
    }
  });
}

function addRelays(board: Composer, own: OwnBoard, pins: Record<string, string>): void {
  const count = own.number("relays");
  if (count === 0) return;
  const { name, volts } = own.coilRail;
  board.doubting(own.doubtOf("relays", "relayDrive"), () => {
    const signals = loadRelays(board, {
      count,
      drivenBy: own.answer("relayDrive") === "array" ? "array" : "transistors",
      rail: name,
      volts,
      live: own.threePhase ? "L1_F" : "L_F",
      back: own.threePhase ? "L2_F" : "N_IN",
    });
    signals.forEach((signal, i) => {
      pins[`relay${i + 1}`] = signal;
    });
  });
}

function addController(board: Composer, own: OwnBoard, pins: Readonly<Record<string, string>>): void {
  const { name, volts } = own.logicRail;
  board.doubting(own.doubtOf("controller"), () => {
    if (own.answer("controller") !== "plug") {
      controller(board, name, volts, { ...pins, led: "LED_D" }, CERAMICS);
      statusLight(board, "LED_D");
      return;
    }
    const { nrst: _, ...signals } = pins;
    board.stage("logic");
    board.part(
      "U",
      "controller",
      { vdd: name, gnd: "NBUS", ...signals },
      { volts, amps: 0.05 },
      { obtainable: false, plugged: true, role: "controller on its own board" },
    );
    board.ceramic(name, "NBUS");
  });
}

function addMotor(board: Composer): void {
  board.stage("output");
  const off = { plugged: true, minutes: { remove: 0.5, restore: 0.5 } };
  board.part("MOT", "motor", { u: "U", v: "V", w: "W" }, { ohms: MOTOR_OHMS }, off);
}
