/** The trade's table of series lamps at 230 V, and where a rectifier behind the lamp makes another figure of it. */
import { describe, expect, it } from "vitest";
import { coldOhms, filament, filamentOhms, glow, type Lamp } from "./filament.ts";
import { POWER_JUNCTIONS } from "./live-models.ts";
import type { PowerCircuit } from "./power-circuit.ts";
import { settle } from "./settle.ts";

/** Watts, amps into a short, cold ohms, largest steady load (the trade's table, computed there). */
const TABLE = [
  [40, 0.17, 100, 15],
  [60, 0.26, 68, 22],
  [100, 0.43, 41, 36],
  [150, 0.65, 27, 55],
  [200, 0.87, 20, 73],
  [300, 1.3, 14, 109],
  [500, 2.2, 8, 182],
] as const;

/** Most watts to a load that takes a sine, as a heater does: of V I - watts(I) over all currents. */
function mostToSine(lamp: Lamp): { readonly watts: number; leftAt(load: number): number } {
  const at = (share: number) => {
    const heat = share * lamp.watts;
    const amps = Math.sqrt(heat / filamentOhms(lamp, heat));
    return { load: lamp.ratedVolts * amps - heat, volts: lamp.ratedVolts - heat / amps };
  };
  const shares = Array.from({ length: 4000 }, (_, i) => (i + 1) / 4000);
  const best = shares.reduce((most, share) => (at(share).load > at(most).load ? share : most), 0.001);
  return {
    watts: at(best).load,
    leftAt: (load) => at(shares.find((share) => at(share).load >= load) ?? best).volts,
  };
}

/** A rectifier and its capacitor behind the lamp, with a load of constant watts. */
function behind(lamp: Lamp, watts: number): PowerCircuit {
  const junction = (from: number, to: number) => ({ from, to, ...POWER_JUNCTIONS.bridge, part: null });
  return {
    nets: 4,
    resistors: [{ from: 0, to: 1, ohms: coldOhms(lamp), part: null, heats: filament(lamp) }],
    diodes: [junction(1, 3), junction(2, 3), junction(-1, 1), junction(-1, 2)],
    capacitors: [{ from: 3, to: -1, farads: lamp.watts * 3e-6, part: null }],
    sources: [{ from: 0, to: 2, offsetVolts: 0, peakVolts: 325, radians: 0, ohms: 0.4, limitAmps: null }],
    load: { from: 3, to: -1, watts, leastVolts: 60 },
  };
}

function busBehind(lamp: Lamp, watts: number): number {
  const settling = { cycleSeconds: 0.02, steps: 200, mostCycles: 120, startVolts: Float64Array.of(312) };
  const [, , , wave] = settle(behind(lamp, watts), settling).waves;
  return wave.reduce((sum, volts) => sum + volts, 0) / wave.length;
}

describe("lamps in series", () => {
  it.each(TABLE)(
    "%d W: %d A into a short, %d ohm cold, %d W at most to a load that takes a sine",
    (watts, amps, ohms, most) => {
      const lamp = { watts, ratedVolts: 230 };
      expect(Math.abs(230 / filamentOhms(lamp, watts) / amps - 1)).toBeLessThan(0.03);
      expect(Math.abs(coldOhms(lamp) / ohms - 1)).toBeLessThan(0.05);
      expect(Math.abs(mostToSine(lamp).watts / most - 1)).toBeLessThan(0.05);
    },
  );

  it("100 W leaves 216 V to a load of 20 W that takes a sine: the table's figure", () => {
    expect(Math.abs(mostToSine({ watts: 100, ratedVolts: 230 }).leftAt(20) / 216 - 1)).toBeLessThan(0.01);
  });

  it("behind a rectifier it is 0.32 of the lamp's watts, not 0.36: the capacitor takes its current in pulses, which heat the filament more for the same watts", () => {
    for (const watts of [60, 100, 200]) {
      const lamp = { watts, ratedVolts: 230 };
      expect(busBehind(lamp, 0.31 * watts)).toBeGreaterThan(150);
      expect(busBehind(lamp, 0.345 * watts)).toBeLessThan(100);
    }
  });

  it("the same holds at 120 V", () => {
    const lamp = { watts: 100, ratedVolts: 120 };
    const circuit = (watts: number): PowerCircuit => ({
      ...behind(lamp, watts),
      capacitors: [{ from: 3, to: -1, farads: 1e-3, part: null }],
      sources: [{ from: 0, to: 2, offsetVolts: 0, peakVolts: 169.7, radians: 0, ohms: 0.4, limitAmps: null }],
      load: { from: 3, to: -1, watts, leastVolts: 30 },
    });
    const bus = (watts: number): number => {
      const settling = {
        cycleSeconds: 1 / 60,
        steps: 200,
        mostCycles: 120,
        startVolts: Float64Array.of(163),
      };
      const [, , , wave] = settle(circuit(watts), settling).waves;
      return wave.reduce((sum, volts) => sum + volts, 0) / wave.length;
    };
    expect(bus(31)).toBeGreaterThan(75);
    expect(bus(35)).toBeLessThan(50);
  });

  it("full brightness is a short, a faint glow a load of some watts, dark an idle board", () => {
    const lamp = { watts: 100, ratedVolts: 230 };
    expect(glow(lamp, 95)).toBe("lamp-bright");
    expect(glow(lamp, 12)).toBe("lamp-dim");
    expect(glow(lamp, 0.6)).toBe("lamp-dark");
  });
});
