import { describe, expect, it } from "vitest";
import { parseMeterWord, parseScpiAddress, parseSigrokDriver, readMeterSetting } from "./meter-setting.ts";

describe("the setting of the meter", () => {
  it("takes an address with or without its port", () => {
    expect(parseScpiAddress("192.168.1.20")).toEqual({
      ok: true,
      value: { kind: "scpi", host: "192.168.1.20", port: 5025 },
    });
    expect(parseScpiAddress("bench-meter.local:5555")).toMatchObject({ value: { port: 5555 } });
    expect(parseScpiAddress("[fe80::1]:5025")).toMatchObject({ value: { host: "[fe80::1]" } });
  });

  it.each(["", "two words", "meter:0", "meter:99999", "http://meter", "a;b"])("refuses %j as one", (text) => {
    expect(parseScpiAddress(text)).toMatchObject({ ok: false, problem: expect.stringMatching(/no address/) });
  });

  it("takes a driver of sigrok with its wire", () => {
    const typed = "scpi-dmm:conn=/dev/ttyUSB0:serialcomm=19200/7o1/rts=0/dtr=1";
    expect(parseSigrokDriver(typed)).toMatchObject({ ok: true, value: { driver: typed, channel: null } });
    expect(parseMeterWord("sigrok:demo")).toMatchObject({ ok: true, value: { driver: "demo" } });
  });

  it.each(["--output-file=/etc/x", "-d", "demo; rm", "demo:conn=$(x)", "Demo"])(
    "refuses %j: what is typed becomes an argument of a program",
    (typed) => {
      expect(parseSigrokDriver(typed).ok).toBe(false);
      expect(readMeterSetting({ kind: "sigrok", driver: typed }).ok).toBe(false);
    },
  );
});
