/** From the mains terminals to the motor: filter, inrush, bridge, boost, bus, switches, brake. */
import type { Composer } from "./composer.ts";
import type { OwnBoard } from "./own-board.ts";
import { boost } from "./stages/boost.ts";
import { bus, seriesBus } from "./stages/bus.ts";
import { brakeChopper } from "./stages/chopper.ts";
import { relayTransistor } from "./stages/controller.ts";
import { discreteInverter } from "./stages/discrete-inverter.ts";
import {
  chargeCircuit,
  fuseAlone,
  inrush,
  mainsFilter,
  ntcInrush,
  plainFilter,
  rectifier,
  THREE_LINES,
  threePhaseFilter,
} from "./stages/mains.ts";
import { moduleInverter } from "./stages/module-inverter.ts";

/** Common practice: a bridge is rated two to three times the fuse. */
const BRIDGE_AMPS = 25;
const BRIDGE_VOLTS = { low: 800, high: 1600 } as const;
const INRUSH_LOW = "K_LOW";
/** A brake resistor on its terminals. From memory: 100 ohm at 325 V, 200 ohm at 565 V. */
const BRAKE_OHMS = { low: 100, high: 200 } as const;

/** Adds everything between the mains terminals and the motor, in the order of the current. */
export function addPowerPath(board: Composer, own: OwnBoard): void {
  const lines = addMains(board, own);
  addInrushAndBridge(board, own, lines);
  if (own.boosted) board.doubting(own.doubtOf("boost"), () => boost(board, own.driveRail, "PFC_PWM"));
  addBus(board, own);
  const ratings = { volts: own.switchVolts, snubberVolts: own.filmVolts };
  board.doubting(own.doubtOfSwitches, () => {
    if (own.discrete) discreteInverter(board, own.driveRail, own.switchVolts);
    else moduleInverter(board, own.driveRail, own.logicRail.name, ratings);
  });
  if (own.answer("brake") === "yes")
    board.doubting(own.doubtOf("brake"), () => {
      const ohms = own.highBus ? BRAKE_OHMS.high : BRAKE_OHMS.low;
      brakeChopper(board, own.driveRail, "BRAKE_PWM", own.switchVolts, ohms);
    });
}

/** The filter; returns the lines behind it. */
function addMains(board: Composer, own: OwnBoard): readonly string[] {
  const amps = own.said("fuseAmps");
  if (own.threePhase) {
    board.doubting(own.doubtOf("supply"), () => threePhaseFilter(board, "PE", amps));
    return THREE_LINES.map(({ bridge }) => bridge);
  }
  const nets = { line: "L_IN", neutral: "N_IN", earth: "PE" };
  const filter = own.answer("filter");
  board.doubting(own.doubtOf("filter"), () => {
    if (filter === "full") mainsFilter(board, nets, amps);
    else if (filter === "plain") plainFilter(board, nets, amps);
    else fuseAlone(board, nets, amps);
  });
  return filter === "full" ? ["L_C", "N_C"] : ["L_F", "N_IN"];
}

function addInrushAndBridge(board: Composer, own: OwnBoard, [line, ...others]: readonly string[]): void {
  const how = own.answer("inrush");
  const coil = own.coilRail;
  const doubt = own.doubtOf("inrush");
  const inLine = how === "ntc" || how === "ptc-relay";
  board.doubting(doubt, () => {
    if (how === "ntc") ntcInrush(board, line);
    if (how === "ptc-relay") inrush(board, coil.name, INRUSH_LOW, coil.volts, line);
  });
  const plus = own.boosted || how === "resistor-relay" ? "BR_P" : "PBUS";
  const bridgeVolts = own.threePhase && own.highBus ? BRIDGE_VOLTS.high : BRIDGE_VOLTS.low;
  board.doubting(own.doubtOf("supply"), () =>
    rectifier(
      board,
      plus,
      own.boosted ? "BR_N" : "NBUS",
      BRIDGE_AMPS,
      [inLine ? "L_B" : line, ...others],
      bridgeVolts,
    ),
  );
  board.doubting(doubt, () => {
    if (how === "resistor-relay") chargeCircuit(board, coil.name, INRUSH_LOW, own.filmVolts, coil.volts);
    if (own.inrushRelay) relayTransistor(board, "INRUSH", INRUSH_LOW);
  });
}

function addBus(board: Composer, own: OwnBoard): void {
  const farads = Number(`${own.answer("busMicrofarads")}e-6`);
  const count = own.number("busCount");
  board.doubting(own.doubtOf("bus", "busCount", "busMicrofarads"), () => {
    if (own.answer("bus") === "series") seriesBus(board, farads, "BUS_SENSE", count);
    else bus(board, count, farads, "BUS_SENSE", own.electrolyticVolts);
  });
}
