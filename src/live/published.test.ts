/** Worked examples that others have published, each with its source. */
import { describe, expect, it } from "vitest";
import { bledVolts, bleedSeconds, drawnVolts, storedJoules } from "../board/stored-charge.ts";
import { between } from "./potentials.ts";
import type { PowerCircuit } from "./power-circuit.ts";
import { settle } from "./settle.ts";
import { Stepper } from "./stepper.ts";

interface Example {
  readonly peakVolts: number;
  readonly hz: number;
  readonly farads: number;
  readonly loadOhms: number;
  readonly dropVolts: number;
}

/** A stiff winding, a bridge, a capacitor, a resistor. Nets: 0 and 1 the winding, 2 plus. */
function supply(one: Example): PowerCircuit {
  const junction = (from: number, to: number) => ({
    from,
    to,
    dropVolts: one.dropVolts,
    ohms: 0.01,
    part: null,
  });
  return {
    nets: 3,
    resistors: [{ from: 2, to: -1, ohms: one.loadOhms, part: null }],
    diodes: [junction(0, 2), junction(1, 2), junction(-1, 0), junction(-1, 1)],
    capacitors: [{ from: 2, to: -1, farads: one.farads, part: null }],
    sources: [
      { from: 0, to: 1, offsetVolts: 0, peakVolts: one.peakVolts, radians: 0, ohms: 0.02, limitAmps: null },
    ],
    load: null,
  };
}

function busOf(one: Example): { readonly mean: number; readonly swing: number; readonly top: number } {
  const cycle = settle(supply(one), { cycleSeconds: 1 / one.hz, steps: 800, mostCycles: 200 });
  const wave = cycle.waves[2];
  const top = Math.max(...wave);
  return {
    mean: wave.reduce((sum, volts) => sum + volts, 0) / wave.length,
    swing: top - Math.min(...wave),
    top,
  };
}

describe("an unloaded bus", () => {
  it.each([
    [220, 311.127],
    [230, 325.269],
    [240, 339.411],
    [110, 155.563],
    [120, 169.706],
  ])("P1 (computed): stands at the peak of %d V, %d V, less two drops", (volts, peak) => {
    const { top } = busOf({
      peakVolts: volts * Math.SQRT2,
      hz: 50,
      farads: 470e-6,
      loadOhms: 100_000,
      dropVolts: 0.6,
    });
    expect(top).toBeCloseTo(peak - 1.2, 0);
  });

  it("P2, htr-india.com: about 320 V behind 220 to 240 V mains, 160 V behind 110 to 120 V", () => {
    const at = (volts: number) =>
      busOf({ peakVolts: volts * Math.SQRT2, hz: 50, farads: 470e-6, loadOhms: 100_000, dropVolts: 0.6 }).top;
    for (const [volts, rough] of [
      [220, 320],
      [240, 320],
      [110, 160],
      [120, 160],
    ] as const)
      expect(Math.abs(at(volts) / rough - 1)).toBeLessThan(0.07);
  });
});

describe("ripple behind a full-wave rectifier", () => {
  it("P5, 3roam.com: its 16.7 mF for 1 A, 60 Hz and 1 V takes the mains' frequency for the ripple's: half of that keeps the volt", () => {
    const swing = (farads: number) =>
      busOf({ peakVolts: 170, hz: 60, farads, loadOhms: 168, dropVolts: 0.8 }).swing;
    // C = I / (2 f V) = 8.33 mF is P3's form, which is a little more than what is left when the next half cycle takes over
    expect(swing(8.333e-3)).toBeGreaterThan(0.75);
    expect(swing(8.333e-3)).toBeLessThan(1);
    expect(swing(16.67e-3)).toBeLessThan(0.55);
  });

  it("P3, calculator.7search.cc, ripple page: 2 A, 60 Hz, 1000 uF give I / (2 f C) = 16.67 V; integrated it is 10 to 25 % less", () => {
    const textbook = 2 / (2 * 60 * 1000e-6);
    expect(textbook).toBeCloseTo(16.67, 2);
    // The page names no volts. At 170 V of peak the mean load of 2 A is 80 ohm.
    const { mean, swing } = busOf({ peakVolts: 170, hz: 60, farads: 1000e-6, loadOhms: 80, dropVolts: 0.8 });
    const amps = mean / 80;
    const form = amps / (2 * 60 * 1000e-6);
    expect(amps).toBeCloseTo(2, 1);
    // The capacitor is not left alone for the whole half cycle: it is charged for the last tenth to quarter of it.
    expect(swing / form).toBeGreaterThan(0.75);
    expect(swing / form).toBeLessThan(0.9);
  });

  it("P4, homeworksource.com/p/974070: 12 V, two drops of 0.8 V, 100 ohm and 1283 uF: 15.37 V at the top, 14.87 V mean, just under 1 V of ripple", () => {
    const peakVolts = 12 * Math.SQRT2;
    expect(peakVolts).toBeCloseTo(16.97, 2);
    const { mean, swing, top } = busOf({ peakVolts, hz: 60, farads: 1283e-6, loadOhms: 100, dropVolts: 0.8 });
    expect(top).toBeCloseTo(15.37, 1);
    expect(Math.abs(mean / 14.87 - 1)).toBeLessThan(0.01);
    // Their 1 V is the textbook form; ours ends where the next half cycle takes over.
    expect(swing).toBeLessThan(1);
    expect(swing).toBeGreaterThan(0.85);
  });

  it("P6, a textbook's answer: 8.5 % of 14.5 V is 1.23 V, and that is what a meter on alternating volts shows of it", () => {
    const top = 1.2325 * 2 * Math.sqrt(3);
    const wave = Float64Array.from({ length: 4000 }, (_, k) => 14.5 + top * (0.5 - (k + 0.5) / 4000));
    const bus = { domain: "N", dcVolts: 14.5, dcSpread: 0.3, wave, rippleVolts: 0, rippleSpread: 0 };
    const zero = { domain: "N", dcVolts: 0, dcSpread: 0, wave: null, rippleVolts: 0, rippleSpread: 0 };
    const shown = between(bus, zero, 0.02);
    expect(shown?.dc).toBe(14.5);
    expect(shown?.ac).toBeCloseTo(0.085 * 14.5, 2);
    expect(shown?.ac).toBeCloseTo(1.23, 2);
  });
});

/** First amps into an empty capacitor switched on at the crest of the mains, as the power circuit steps them. */
function inrushAmps(peakVolts: number, ohms: number, farads: number): number {
  const circuit: PowerCircuit = {
    ...supply({ peakVolts, hz: 60, farads, loadOhms: 1e6, dropVolts: 0 }),
    sources: [{ from: 0, to: 1, offsetVolts: 0, peakVolts, radians: Math.PI / 2, ohms, limitAmps: null }],
  };
  const stepper = new Stepper(circuit, 1e-7);
  stepper.step(Float64Array.of(0), 0);
  return stepper.given(0, 0);
}

describe("inrush and energy", () => {
  it("P7, Ametherm, selecting an inrush current limiter: 480 V + 10 %, 2350 uF, 30 A: 655 J and 25 ohm (its 736.59 V is a misprint)", () => {
    const peak = 528 * Math.SQRT2;
    expect(peak).toBeCloseTo(746.7, 0);
    expect(storedJoules(2350e-6, 746.59)).toBeCloseTo(654.94, 1);
    expect(Math.abs(inrushAmps(746.59, 24.87, 2350e-6) / 30 - 1)).toBeLessThan(0.005);
    expect(inrushAmps(746.59, 25, 2350e-6)).toBeLessThan(30);
  });

  it("P8, rftools.io, inrush page: 325 V through 0.5 ohm and nothing else is 650 A; two junctions of 10 mohm in the way make it 625 A", () => {
    expect(inrushAmps(325, 0.5, 470e-6) * (0.5 + 2 * 0.01)).toBeCloseTo(325, 0);
    expect(inrushAmps(325, 0.48, 470e-6)).toBeCloseTo(650, -1);
  });

  it("P11 and P10, resicalc.com, capacitor discharge: 400 V on 1000 uF is 80 J, on 470 uF 37.6 J", () => {
    expect(storedJoules(1000e-6, 400)).toBeCloseTo(80, 9);
    expect(storedJoules(470e-6, 400)).toBeCloseTo(37.6, 9);
  });
});

describe("discharge", () => {
  it("P9, Welwyn design tool 4: 195 uF from 1500 to 320 V through 50 ohm takes 0.015062769 s; 219.375 J in all", () => {
    expect(bleedSeconds(1500, 320, 50, 195e-6)).toBeCloseTo(0.015062769, 8);
    expect(storedJoules(195e-6, 1500)).toBeCloseTo(219.375, 6);
  });

  it("P10, resicalc.com: 10 kohm takes 470 uF from 400 to 50 V in 9.8 s", () => {
    expect(bleedSeconds(400, 50, 10_000, 470e-6)).toBeCloseTo(9.7734, 3);
    expect(bledVolts(400, 10_000, 470e-6, 9.7734)).toBeCloseTo(50, 2);
  });

  it("a small supply that goes on running empties a bus sooner than its bleeder, and no farther than it runs", () => {
    const farads = 940e-6;
    const first = drawnVolts(322, 3, farads, 60, 5);
    expect(storedJoules(farads, 322) - storedJoules(farads, first.volts)).toBeCloseTo(15, 6);
    const end = drawnVolts(322, 3, farads, 60, 60);
    expect(end.volts).toBe(60);
    expect(end.seconds).toBeCloseTo((storedJoules(farads, 322) - storedJoules(farads, 60)) / 3, 9);
    expect(end.seconds).toBeLessThan(bleedSeconds(322, 60, 300_000, farads));
  });
});
