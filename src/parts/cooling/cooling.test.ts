/** Heat, mounting and their formulas against published figures; each row is named, and so is its mark where it was not seen itself. */
import { describe, expect, it } from "vitest";
import { problemOf, valued } from "../valued.fixture.ts";
import { bridgeWatts, chopperWatts, conductionWatts, legWatts } from "./losses.ts";
import { ORDER_OF_WORK, TORQUES, torqueRange } from "./mounting.ts";
import {
  beforeAndAfter,
  INTERFACES,
  junctionTemperatures,
  layerResistance,
  resistanceFromWatts,
  sinkWanted,
  slabResistance,
  transientResistance,
  wattsAtCase,
} from "./thermal-chain.ts";

describe("from junction to air", () => {
  it("H1, slideplayer.com 5191918: TO-220, 5 W, 3.0 and 1.0 K/W, 150 and 50 degC want a heatsink of 16 K/W at most", () => {
    const part = { watts: 5, junctionToCase: 3, caseToSink: 1 };
    expect(valued(sinkWanted(part, 150, 50))).toBeCloseTo(16, 9);
    expect(valued(junctionTemperatures([part], 16, 50)).junctionDegC[0]).toBeCloseTo(150, 9);
  });

  it("H2, IRG4PC50SD data sheet: 0.64 K/W and 150 degC give 78 W at a case of 100 degC, and 195 of the printed 200 W at 25 degC", () => {
    expect(valued(wattsAtCase(150, 100, 0.64))).toBeCloseTo(78, 0);
    expect(Math.abs(valued(wattsAtCase(150, 25, 0.64)) / 200 - 1)).toBeLessThan(0.025);
  });

  it("H3, 40EPS bulletin I2104: 0.74 V and 7.16 mohm drop 1.03 V at 40 A hot, below the 1.1 V of a cold one", () => {
    const watts = valued(conductionWatts({ volts: 0.74, ohms: 7.16e-3 }, 40, 40));
    expect(watts / 40).toBeCloseTo(1.0264, 4);
    expect(watts / 40).toBeLessThan(1.1);
  });

  it("H4, qastack 31416: 300 A at 1.55 V are 465 W, and 58.125 K over 0.125 K/W", () => {
    const watts = valued(conductionWatts({ volts: 1.55, ohms: 0 }, 300, 300));
    expect(watts).toBeCloseTo(465, 9);
    const { junctionDegC, sinkDegC } = valued(
      junctionTemperatures([{ watts, junctionToCase: 0.124, caseToSink: 0.001 }], 0.001, 25),
    );
    expect((junctionDegC[0] ?? 0) - sinkDegC).toBeCloseTo(58.125, 9);
  });

  it("H5, IRGP4640D data sheet p. 8: the steps of IGBT and diode add up to 0.60 and 1.62 K/W, and are at nothing when power comes", () => {
    const igbt = [
      { kelvinPerWatt: 0.2568, seconds: 0.000311 },
      { kelvinPerWatt: 0.3429, seconds: 0.006347 },
    ];
    const diode = [
      { kelvinPerWatt: 693e-3, seconds: 0.001222 },
      { kelvinPerWatt: 0.621, seconds: 0.005254 },
      { kelvinPerWatt: 0.307, seconds: 0.03814 },
    ];
    expect(valued(transientResistance(igbt, 10))).toBeCloseTo(0.6, 2);
    expect(valued(transientResistance(diode, 10))).toBeCloseTo(1.62, 2);
    expect(valued(transientResistance(igbt, 0))).toBe(0);
    // after one time constant of the slow step, the fast one is through
    expect(valued(transientResistance(igbt, 0.006347))).toBeCloseTo(0.2568 + 0.3429 * (1 - Math.exp(-1)), 6);
  });

  it("H6, Toshiba semiconductor FAQ: without Rth, (limit - 25) over the watts at 25 degC", () => {
    expect(valued(resistanceFromWatts(150, 200))).toBeCloseTo(0.625, 9);
  });

  it("H7, an application article (weak): 1 W through 15 K/W below 125 degC keeps the drain below 110 degC", () => {
    const drain = 125 - 15;
    expect(valued(wattsAtCase(125, drain, 15))).toBeCloseTo(1, 9);
  });

  it("H8, Power Electronics Handbook p. 70: 0.1 mm of mica under 3 cm2 is 0.5 K/W, as much as mica is said to be (H15, from memory)", () => {
    const mica = valued(layerResistance("mica", 0.1, 300));
    expect(mica).toBeCloseTo(0.5, 9);
    expect(mica).toBeGreaterThanOrEqual(INTERFACES.mica.low);
    expect(mica).toBeLessThanOrEqual(INTERFACES.mica.high);
    expect(valued(layerResistance("air", 0.1, 300))).toBeCloseTo(10, 9);
  });

  it("H9, electronicspoint.com 32705: 0.080 inch of alumina at 15.06 W/mK is a little worse than 0.006 inch of pad at 1.3 W/mK", () => {
    const inch = 25.4;
    const alumina = valued(slabResistance(15.06, 0.08 * inch, 300)) * 300;
    const pad = valued(slabResistance(1.3, 0.006 * inch, 300)) * 300;
    expect(alumina).toBeCloseTo(134.9, 1);
    expect(pad).toBeCloseTo(117.2, 1);
  });

  it("H14, onsemi AN1040/D p. 1: from 160 down to 135 degC failures halve; 110 degC is the guide", () => {
    const hot = { watts: 50, junctionToCase: 1, caseToSink: 0.5 };
    const cooler = { ...hot, junctionToCase: 0.5 };
    const compared = valued(beforeAndAfter(hot, cooler, 0.7, 50));
    expect([compared.beforeDegC, compared.afterDegC]).toEqual([160, 135]);
    expect(compared.failureTimes).toBeCloseTo(0.5, 9);
    expect(compared.cool).toBe(false);
    expect(valued(beforeAndAfter(hot, { ...hot, watts: 20 }, 0.7, 50)).cool).toBe(true);
  });

  it("a pad for paste makes a junction warmer by its watts times the difference, and a shared heatsink warms both", () => {
    const paste = { watts: 30, junctionToCase: 0.6, caseToSink: 0.24 };
    const pad = { ...paste, caseToSink: 0.9 };
    const { beforeDegC, afterDegC } = valued(beforeAndAfter(paste, pad, 1, 40));
    expect(afterDegC - beforeDegC).toBeCloseTo(30 * 0.66, 9);
    const both = valued(junctionTemperatures([paste, pad], 1, 40));
    expect(both.sinkDegC).toBeCloseTo(100, 9);
  });

  it.each([
    [
      () => junctionTemperatures([{ watts: -1, junctionToCase: 1, caseToSink: 1 }], 1, 25),
      "heat: -1 W is outside 0 to 2000 W",
    ],
    [() => junctionTemperatures([], 0, 25), "heatsink to air: 0 K/W is outside 0.001 to 500 K/W"],
    [() => junctionTemperatures([], 1, 300), "air: 300 degC is outside -40 to 100 degC"],
    [() => wattsAtCase(150, 160, 1), "case: 160 degC is outside -55 to 150 degC"],
    [
      () => sinkWanted({ watts: 50, junctionToCase: 3, caseToSink: 1 }, 150, 50),
      "no heatsink is large enough",
    ],
    [() => layerResistance("mica", Number.NaN, 300), "thickness: NaN mm is outside"],
    [() => transientResistance([], -1), "time: -1 s is outside"],
  ])("refuses what no bench has (%#)", (made, problem) => {
    expect(problemOf(made())).toContain(problem);
  });
});

describe("heat of a junction", () => {
  const line = { volts: 0.9, ohms: 0.03 };

  it("of a bridge is that of two junctions in the way of the whole current", () => {
    expect(valued(bridgeWatts({ volts: 0.8, ohms: 0.01 }, 8, 2))).toBeCloseTo(2 * (0.8 * 8 + 0.01 * 256), 9);
  });

  it("of a chopper is its share of the time, and each edge", () => {
    const energy = { joules: 1e-3, atAmps: 20, atVolts: 400 };
    const watts = valued(
      chopperWatts({ drop: line, energy, amps: 10, volts: 380, duty: 0.4, hertz: 20_000 }),
    );
    expect(watts).toBeCloseTo(0.4 * (9 + 3) + 20_000 * 1e-3 * 0.5 * 0.95, 9);
  });

  it("of a leg's switch and diode agrees with the integral over a period (closed form from memory)", () => {
    const at = {
      switchDrop: line,
      diodeDrop: { volts: 0.8, ohms: 0.02 },
      energy: { joules: 0.8e-3, atAmps: 20, atVolts: 400 },
      recovery: { joules: 0.2e-3, atAmps: 20, atVolts: 400 },
      rmsAmps: 7,
      busVolts: 325,
      depth: 0.8,
      powerFactor: 0.7,
      hertz: 8000,
    };
    const steps = 20_000;
    const peak = at.rmsAmps * Math.SQRT2;
    const lag = Math.acos(at.powerFactor);
    const sum = { switchWatts: 0, diodeWatts: 0 };
    for (let step = 0; step < steps; step++) {
      const angle = (2 * Math.PI * (step + 0.5)) / steps;
      const amps = peak * Math.sin(angle);
      if (amps <= 0) continue;
      const duty = 0.5 + (at.depth / 2) * Math.sin(angle + lag);
      const each = (energy: typeof at.energy) =>
        at.hertz * energy.joules * (amps / energy.atAmps) * (at.busVolts / energy.atVolts);
      sum.switchWatts +=
        duty * (at.switchDrop.volts * amps + at.switchDrop.ohms * amps ** 2) + each(at.energy);
      sum.diodeWatts +=
        (1 - duty) * (at.diodeDrop.volts * amps + at.diodeDrop.ohms * amps ** 2) + each(at.recovery);
    }
    const made = valued(legWatts(at));
    expect(made.switchWatts).toBeCloseTo(sum.switchWatts / steps, 4);
    expect(made.diodeWatts).toBeCloseTo(sum.diodeWatts / steps, 4);
  });

  it("is refused where an input is none", () => {
    expect(problemOf(conductionWatts(line, 10, 5))).toContain("never below the mean");
    expect(problemOf(bridgeWatts(line, 10, 0.5))).toContain("current shape: 0.5 is outside 1 to 4");
    expect(
      problemOf(
        chopperWatts({
          drop: line,
          energy: { joules: 0, atAmps: 1, atVolts: 1 },
          amps: 1,
          volts: 1,
          duty: 1.2,
          hertz: 1,
        }),
      ),
    ).toContain("duty: 1.2");
  });
});

describe("the screw", () => {
  it("H10, ST TN1225 (seen-2nd): TO-220 0.55 and at most 0.70, TO-247 and TO-3P 0.55 and at most 1.00 N m", () => {
    const rows = TORQUES.filter((row) => row.source.includes("TN1225"));
    expect(rows.map(({ usual, most }) => [usual, most])).toEqual([
      [0.55, 0.7],
      [0.55, 1],
    ]);
  });

  it("H11, ST AN260 (seen-2nd): little is gained above 0.50, 0.80 at most; H13, Infineon: TO-220 up to 1.0", () => {
    expect(TORQUES.find((row) => row.source.includes("AN260"))).toMatchObject({ usual: 0.5, most: 0.8 });
    expect(TORQUES.find((row) => row.source.includes("Infineon"))).toMatchObject({ most: 1 });
  });

  it("H12, Sanken: TO-220 0.490 to 0.686, TO-3P 0.686 to 0.822; H3: 6 to 12 kgf cm; the range is what none of them forbids", () => {
    expect(valued(torqueRange("TO-220"))).toMatchObject({ least: 0.55, most: 0.686 });
    expect(valued(torqueRange("TO-3P"))).toMatchObject({ least: 0.686, most: 0.822 });
    const wide = valued(torqueRange("to-247"));
    expect(wide.least).toBeCloseTo(0.588, 3);
    expect(wide.most).toBe(1);
    for (const row of TORQUES)
      expect(wide.most).toBeLessThanOrEqual(row.cases.includes("TO-247") ? row.most : 9);
  });

  it("of a case that no source speaks of is refused, with those that are known", () => {
    expect(problemOf(torqueRange("DPAK"))).toContain("known: TO-220 TO-247");
  });

  it("is tightened before the solder, crosswise, and taken off means new paste", () => {
    const order = ORDER_OF_WORK.join("; ");
    expect(order).toMatch(/snug all screws.*crosswise.*full torque.*solder now.*20 Mohm.*new paste/);
  });
});
