/** The live board's rectifier, bus and lamp beside transient runs of a reference simulator. */
import { describe, expect, it } from "vitest";
import type { Board } from "../src/board/board.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { parseFault } from "../src/board/parse-fault.ts";
import { FaultedBoard } from "../src/live/faulted-board.ts";
import { coldOhms, filament, hotOhms, type Lamp } from "../src/live/filament.ts";
import { POWER_JUNCTIONS } from "../src/live/live-models.ts";
import { liveView } from "../src/live/live-view.ts";
import type { PowerCircuit } from "../src/live/power-circuit.ts";
import { PathBuilder, supplyLoad } from "../src/live/power-path.ts";
import { settle } from "../src/live/settle.ts";
import { seededRandom } from "../src/practice/seeded-random.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { hasNgspice } from "./ngspice.ts";
import { runPower } from "./power-deck.ts";

const present = await hasNgspice();
const STEPS = 320;

interface Rectifier {
  readonly volts: number;
  readonly hz: number;
  readonly lineOhms: number;
  readonly farads: number;
  readonly watts: number;
}

/** Nets: 0 line, 1 behind the line ohms, 2 neutral, 3 bus plus; bus minus is the reference. */
function rectifier(one: Rectifier, open: string | null = null, lamp: Lamp | null = null): PowerCircuit {
  const junction = (name: string, from: number, to: number) =>
    name === open ? [] : [{ from, to, ...POWER_JUNCTIONS.bridge, part: "BR1" }];
  const line = { from: 0, to: 1, part: null };
  return {
    nets: 4,
    resistors: [
      lamp === null
        ? { ...line, ohms: one.lineOhms }
        : { ...line, ohms: coldOhms(lamp), heats: filament(lamp) },
    ],
    diodes: [
      ...junction("ac1plus", 1, 3),
      ...junction("ac2plus", 2, 3),
      ...junction("minusac1", -1, 1),
      ...junction("minusac2", -1, 2),
    ],
    capacitors: [{ from: 3, to: -1, farads: one.farads, part: "C1" }],
    sources: [
      {
        from: 0,
        to: 2,
        offsetVolts: 0,
        peakVolts: one.volts * Math.SQRT2,
        radians: 0,
        ohms: 0.05,
        limitAmps: null,
      },
    ],
    load: { from: 3, to: -1, watts: one.watts, leastVolts: 60 },
  };
}

/** The same bus by both: mean within 1 %, swing within 5 %. */
async function agree(circuit: PowerCircuit, look: number, hz: number, cycles: number): Promise<void> {
  const peak = Math.max(...circuit.sources.map((one) => one.peakVolts));
  const startVolts = circuit.capacitors.map(() => 0.96 * peak);
  const ours = settle(circuit, {
    cycleSeconds: 1 / hz,
    steps: STEPS,
    mostCycles: 80,
    startVolts: Float64Array.from(startVolts),
  });
  expect(ours.settled).toBe(true);
  const wave = ours.waves[look];
  const mean = wave.reduce((sum, volts) => sum + volts, 0) / STEPS;
  const swing = Math.max(...wave) - Math.min(...wave);
  const theirs = await runPower(circuit, { cycleSeconds: 1 / hz, cycles, startVolts, look });
  expect(Math.abs(mean / theirs.mean - 1)).toBeLessThan(0.01);
  expect(Math.abs(swing / theirs.swing - 1)).toBeLessThan(0.05);
}

const TYPICAL: Rectifier = { volts: 230, hz: 50, lineOhms: 0.6, farads: 470e-6, watts: 80 };

describe("a bus under power, beside a transient run of the same circuit", () => {
  it("has the mean within 1 % and the ripple within 5 % in 20 seeded cases", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    for (let seed = 1; seed <= 20; seed++) {
      const random = seededRandom(seed, "rectifier");
      const pick = (least: number, most: number) => least * (most / least) ** random();
      const volts = [120, 220, 230, 240][seed % 4] ?? 230;
      const hz = volts === 120 ? 60 : 50;
      const one = { volts, hz, lineOhms: pick(0.3, 8), farads: pick(80e-6, 1500e-6), watts: pick(8, 150) };
      await agree(rectifier(one), 3, hz, 120);
    }
  });

  it("also with one bridge junction open: every other half cycle is missing", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    for (const open of ["ac1plus", "minusac2"]) await agree(rectifier(TYPICAL, open), 3, 50, 30);
  });

  it("also with one of two capacitors lost, and with next to nothing left", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    for (const farads of [235e-6, 4.7e-6])
      await agree(rectifier({ ...TYPICAL, farads, watts: 30 }), 3, 50, 20);
  });

  it("also with the inrush part still in circuit", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    for (const watts of [10, 30]) await agree(rectifier({ ...TYPICAL, lineOhms: 47.6, watts }), 3, 50, 90);
  });
});

function shipped(id: string): Board {
  const parsed = parseBoard(SHIPPED.find((one) => one.id === id)?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

describe("the power path of a shipped board, beside a transient run", () => {
  it.each([
    ["greenhouse-fan-drive", [], 30],
    ["greenhouse-fan-drive", ["BR1.ac1plus:open", "C8:open"], 30],
    ["outdoor-unit-inverter", [], 30],
    ["small-frequency-drive-3ph", [], 60],
    ["small-frequency-drive-3ph", ["F1:open"], 60],
  ] as const)("agrees on %s with %j at %d W", async (id, names, watts) => {
    if (!present) return; // the first test of this file says so
    const board = shipped(id);
    const view = liveView(board);
    const faults = names.flatMap((name) => {
      const fault = parseFault(name, board);
      return fault.ok ? [fault.value] : [];
    });
    expect(faults.length).toBe(names.length);
    const bench = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: true };
    const build = new PathBuilder(
      view,
      new FaultedBoard(board, bench, faults),
      new Set(view.bypasses.keys()),
    );
    build.feed({ kind: "mains" });
    const path = build.build();
    const circuit = { ...path.circuit, load: supplyLoad(view, path, watts) };
    const look = path.nets.get(view.roles.bus?.plus ?? "");
    expect(look).toBeDefined();
    await agree(circuit, look ?? 0, 50, 30);
  });
});

describe("a filament in series with the board", () => {
  const CASES = [
    [100, 10],
    [100, 20],
    [60, 15],
    [200, 45],
  ] as const;

  it.each(CASES)(
    "of %d W with %d W behind it: bus within 1 %, its own watts within 5 %",
    async (rated, watts) => {
      if (!present) return;
      const lamp = { watts: rated, ratedVolts: 230 };
      const circuit = rectifier({ ...TYPICAL, farads: rated * 1e-6, watts }, null, lamp);
      const settling = { cycleSeconds: 0.02, steps: STEPS, mostCycles: 90, startVolts: Float64Array.of(312) };
      const ours = settle(circuit, settling);
      const mean = ours.waves[3].reduce((sum, volts) => sum + volts, 0) / STEPS;
      const law = `max(${coldOhms(lamp)},${hotOhms(lamp)}*pow(max(v(heat0),1e-6)/${rated},${0.45 / 1.55}))`;
      const theirs = await runPower(circuit, {
        cycleSeconds: 0.02,
        cycles: 150,
        startVolts: [312],
        look: 3,
        laws: new Map([[0, law]]),
      });
      expect(Math.abs(mean / theirs.mean - 1)).toBeLessThan(0.01);
      expect(Math.abs(ours.resistorWatts[0] / (theirs.watts.get(0) ?? 0) - 1)).toBeLessThan(0.05);
    },
  );

  it("that stands before a short takes the whole mains: cold amps at first, its rated watts in the end", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const lamp = { watts: 100, ratedVolts: 230 };
    const circuit: PowerCircuit = {
      ...rectifier(TYPICAL, null, lamp),
      resistors: [
        { from: 0, to: 1, ohms: coldOhms(lamp), part: null, heats: filament(lamp) },
        { from: 3, to: -1, ohms: 0.2, part: "C1" },
      ],
      load: null,
    };
    const ours = settle(circuit, { cycleSeconds: 0.02, steps: STEPS, mostCycles: 60 });
    const law = `max(${coldOhms(lamp)},${hotOhms(lamp)}*pow(max(v(heat0),1e-6)/100,${0.45 / 1.55}))`;
    const run = { cycleSeconds: 0.02, cycles: 50, startVolts: [0], look: 3, laws: new Map([[0, law]]) };
    const theirs = await runPower(circuit, run);
    expect(Math.abs(ours.resistorWatts[0] / (theirs.watts.get(0) ?? 0) - 1)).toBeLessThan(0.03);
    expect(ours.sourceAmps[0]).toBeCloseTo(0.43, 2);
  });
});
