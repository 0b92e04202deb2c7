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
    expect(text).toMatch(/junction 102 degC, heatsink 70 degC, with paste.*\n.*junction 108 degC/);
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

  it("tells where to cut a lead above metal (L1)", async () => {
    expect((await cool("lead", "--gap", "5.5", "--clearance", "4")).out).toMatch(/^cut leads at 1\.50 mm/);
    expect(await refusal("cool", "lead", "--gap", "4", "--clearance", "4")).toContain("insulating sheet");
  });
});
