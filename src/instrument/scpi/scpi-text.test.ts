import { describe, expect, it } from "vitest";
import { plain } from "../../messages/said.ts";
import { functionIn, headerFor } from "./scpi-functions.ts";
import { LineSplitter, parseIdentity, parseScpiError, parseScpiReading } from "./scpi-text.ts";

describe("the lines of a SCPI instrument", () => {
  it("are put together from whatever pieces they come in", () => {
    const splitter = new LineSplitter();
    expect(splitter.take("+4.7")).toEqual([]);
    expect(splitter.take("1E-01\r")).toEqual([]);
    expect(splitter.take("\n+1.0E+0\n+2")).toEqual(["+4.71E-01", "+1.0E+0"]);
  });

  it("end: what never does is no instrument", () => {
    const splitter = new LineSplitter();
    expect(splitter.take("x".repeat(5000))).toBeNull();
  });

  // numeric response data as IEEE 488.2 has it: NR1, NR2, NR3
  it.each([
    ["42", 42],
    ["-0.0012", -0.0012],
    ["+4.71230000E-01", 0.47123],
    ["+1.0E+03,+1.1E+03", 1000],
    ["9.9E37", "OL"],
    ["-9.90000000E+37", "OL"],
    ["1E9", "OL"],
    ["9.91E37", null],
    ["", null],
    ["VOLT", null],
    ["1.2.3", null],
  ])("%j reads as %j", (line, expected) => {
    expect(parseScpiReading(line)).toBe(expected);
  });

  it("tell errors by their numbers", () => {
    expect(parseScpiError('-113,"Undefined header"')).toEqual({ code: -113, words: "Undefined header" });
    expect(parseScpiError('+0,"No error"')?.code).toBe(0);
    expect(parseScpiError('"VOLT"')).toBeNull();
  });

  it("name maker and model, and keep the serial number to themselves", () => {
    expect(parseIdentity("LOOPBACK INSTRUMENTS,DM-1,000123,1.0")).toBe("LOOPBACK INSTRUMENTS DM-1");
    expect(parseIdentity("HTTP/1.1 400 Bad Request")).toBeNull();
  });
});

describe("the functions of a SCPI meter", () => {
  it.each([
    ['"VOLT"', "DC volts"],
    ['"VOLT:DC"', "DC volts"],
    ['"VOLTage:AC"', "AC volts"],
    ['"RES +1.000E+03,+1.0E-03"', "ohms"],
    ['"FRESISTANCE"', "ohms by four wires"],
    ["DIODE", "diode mode"],
    ['"CONTINUITY"', "continuity"],
    ['"CAP"', "capacitance"],
    ['"SENS1:CURR:AC"', "AC amps"],
  ])("answer %s: it is set to %s", (answer, setTo) => {
    expect(plain(functionIn(answer)?.setTo ?? "")).toBe(setTo);
  });

  it("are chosen by the check; amps never", () => {
    expect(headerFor({ mode: "diode" })).toBe("DIOD");
    expect(headerFor({ mode: "ohms", wires: 4 })).toBe("FRES");
    expect(headerFor({ mode: "amps" })).toBeNull();
  });
});
