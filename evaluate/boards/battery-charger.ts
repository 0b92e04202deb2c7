/**
 * A battery charger with single-switch boost and a full bridge into a transformer, for evaluation only: an isolated output of
 * 48 V behind a rectifier of two diodes. Values: bridge of 600 V switches, gate 22 ohm and 10 kohm, half-bridge drivers with
 * bootstrap, 1 uF in series with the winding (common practice); transformer, output choke and output capacitors from memory.
 */
import { Composer } from "../../src/compose/composer.ts";
import { boost } from "../../src/compose/stages/boost.ts";
import { bus } from "../../src/compose/stages/bus.ts";
import {
  controller,
  currentSense,
  driveSignal,
  relayTransistor,
  statusLight,
  thermistor,
} from "../../src/compose/stages/controller.ts";
import { inrush, mainsFilter, rectifier } from "../../src/compose/stages/mains.ts";
import { offlineSupply, regulator } from "../../src/compose/stages/offline-supply.ts";

const LEGS = ["A", "B"] as const;

export function batteryCharger(): Record<string, unknown> {
  const board = new Composer({
    name: "battery charger, 48 V 30 A",
    family: "charger",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
  });
  mainsFilter(board, { line: "L_IN", neutral: "N_IN", earth: "PE" }, 16);
  inrush(board, "V15", "K_LOW", 12);
  rectifier(board, "BR_P", "BR_N", 25);
  boost(board, "V15", "PFC_HOLD");
  bus(board, 2, 470e-6, "BUS_SENSE");
  for (const leg of LEGS) halfBridge(board, leg);
  output(board);
  const diodes = offlineSupply(board, [
    { rail: "V15", volts: 15, diode: "fast", farads: 470e-6 },
    { rail: "V12S", volts: 12, diode: "schottky", farads: 220e-6, against: "OUT_N" },
  ]);
  const five = regulator(board, "V15", "V5", 5);
  logic(board);
  board.rail("V15", "V15", 15, 0.1, diodes.get("V15") ?? "");
  board.rail("V12S", "V12S", 12, 0.1, diodes.get("V12S") ?? "", "OUT_N");
  board.rail("V5", "V5", 5, 0.05, five);
  places(board);
  return board.file();
}

/** Two switches of one leg with their driver; phase net `P_<leg>`, both lower ends on one shunt. */
function halfBridge(board: Composer, leg: string): void {
  board.stage("inverter");
  const phase = `P_${leg}`;
  const switched = { volts: 650, amps: 30, ohmsOn: 0.08 };
  board.part(
    "Q",
    "mosfet",
    { g: `GH_${leg}`, d: "PBUS", s: phase },
    { channel: "n", ...switched },
    { price: 3.1 },
  );
  board.part(
    "Q",
    "mosfet",
    { g: `GL_${leg}`, d: phase, s: "FB_S" },
    { channel: "n", ...switched },
    { price: 3.1 },
  );
  board.net(phase, `leg ${leg} of the full bridge`);
  board.stage("drive");
  for (const [from, gate, source] of [
    [`DH_${leg}`, `GH_${leg}`, phase],
    [`DL_${leg}`, `GL_${leg}`, "FB_S"],
  ] as const) {
    board.resistor(from, gate, 22);
    board.diode(gate, from, "signal", 100, 0.3);
    board.resistor(gate, source, 10_000);
    board.zener(source, gate, 18);
  }
  board.part(
    "U",
    "ic",
    {
      vcc: "V15",
      gnd: "NBUS",
      hin: `HI_${leg}`,
      lin: `LI_${leg}`,
      vb: `VB_${leg}`,
      ho: `DH_${leg}`,
      vs: phase,
      lo: `DL_${leg}`,
    },
    {
      volts: 15,
      floating: [
        ["vb", "vs"],
        ["ho", "vs"],
      ],
    },
    { price: 1.2, role: "half-bridge driver" },
  );
  board.ceramic("V15", "NBUS");
  board.resistor("V15", `BS_${leg}`, 10);
  board.diode(`BS_${leg}`, `VB_${leg}`, "fast", 600, 1, { price: 0.2 });
  board.ceramic(`VB_${leg}`, phase, 1e-6);
  driveSignal(board, `MH_${leg}`, `HI_${leg}`);
  driveSignal(board, `ML_${leg}`, `LI_${leg}`);
}

/** Transformer, rectifier of two diodes with their snubbers, choke, capacitors, fuse and the terminals of the battery. */
function output(board: Composer): void {
  board.stage("inverter");
  board.resistor("FB_S", "NBUS", 0.01, { watts: 3, tolerance: 0.01 }, { price: 0.3, role: "shunt" });
  board.capacitor("P_A", "TR_1", 1e-6, 400, "film", { price: 0.9 });
  board.stage("output");
  board.part(
    "T",
    "transformer",
    { "1": "TR_1", "2": "P_B", "3": "SEC_A", "4": "OUT_N", "5": "OUT_N", "6": "SEC_B" },
    {
      windings: {
        pri: { pins: ["1", "2"], ohms: 0.12 },
        sec1: { pins: ["3", "4"], ohms: 0.01 },
        sec2: { pins: ["5", "6"], ohms: 0.01 },
      },
    },
    { price: 28 },
  );
  for (const end of ["SEC_A", "SEC_B"]) {
    board.diode(end, "RECT", "fast", 300, 60, { price: 2.4, role: "output rectifier" });
    board.resistor(end, `${end}_S`, 22, { watts: 2 });
    board.capacitor(`${end}_S`, "RECT", 2.2e-9, 1000, "ceramic");
  }
  board.part("L", "inductor", { "1": "RECT", "2": "OUT_F" }, { henries: 2e-5, ohms: 0.004 }, { price: 7 });
  for (let i = 0; i < 3; i++) board.capacitor("OUT_F", "OUT_N", 1000e-6, 100, "electrolytic", { price: 1.4 });
  board.resistor("OUT_F", "OUT_N", 4_700, { watts: 2 });
  board.part("F", "fuse", { "1": "OUT_F", "2": "OUT_P" }, { amps: 40, volts: 80 }, { price: 1.2 });
  board.zener("OUT_N", "OUT_P", 75);
  board.resistor("OUT_P", "V_DIV", 47_000, { tolerance: 0.01 });
  board.resistor("V_DIV", "OUT_N", 3_300, { tolerance: 0.01 });
  board.ceramic("V_DIV", "OUT_N", 10e-9);
  board.part(
    "U",
    "ic",
    { vcc: "V12S", gnd: "OUT_N", in: "V_DIV", out: "FB_LED" },
    { volts: 12 },
    { price: 0.5, role: "error amplifier" },
  );
  board.ceramic("V12S", "OUT_N");
  board.resistor("FB_LED", "FB_A", 1_000);
  board.part("OC", "opto", { a: "FB_A", k: "OUT_N", c: "FB_IN", e: "NBUS" }, {}, { price: 0.3 });
  board.resistor("V5", "FB_IN", 4_700);
  board.ceramic("FB_IN", "NBUS", 1e-9);
  board.ceramic("OUT_N", "PE", 10e-9, 1000);
  board.net("OUT_P", "battery +");
  board.net("OUT_N", "battery -");
  board.net("RECT", "cathodes of the output rectifier");
}

function logic(board: Composer): void {
  const drives = Object.fromEntries(
    LEGS.flatMap((leg) => [
      [`h${leg.toLowerCase()}`, `MH_${leg}`],
      [`l${leg.toLowerCase()}`, `ML_${leg}`],
    ]),
  );
  controller(
    board,
    "V5",
    5,
    {
      ...drives,
      vbus: "BUS_SENSE",
      ibridge: "I_SENSE",
      ipfc: "PFC_IS",
      hold: "PFC_HOLD",
      vout: "FB_IN",
      temp: "T_SINK",
      relay: "RLY",
      led: "LED_D",
      nrst: "NRST",
    },
    3,
  );
  currentSense(board, "V5", "FB_S", "I_SENSE");
  thermistor(board, "V5", "T_SINK", "SINK");
  relayTransistor(board, "RLY", "K_LOW");
  statusLight(board, "LED_D");
}

function places(board: Composer): void {
  board.point("TP_L", "L_IN", "screw L of the mains terminals", [0.04, 0.1]);
  board.point("TP_N", "N_IN", "screw N of the mains terminals", [0.04, 0.2]);
  board.point("TP_P", "PBUS", "plus pin of either large capacitor", [0.4, 0.2]);
  board.point("TP_0", "NBUS", "minus pin of either large capacitor", [0.4, 0.35]);
  board.point("TP_A", "P_A", "tab of the lower switch nearer the bridge", [0.55, 0.3]);
  board.point("TP_B", "P_B", "tab of the lower switch nearer the transformer", [0.62, 0.3]);
  board.point("TP_OP", "OUT_P", "red stud of the output", [0.95, 0.2]);
  board.point("TP_ON", "OUT_N", "black stud of the output", [0.95, 0.4]);
  board.point("TP_15", "V15", "plus pin of the capacitor beside the small transformer", [0.3, 0.8]);
  board.point("TP_5", "V5", "output leg of the three-legged regulator", [0.45, 0.8]);
}
