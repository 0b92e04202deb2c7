import { afterEach, describe, expect, it } from "vitest";
import type { InstrumentReading, WantedReading } from "../instrument/instrument-reading.ts";
import { inEnglish } from "../messages/in-english.fixture.ts";
import { LoopbackInstrument, type Manners } from "./loopback-instrument.fixture.ts";
import { ScpiSocket } from "./scpi-socket.ts";

const QUICK = { betweenMs: 5, patienceMs: 300, againMs: 20, garbageBorne: 3 };
const DIODE: WantedReading = { mode: "diode" };

let instrument: LoopbackInstrument;
let meter: ScpiSocket;
afterEach(async () => {
  meter.stop();
  await instrument.stop();
});

interface Heard {
  readonly readings: InstrumentReading[];
  readonly troubles: string[];
  name: string | null;
}

async function connected(manners: Partial<Manners>, wanted: WantedReading = DIODE): Promise<Heard> {
  instrument = await LoopbackInstrument.start(manners);
  const heard: Heard = { readings: [], troubles: [], name: null };
  meter = new ScpiSocket(
    instrument.address,
    {
      named: (name) => {
        heard.name = name;
      },
      reading: (reading) => heard.readings.push(inEnglish(reading)),
      trouble: (problem) => problem !== null && heard.troubles.push(inEnglish(problem)),
    },
    QUICK,
  );
  meter.want(wanted);
  return heard;
}

const until = (there: () => boolean) => expect.poll(there, { timeout: 5_000, interval: 5 }).toBe(true);

describe("a SCPI meter on the wire", () => {
  it("is set to the mode of the check, and its figures are readings in that mode", async () => {
    const heard = await connected({});
    await until(() => heard.readings.length >= 2);
    expect(heard.name).toBe("LOOPBACK INSTRUMENTS DM-1");
    expect(instrument.heard).toContain("CONF:DIOD");
    expect(heard.readings[0]).toEqual({
      modes: ["diode"],
      setTo: "diode mode",
      value: 0.47123,
      unit: "V",
      doubt: null,
    });
    meter.want({ mode: "ohms", wires: 4 });
    await until(() => heard.readings.at(-1)?.setTo === "ohms by four wires");
    expect(heard.troubles).toEqual([]);
  });

  it("shows OL at 9.9E37, and puts a figure together that comes letter by letter", async () => {
    const heard = await connected({ figures: ["+9.90000000E+37", "-9.9E37", "+1.5E+03"], pieces: 3 });
    await until(() => heard.readings.length >= 3);
    expect(heard.readings.slice(0, 3).map(({ value }) => value)).toEqual(["OL", "OL", 1500]);
  });

  it("turned to another mode by hand says so with every figure, and is not turned back", async () => {
    const heard = await connected({ turnedTo: "RES" });
    await until(() => heard.readings.length >= 3);
    expect(heard.readings.every(({ modes }) => !modes.includes("diode"))).toBe(true);
    expect(instrument.heard.filter((line) => line.startsWith("CONF"))).toEqual(["CONF:DIOD"]);
  });

  it("that lacks a mode is told by its error queue, and gives no figure for it", async () => {
    const heard = await connected({ lacks: ["CAP"] }, { mode: "farads" });
    await until(() => heard.troubles.length > 0);
    expect(heard.troubles[0]).toMatch(/no capacitance .*-113 Undefined header.*Type this one/);
    expect(heard.readings).toEqual([]);
    meter.want(DIODE);
    await until(() => heard.readings.length > 0);
  });

  it("that cannot say what it is set to is believed as it was set", async () => {
    const heard = await connected({ mute: true });
    await until(() => heard.readings.length > 0);
    expect(heard.readings[0]?.modes).toEqual(["diode"]);
  });

  it("is never set to amps: its leads may lie on the board", async () => {
    const heard = await connected({}, { mode: "amps" });
    await until(() => heard.readings.length > 0);
    expect(instrument.heard.filter((line) => line.startsWith("CONF"))).toEqual([]);
    expect(heard.readings[0]?.modes).toEqual(["dcv"]);
  });

  it("whose wire is cut in the middle of a figure is connected again, and the half figure is none", async () => {
    const heard = await connected({ cut: true });
    await until(() => heard.readings.length >= 2);
    expect(heard.troubles[0]).toMatch(/was cut/);
    expect(new Set(heard.readings.map(({ value }) => value))).toEqual(new Set([0.47123]));
  });

  it("that answers too late is connected again, so that the late figure is taken for no other", async () => {
    const heard = await connected({ slowMs: 10 });
    await until(() => heard.readings.length > 0);
    instrument.manners.slowMs = 400;
    await until(() => heard.troubles.length > 0);
    expect(heard.troubles[0]).toMatch(/did not answer .* connecting again/);
    instrument.manners.slowMs = 0;
    instrument.show("+1.0E-01");
    const before = heard.readings.length;
    await until(() => heard.readings.length > before);
    expect(heard.readings.at(-1)?.value).toBe(0.1);
  });

  it("that sends garbage gives no reading, and is begun anew when it does not stop", async () => {
    const heard = await connected({ figures: ["\u00ff\u00fe??", "#0", "+1.2.3E5", "+9.91E37", "+2.0E-01"] });
    await until(() => heard.readings.length > 0);
    expect(heard.readings[0]?.value).toBe(0.2);
    expect(heard.troubles[0]).toMatch(/no figure; asking again/);
    expect(heard.troubles.some((problem) => problem.includes("answers no figures"))).toBe(true);
  });

  it("that is not there is said in one line, with what to look at", async () => {
    const heard = await connected({});
    await instrument.stop();
    await until(() => heard.troubles.some((problem) => problem.includes("ECONNREFUSED")));
    expect(heard.troubles.at(-1)).toMatch(/^No meter at 127\.0\.0\.1:\d+ .*is it on/);
  });
});
