import { describe, expect, it } from "vitest";
import {
  junctionAmps,
  junctionSiemens,
  saturationAt,
  saturationFor,
  thermalVolts,
  VOLTS_PER_KELVIN,
} from "./junction.ts";

/** Volts of a junction with series resistance at a current, by bisection on the law itself. */
function dropAt(is: number, n: number, rs: number, amps: number, celsius: number): number {
  const emissionVolts = n * thermalVolts(celsius);
  let low = 0;
  let high = 2;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (junctionAmps(is, emissionVolts, middle) < amps) low = middle;
    else high = middle;
  }
  return (low + high) / 2 + rs * amps;
}

/** SPICE models as published (1N4148 model D from memory); the drops beside them are computed, at 300.15 K. */
const MODELS = [
  {
    name: "1N4007",
    is: 3.872e-9,
    n: 1.776,
    rs: 0.0166,
    drops: [0.4667, 0.5406, 0.549, 0.5725, 0.5911, 0.6784],
  },
  {
    name: "1N4148, model B",
    is: 4.352e-9,
    n: 1.906,
    rs: 0.6458,
    drops: [0.4951, 0.5747, 0.5838, 0.6092, 0.6295, 0.7286],
  },
  { name: "1N914B", is: 5e-9, n: 2, rs: 0.8622, drops: [0.5124, 0.596, 0.6055, 0.6323, 0.6537, 0.7592] },
  {
    name: "1N4148, model D",
    is: 2.52e-9,
    n: 1.752,
    rs: 0.568,
    drops: [0.4799, 0.553, 0.5614, 0.5847, 0.6034, 0.6942],
  },
] as const;
const AMPS = [0.1e-3, 0.5e-3, 0.6e-3, 1e-3, 1.5e-3, 10e-3] as const;

describe("the drop of published diode models (J7, J9-J11; values computed from them)", () => {
  for (const { name, is, n, rs, drops } of MODELS) {
    it(`${name} at six currents`, () => {
      for (const [i, amps] of AMPS.entries())
        expect(Math.abs(dropAt(is, n, rs, amps, 27) - drops[i])).toBeLessThan(1e-4);
    });
  }
});

describe("temperature", () => {
  it("follows the computed table of the 1N4007 at 1 mA (J13)", () => {
    const at = (celsius: number) =>
      dropAt(saturationAt(3.872e-9, 1.776, celsius, 27), 1.776, 0.0166, 1e-3, celsius);
    expect(Math.abs(at(25) - 0.5766)).toBeLessThan(2e-4);
    expect(Math.abs(at(35) - 0.556)).toBeLessThan(2e-4);
    expect(Math.abs(at(60) - 0.5044)).toBeLessThan(2e-4);
  });

  it("makes a silicon junction drop about 2 mV less per kelvin (published rule, J12)", () => {
    const is = saturationFor(0.6, 1e-3, thermalVolts(25));
    const at = (celsius: number) => dropAt(saturationAt(is, 1, celsius, 25), 1, 0, 1e-3, celsius);
    expect((at(35) - at(25)) / 10).toBeGreaterThan(-0.0022);
    expect((at(35) - at(25)) / 10).toBeLessThan(-0.0017);
  });

  it("gives kT/q as CODATA has it (J14)", () => {
    expect(VOLTS_PER_KELVIN * 300).toBeCloseTo(0.025852, 6);
    expect(thermalVolts(27)).toBeCloseTo(0.025865, 6);
    expect(thermalVolts(25)).toBeCloseTo(0.025693, 6);
  });
});

describe("the law and its slope", () => {
  it("agree with each other on both sides of zero", () => {
    for (const volts of [-5, -1, -0.2, -0.05, -0.001, 0, 0.001, 0.1, 0.4, 0.6]) {
      const h = 1e-7;
      const slope = (junctionAmps(1e-9, 0.036, volts + h) - junctionAmps(1e-9, 0.036, volts - h)) / (2 * h);
      expect(Math.abs(slope - junctionSiemens(1e-9, 0.036, volts))).toBeLessThan(
        1e-6 * Math.abs(slope) + 1e-16,
      );
    }
  });
});
