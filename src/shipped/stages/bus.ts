/**
 * The DC bus: electrolytics, film snubber, bleeder, voltage sense chain. Values: capacitors, bleeder and chain (common
 * practice; the three upper resistors of the chain as on one published board).
 */
import type { Composer } from "../composer.ts";

/** Adds `count` electrolytics side by side from PBUS to NBUS, and a sense chain to `sense`. */
export function bus(board: Composer, count: number, farads: number, sense: string): void {
  board.stage("bus");
  for (let i = 0; i < count; i++)
    board.capacitor("PBUS", "NBUS", farads, 450, "electrolytic", { price: 4.2 });
  board.capacitor("PBUS", "NBUS", 0.22e-6, 630, "film", { price: 0.6 });
  board.resistor("PBUS", "BL1", 150_000, { watts: 2 });
  board.resistor("BL1", "NBUS", 150_000, { watts: 2 });
  board.stage("sensor");
  board.resistor("PBUS", "VS1", 470_000);
  board.resistor("VS1", "VS2", 470_000);
  board.resistor("VS2", sense, 470_000);
  board.resistor(sense, "NBUS", 12_000, { tolerance: 0.01 });
  board.ceramic(sense, "NBUS", 10e-9);
  board.net("PBUS", "DC bus +");
  board.net("NBUS", "DC bus -");
}
