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
    expect(told.wornOut).toBeNull();
  });

  it("says of one that was read whether it is worn out, and by what (K11)", async () => {
    const read = async (...figures: string[]) =>
      (await values("electrolytic", "--farads", "470u", "--volts", "400", "--read", ...figures)).wornOut;
    expect(await read("farads=400u", "esr=1.2", "leakage=2m")).toEqual([]);
    expect(await read("farads=370u")).toEqual(["capacitance off by more than 20 %"]);
    // 0.7055 ohm new, leakage 3785 uA
    expect(await read("esr=1.5", "leakage=4m")).toEqual([
      "loss over twice the limit",
      "leakage over the limit",
    ]);
    const wrong = ["electrolytic", "--farads", "470u", "--volts", "400", "--read", "colour=red"];
    expect(await refusal("values", ...wrong)).toContain("expected farads=, esr= or leakage=");
  });

  it("adds up the shares of life of a day (K13): half at 105 and half at 95 degC", async () => {
    const argv = ["electrolytic", "--farads", "470u", "--volts", "400", "--hours", "1000"];
    const told = await values(...argv, "--day", "0.5:105", "0.5:95");
    expect(told.lifeHours).toBeCloseTo(1 / (0.5 / 1000 + 0.5 / 2000), 6);
    expect(await refusal("values", ...argv, "--day", "0.5:105")).toContain("add up to 0.5");
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

describe("values touch", () => {
  it("classes what stands, and one pulse, at second hand", async () => {
    expect(await values("touch", "--volts", "325")).toEqual({ touch: "ES3" });
    expect(await values("touch", "--volts", "60")).toEqual({ touch: "ES1" });
    expect(await values("touch", "--volts", "60", "--kind", "alternating")).toEqual({ touch: "ES2" });
    expect(await values("touch", "--volts", "196", "--seconds", "10m")).toEqual({ touch: "ES2" });
    expect(await values("touch", "--amps", "30m")).toEqual({ touch: "ES3" });
    expect(await values("touch", "--amps", "0.5m", "--kind", "alternating")).toEqual({ touch: "ES1" });
    expect(await values("touch", "--amps", "153m", "--seconds", "20m")).toEqual({ touch: "ES2" });
    expect(await refusal("values", "touch")).toContain("--volts or --amps: one of them");
    expect((await ran("values", "touch", "--volts", "325")).out).toContain("proven empty");
  });
});
