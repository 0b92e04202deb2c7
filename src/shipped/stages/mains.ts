/**
 * From the mains terminals to the bridge. Values: fuse, varistor, X and Y capacitors, choke, PTC and relay (common
 * practice); 8.2 kohm and 47 nF of the relay's snubber from memory.
 */
import type { Composer } from "../composer.ts";

export interface MainsNets {
  readonly line: string;
  readonly neutral: string;
  readonly earth: string;
}

/** Fuse, varistor, X capacitors with their bleeder, common-mode choke, Y capacitors. */
export function mainsFilter(board: Composer, { line, neutral, earth }: MainsNets, amps: number): void {
  board.stage("input");
  board.part("F", "fuse", { "1": line, "2": "L_F" }, { amps, volts: 250 }, { price: 0.8 });
  board.part("RV", "varistor", { "1": "L_F", "2": neutral }, { volts: 470, joules: 125 }, { price: 0.6 });
  board.part("RV", "varistor", { "1": neutral, "2": "GDT" }, { volts: 680, joules: 80 }, { price: 0.6 });
  board.part("RV", "varistor", { "1": "GDT", "2": earth }, { volts: 680, joules: 80 }, { price: 0.6 });
  board.capacitor("L_F", neutral, 1e-6, 310, "film", { price: 0.7 });
  board.resistor("L_F", "XB", 470_000);
  board.resistor("XB", neutral, 470_000);
  board.part(
    "LF",
    "choke",
    { "1": "L_F", "2": "L_C", "3": neutral, "4": "N_C" },
    { henries: 4e-3, ohms: 0.03 },
    { price: 2.2 },
  );
  board.capacitor("L_C", "N_C", 0.47e-6, 310, "film", { price: 0.5 });
  board.capacitor("L_C", earth, 3.3e-9, 400, "ceramic");
  board.capacitor("N_C", earth, 3.3e-9, 400, "ceramic");
  board.net(line, "mains L at the terminal");
  board.net(neutral, "mains N at the terminal");
  board.net(earth, "protective earth");
  board.net("L_F", "line behind the fuse");
}

/** PTC with the relay contact across it; the coil hangs on 12 or 15 V and is pulled down by a driver. */
export function inrush(board: Composer, coilRail: string, coilLow: string, coilVolts: number): void {
  board.stage("inrush");
  board.part("RT", "ptc", { "1": "L_C", "2": "L_B" }, { ohms: 47 }, { price: 0.9 });
  board.part(
    "K",
    "relay",
    { coil1: coilRail, coil2: coilLow, com: "L_C", no: "L_B" },
    { coilOhms: coilVolts === 12 ? 360 : 560, coilVolts, amps: 20 },
    { price: 2.4 },
  );
  board.diode(coilLow, coilRail, "signal", 100, 0.2);
  board.net("L_B", "line behind the inrush PTC");
}

/** Single-phase bridge with a film capacitor behind it. */
export function rectifier(board: Composer, plus: string, minus: string, amps: number): void {
  board.stage("rectifier");
  board.part("BR", "bridge", { ac1: "L_B", ac2: "N_C", plus, minus }, { amps, volts: 800 }, { price: 2.2 });
}
