import { describe, expect, it } from "vitest";
import type { ColdMode } from "../../src/bench/event.ts";
import { BARE_BENCH } from "../agreement.ts";
import { hasNgspice, runControl } from "../ngspice.ts";
import { looseParts } from "./loose-parts.fixture.ts";
import { runChecks } from "./meter-run.ts";
import type { OnTheBench } from "./oracle-deck.ts";
import { drawMeter, shown } from "./oracle-meter.ts";

const present = await hasNgspice();
const file = looseParts();

function onBench(seed: number, more: Partial<OnTheBench> = {}): OnTheBench {
  const room = { seed, celsius: 25, settledSeconds: 20 };
  return {
    board: file,
    file,
    room,
    bench: BARE_BENCH,
    faults: [],
    generations: new Map(),
    leaks: [],
    ...more,
  };
}

async function readings(
  seed: number,
  checks: readonly (readonly [ColdMode, string, string])[],
  more: Partial<OnTheBench> = {},
): Promise<readonly unknown[]> {
  const meter = drawMeter(seed);
  const seen = await runChecks(
    onBench(seed, more),
    meter,
    checks.map(([mode, red, black]) => ({ mode, red, black })),
  );
  return seen.map((one, at) =>
    one === null ? null : shown(meter, checks[at]?.[0] ?? "diode", one, () => 0.5),
  );
}

const SEEDS = Array.from({ length: 8 }, (_, index) => 301 + index);

describe("a healthy part in the hand reads in the trade's band", () => {
  it.for([
    ["a bridge diode", "BR_1", "BR_P", 0.38, 0.58],
    ["an ultrafast diode", "D1_A", "D1_K", 0.32, 0.5],
    ["a silicon carbide diode, not bad at 0.8", "D2_A", "D2_K", 0.7, 0.9],
    ["a Schottky diode", "D3_A", "D3_K", 0.12, 0.28],
    ["a signal diode", "D4_A", "D4_K", 0.52, 0.68],
    ["the diode of a switch", "Q1_E", "Q1_C", 0.33, 0.53],
    ["a zener, forward", "Z1_A", "Z1_K", 0.55, 0.78],
    ["the light of an optocoupler", "U1_A", "U1_K", 0.95, 1.25],
  ] as const)("%s", async ([, red, black, least, most], context) => {
    if (!present) context.skip("ngspice is not installed");
    for (const seed of SEEDS) {
      const [forward, backward] = await readings(seed, [
        ["diode", red, black],
        ["diode", black, red],
      ]);
      expect(forward).toBeGreaterThan(least);
      expect(forward).toBeLessThan(most);
      expect(backward).toBe("OL");
    }
  });

  it("resistors within their tolerance and the meter's, capacitors within theirs", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    for (const seed of SEEDS) {
      const [ten, high, bulk, film, fuse] = await readings(seed, [
        ["ohms", "R1_1", "R1_2"],
        ["ohms", "R2_1", "R2_2"],
        ["farads", "C1_P", "C1_M"],
        ["farads", "C2_P", "C2_M"],
        ["ohms", "L", "F1_2"],
      ]);
      expect(Math.abs(Number(ten) / 10_000 - 1)).toBeLessThan(0.08);
      expect(Math.abs(Number(high) / 470_000 - 1)).toBeLessThan(0.08);
      expect(Math.abs(Number(bulk) / 470e-6 - 1)).toBeLessThan(0.35);
      expect(Math.abs(Number(film) / 1e-6 - 1)).toBeLessThan(0.2);
      expect(fuse).toBeLessThan(1);
    }
  });

  it("three diodes of one bridge match within 40 mV while bridges differ by more", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const firsts: number[] = [];
    for (const seed of SEEDS) {
      const own = await readings(seed, [
        ["diode", "BR_1", "BR_P"],
        ["diode", "BR_2", "BR_P"],
        ["diode", "BR_M", "BR_1"],
      ]);
      const volts = own.map(Number);
      expect(Math.max(...volts) - Math.min(...volts)).toBeLessThan(0.04);
      firsts.push(volts[0] ?? 0);
    }
    expect(Math.max(...firsts) - Math.min(...firsts)).toBeGreaterThan(0.02);
  });
});

describe("a faulty part", () => {
  it("reads as a short when it is one, both ways", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const faults = [{ of: "part", part: "D1", junction: null, mode: "short", value: 0.5 }] as const;
    const [forward, backward, ohms, beep] = await readings(
      301,
      [
        ["diode", "D1_A", "D1_K"],
        ["diode", "D1_K", "D1_A"],
        ["ohms", "D1_A", "D1_K"],
        ["continuity", "D1_A", "D1_K"],
      ],
      { faults },
    );
    expect(forward).toBeLessThan(0.01);
    expect(backward).toBeLessThan(0.01);
    expect(ohms).toBeGreaterThan(0.4);
    expect(ohms).toBeLessThan(1.5);
    expect(beep).toBe("beep");
  });

  it("reads OL both ways when it is open, and its drifted ohms when it drifted", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const faults = [
      { of: "part", part: "D1", junction: null, mode: "open", value: null },
      { of: "part", part: "R1", junction: null, mode: "drift", value: 33_000 },
    ] as const;
    const [forward, ohms] = await readings(
      301,
      [
        ["diode", "D1_A", "D1_K"],
        ["ohms", "R1_1", "R1_2"],
      ],
      { faults },
    );
    expect(forward).toBe("OL");
    expect(Math.abs(Number(ohms) / 33_000 - 1)).toBeLessThan(0.05);
  });
});

describe("the oracle", () => {
  it("reads the same again from the same seed", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const checks = [
      ["diode", "BR_1", "BR_P"],
      ["ohms", "R1_1", "R1_2"],
      ["farads", "C1_P", "C1_M"],
    ] as const;
    expect(await readings(305, checks)).toEqual(await readings(305, checks));
  });

  it("watches a capacitor climb before it settles", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const meter = drawMeter(301);
    const [early, late] = await runChecks(onBench(301), meter, [
      { mode: "diode", red: "C1_P", black: "C1_M", seconds: 0.4 },
      { mode: "diode", red: "C1_P", black: "C1_M" },
    ]);
    expect(early?.value).toBeLessThan(1.6);
    expect(early?.value).toBeGreaterThan(0.1);
    expect(late?.value).toBeGreaterThan(2);
  });

  it("says what to install where ngspice is missing", async () => {
    await expect(runControl("no deck\n.end\n", "no-such-simulator")).rejects.toThrow(/install ngspice/);
  });
});
