import { describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";

const values = async (...argv: string[]) => JSON.parse((await ran("values", ...argv, "--json")).out);

describe("values resistor", () => {
  it("reads colours and printed values, and names what is sold nearest", async () => {
    expect(await values("resistor", "yellow", "violet", "red", "gold")).toEqual({
      ohms: 4700,
      tolerance: 0.05,
      usual: true,
      printed: "4K7",
      nearest: { E12: 4700, E24: 4700, E96: 4750 },
    });
    expect(await values("resistor", "4K6")).toMatchObject({ ohms: 4600, nearest: { E12: 4700, E96: 4640 } });
    const { out } = await ran("values", "resistor", "brown", "black", "black", "gold", "gold");
    expect(out).toMatch(/10\.0 ohm, 5 %[\s\S]*read it from the other end too/);
    expect(await refusal("values", "resistor", "mauve", "red", "red")).toContain("mauve is no digit");
    expect(await refusal("values", "resistor", "0R")).toContain("is a wire");
  });
});

describe("values electrolytic", () => {
  it("tells what is worn out by each maker's own figures (K3, K4, K8, K9, K10, K12)", async () => {
    const told = await values("electrolytic", "--farads", "470u", "--volts", "400");
    const leakage = Object.fromEntries(
      told.leakage.map((one: { source: string; amps: number }) => [one.source, one.amps]),
    );
    // 0.02 x 188 000 + 25 and 0.04 x 188 000 + 100 microamperes
    expect(leakage["Lelon RGA"]).toBeCloseTo(3785e-6, 9);
    expect(leakage["Nichicon RS"]).toBeCloseTo(7620e-6, 9);
    expect(told.loss.map((one: { tanDelta: number }) => one.tanDelta)).toEqual([0.25, 0.25]);
    expect(told.loss[0].esrOhms).toBeCloseTo(0.7055, 4);
    expect(told.surgeVolts).toBeCloseTo(460, 9);
    expect(told.lifeHours).toBe(32_000);
  });
});

describe("values charge", () => {
  it("tells energy, class and time, and that only a meter proves it empty", async () => {
    const argv = ["charge", "--farads", "470u", "--volts", "325.27", "--ohms", "100k"];
    const told = await values(...argv);
    // row P12: 24.863 J, 79.44 s to 60 V
    expect(told.joules).toBeCloseTo(24.863, 2);
    expect(told.secondsTo60).toBeCloseTo(79.44, 1);
    expect(told).toMatchObject({ touch: "ES3", live: true });
    expect((await ran("values", ...argv)).out).toMatch(/20 J[\s\S]*empty when a meter .* below 10 V/);
    expect(await values("charge", "--farads", "1n", "--volts", "24")).toMatchObject({
      touch: "ES1",
      live: false,
    });
  });
});

describe("values bleeder", () => {
  it("tells the highest resistor behind a plug (P14), and whether the one there will do", async () => {
    expect((await values("bleeder", "--farads", "1u")).mostOhms).toBeCloseTo(442.8e3, -2);
    expect(await values("bleeder", "--farads", "1u", "--ohms", "1M2")).toMatchObject({ fastEnough: false });
    expect(await refusal("values", "bleeder", "--farads", "1u", "--mains", "20")).toContain(
      "mains: 20 V is outside",
    );
  });
});
