/**
 * The DC bus: electrolytics, film snubber, bleeder, voltage sense chain. Values: capacitors, bleeder and chain (common
 * practice; the three upper resistors of the chain as on one published board). Two in series for 400 V mains with 100
 * kohm across each (common practice: 33 to 100 kohm).
 */
import type { Composer } from "../composer.ts";

/** Adds `count` electrolytics of `volts` side by side from PBUS to NBUS, and a sense chain to `sense`. */
export function bus(board: Composer, count: number, farads: number, sense: string, volts = 450): void {
  board.stage("bus");
  for (let i = 0; i < count; i++)
    board.capacitor("PBUS", "NBUS", farads, volts, "electrolytic", { price: 4.2 });
  board.capacitor("PBUS", "NBUS", 0.22e-6, 630, "film", { price: 0.6 });
  board.resistor("PBUS", "BL1", 150_000, { watts: 2 });
  board.resistor("BL1", "NBUS", 150_000, { watts: 2 });
  senseChain(board, sense, 470_000);
}

/**
 * The bus of 400 V mains: two electrolytics in series, `count` of them side by side in each half, each half with its balancing
 * resistor, and a sense chain to `sense`.
 */
export function seriesBus(board: Composer, farads: number, sense: string, count = 1): void {
  board.stage("bus");
  for (const [plus, minus] of [
    ["PBUS", "BUS_M"],
    ["BUS_M", "NBUS"],
  ] as const) {
    for (let i = 0; i < count; i++) board.capacitor(plus, minus, farads, 400, "electrolytic", { price: 4.2 });
    board.resistor(plus, minus, 100_000, { watts: 3 }, { role: "balancing resistor" });
  }
  board.capacitor("PBUS", "NBUS", 0.22e-6, 1000, "film", { price: 0.9 });
  board.net("BUS_M", "middle of the bus capacitors");
  senseChain(board, sense, 680_000);
}

function senseChain(board: Composer, sense: string, upperOhms: number): void {
  board.stage("sensor");
  board.resistor("PBUS", "VS1", upperOhms);
  board.resistor("VS1", "VS2", upperOhms);
  board.resistor("VS2", sense, upperOhms);
  board.resistor(sense, "NBUS", 12_000, { tolerance: 0.01 });
  board.ceramic(sense, "NBUS", 10e-9);
  board.net("PBUS", "DC bus +");
  board.net("NBUS", "DC bus -");
}
