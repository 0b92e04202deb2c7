import { expect, it } from "vitest";
import { partValue } from "./part-value.ts";

it.each([
  ["fuse", { amps: 6.3, volts: 250, ohms: 0.02 }, ["6.3 A"]],
  ["capacitor", { farads: 470e-6, volts: 450, type: "electrolytic" }, ["470 µF", "450 V"]],
  ["capacitor", { farads: 2.2e-9 }, ["2.2 nF"]],
  ["resistor", { ohms: 4700, watts: 0.25 }, ["4.7 kΩ", "0.25 W"]],
  ["resistor", { ohms: 0.22 }, ["0.22 Ω"]],
  ["resistor", { ohms: 0.01 }, ["10 mΩ"]],
  ["link", { ohms: 0 }, []],
  ["bridge", { volts: 1000, amps: 25 }, ["1 kV", "25 A"]],
  ["relay", { coilOhms: 270, coilVolts: 12, amps: 16 }, ["12 V"]],
  ["controller", { volts: 3.3 }, []],
] as const)("a %s is asked for by what is printed on it: %j is %j", (kind, value, printed) => {
  expect(partValue({ kind, value })).toEqual(printed);
});
