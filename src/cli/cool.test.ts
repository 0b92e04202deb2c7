import { describe, expect, it } from "vitest";
import { ran, refusal } from "./ran.fixture.ts";

const cool = (...argv: string[]) => ran("cool", ...argv);

describe("cool", () => {
  it("tells the junction, before and after the pad", async () => {
    const argv = [
      "junction",
      "--watts",
      "20",
      "--case",
      "0.6",
      "--sink",
      "1.5",
      "--air",
      "40",
      "--instead",
      "pad",
    ];
    const { json, text } = {
      json: JSON.parse((await cool(...argv, "--json")).out),
      text: (await cool(...argv)).out,
    };
    // 40 + 20 x 1.5 = 70; paste at its worse end 1 K/W: 70 + 20 x 1.6; pad 1.3 K/W
    expect(json).toMatchObject({
      sinkDegC: 70,
      junctionDegC: 102,
      instead: { beforeDegC: 102, afterDegC: 108, cool: true },
    });
    expect(text).toMatch(
      /junction 102 degC, heatsink 70 degC, with paste[\s\S]*bears 100 W up to 150 degC\n.*junction 108 degC/,
    );
  });

  it("tells the torque with its sources, and the order of the work", async () => {
    const { out } = await cool("screw", "TO-220");
    expect(out).toMatch(/^TO-220: 0\.55 to 0\.68 N m/);
    expect(out).toMatch(/seen-2nd: ST TN1225[\s\S]*1\. clean both faces[\s\S]*solder now/);
  });

  it("tells distances and a track's width", async () => {
    expect((await cool("spacing", "--line", "230", "--volts", "250")).out).toMatch(
      /^1\.5 mm through air, 2\.5 mm along/,
    );
    expect((await cool("spacing", "--line", "230", "--volts", "250", "--reinforced")).out).toMatch(
      /^3 mm through air, 5 mm/,
    );
    expect((await cool("track", "--amps", "5", "--rise", "10")).out).toMatch(/^2\.77 mm wide/);
  });

  it.each([
    [["track", "--amps", "40"], "current: 40 A is outside 0.01 to 35 A"],
    [["track", "--amps", "x"], '--amps: "x" is no figure'],
    [["spacing", "--line", "230", "--volts", "1500"], "working voltage: 1500 V is outside 0 to 1000 V"],
    [["screw", "SO-8"], "no torque is known for SO-8; known: TO-220"],
    [["junction", "--watts", "-5", "--case", "1", "--sink", "1"], "heat: -5 W is outside"],
    [["junction", "--watts", "5", "--case", "1", "--sink", "1", "--under", "butter"], "--under"],
  ])("refuses %j in one line", async (argv, problem) => {
    expect(await refusal("cool", ...argv)).toContain(problem);
  });

  it("sets older and other standards beside a distance, and stretches it with the height", async () => {
    const argv = ["spacing", "--line", "230", "--volts", "250"];
    const low = JSON.parse((await cool(...argv, "--json")).out);
    // C14, C16; IPC-9592 at the peak of 250 V: 0.6 + 0.005 x 353.6
    expect(low).toMatchObject({ clearanceMm: 1.5, creepageMm: 2.5, olderClearanceMm: 1.9, grooveMm: 0.5 });
    expect(low.ipc9592Mm).toBeCloseTo(2.368, 3);
    const high = JSON.parse((await cool(...argv, "--metres", "3000", "--json")).out);
    expect(high.clearanceMm).toBeCloseTo(1.5 * 1.14, 9);
  });

  it("tells the heat of a bridge, a chopper and a leg, and the heatsink that it wants (H1)", async () => {
    const bridge = JSON.parse(
      (await cool("bridge", "--volts", "0.8", "--ohms", "0.01", "--amps", "8", "--json")).out,
    );
    expect(bridge.watts).toBeCloseTo(2 * (0.8 * 8 + 0.01 * 256), 9);
    const switching =
      "--volts 0.9 --ohms 0.03 --amps 10 --bus 380 --hertz 20k --energy 1m --at-amps 20 --at-volts 400";
    const chopper = await cool("chopper", ...switching.split(" "), "--duty", "0.4", "--json");
    expect(JSON.parse(chopper.out).watts).toBeCloseTo(0.4 * 12 + 20_000 * 1e-3 * 0.5 * 0.95, 9);
    const diode = "--diode-volts 0.8 --diode-ohms 0.02 --recovery 200u";
    expect((await cool("leg", ...switching.split(" "), ...diode.split(" "))).out).toMatch(
      /W in the switch, .* W in the diode/,
    );
    const sink = "--watts 5 --case 3 --under 1 --limit 150 --air 50 --json";
    expect(JSON.parse((await cool("sink", ...sink.split(" "))).out).sinkToAir).toBeCloseTo(16, 9);
  });

  it("reckons bridge, leg and module at what the board drives", async () => {
    const json = async (...argv: string[]) => JSON.parse((await cool(...argv, "--json")).out);
    const junction = ["--volts", "0.8", "--ohms", "0.01"];
    // 900 W off a bus of 325 V are 2.77 A, off a line of 230 V in front of a boost 3.52 A
    expect((await json("bridge", ...junction, "--load", "900")).directAmps).toBeCloseTo(2.767, 3);
    const boosted = await json("bridge", ...junction, "--load", "900", "--boosted", "380");
    expect(boosted.directAmps).toBeCloseTo(3.523, 3);
    expect(boosted.watts).toBeCloseTo(2 * (0.8 * 3.523 + 0.01 * (900 / 230) ** 2), 2);
    const leg =
      "--volts 0.9 --ohms 0.05 --hertz 5k --energy 0.6m --at-amps 15 --at-volts 300 --diode-volts 0.9 --diode-ohms 0.04 --recovery 0.1m".split(
        " ",
      );
    const one = await json("leg", ...leg, "--load", "900");
    expect(one.phaseAmps).toBeCloseTo((900 * 2 * Math.SQRT2) / (3 * 0.8 * 325.27 * 0.8), 3);
    const on = "--case 3 --diode-case 4.5 --under 0.1 --sink 0.9".split(" ");
    const all = await json("module", ...leg, "--load", "900", ...on);
    expect(all.moduleWatts).toBeCloseTo(6 * (one.switchWatts + one.diodeWatts), 9);
    expect((await cool("module", ...leg, "--load", "900", ...on)).out).toMatch(
      /^[\d.]+ W in the module at 4\.08 A a phase: case \d+ degC, switches \d+ degC, diodes \d+ degC/,
    );
    expect(await refusal("cool", "leg", ...leg)).toContain("--amps or --load: one of them");
    expect(await refusal("cool", "leg", ...leg, "--amps", "5")).toContain("--bus: is wanted with --amps");
    expect(await refusal("cool", "bridge", ...junction, "--load", "90k")).toContain(
      "load: 90000 W is outside",
    );
  });

  it("tells where to cut a lead above metal (L1)", async () => {
    expect((await cool("lead", "--gap", "5.5", "--clearance", "4")).out).toMatch(/^cut leads at 1\.50 mm/);
    expect(await refusal("cool", "lead", "--gap", "4", "--clearance", "4")).toContain("insulating sheet");
  });

  it("takes the watts at 25 degC where the data sheet has no resistance, and tells what the case bears (H6)", async () => {
    const json = async (...argv: string[]) => JSON.parse((await cool("junction", ...argv, "--json")).out);
    const told = await json("--watts", "20", "--watts-at-25", "208", "--sink", "1.5", "--limit", "150");
    // (150 - 25) / 208; case 40 + 20 x 1.5 + 20 x 1 under paste at its worse end
    expect(told.junctionToCase).toBeCloseTo(125 / 208, 9);
    expect(told.caseDegC).toBeCloseTo(90, 9);
    expect(told.wattsAtCase).toBeCloseTo(60 / (125 / 208), 9);
    const both = ["--watts", "20", "--watts-at-25", "208", "--case", "0.6", "--sink", "1.5"];
    expect(await refusal("cool", "junction", ...both)).toContain("one of them");
  });

  it("tells what a layer resists, by its table or the data sheet's conductivity (H8, H9)", async () => {
    const layer = async (...argv: string[]) =>
      JSON.parse((await cool("layer", ...argv, "--mm", "0.1", "--area", "300", "--json")).out).kelvinPerWatt;
    // 150 K cm/W through 0.01 cm over 3 cm2
    expect(await layer("mica")).toBeCloseTo((150 * 0.01) / 3, 9);
    expect(await layer("--conductivity", "0.8")).toBeCloseTo(1e-4 / (0.8 * 3e-4), 9);
    expect(await refusal("cool", "layer", "butter", "--mm", "0.1", "--area", "300")).toContain(
      "known: copper",
    );
    expect(await refusal("cool", "layer", "--mm", "0.1", "--area", "300")).toContain("one of them");
  });

  it("tells how far a pulse warms a junction, by the data sheet's network (H5)", async () => {
    const argv = ["pulse", "--watts", "100", "--seconds", "6.347m", "--step", "0.2568:1u", "0.3429:6.347m"];
    const told = JSON.parse((await cool(...argv, "--json")).out);
    expect(told.kelvin).toBeCloseTo(100 * (0.2568 + 0.3429 * (1 - Math.exp(-1))), 6);
    const wrong = ["pulse", "--watts", "1", "--seconds", "1", "--step", "0.2"];
    expect(await refusal("cool", ...wrong)).toContain("as 0.26:1m");
  });

  it("tells what a track of a width carries: the way back of the width for a current (T7)", async () => {
    const { widthMm } = JSON.parse((await cool("track", "--amps", "5", "--rise", "10", "--json")).out);
    const argv = ["track", "--width", String(widthMm), "--rise", "10", "--json"];
    expect(JSON.parse((await cool(...argv)).out).amps).toBeCloseTo(5, 6);
    expect(await refusal("cool", "track", "--rise", "10")).toContain("--amps or --width");
  });

  it("takes the material by its tracking index, and sets printed wiring under sound resist beside it (C7, C10)", async () => {
    const argv = ["spacing", "--line", "230", "--volts", "250", "--json"];
    const of = async (index: string) => JSON.parse((await cool(...argv, "--tracking", index)).out);
    expect(await of("600")).toMatchObject({ material: "I", creepageMm: 1.5, printedCreepageMm: 1 });
    expect(await of("175")).toMatchObject({ material: "III", creepageMm: 2.5 });
    expect(await refusal("cool", ...argv, "--tracking", "50")).toContain("tracking index: 50 is outside");
  });
});
