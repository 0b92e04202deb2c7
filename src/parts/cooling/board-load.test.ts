/** Currents and heat at the load of a board, against integrals over a period of the line and of the motor. */
import { describe, expect, it } from "vitest";
import { problemOf, valued } from "../valued.fixture.ts";
import { type BoardLoad, currentsAtLoad, moduleHeat } from "./board-load.ts";
import { legWatts } from "./losses.ts";

const LOAD: BoardLoad = { watts: 900, lineVolts: 230, boostedVolts: null, depth: 0.8, powerFactor: 0.8 };

/** Mean of `of` over a period of a sine. */
function mean(of: (angle: number) => number): number {
  const steps = 10_000;
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += of((2 * Math.PI * (step + 0.5)) / steps);
  return sum / steps;
}

describe("a drive at its load", () => {
  it("draws its watts from the bus, and gives them to three phases that are made of it by pulse width", () => {
    const { busVolts, directAmps, shape, phaseAmps } = valued(currentsAtLoad(LOAD));
    expect(busVolts).toBeCloseTo(325.269, 3);
    expect(busVolts * directAmps).toBeCloseTo(900, 9);
    expect(shape).toBeNull();
    const lag = Math.acos(LOAD.powerFactor);
    const phaseWatts = mean(
      (angle) =>
        ((LOAD.depth * busVolts) / 2) * Math.sin(angle) * phaseAmps * Math.SQRT2 * Math.sin(angle - lag),
    );
    expect(3 * phaseWatts).toBeCloseTo(900, 6);
  });

  it("behind a boost takes a sine from the line: less in the phases, and in the bridge the mean of a rectified sine", () => {
    const { busVolts, directAmps, shape, phaseAmps } = valued(currentsAtLoad({ ...LOAD, boostedVolts: 380 }));
    const line = (angle: number) => (900 / 230) * Math.SQRT2 * Math.abs(Math.sin(angle));
    expect(directAmps).toBeCloseTo(mean(line), 5);
    expect(directAmps * (shape ?? 0)).toBeCloseTo(Math.sqrt(mean((angle) => line(angle) ** 2)), 5);
    expect(phaseAmps * busVolts).toBeCloseTo(valued(currentsAtLoad(LOAD)).phaseAmps * 230 * Math.SQRT2, 9);
  });

  it.each([
    [{ watts: 0 }, "load: 0 W is outside 1 to 20000 W"],
    [{ boostedVolts: 300 }, "bus: 300 V is outside 325"],
    [{ depth: 1.2 }, "modulation depth: 1.2"],
    [{ powerFactor: 0 }, "power factor: 0"],
  ])("is refused with %j", (wrong, problem) => {
    expect(problemOf(currentsAtLoad({ ...LOAD, ...wrong }))).toContain(problem);
  });

  it("warms a module by all twelve junctions, and each above its case by its own watts", () => {
    const { busVolts, phaseAmps } = valued(currentsAtLoad(LOAD));
    const legs = {
      switchDrop: { volts: 0.9, ohms: 0.05 },
      diodeDrop: { volts: 0.9, ohms: 0.04 },
      energy: { joules: 0.6e-3, atAmps: 15, atVolts: 300 },
      recovery: { joules: 0.1e-3, atAmps: 15, atVolts: 300 },
      rmsAmps: phaseAmps,
      busVolts,
      depth: 0.8,
      powerFactor: 0.8,
      hertz: 5000,
    };
    const mounted = { switchToCase: 3, diodeToCase: 4.5, caseToSink: 0.1, sinkToAir: 0.9, airDegC: 45 };
    const heat = valued(moduleHeat(legs, mounted));
    const leg = valued(legWatts(legs));
    expect(heat.moduleWatts).toBeCloseTo(6 * (leg.switchWatts + leg.diodeWatts), 9);
    expect(heat.caseDegC).toBeCloseTo(45 + heat.moduleWatts * 1, 9);
    expect(heat.switchDegC - heat.caseDegC).toBeCloseTo(3 * leg.switchWatts, 9);
    expect(heat.diodeDegC - heat.caseDegC).toBeCloseTo(4.5 * leg.diodeWatts, 9);
    // dry pad for paste under the whole module: warmer by all its watts
    const dry = valued(moduleHeat(legs, { ...mounted, caseToSink: 0.5 }));
    expect(dry.switchDegC - heat.switchDegC).toBeCloseTo(0.4 * heat.moduleWatts, 9);
    expect(problemOf(moduleHeat(legs, { ...mounted, sinkToAir: 0 }))).toContain("heatsink to air: 0 K/W");
  });
});
