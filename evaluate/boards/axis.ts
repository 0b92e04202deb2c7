/**
 * One axis of a drive with several on one bus: six discrete switches, 15 V behind a filter resistor, 5 V and a controller of
 * its own; all axes share the bus minus as their 0 V. Values as in the stages; the filter of 1 ohm and 100 uF from memory.
 */
import type { Composer } from "../../src/compose/composer.ts";
import {
  controller,
  currentSense,
  driveSignal,
  statusLight,
  thermistor,
} from "../../src/compose/stages/controller.ts";
import { discreteInverter, PHASES } from "../../src/compose/stages/discrete-inverter.ts";
import { regulator } from "../../src/compose/stages/offline-supply.ts";
import { Section } from "./section.ts";

/** What the six switches of an axis drive, on its plug. */
export interface AxisLoad {
  readonly ohms: number;
  readonly price: number;
}

/** Adds the axis `name` between PBUS and NBUS, fed from the rail `drive`. */
export function axis(board: Composer, name: string, drive: string, load: AxisLoad): void {
  const own = new Section(board, name, { PBUS: "PBUS", NBUS: "NBUS", FEED: drive });
  own.stage("supply");
  const filter = own.resistor("FEED", "V15", 1, { watts: 1 }, { role: "filter resistor" });
  own.capacitor("V15", "NBUS", 100e-6, 25, "electrolytic", { price: 0.2 });
  discreteInverter(own, "V15");
  const five = regulator(own, "V15", "V5", 5);
  const signals = Object.fromEntries(
    PHASES.flatMap((phase) => [
      [`h${phase.toLowerCase()}`, `MH_${phase}`],
      [`l${phase.toLowerCase()}`, `ML_${phase}`],
    ]),
  );
  controller(own, "V5", 5, { ...signals, isense: "I_SENSE", temp: "T_SINK", led: "LED_D", nrst: "NRST" }, 2);
  for (const phase of PHASES) {
    driveSignal(own, `MH_${phase}`, `HI_${phase}`);
    driveSignal(own, `ML_${phase}`, `LI_${phase}`);
  }
  currentSense(own, "V5", "E_U", "I_SENSE");
  thermistor(own, "V5", "T_SINK", "SINK");
  statusLight(own, "LED_D");
  own.stage("output");
  own.part(
    "MOT",
    "motor",
    { u: "U", v: "V", w: "W" },
    { ohms: load.ohms },
    { plugged: true, price: load.price },
  );
  own.rail("V15", "V15", 15, 0.1, filter);
  own.rail("V5", "V5", 5, 0.05, five);
  own.point("TP_U", "U", "first screw of the motor terminals", [0.9, 0.2]);
  own.point("TP_V", "V", "second screw of the motor terminals", [0.9, 0.3]);
  own.point("TP_W", "W", "third screw of the motor terminals", [0.9, 0.4]);
}
